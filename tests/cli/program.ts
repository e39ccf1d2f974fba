import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { expect } from 'vitest';

export const MAIN = resolve('dist/cli/main.js');

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The second version of Node that `tests/tools/readers.sh` installs. */
export const OTHER_NODE = resolve('tests/tools/other-node/node_modules/other-node/bin/node');

/** Runs the built program in `cwd`; whatever it prints must hold no stack trace. */
export const ringcourse = (cwd: string, ...args: readonly string[]): Ran => runBy(process.execPath, cwd, args);

/** The same by a version of Node of one's choice. */
export function runBy(node: string, cwd: string, args: readonly string[]): Ran {
  const { RINGCOURSE_DEBUG: _, NO_COLOR: __, FORCE_COLOR: ___, ...env } = process.env;
  const { status, stdout, stderr, error } = spawnSync(node, [MAIN, ...args], {
    cwd,
    env,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    timeout: 110_000,
  });
  if (error)
    throw new Error(`${node} can't be run: \`bash tests/tools/readers.sh\` installs what the tests run.`, {
      cause: error,
    });
  expect(stdout + stderr).not.toMatch(/^\s+at .*:\d+:\d+\)?$/m);
  expect(stdout + stderr).not.toContain('\u001b');
  return { code: status, out: stdout, err: stderr };
}
