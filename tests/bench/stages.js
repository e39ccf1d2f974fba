/**
 * Times the stages of the walk on every sample, each sample in a process of its own: the first run as a user meets
 * it, with the memory it took, then the median of some more. Prints a table and writes `out/bench.json`.
 * Run `npm run bench`; a sample's path as argument times that one alone.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { tools } from '../../dist/cli/tools.js';
import { houseViews } from '../../dist/lib/drawings/house-views.js';
import { buildPackage, readDescription } from '../../dist/lib/index.js';
import { layBlocks } from '../../dist/lib/masonry/lay.js';
import { setOutHouse } from '../../dist/lib/setout/house.js';
import { blockSolids } from '../../dist/lib/solids/block-solids.js';
import { houseSolids } from '../../dist/lib/solids/house-solids.js';
import { loadKernel } from '../../dist/lib/solids/kernel.js';

const RUNS = 5;
const STAGES = ['read', 'setout', 'blocks', 'drawings', 'solids', 'whole', 'first'];

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
    await timed(times, 'drawings', () => houseViews(setout));
    await timed(times, 'solids', () => [houseSolids(kernel, setout), blockSolids(kernel, setout, laid.blocks)]);
    await timed(times, 'whole', () => buildPackage(readDescription(text, path), tools));
  }
  const milliseconds = Object.fromEntries(STAGES.map((stage) => [stage, median(times[stage])]));
  return { sample: basename(path, '.yaml'), milliseconds, memoryMb };
}

function print(results) {
  const rows = [
    ['sample', ...STAGES.map((stage) => `${stage} ms`), 'memory MB'],
    ...results.map(({ sample, milliseconds, memoryMb }) => [
      sample,
      ...STAGES.map((stage) => milliseconds[stage].toFixed(1)),
      memoryMb.toFixed(0),
    ]),
  ];
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  for (const row of rows) {
    console.log(row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  '));
  }
}

const [path] = process.argv.slice(2);
if (path !== undefined) {
  console.log(JSON.stringify(await timeSample(path)));
} else {
  const samples = readdirSync('samples').filter((name) => /^[a-z-]+\.yaml$/.test(name));
  const results = samples.map((name) => {
    const self = fileURLToPath(import.meta.url);
    return JSON.parse(execFileSync(process.execPath, [self, `samples/${name}`], { encoding: 'utf8' }));
  });
  print(results);
  mkdirSync('out', { recursive: true });
  writeFileSync('out/bench.json', `${JSON.stringify(results, null, 2)}\n`);
}
