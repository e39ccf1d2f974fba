import { describe, expect, it } from 'vitest';
import type { Partition } from '../../lib/description/house.js';
import { partitionCuts, partitionPlans, partitionWords } from '../../lib/drawings/partitions.js';
import { sectionPlane } from '../../lib/drawings/section-plane.js';
import { loopsArea } from '../../lib/math/curves.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { partitionsOf } from '../../lib/setout/partition.js';
import { partitionArea } from '../../lib/setout/partition-face.js';
import { domeOf, houseOf } from '../tools/house.js';

const wall = (part: Partial<Partition>): Partition => ({
  in: 'hall',
  from: [-1500, 0],
  to: [1500, 0],
  thickness: 100,
  height: 2000,
  door: null,
  ...part,
});
const set = (partitions: readonly Partition[], dome = domeOf()) =>
  setOutHouse(houseOf({ domes: [dome], openings: [], partitions }));
/** Volumes, mm³: what is built of each. */
const built = (partitions: readonly Partition[], dome = domeOf()) => {
  const house = set(partitions, dome);
  return partitionsOf(house).map((w) => partitionArea(house, w) * w.partition.thickness);
};

describe('partitions that run into each other', () => {
  it('count what they share once, in closed form: X, oblique X, T into the body from both orders, T at the face, L', () => {
    const one = wall({});
    const alone = 3000 * 100 * 2000;
    const close = (got: readonly number[], wanted: readonly number[]) =>
      wanted.forEach((v, i) => {
        expect((got[i] as number) / v).toBeCloseTo(1, 9);
      });
    // X: a square of 100 by 150.
    const cross = wall({ from: [200, -1000], to: [200, 1200], thickness: 150 });
    close(built([one, cross]), [alone, (2200 * 150 - 100 * 150) * 2000]);
    close(built([cross, one]), [2200 * 150 * 2000, alone - 100 * 150 * 2000]);
    // At 30 degrees the common part is a parallelogram of 100 by 150 / sin 30°.
    const c = Math.cos(Math.PI / 6);
    const slant = wall({ from: [-1000 * c, -500], to: [1000 * c, 500], thickness: 150 });
    close(built([one, slant]), [alone, (2000 * 150 - 100 * 300) * 2000]);
    // The lower of two is what they share.
    close(built([one, { ...cross, height: 1200 }]), [alone, (2200 - 100) * 150 * 1200]);
    close(built([{ ...one, height: 1200 }, cross]), [alone * 0.6, 2200 * 150 * 2000 - 100 * 150 * 1200]);
    // T up to the other's centre line, whichever is written first.
    const tee = wall({ from: [0, 0], to: [0, 1000] });
    close(built([one, tee]), [alone, (1000 - 50) * 100 * 2000]);
    close(built([tee, one]), [1000 * 100 * 2000, alone - 50 * 100 * 2000]);
    // T at the face shares nothing.
    const flush = wall({ from: [0, 50], to: [0, 1000] });
    close(built([one, flush]), [alone, 950 * 100 * 2000]);
    expect(partitionWords(set([one, flush]), 'metric').join(' ')).not.toContain('lower number');
    expect(partitionWords(set([one, tee]), 'metric').join(' ')).toContain('lower number goes through');
    // L of two centre lines that end in one point: a quarter of the corner.
    close(built([one, wall({ from: [1500, 0], to: [1500, 1000] })]), [alone, (1000 * 100 - 50 * 50) * 2000]);
    // A third through the crossing of two takes out only what is left to it: three of 100 through one point, the third
    // along the bisector, by polygons: its common part with each is 100 by 100 / sin 45°, and both share a square of
    // side 100 of which it covers all but two corners of legs 100 − 50√2 each.
    const third = wall({ from: [-1000, -1000], to: [1000, 1000] });
    const upright = wall({ from: [0, -1500], to: [0, 1500] });
    const leg = 100 - 50 * Math.SQRT2;
    const both = 100 * 100 - leg * leg;
    const taken = 2 * 100 * 100 * Math.SQRT2 - both;
    close(built([one, upright, third]), [alone, alone - 100 * 100 * 2000, (2000 * Math.SQRT2 * 100 - taken) * 2000]);
  });

  it('share what the roof leaves of them: by very many columns', () => {
    const dome = domeOf({ radius: 3000, stemWall: 600 });
    const [a, b] = [
      wall({ from: [-2900, 400], to: [2700, 900], height: null, thickness: 120 }),
      wall({ from: [2400, -200], to: [2000, 1500], height: 2400, thickness: 200 }),
    ];
    const house = set([a, b], dome);
    const [one, other] = partitionsOf(house);
    if (!one || !other) throw new Error('two partitions');
    const n = 1500;
    let sum = 0;
    for (let i = 0; i < n; i++)
      for (let k = 0; k < n; k++) {
        const [x, y] = [1800 + ((i + 0.5) * 800) / n, 400 + ((k + 0.5) * 800) / n];
        const inside = [one, other].every(({ partition: p, along, length }) => {
          const [dx, dy] = [x - p.from[0], y - p.from[1]];
          const t = dx * along[0] + dy * along[1];
          return t > 0 && t < length && Math.abs(along[0] * dy - along[1] * dx) < p.thickness / 2;
        });
        const r = Math.hypot(x, y);
        const roof = r < 3000 ? 600 + Math.sqrt(3000 ** 2 - r * r) : 0;
        if (inside) sum += Math.min(2400, roof) * (800 / n) ** 2;
      }
    const [, alone] = [built([a], dome), built([b], dome)];
    expect(sum).toBeGreaterThan(1e7);
    expect(((alone[0] as number) - (built([a, b], dome)[1] as number)) / sum).toBeCloseTo(1, 3);
  });

  it('are drawn as they are built: no hatch lies on another, on plan and in a section', () => {
    const hatched = (primitives: readonly { kind: string }[]) =>
      primitives.reduce(
        (sum, p) => sum + ('loops' in p ? Math.abs(loopsArea(p.loops as Parameters<typeof loopsArea>[0])) : 0),
        0,
      );
    const low = wall({ from: [0, -1000], to: [0, 1000], height: 1600 });
    for (const pair of [
      [wall({}), low],
      [low, wall({})],
    ])
      expect(hatched(partitionPlans(set(pair), 1200))).toBeCloseTo(3000 * 100 + 2000 * 100 - 100 * 100, 3);
    // A low one isn't seen under one that is cut.
    const seen = partitionPlans(set([{ ...low, height: 900 }, wall({})]), 1200);
    expect(hatched(seen)).toBeCloseTo(3000 * 100, 3);
    const loops = seen.flatMap((p) => (p.kind === 'path' && p.layer === 'visible' ? [p] : []));
    expect(loops).toHaveLength(2);
    // Cut along the middle of the first, the lower: the second, higher, begins on its top.
    const house = set([low, wall({})]);
    const plane = sectionPlane(house, { bearingDeg: 0 });
    const cuts = partitionCuts(house, plane, [-4000, 4000]);
    expect(hatched(cuts)).toBeCloseTo(2000 * 1600 + 100 * 400, -2);
  });
});
