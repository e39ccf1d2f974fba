import { describe, expect, it } from 'vitest';
import type { House, Passage } from '../../lib/description/house.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const passageOf = (part: Partial<Passage> = {}): Passage => ({
  id: 'link',
  between: ['hall', 'lab'],
  width: 1000,
  height: 2000,
  head: { shape: 'semicircular', rise: 500 },
  ring: 200,
  ...part,
});

const balance = (house: House) => {
  const setout = setOutHouse(house);
  return balanceOf(setout, layBlocks(setout));
};

describe('balance of clusters', () => {
  const hall = domeOf();
  const lab = (distance: number, part: Parameters<typeof domeOf>[0] = {}) =>
    domeOf({ id: 'lab', at: [distance * 0.8, distance * 0.6], radius: 2200, ...part });

  it('a later dome gives way to an earlier one that it abuts', () => {
    const b = balance(houseOf({ domes: [hall, lab(5200)] }));
    const apart = balance(houseOf({ domes: [hall, lab(9000)] }));
    expect(Math.abs(b.error)).toBeLessThan(1e-4);
    expect(b.cutJoints).toBeGreaterThan(0);
    expect(b.envelope).toBeLessThan(apart.envelope);
  });

  it.each(['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical'] as const)(
    'a passage through the common wall of a hall and a %s dome',
    (shape) => {
      const rise = { hemisphere: 2200, segmental: 1500, pointed: 2800, catenary: 2400, elliptical: 1800 }[shape];
      const b = balance(
        houseOf({ domes: [hall, lab(5100, { shape, rise })], passages: [passageOf({ height: 1600 })] }),
      );
      expect(Math.abs(b.error)).toBeLessThan(1e-4);
      expect(b.passages).toBeGreaterThan(0);
    },
  );

  it('a passage between domes that stand apart', () => {
    const b = balance(houseOf({ domes: [hall, lab(6900)], passages: [passageOf()], openings: [openingOf()] }));
    expect(Math.abs(b.error)).toBeLessThan(1e-4);
  });

  it('does not matter which dome a passage names first', () => {
    const one = balance(houseOf({ domes: [hall, lab(5200)], passages: [passageOf()] }));
    const other = balance(houseOf({ domes: [hall, lab(5200)], passages: [passageOf({ between: ['lab', 'hall'] })] }));
    expect(other.passages).toBeCloseTo(one.passages, 0);
    expect(Math.abs(other.error)).toBeLessThan(1e-4);
  });

  it('three domes in a row, the middle one cut on both sides', () => {
    const domes = [
      domeOf({ id: 'a', at: [-5000, 0] }),
      domeOf({ id: 'c', at: [5000, 300] }),
      domeOf({ id: 'b', at: [0, 0], radius: 2400 }),
    ];
    const passages = [
      passageOf({ id: 'west', between: ['a', 'b'], width: 900, head: { shape: 'pointed', rise: 700 } }),
      passageOf({ id: 'east', between: ['b', 'c'], head: { shape: 'flat', rise: 0 } }),
    ];
    expect(Math.abs(balance(houseOf({ domes, passages })).error)).toBeLessThan(1e-4);
  });

  it.each(['hemisphere', 'pointed', 'catenary'] as const)('three %s domes that share ground in the middle', (shape) => {
    const place = { shape, rise: { hemisphere: 3000, pointed: 3600, catenary: 3200 }[shape] };
    const domes = [
      domeOf({ id: 'a', at: [0, 0], ...place }),
      domeOf({ id: 'b', at: [5400, 0], ...place }),
      domeOf({ id: 'c', at: [2700, 4676], ...place }),
    ];
    expect(Math.abs(balance(houseOf({ domes })).error)).toBeLessThan(1e-4);
  });
});
