import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { expect } from 'vitest';

export const MAIN = resolve('dist/cli/main.js');

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built program in `cwd`; whatever it prints must hold no stack trace. */
export function ringcourse(cwd: string, ...args: readonly string[]): Ran {
  const { RINGCOURSE_DEBUG: _, NO_COLOR: __, FORCE_COLOR: ___, ...env } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [MAIN, ...args], {
    cwd,
    env,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    timeout: 110_000,
  });
  expect(stdout + stderr).not.toMatch(/^\s+at .*:\d+:\d+\)?$/m);
  expect(stdout + stderr).not.toContain('\u001b');
  return { code: status, out: stdout, err: stderr };
}
