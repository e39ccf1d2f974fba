import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tools } from '../../cli/tools.js';
import { OUTPUT_GROUPS, type OutputGroup } from '../../lib/deliver/groups.js';
import { buildPackage } from '../../lib/deliver/package.js';
import type { House } from '../../lib/description/house.js';
import { clusters } from './clusters.js';
import { houses, roundHouses } from './houses.js';
import { faultsIn } from './sound.js';

/** A long run builds every output of each house; the usual one goes round the groups, a group a house. */
const LONG = process.env.SOAK === 'long';
const SEED = 20261128;
const RUNS = LONG ? 2000 : 150;
/** Solids, drawings and balance of random clusters have tests of their own. */
const FOR_CLUSTERS: readonly OutputGroup[] = ['moulds', 'templates', 'report'];
/** Houses of one test: a long run tells how far it has come. */
const BATCH = LONG ? 20 : 15;

/** One-dome houses, those of round sizes, and clusters, one after the other: the same list for any number of them. */
function listed(): House[] {
  const each = [houses, roundHouses, clusters].map((kind) =>
    fc.sample(fc.noBias(kind), { seed: SEED, numRuns: Math.ceil(RUNS / 3) }),
  );
  return Array.from({ length: RUNS }, (_, i) => each[i % 3]?.[Math.floor(i / 3)] as House);
}

describe(`outputs of ${RUNS} random houses, seed ${SEED}`, () => {
  const all = listed();
  const batches = Array.from({ length: Math.ceil(RUNS / BATCH) }, (_, b) => b * BATCH);

  it.each(batches)(
    'from %i on: each is built, and each file is sound',
    async (from) => {
      for (let i = from; i < Math.min(RUNS, from + BATCH); i++) {
        const groups = i % 3 === 2 ? FOR_CLUSTERS : OUTPUT_GROUPS;
        const group = groups[Math.floor(i / 3) % groups.length] as OutputGroup;
        const { files, checks } = await buildPackage(all[i] as House, tools, LONG ? {} : { only: [group] });
        // Where no mould of the family fits any course there is none to draw, and a check says so.
        if (files.length === 0)
          expect([group, checks.find((c) => c.id === 'mould-fit')?.state]).toEqual(['moulds', 'fails']);
        expect(new Set(files.map((f) => f.path)).size, `house ${i}`).toBe(files.length);
        expect(await faultsIn(files), `house ${i}`).toEqual([]);
        expect(checks.find((c) => c.id === 'masonry-balance')?.state, `house ${i}`).toBe('ok');
      }
    },
    3_600_000,
  );
});
