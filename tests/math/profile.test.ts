import { describe, expect, it } from 'vitest';
import { type ProfileSpec, profileOf } from '../../lib/math/profile.js';

const PROFILES: readonly ProfileSpec[] = [
  { shape: 'hemisphere', radius: 3000, rise: 3000 },
  { shape: 'segmental', radius: 3000, rise: 1800 },
  { shape: 'pointed', radius: 2200, rise: 2900 },
  { shape: 'catenary', radius: 2600, rise: 3100 },
  { shape: 'catenary', radius: 2600, rise: 900 },
  { shape: 'elliptical', radius: 2600, rise: 1500 },
  { shape: 'elliptical', radius: 1800, rise: 2600 },
];
const shares = [0, 0.001, 0.1, 0.35, 0.6, 0.9, 0.999];

describe.each(PROFILES)('$shape, $radius by $rise', (spec) => {
  const profile = profileOf(spec);

  it('has the unit normal that its elevation tells, square to the step along the arc', () => {
    for (const share of shares) {
      const s = share * profile.length;
      const { normal, normalRad, r, h, curvature } = profile.at(s);
      expect(normal[0]).toBeCloseTo(Math.cos(normalRad), 14);
      expect(normal[1]).toBeCloseTo(Math.sin(normalRad), 14);
      const step = 1e-3;
      const next = profile.at(s + step);
      expect(((next.r - r) * normal[0] + (next.h - h) * normal[1]) / step).toBeCloseTo(0, 5);
      expect(Math.hypot(next.r - r, next.h - h) / step).toBeCloseTo(1, 6);
      expect((next.normalRad - normalRad) / step / curvature).toBeCloseTo(1, 4);
    }
  });

  it.each([0, 20, 250, 600])(
    'finds points of the surface %i outside from their height and from their radius',
    (offset) => {
      for (const share of shares) {
        const p = profile.at(share * profile.length);
        const [r, h] = [p.r + offset * p.normal[0], p.h + offset * p.normal[1]];
        expect(profile.heightAt(r, offset)).toBeCloseTo(h, share === 0 && h === 0 ? 4 : 8);
        expect(profile.radiusAt(h, offset)).toBeCloseTo(r, 8);
      }
    },
  );

  it('ends at its crown', () => {
    for (const offset of [0, 250]) {
      expect(profile.radiusAt(profile.heightAt(0, offset) - 1e-9, offset)).toBeLessThan(0.01);
      expect(profile.radiusAt(profile.heightAt(0, offset) + 1, offset)).toBeNaN();
    }
  });
});

it('a flat ellipse is told by its arc length up to the springing, where it bends within millimetres', () => {
  const [a, b] = [3000, 100];
  const profile = profileOf({ shape: 'elliptical', radius: a, rise: b });
  for (const s of [1, 5, 10, 20, 50, 100]) {
    const end = Math.asin(profile.at(s).h / b);
    // Simpson's rule over the parameter.
    const speed = (u: number) => Math.hypot(a * Math.sin(u), b * Math.cos(u));
    const step = end / 1000;
    let length = 0;
    for (let u = 0, k = 0; k < 1000; k++, u = k * step)
      length += (step / 6) * (speed(u) + 4 * speed(u + step / 2) + speed(u + step));
    expect(Math.abs(length - s), `${s} mm`).toBeLessThan(1e-9);
  }
});
