import { describe, expect, it } from 'vitest';
import type { Head, Opening } from '../../lib/description/house.js';
import type { View } from '../../lib/documents/drawing.js';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { PLAN_HEIGHT, planLevel } from '../../lib/drawings/cut-level.js';
import { planView } from '../../lib/drawings/plan.js';
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
        expect(auditView(planView(setOutHouse(house), { height: PLAN_HEIGHT }))).toEqual([]);
      });
    }
  }

  it('the springing of a dome, of every kind of springing', () => {
    for (const shape of ['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical'] as const) {
      const rise = shape === 'pointed' ? 4000 : shape === 'hemisphere' ? 3000 : 2000;
      const house = houseOf({ domes: [domeOf({ shape, rise, stemWall: PLAN_HEIGHT })], openings: [openingOf()] });
      expect(auditView(planView(setOutHouse(house), { height: PLAN_HEIGHT })), shape).toEqual([]);
    }
  });
});

describe('the level at which a plan is cut', () => {
  const planOf = (...openings: Opening[]) => {
    const setout = setOutHouse(houseOf({ domes: [domeOf({ stemWall: 600 })], openings }));
    return { setout, level: planLevel(setout), view: planView(setout) };
  };
  const window = (sill: number, height: number, more: Partial<Opening> = {}) =>
    openingOf({ id: 'eye', use: 'window', bearingDeg: 30, width: 600, sill, height, ...more });
  const sides = (view: View, layer: string, half = 300) => {
    const [x, y] = [Math.sin(Math.PI / 6), Math.cos(Math.PI / 6)];
    const lines = view.primitives.flatMap((p) => (p.kind === 'path' && p.layer === layer ? [...p.segments] : []));
    return lines.filter(
      (s) =>
        s.kind === 'line' &&
        [s.from, s.to].every((q) => Math.abs(Math.abs(q[0] * y - q[1] * x) - half) < 1e-6 && q[0] * x + q[1] * y > 0),
    ).length;
  };

  it('goes some way below a head that has its crown there, and the plan tells the level it is cut at', () => {
    for (const head of HEADS) {
      const { setout, level, view } = planOf(window(500, PLAN_HEIGHT - 500, { head }));
      const [arch] = setout.arches;
      expect(PLAN_HEIGHT - level).toBeGreaterThanOrEqual(50);
      expect(PLAN_HEIGHT - level).toBeLessThanOrEqual(200);
      expect(arch?.clearHalfAt(level)).toBeGreaterThanOrEqual(150);
      expect(sides(view, 'cut', arch?.clearHalfAt(level)), head.shape).toBe(2);
      const words = view.primitives.map((p) => (p.kind === 'text' ? p.text : '')).join(' ');
      expect(words).toContain(`Cut ${level} above finished floor`);
    }
  });

  it('is the usual one where nothing gains by another', () => {
    expect(planOf(window(900, 1000)).level).toBe(PLAN_HEIGHT);
    expect(planOf(window(1500, 400)).level).toBe(PLAN_HEIGHT);
  });

  it('shows what lies wholly above it as overhead, and what lies wholly below it as hidden', () => {
    expect(sides(planOf(window(1500, 400)).view, 'overhead')).toBe(2);
    expect(sides(planOf(window(300, 500)).view, 'hidden')).toBe(2);
  });
});
