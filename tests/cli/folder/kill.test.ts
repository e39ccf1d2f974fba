import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Manifest, sha256 } from '../../../cli/folder/manifest.js';
import { inspectFolder, writeFolder } from '../../../cli/folder/write.js';
import { delivery, temporaryFolder } from './helpers.js';

const temporary = temporaryFolder();
const out = () => join(temporary.path, 'out');
const WRITE = pathToFileURL(resolve('dist/cli/folder/write.js')).href;

/** A process that writes `out` and is told to end right before its n-th step in the file system. */
const SCRIPT = `
  import fs from 'node:fs';
  import { syncBuiltinESMExports } from 'node:module';
  const [dir, text, signal, nth] = process.argv.slice(1);
  let steps = 0;
  for (const name of ['writeFileSync', 'mkdirSync', 'linkSync', 'unlinkSync', 'renameSync', 'rmdirSync', 'fsyncSync']) {
    const step = fs[name];
    fs[name] = (...given) => {
      if (++steps === Number(nth)) process.kill(process.pid, signal);
      return step(...given);
    };
  }
  syncBuiltinESMExports();
  const { writeFolder } = await import(${JSON.stringify(WRITE)});
  const bytes = new TextEncoder().encode(text);
  const files = [{ path: 'a/1', bytes }, { path: '2', bytes }];
  await writeFolder(dir, { files, only: null, description: '', version: '1', checks: [] });`;

/** How the process ended: by a signal, or 0 when it had fewer steps. */
function killed(text: string, signal: string, nth: number): NodeJS.Signals | number | null {
  const given = ['--input-type=module', '-e', SCRIPT, out(), text, signal, `${nth}`];
  const { status, signal: by, stderr } = spawnSync(process.execPath, given, { encoding: 'utf8' });
  expect(stderr).toBe('');
  return by ?? status;
}

/** The text of all files of a package, each of which must be what its manifest says. */
function textOf(dir: string): string {
  const { files } = JSON.parse(readFileSync(join(dir, 'manifest.json'), 'utf8')) as Manifest;
  const texts = files.map((entry) => {
    const bytes = readFileSync(join(dir, entry.path));
    expect(sha256(bytes)).toBe(entry.sha256);
    return bytes.toString();
  });
  expect(files).toHaveLength(2);
  expect(new Set(texts).size).toBe(1);
  return texts[0] ?? '';
}

/** Ends one run after another, each `stride` steps later, until one has no step left; tells of each, and how many ended. */
async function atEveryStep(
  stride: number,
  signals: readonly string[],
  after: (before: string, now: string) => Promise<void>,
): Promise<number> {
  await writeFolder(out(), delivery({ 'a/1': 'run 0', '2': 'run 0' }));
  let before = 'run 0';
  for (let run = 1; ; run++) {
    const now = `run ${run}`;
    const signal = signals[run % signals.length] as string;
    const ended = killed(now, signal, run * stride);
    await after(before, now);
    if (ended === 0) return run - 1;
    expect(ended).toBe(signal);
    before = textOf(existsSync(out()) ? out() : join(temporary.path, '.out.old'));
  }
}

describe('a run that is ended before one of its steps in the file system', () => {
  it('any, by SIGKILL, leaves the package before or after it to the next run, and nothing beside', async () => {
    const ended = await atEveryStep(1, ['SIGKILL'], async (before, now) => {
      await inspectFolder(out());
      expect(textOf(out())).toBeOneOf([before, now]);
      expect(readdirSync(temporary.path)).toEqual(['out']);
    });
    expect(ended).toBeGreaterThanOrEqual(20);
  });

  it('by SIGKILL, on what a killed run left, loses no package either', async () => {
    await atEveryStep(2, ['SIGKILL'], async (before, now) => {
      const standing = existsSync(out()) ? out() : join(temporary.path, '.out.old');
      expect(textOf(standing)).toBeOneOf([before, now]);
    });
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });

  it('by Ctrl-C or SIGTERM leaves the package before or after it, and nothing beside', async () => {
    await atEveryStep(2, ['SIGINT', 'SIGTERM'], async (before, now) => {
      expect(textOf(out())).toBeOneOf([before, now]);
      expect(readdirSync(temporary.path)).toEqual(['out']);
    });
  });
});
