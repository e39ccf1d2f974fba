import { describe, expect, it } from 'vitest';
import type { Dome, Opening } from '../../lib/description/house.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const DOMES: readonly Dome[] = [
  domeOf({ shape: 'hemisphere' }),
  domeOf({ shape: 'segmental', rise: 1800 }),
  domeOf({ shape: 'pointed', rise: 3800 }),
  domeOf({ shape: 'catenary', rise: 3200 }),
  domeOf({ shape: 'elliptical', rise: 2300 }),
];
const OCULUS = { radius: 350, curb: 150, upstand: 100 };
const flush = (ring: number): Opening['arch'] => ({ ring, face: 'flush', madeAs: 'cast', voussoirs: null });
const OPENINGS: readonly Opening[] = [
  openingOf({ bearingDeg: 180, height: 1700, width: 900 }),
  openingOf({
    id: 'bay',
    bearingDeg: 90,
    sill: 500,
    height: 800,
    width: 1100,
    head: { shape: 'segmental', rise: 250 },
  }),
  openingOf({
    id: 'eye',
    bearingDeg: 0,
    sill: 500,
    height: 900,
    width: 700,
    head: { shape: 'pointed', rise: 600 },
    arch: flush(150),
  }),
  openingOf({
    id: 'shelf',
    bearingDeg: 270,
    use: 'niche',
    sill: 500,
    height: 600,
    width: 500,
    depth: 150,
    head: { shape: 'flat', rise: 0 },
    arch: flush(100),
  }),
  openingOf({ id: 'seat', bearingDeg: 315, use: 'niche', sill: 450, height: 900, width: 800, depth: 400 }),
];

const balance = (dome: Dome, openings: readonly Opening[], faces: 'curved' | 'flat' = 'curved') => {
  const house = houseOf({ domes: [dome], openings });
  const setout = setOutHouse({ ...house, blocks: { ...house.blocks, faces } });
  return balanceOf(setout, layBlocks(setout));
};

describe.each(DOMES.flatMap((dome) => [dome, { ...dome, oculus: OCULUS }]))(
  'balance of the masonry: $profile.shape, oculus $oculus',
  (dome) => {
    it('fills the envelope within 1e-6 where nothing is cut', () => {
      const whole = balance(dome, []);
      expect(Math.abs(whole.error)).toBeLessThan(1e-6);
      expect(whole.blocks / whole.envelope).toBeGreaterThan(0.75);
    });

    it('fills the envelope within 1e-6 with doors, windows and niches as well', () => {
      const cut = balance(dome, OPENINGS);
      expect(Math.abs(cut.error)).toBeLessThan(1e-6);
      for (const part of ['heads', 'jambs', 'spandrels', 'nicheBacks', 'cutJoints'] as const) {
        expect(cut[part]).toBeGreaterThan(0);
      }
    });
  },
);

describe('balance of the masonry, hard places', () => {
  it.each([0, 0.05, 3.7, 179.99, 359.9])('does not depend on the bearing: %d', (bearingDeg) => {
    const turned = balance(domeOf(), [openingOf({ bearingDeg })]);
    expect(Math.abs(turned.error)).toBeLessThan(1e-6);
  });

  it('holds without a stem wall, where arches cut the skewback', () => {
    const low = balance(domeOf({ shape: 'segmental', rise: 2400, stemWall: 0 }), [
      openingOf({ height: 1500, width: 800 }),
    ]);
    const whole = balance(domeOf({ shape: 'segmental', rise: 2400, stemWall: 0 }), []);
    expect(Math.abs(low.error)).toBeLessThan(1e-6);
    expect(low.skewbacks).toBeLessThan(whole.skewbacks * 0.97);
  });

  it('holds where one arch parts a skewback ring that is light enough to be lifted in few pieces', () => {
    const house = houseOf({
      domes: [domeOf({ shape: 'segmental', rise: 2400, stemWall: 0 })],
      openings: [openingOf({ height: 1500, width: 800 })],
    });
    const light = setOutHouse({ ...house, blocks: { ...house.blocks, heaviestKg: 10_000 } });
    expect(Math.abs(balanceOf(light, layBlocks(light)).error)).toBeLessThan(1e-6);
  });

  it.each([0, 30])(
    'holds where doors stand so close round a small dome that no bearing is free of them: %d',
    (turn) => {
      const doors = [0, 90, 180, 270].map((bearing, k) =>
        openingOf({ id: `door-${k}`, bearingDeg: bearing + turn, height: 1800, width: 900, arch: flush(150) }),
      );
      expect(Math.abs(balance(domeOf({ radius: 1500 }), doors).error)).toBeLessThan(5e-6);
    },
  );

  it('keeps the whole skewback over an opening that stays below it', () => {
    const dome = domeOf({ shape: 'segmental', rise: 2400, stemWall: 1400 });
    const low = balance(dome, [openingOf({ height: 700, width: 600 })]);
    expect(Math.abs(low.error)).toBeLessThan(1e-6);
    expect(low.skewbacks).toBeCloseTo(balance(dome, []).skewbacks, 0);
  });

  it('counts what flat faces leave to render', () => {
    const curved = balance(domeOf(), []);
    const flat = balance(domeOf(), [], 'flat');
    expect(Math.abs(flat.error)).toBeLessThan(1e-6);
    // A chord on the extrados cuts more off than a chord on the intrados adds.
    expect(flat.blocks).toBeLessThan(curved.blocks);
    expect(flat.blocks / curved.blocks).toBeGreaterThan(0.97);
  });
});
