import { readFileSync } from 'node:fs';
import type { House } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { type MasonryPlan, mouldNames, planMasonry } from '../../lib/masonry/plan.js';
import type { BuiltHouse } from '../../lib/models/page-scene.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import { nodeKernel } from './kernel.js';

/** A house with its solids, as the model page is made from it. */
export async function builtOf(house: House): Promise<BuiltHouse & { readonly plan: MasonryPlan }> {
  const kernel = await nodeKernel();
  const plan = planMasonry(setOutHouse(house));
  const { setout } = plan;
  const { blocks } = layBlocks(setout);
  return {
    plan,
    setout,
    blocks,
    solids: blockSolids(kernel, setout, blocks),
    parts: houseSolids(kernel, setout).parts,
    mouldOf: mouldNames(plan),
  };
}

export const sampleHouse = (name: string): House =>
  readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), `${name}.yaml`);
