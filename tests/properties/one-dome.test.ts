import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler } from '../../lib/documents/mesh-measure.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { nodeKernel } from '../tools/kernel.js';
import { attempts, HEADS, houses, SHAPES } from './houses.js';

const SEED = 20260504;
const RUNS = 200;

/** Handles of the whole house: first Betti number of the graph of outside and room, openings as edges. */
function predictedHandles(house: House): number {
  const through = house.openings.filter((o) => o.use !== 'niche').length + (house.domes[0]?.oculus ? 1 : 0);
  const closedBelow = house.slab !== null;
  // Without slab the base is an edge; without footing too, a door that reaches it is a notch and counts 0.
  const doors = house.openings.filter((o) => o.use !== 'niche' && o.sill === 0).length;
  if (closedBelow) return Math.max(0, through - 1);
  return house.footing ? through : through - doors;
}

describe('random one-dome houses', () => {
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await nodeKernel();
  });

  it('the generator seldom makes a house that the rules refuse', () => {
    const made = fc.sample(fc.noBias(attempts), { seed: SEED, numRuns: 300 });
    expect(made.filter((h) => h !== null).length / made.length).toBeGreaterThan(0.6);
  });

  it('the generator spreads sizes over their ranges', () => {
    const radii = fc.sample(fc.noBias(houses), { seed: SEED, numRuns: 200 }).map((h) => h.domes[0]?.radius ?? 0);
    // Radii run from 1600 to 4200: each quarter of that range holds its share of the houses.
    for (let quarter = 0; quarter < 4; quarter++) {
      const from = 1600 + quarter * 650;
      expect(radii.filter((r) => r >= from && r < from + 650).length, `from ${from}`).toBeGreaterThan(20);
    }
  });

  it(`${RUNS} houses, seed ${SEED}: all solids closed, handles as predicted, the masonry balances`, () => {
    const seen = new Map<string, number>();
    const count = (key: string) => seen.set(key, (seen.get(key) ?? 0) + 1);
    fc.assert(
      fc.property(fc.noBias(houses), (house) => {
        count(house.domes[0]?.profile.shape as string);
        for (const shape of new Set(house.openings.map((o) => o.head.shape)))
          count(shape === 'segmental' || shape === 'pointed' ? `${shape} head` : shape);
        const setout = setOutHouse(house);
        const laid = layBlocks(setout);
        expect(Math.abs(balanceOf(setout, laid).error)).toBeLessThan(house.openings.length > 0 ? 1e-4 : 1e-6);
        const { whole, parts } = houseSolids(kernel, setout, { surface: 4 });
        const meshes = blockSolids(kernel, setout, laid.blocks, { surface: 4 });
        for (const mesh of [whole, ...parts, ...meshes]) expect(auditMesh(mesh)).toEqual([]);
        for (const mesh of meshes) expect(meshEuler(mesh)).toHaveLength(1);
        const pieces = meshEuler(whole);
        expect(pieces.length).toBe(1 + predictedVoids(house));
        expect(pieces.reduce((sum, piece) => sum + 1 - piece.euler / 2, 0)).toBe(predictedHandles(house));
      }),
      { seed: SEED, numRuns: RUNS, endOnFailure: true },
    );
    for (const shape of SHAPES) expect(seen.get(shape) ?? 0, shape).toBeGreaterThanOrEqual(RUNS * 0.15);
    for (const head of HEADS) {
      const key = head === 'segmental' || head === 'pointed' ? `${head} head` : head;
      expect(seen.get(key) ?? 0, key).toBeGreaterThanOrEqual(RUNS * 0.15);
    }
  }, 600_000);
});

/** A room with no opening at all is a second closed surface inside the solid. */
function predictedVoids(house: House): number {
  const open = house.openings.some((o) => o.use !== 'niche') || house.domes[0]?.oculus || !house.slab;
  return open ? 0 : 1;
}
