/**
 * Times the stages of the walk on every sample, each sample in a process of its own: the first run as a user meets
 * it, with the memory it took, then the median of some more. `elevations` is the four of them with all joints of their
 * blocks. Then how solids and block table grow with the number of domes. Prints tables and writes `out/bench.json`.
 * Run `npm run bench`; a sample's path as argument times that one alone, `growth` the growth alone.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { tools } from '../../dist/cli/tools.js';
import { elevationDraft, SIDES } from '../../dist/lib/drawings/elevation.js';
import { houseViews } from '../../dist/lib/drawings/house-views.js';
import { blockTable, buildPackage, houseFrom, planMasonry, readDescription } from '../../dist/lib/index.js';
import { layBlocks } from '../../dist/lib/masonry/lay.js';
import { setOutHouse } from '../../dist/lib/setout/house.js';
import { blockSolids } from '../../dist/lib/solids/block-solids.js';
import { houseSolids } from '../../dist/lib/solids/house-solids.js';
import { loadKernel } from '../../dist/lib/solids/kernel.js';

const RUNS = 5;
const STAGES = ['read', 'setout', 'blocks', 'elevations', 'drawings', 'solids', 'whole', 'first'];

/** Adds the milliseconds that `work` takes to `times[stage]`. */
async function timed(times, stage, work) {
  const start = performance.now();
  const result = await work();
  times[stage] = [...(times[stage] ?? []), performance.now() - start];
  return result;
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

async function timeSample(path) {
  const text = readFileSync(path, 'utf8');
  const times = {};
  await timed(times, 'first', () => buildPackage(readDescription(text, path), tools));
  const memoryMb = process.resourceUsage().maxRSS / 1024;
  const kernel = await loadKernel(await tools.kernel());
  for (let run = 0; run < RUNS; run++) {
    const house = await timed(times, 'read', () => readDescription(text, path));
    const setout = await timed(times, 'setout', () => setOutHouse(house));
    const laid = await timed(times, 'blocks', () => layBlocks(setout));
    // A copy, since what a house's views share is found once for each house.
    await timed(times, 'elevations', () => SIDES.map((side) => elevationDraft({ ...setout }, side).draw(50)));
    await timed(times, 'drawings', () => houseViews(setout));
    await timed(times, 'solids', () => [houseSolids(kernel, setout), blockSolids(kernel, setout, laid.blocks)]);
    await timed(times, 'whole', () => buildPackage(readDescription(text, path), tools));
  }
  const milliseconds = Object.fromEntries(STAGES.map((stage) => [stage, median(times[stage])]));
  return { sample: basename(path, '.yaml'), milliseconds, memoryMb };
}

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
async function timeGrowth() {
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

const growthRows = (growth) => [
  ['domes', 'blocks', 'solids and table ms', 'ms a dome'],
  ...growth.map(({ domes, blocks, milliseconds }) => [
    String(domes),
    String(blocks),
    milliseconds.toFixed(0),
    (milliseconds / domes).toFixed(0),
  ]),
];

const sampleRows = (results) => [
  ['sample', ...STAGES.map((stage) => `${stage} ms`), 'memory MB'],
  ...results.map(({ sample, milliseconds, memoryMb }) => [
    sample,
    ...STAGES.map((stage) => milliseconds[stage].toFixed(1)),
    memoryMb.toFixed(0),
  ]),
];

function print(rows) {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  for (const row of rows) {
    console.log(row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  '));
  }
}

const [path] = process.argv.slice(2);
if (path === 'growth') {
  print(growthRows(await timeGrowth()));
} else if (path !== undefined) {
  console.log(JSON.stringify(await timeSample(path)));
} else {
  const samples = readdirSync('samples').filter((name) => /^[a-z-]+\.yaml$/.test(name));
  const results = samples.map((name) => {
    const self = fileURLToPath(import.meta.url);
    return JSON.parse(execFileSync(process.execPath, [self, `samples/${name}`], { encoding: 'utf8' }));
  });
  print(sampleRows(results));
  const growth = await timeGrowth();
  print(growthRows(growth));
  mkdirSync('out', { recursive: true });
  writeFileSync('out/bench.json', `${JSON.stringify({ samples: results, growth }, null, 2)}\n`);
}
