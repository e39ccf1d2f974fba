/** What whole commands take, each in a process of its own from its start to its end. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';

const MAIN = 'dist/cli/main.js';
const RUNS = 3;

/** Tells the memory that a process took, when it ends. */
const WITNESS = `data:text/javascript,${encodeURIComponent(
  "process.on('exit', () => process.stderr.write('\\nmemory ' + process.resourceUsage().maxRSS));",
)}`;

/** Median seconds and the most memory of some runs. */
export function timeCommands() {
  const folder = mkdtempSync(join(tmpdir(), 'ringcourse-bench-'));
  const out = join(folder, 'out');
  const commands = [
    ['--help'],
    ['check', 'samples/garden-studio.yaml'],
    ['check', 'samples/family-house.yaml'],
    ['build', 'samples/garden-studio.yaml'],
    ['build', 'samples/family-house.yaml', '--only', 'drawings'],
    ['build', 'samples/family-house.yaml'],
  ];
  try {
    return commands.map((args) => {
      const runs = Array.from({ length: RUNS }, () => {
        rmSync(out, { recursive: true, force: true });
        const start = performance.now();
        const into = args[0] === 'build' ? ['-o', out] : [];
        const { stderr } = spawnSync(process.execPath, ['--import', WITNESS, MAIN, ...args, ...into], {
          encoding: 'utf8',
        });
        const memory = Number(/\nmemory (\d+)$/.exec(stderr)?.[1]) / 1024;
        return { seconds: (performance.now() - start) / 1000, memory };
      });
      const seconds = runs.map((run) => run.seconds).sort((a, b) => a - b)[Math.floor(RUNS / 2)];
      return { command: args.join(' '), seconds, memoryMb: Math.max(...runs.map((run) => run.memory)) };
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
