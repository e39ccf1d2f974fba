import fc from 'fast-check';
import { expect, it } from 'vitest';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import { nodeKernel } from '../tools/kernel.js';
import { crowdedHouses } from './crowded.js';

const SEED = 20261129;
const RUNS = 12;

it(`${RUNS} small domes full of openings, seed ${SEED}: the masonry balances, solids are closed`, async () => {
  const kernel = await nodeKernel();
  fc.assert(
    fc.property(fc.noBias(crowdedHouses), (house) => {
      const setout = setOutHouse(house);
      expect(Math.abs(balanceOf(setout, layBlocks(setout)).error)).toBeLessThan(5e-6);
      expect(auditMesh(houseSolids(kernel, setout, { surface: 8 }).whole)).toEqual([]);
    }),
    { seed: SEED, numRuns: RUNS },
  );
});
