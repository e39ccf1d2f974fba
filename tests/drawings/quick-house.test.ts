import { describe, expect, it } from 'vitest';
import { quickHouse } from '../../lib/drawings/quick-house.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf } from '../tools/house.js';

describe('radii and heights read off chains of arcs', () => {
  const cases = [
    domeOf({ shape: 'catenary', rise: 3300, stemWall: 300 }),
    domeOf({ shape: 'catenary', rise: 1800, stemWall: 0, oculus: { radius: 300, curb: 150, upstand: 80 } }),
    domeOf({ shape: 'elliptical', rise: 2100, stemWall: 900 }),
    domeOf({ shape: 'elliptical', rise: 3900, oculus: { radius: 400, curb: 200, upstand: 100 } }),
  ];

  it.each(cases)('are those of the curve within a micrometre and a half: $profile', (dome) => {
    const exact = setOutHouse(houseOf({ domes: [dome] }));
    const [a, b] = [exact.domes[0], quickHouse(exact).domes[0]];
    if (!a || !b) throw new Error('the house has a dome');
    for (let z = -100; z < a.topZ + 100; z += 7.3) {
      for (const offset of [0, 120, 250]) {
        const wanted = a.radiusAt(z, offset);
        const found = b.radiusAt(z, offset);
        expect(Number.isNaN(found)).toBe(Number.isNaN(wanted));
        // The distance to the curve is at most the smaller of the two.
        if (wanted > 0)
          expect(Math.min(Math.abs(found - wanted), Math.abs(a.heightAt(found, offset) - z))).toBeLessThan(0.0015);
      }
      const outer = a.outerRadiusAt(z);
      if (outer > 600 || (dome.oculus && outer > 0)) expect(Math.abs(b.outerRadiusAt(z) - outer)).toBeLessThan(0.003);
    }
    for (let r = 0; r < 3000; r += 11.7) {
      for (const offset of [0, 120, 250])
        expect(Math.abs(b.heightAt(r, offset) - a.heightAt(r, offset))).toBeLessThan(r < 2900 ? 0.004 : 0.02);
    }
  });

  it('leave a circular meridian as it is', () => {
    const exact = setOutHouse(houseOf());
    expect(quickHouse(exact).domes[0]).toBe(exact.domes[0]);
  });
});
