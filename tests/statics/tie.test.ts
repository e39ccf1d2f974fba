import { describe, expect, it } from 'vitest';
import type { House, Passage } from '../../lib/description/house.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { placeTie } from '../../lib/statics/tie.js';
import { crossedAt, cutLevel } from '../../lib/statics/voids.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const TIE = { level: 'above openings', bars: 2, diameter: 10, yieldMpa: 500, bondMpa: null, lap: null } as const;
const placed = (part: Partial<House>) => {
  const setout = setOutHouse(houseOf({ tie: TIE, ...part }));
  const [dome] = setout.domes;
  if (!dome) throw new Error('no dome');
  const cutZ = cutLevel(setout, dome);
  return { setout, dome, cutZ, tie: placeTie(setout, dome, cutZ) };
};

describe('a tie above openings', () => {
  it('lies in the lowest bed over all that cuts the dome, in the middle of the wall', () => {
    // In the middle of the wall the quarter is 4909 mm, 20 courses: after nine of them the bed is 40.5 degrees up.
    const bed = (k: number) => (k * Math.PI) / 40;
    const { cutZ, tie } = placed({ openings: [openingOf({ height: 2200 })] });
    expect(cutZ).toBe(2400);
    expect(600 + 3000 * Math.sin(bed(8))).toBeLessThan(2400);
    expect(tie?.z).toBeCloseTo(600 + 3125 * Math.sin(bed(9)), 6);
    expect(tie?.crosses).toEqual([]);
    // 2 · π 10² / 4 · 500 / 1.15.
    expect(tie?.strength).toBeCloseTo((50 * Math.PI * 500) / 1.15 / 1000, 9);
  });

  it('finds no bed where openings reach the crown', () => {
    expect(placed({ openings: [openingOf({ height: 3500 })] }).tie).toBeNull();
  });
});

describe('a hoop', () => {
  it('crosses an opening from its sill to the top of its clear height', () => {
    const bay = openingOf({ id: 'bay', use: 'window', sill: 900, height: 1100, width: 1000 });
    const { setout, dome } = placed({ openings: [bay] });
    const at = (z: number) => crossedAt(setout, dome, z);
    expect([899, 901, 1999, 2001].map(at)).toEqual([[], ['bay'], ['bay'], []]);
  });

  it('is cut by a passage to the top of its ring', () => {
    const head = { shape: 'semicircular', rise: 500 } as const;
    const link: Passage = { id: 'link', between: ['hall', 'lab'], width: 1000, height: 2000, head, ring: 200 };
    const domes = [domeOf(), domeOf({ id: 'lab', at: [9000, 0] })];
    expect(placed({ domes, passages: [link] }).cutZ).toBeCloseTo(2200, 9);
  });
});
