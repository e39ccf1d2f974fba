import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { staticsOf } from '../../lib/statics/statics.js';
import type { ThrustPoint } from '../../lib/statics/thrust.js';
import { domeOf, houseOf } from '../tools/house.js';

// A hemisphere on the ground, 3 m inside, 3.6 m outside, no footing, no render: sums of loads by closed forms.
const R = 3.6;
const pairUnder = (load: string, site: Partial<House['site']>) => {
  const house = houseOf({
    domes: [domeOf({ stemWall: 0 })],
    wall: { thickness: 600, renderInside: 0, renderOutside: 0 },
    footing: null,
    site: { ...houseOf().site, ...site },
  });
  const dome = staticsOf(setOutHouse(house)).domes[0];
  const [windward, leeward] = dome?.oneSided.find((one) => one.load === load)?.lines ?? [[], []];
  return {
    windward: windward.at(-1) as ThrustPoint,
    leeward: leeward.at(-1) as ThrustPoint,
    dead: (dome?.weights.masonry ?? 0) / (2 * Math.PI),
  };
};

describe('loads from one side, summed at the base of both halves', () => {
  it('wind +0.8, −1.2, 0: push, lift, and no moment about the centre, since pressure acts towards it', () => {
    const q = 0.3;
    const { windward, leeward, dead } = pairUnder('wind', { windKpa: q });
    // ∫ 0.8 (2a/π) R² sin² a da; ∫ (−2.4 + 3.2 · 2a/π) R² sin a cos a da.
    const push = 0.8 * (2 / Math.PI) * (Math.PI ** 2 / 16 + 1 / 4) * q * R ** 2;
    expect(Math.abs((leeward.horizontal - windward.horizontal) / push - 1)).toBeLessThan(1e-3);
    const lift = leeward.vertical + windward.vertical - 2 * dead;
    expect(Math.abs(lift / (-0.4 * q * R ** 2) - 1)).toBeLessThan(2e-3);
    const turn = leeward.r * leeward.vertical - windward.r * windward.vertical;
    expect(Math.abs(turn) / 1000).toBeLessThan(1e-3 * push * R);
  });

  it('an earthquake pushes with its part of the weight, and lifts nothing', () => {
    const { windward, leeward, dead } = pairUnder('earthquake', { seismicCoefficient: 0.05 });
    expect(leeward.horizontal - windward.horizontal).toBeCloseTo(2 * 0.05 * dead, 9);
    expect(leeward.vertical + windward.vertical).toBeCloseTo(2 * dead, 9);
    // The weights push at their own heights: γ π (Re⁴ − Ri⁴)/16 a radian.
    const unit = dead / ((R ** 3 - 3 ** 3) / 3);
    const turn = (2 * 0.05 * unit * (R ** 4 - 3 ** 4)) / 8;
    const found = (leeward.r * leeward.vertical - windward.r * windward.vertical) / 1000;
    expect(Math.abs(found / turn - 1)).toBeLessThan(1e-6);
  });
});
