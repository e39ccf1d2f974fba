import { describe, expect, it } from 'vitest';
import type { Head, Opening } from '../../lib/description/house.js';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { PLAN_HEIGHT, planView } from '../../lib/drawings/plan.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const HEADS: readonly Head[] = [
  { shape: 'semicircular', rise: 300 },
  { shape: 'segmental', rise: 150 },
  { shape: 'pointed', rise: 500 },
  { shape: 'flat', rise: 0 },
];
const FACES: readonly Opening['arch']['face'][] = ['flush', 300];
const RING = 150;

/** Sill and height that bring one level of the opening to the plan's cut. */
const places = (rise: number) => ({
  crown: { sill: 500, height: PLAN_HEIGHT - 500 },
  sill: { sill: PLAN_HEIGHT, height: 700 },
  springing: { sill: 500, height: PLAN_HEIGHT - 500 + rise },
  'ring top': { sill: 400, height: PLAN_HEIGHT - 400 - RING },
});

describe('a plan whose cut only touches something', () => {
  for (const head of HEADS) {
    for (const [place, size] of Object.entries(places(head.rise))) {
      it.each(FACES)(`the ${place} of a ${head.shape} head, face %s, as window and as niche`, (face) => {
        const arch = { ring: RING, face, madeAs: 'cast' as const, voussoirs: null };
        const window = openingOf({ id: 'eye', use: 'window', bearingDeg: 30, width: 600, head, arch, ...size });
        const niche = openingOf({ ...window, id: 'shelf', use: 'niche', bearingDeg: 200, depth: 150 });
        const house = houseOf({ domes: [domeOf({ stemWall: 600 })], openings: [window, niche] });
        expect(auditView(planView(setOutHouse(house)))).toEqual([]);
      });
    }
  }

  it('the springing of a dome, of every kind of springing', () => {
    for (const shape of ['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical'] as const) {
      const rise = shape === 'pointed' ? 4000 : shape === 'hemisphere' ? 3000 : 2000;
      const house = houseOf({ domes: [domeOf({ shape, rise, stemWall: PLAN_HEIGHT })], openings: [openingOf()] });
      expect(auditView(planView(setOutHouse(house))), shape).toEqual([]);
    }
  });
});
