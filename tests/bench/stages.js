/**
 * Times the stages of the walk on every sample, each sample in a process of its own: the first run as a user meets
 * it, with the memory it took, then the median of some more. `elevations` is the four of them with all joints of their
 * blocks. Then how solids and block table grow with the number of domes, what whole commands take, and the solids of one
 * dome beside the bare kernel and @jscad/modeling. Prints tables, beside each figure how it changed since the last run,
 * and writes `out/bench.json`. Run `npm run bench`; a sample's path as argument times that one alone, `growth`,
 * `commands` and `baselines` these alone.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { tools } from '../../dist/cli/tools.js';
import { elevationDraft, SIDES } from '../../dist/lib/drawings/elevation.js';
import { houseViews } from '../../dist/lib/drawings/house-views.js';
import { buildPackage, planMasonry, readDescription } from '../../dist/lib/index.js';
import { layBlocks } from '../../dist/lib/masonry/lay.js';
import { setOutHouse } from '../../dist/lib/setout/house.js';
import { blockSolids } from '../../dist/lib/solids/block-solids.js';
import { houseSolids } from '../../dist/lib/solids/house-solids.js';
import { loadKernel } from '../../dist/lib/solids/kernel.js';
import { timeBaselines } from './baselines.js';
import { timeCommands } from './commands.js';
import { timeGrowth } from './growth.js';

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

const LAST = 'out/bench.json';
const last = existsSync(LAST) ? JSON.parse(readFileSync(LAST, 'utf8')) : {};

/** A figure, and how it changed since the last run where that is more than a tenth. */
function figure(value, before) {
  const change = before > 0 ? value / before - 1 : 0;
  const told = value.toFixed(value < 100 ? 1 : 0);
  return Math.abs(change) > 0.1 ? `${told} (${change > 0 ? '+' : ''}${(100 * change).toFixed(0)} %)` : told;
}

const sampleRows = (results) => [
  ['sample', ...STAGES.map((stage) => `${stage} ms`), 'memory MB'],
  ...results.map(({ sample, milliseconds, memoryMb }) => {
    const before = last.samples?.find((one) => one.sample === sample);
    const stages = STAGES.map((stage) => figure(milliseconds[stage], before?.milliseconds[stage]));
    return [sample, ...stages, figure(memoryMb, before?.memoryMb)];
  }),
];

const growthRows = (growth) => [
  ['domes', 'blocks', 'solids and table ms', 'ms a dome'],
  ...growth.map(({ domes, blocks, milliseconds }) => [
    String(domes),
    String(blocks),
    figure(milliseconds, last.growth?.find((one) => one.domes === domes)?.milliseconds),
    (milliseconds / domes).toFixed(0),
  ]),
];

const commandRows = (commands) => [
  ['command', 'seconds', 'memory MB'],
  ...commands.map(({ command, seconds, memoryMb }) => {
    const before = last.commands?.find((one) => one.command === command);
    return [command, figure(seconds, before?.seconds), figure(memoryMb, before?.memoryMb)];
  }),
];

const baselineRows = ({ surface, count, ours, bare, jscad }) => [
  [`solids of one dome, facets within ${surface} mm`, 'ms', 'times ours'],
  ['ours, with names, checks and meshes', figure(ours, last.baselines?.ours), '1'],
  [`the same ${count} booleans by the bare kernel`, figure(bare, last.baselines?.bare), (bare / ours).toFixed(2)],
  ['the same by @jscad/modeling', figure(jscad, last.baselines?.jscad), (jscad / ours).toFixed(0)],
];

function print(rows) {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  for (const row of rows) {
    console.log(row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  '));
  }
  console.log();
}

async function timeOneDome() {
  const path = 'samples/garden-studio.yaml';
  const { setout } = planMasonry(setOutHouse(readDescription(readFileSync(path, 'utf8'), path)));
  return timeBaselines(await loadKernel(await tools.kernel()), setout, 2);
}

const [path] = process.argv.slice(2);
if (path === 'growth') {
  print(growthRows(await timeGrowth()));
} else if (path === 'commands') {
  print(commandRows(timeCommands()));
} else if (path === 'baselines') {
  print(baselineRows(await timeOneDome()));
} else if (path !== undefined) {
  console.log(JSON.stringify(await timeSample(path)));
} else {
  const names = readdirSync('samples').filter((name) => /^[a-z-]+\.yaml$/.test(name));
  const samples = names.map((name) => {
    const self = fileURLToPath(import.meta.url);
    return JSON.parse(execFileSync(process.execPath, [self, `samples/${name}`], { encoding: 'utf8' }));
  });
  print(sampleRows(samples));
  const growth = await timeGrowth();
  print(growthRows(growth));
  const commands = timeCommands();
  print(commandRows(commands));
  const baselines = await timeOneDome();
  print(baselineRows(baselines));
  mkdirSync('out', { recursive: true });
  writeFileSync(LAST, `${JSON.stringify({ samples, growth, commands, baselines }, null, 2)}\n`);
}
