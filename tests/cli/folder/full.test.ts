import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { writeFolder } from '../../../cli/folder/write.js';
import { MAIN } from '../program.js';
import { delivery, temporaryFolder, tree } from './helpers.js';

const temporary = temporaryFolder();
const WRITE = pathToFileURL(resolve('dist/cli/folder/write.js')).href;

/** Runs Node where no file may grow past a kilobyte: as on a full disk, the first of a file is written and the rest not. */
function cramped(...args: readonly string[]) {
  const line = `trap '' XFSZ; ulimit -f 1; exec "$0" "$@"`;
  const { status, stderr } = spawnSync('bash', ['-c', line, process.execPath, ...args], {
    cwd: temporary.path,
    encoding: 'utf8',
  });
  return { status, stderr };
}

describe('where the disk ends in the middle of a file', () => {
  it('a package leaves the one before it, and nothing beside', async () => {
    const out = join(temporary.path, 'out');
    await writeFolder(out, delivery({ 'a/1': 'first' }));
    const before = tree(temporary.path);
    const script = `
      import { writeFolder } from ${JSON.stringify(WRITE)};
      const files = [{ path: 'a/1', bytes: new Uint8Array(9) }, { path: 'b/2', bytes: new Uint8Array(4000) }];
      try {
        await writeFolder('out', { files, only: null, description: '', version: '1', checks: [] });
      } catch (error) {
        process.exitCode = error.name === 'FileError' ? 5 : 1;
      }`;
    expect(cramped('--input-type=module', '-e', script)).toEqual({ status: 5, stderr: '' });
    expect(tree(temporary.path)).toEqual(before);
  });

  it('a first description leaves no part of it, and with --force the file before it', () => {
    const told = /^ringcourse: house\.yaml can't be written: .+\.\n {4}.+\.\n$/;
    const first = cramped(MAIN, 'new', 'house.yaml', '--quiet');
    expect(first).toEqual({ status: 5, stderr: expect.stringMatching(told) });
    expect(readdirSync(temporary.path)).toEqual([]);

    writeFileSync(join(temporary.path, 'house.yaml'), 'mine');
    const over = cramped(MAIN, 'new', 'house.yaml', '--quiet', '--force');
    expect(over).toEqual({ status: 5, stderr: expect.stringMatching(told) });
    expect(tree(temporary.path)).toEqual({ 'house.yaml': 'mine' });
  });
});

describe('a picture', () => {
  it('costs nobody a file whose name ends as that of a draft', () => {
    mkdirSync(join(temporary.path, 'house.png'));
    writeFileSync(join(temporary.path, 'house.png.new'), 'mine');
    const args = [MAIN, 'new', 'house.yaml', '--quiet'];
    expect(spawnSync(process.execPath, args, { cwd: temporary.path }).status).toBe(0);
    const small = ['picture', 'house.yaml', '-o', 'house.png', '--width', '16', '--height', '16'];
    expect(spawnSync(process.execPath, [MAIN, ...small], { cwd: temporary.path }).status).toBe(5);
    expect(readFileSync(join(temporary.path, 'house.png.new'), 'utf8')).toBe('mine');
    expect(readdirSync(temporary.path).sort()).toEqual(['house.png', 'house.png.new', 'house.yaml']);
  });
});
