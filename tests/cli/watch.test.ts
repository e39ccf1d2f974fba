import { spawn } from 'node:child_process';
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { temporaryFolder } from './folder/helpers.js';
import { changed, HOUSE } from './houses.js';
import { MAIN } from './program.js';

const temporary = temporaryFolder();

it('watch builds, tells what is wrong, and builds again when the description is changed', async () => {
  const at = (path: string) => join(temporary.path, path);
  writeFileSync(at('house.yaml'), HOUSE);
  const child = spawn(process.execPath, [MAIN, 'watch', 'house.yaml', '-o', 'out', '--only', 'tables', '--quiet'], {
    cwd: temporary.path,
  });
  const ended = new Promise((done) => child.once('exit', done));
  child.stdout.resume();
  let told = '';
  child.stderr.on('data', (part) => (told += part));
  const manifest = () => (existsSync(at('out/manifest.json')) ? readFileSync(at('out/manifest.json'), 'utf8') : '');
  const until = async (is: () => boolean, what: string) => {
    for (let i = 0; i < 700 && !is(); i++) await new Promise((done) => setTimeout(done, 100));
    expect(is(), `${what}: ${told}`).toBe(true);
  };
  try {
    await until(() => manifest() !== '', 'the first build');
    const first = manifest();
    // As an editor saves: a new file in the place of the old.
    writeFileSync(at('house.tmp'), changed('radius: 2.0', 'radius: wide'));
    renameSync(at('house.tmp'), at('house.yaml'));
    await until(() => told.includes('quantity-unreadable'), 'the trouble');
    expect(manifest()).toBe(first);
    writeFileSync(at('house.yaml'), changed('radius: 2.0', 'radius: 2.1'));
    // Between the two renames of an exchange there is none.
    await until(() => !['', first].includes(manifest()), 'the second build');
  } finally {
    child.kill('SIGTERM');
    await ended;
  }
  expect(child.signalCode).toBe('SIGTERM');
});
