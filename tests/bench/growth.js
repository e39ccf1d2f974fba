/** How solids and block table grow with the number of domes in a row. */
import { tools } from '../../dist/cli/tools.js';
import { blockTable, houseFrom, planMasonry } from '../../dist/lib/index.js';
import { layBlocks } from '../../dist/lib/masonry/lay.js';
import { setOutHouse } from '../../dist/lib/setout/house.js';
import { blockSolids } from '../../dist/lib/solids/block-solids.js';
import { houseSolids } from '../../dist/lib/solids/house-solids.js';
import { loadKernel } from '../../dist/lib/solids/kernel.js';

const DOMES = [1, 2, 4, 8, 16];

/** A row of equal domes, joined by passages, each with a door and a window. */
const rowOfDomes = (count) => ({
  format: 1,
  domes: Array.from({ length: count }, (_, k) => ({ id: `d${k}`, at: [6.2 * k, 0], radius: 2.4, 'stem-wall': 0.6 })),
  openings: Array.from({ length: count }, (_, k) => [
    { id: `door-${k}`, in: `d${k}`, bearing: 180, use: 'door', width: 0.9, height: 2.1 },
    { id: `window-${k}`, in: `d${k}`, bearing: 0, use: 'window', width: 0.8, height: 1, sill: 0.8 },
  ]).flat(),
  passages: Array.from({ length: count - 1 }, (_, k) => ({
    id: `way-${k}`,
    between: [`d${k}`, `d${k + 1}`],
    width: 0.9,
    height: 2,
  })),
});

/** Milliseconds of this process's own work, whatever else the machine does: least of some runs. */
export async function timeGrowth() {
  const kernel = await loadKernel(await tools.kernel());
  const rows = [];
  for (const domes of [1, ...DOMES]) {
    const house = houseFrom(rowOfDomes(domes));
    const runs = [];
    for (let run = 0; run < 3; run++) {
      const start = process.cpuUsage();
      const plan = planMasonry(setOutHouse(house));
      const laid = layBlocks(plan.setout);
      const table = blockTable(plan, laid);
      houseSolids(kernel, plan.setout);
      blockSolids(kernel, plan.setout, laid.blocks);
      const { user } = process.cpuUsage(start);
      runs.push({ domes, milliseconds: user / 1000, blocks: table.rows.length });
    }
    rows.push(runs.reduce((a, b) => (b.milliseconds < a.milliseconds ? b : a)));
  }
  // The first only warms up.
  return rows.slice(1);
}
