import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FileError } from '../../../cli/exit.js';
import type { Manifest } from '../../../cli/folder/manifest.js';
import { inspectFolder, writeFolder } from '../../../cli/folder/write.js';
import { bytes, delivery, temporaryFolder, tree } from './helpers.js';

const temporary = temporaryFolder();
const out = () => join(temporary.path, 'out');
const manifest = (): Manifest => JSON.parse(readFileSync(join(out(), 'manifest.json'), 'utf8'));

describe('writing a package', () => {
  it('writes the files and a manifest of their sizes and SHA-256, and nothing beside the folder', async () => {
    const checks = [{ id: 'c', statement: 's', state: 'ok' as const, source: 'derived', advice: '' }];
    await writeFolder(out(), delivery({ 'tables/blocks.csv': 'a,b\n', 'model/house.stl': 'solid' }, { checks }));
    expect(readdirSync(temporary.path)).toEqual(['out']);
    expect(Object.keys(tree(out()))).toEqual([
      'manifest.json',
      'model/',
      'model/house.stl',
      'tables/',
      'tables/blocks.csv',
    ]);
    const digest = createHash('sha256').update('a,b\n').digest('hex');
    expect(manifest().files).toContainEqual({ path: 'tables/blocks.csv', size: 4, sha256: digest });
    expect(manifest().description).toEqual({ sha256: 'a'.repeat(64) });
    expect(manifest().checks).toEqual(checks);
  });

  it('gives the same bytes for the same package, in whatever order its files come', async () => {
    await writeFolder(out(), delivery({ 'a/1': 'x', 'b/2': 'y' }));
    await writeFolder(join(temporary.path, 'again'), delivery({ 'b/2': 'y', 'a/1': 'x' }));
    expect(tree(join(temporary.path, 'again'))).toEqual(tree(out()));
  });

  it('replaces the package before it as a whole', async () => {
    await writeFolder(out(), delivery({ 'drawings/plan.dxf': 'old', 'drawings/gone.dxf': 'old' }));
    await writeFolder(out(), delivery({ 'drawings/plan.dxf': 'new' }));
    expect(tree(out())).toMatchObject({ 'drawings/plan.dxf': 'new' });
    expect(tree(out())).not.toHaveProperty(['drawings/gone.dxf']);
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });

  it('makes the folders above that are missing', async () => {
    await writeFolder(join(temporary.path, 'deep/er/out'), delivery({ 'a/1': 'x' }));
    expect(tree(join(temporary.path, 'deep/er/out'))).toMatchObject({ 'a/1': 'x' });
  });

  it('answers at once where no folder can be made', async () => {
    await expect(writeFolder('/proc/nowhere/out', delivery({ 'a/1': 'x' }))).rejects.toThrow(FileError);
  });

  it('takes an empty folder, and one with the litter of file browsers', async () => {
    mkdirSync(out());
    await writeFolder(out(), delivery({ 'a/1': 'x' }));
    writeFileSync(join(out(), 'a/.DS_Store'), '');
    await writeFolder(out(), delivery({ 'a/1': 'y' }));
    expect(tree(out())).toMatchObject({ 'a/1': 'y' });
  });

  it('follows a link to the folder and keeps it', async () => {
    mkdirSync(join(temporary.path, 'elsewhere'));
    symlinkSync(join(temporary.path, 'elsewhere'), out());
    await writeFolder(out(), delivery({ 'a/1': 'x' }));
    expect(tree(join(temporary.path, 'elsewhere'))).toMatchObject({ 'a/1': 'x' });
    expect(readdirSync(temporary.path).sort()).toEqual(['elsewhere', 'out']);
  });
});

describe('refusing a folder', () => {
  it.each([
    ['a file', (dir: string) => writeFileSync(join(dir, 'notes.txt'), 'mine'), 'notes.txt'],
    ['a hidden file', (dir: string) => writeFileSync(join(dir, '.git'), 'mine'), '.git'],
    ['a file in a folder of ours', (dir: string) => writeFileSync(join(dir, 'a/mine.txt'), ''), 'a/mine.txt'],
    ['an empty folder', (dir: string) => mkdirSync(join(dir, 'mine')), 'mine/'],
    ['a link', (dir: string) => symlinkSync('/etc/hostname', join(dir, 'link')), 'link'],
  ])('that holds %s of someone else, and leaves it untouched', async (_, plant, name) => {
    await writeFolder(out(), delivery({ 'a/1': 'x' }));
    plant(out());
    const before = tree(out());
    await expect(writeFolder(out(), delivery({ 'a/1': 'y' }))).rejects.toThrow(FileError);
    await expect(inspectFolder(out())).rejects.toThrow(name);
    expect(tree(out())).toEqual(before);
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });

  it('with files and no manifest, or a manifest that is not ours', async () => {
    mkdirSync(out());
    writeFileSync(join(out(), 'manifest.json'), '{"name": "a web page", "files": []}');
    await expect(writeFolder(out(), delivery({ 'a/1': 'y' }))).rejects.toThrow('manifest.json');
    expect(tree(out())).toEqual({ 'manifest.json': '{"name": "a web page", "files": []}' });
  });

  it('whose manifest lists paths outside it', async () => {
    await writeFolder(out(), delivery({ 'a/1': 'x' }));
    const forged = { ...manifest(), files: [{ path: '../victim', size: 1, sha256: '0' }] };
    writeFileSync(join(out(), 'manifest.json'), JSON.stringify(forged));
    await expect(writeFolder(out(), delivery({ 'a/1': 'y' }))).rejects.toThrow(FileError);
  });

  it('that is a file, or lies under one, and leaves nothing behind', async () => {
    writeFileSync(out(), 'mine');
    await expect(writeFolder(out(), delivery({ 'a/1': 'y' }))).rejects.toThrow(FileError);
    await expect(writeFolder(join(out(), 'below'), delivery({ 'a/1': 'y' }))).rejects.toThrow(FileError);
    expect(tree(temporary.path)).toEqual({ out: 'mine' });
  });

  it('that can not be written', async () => {
    await expect(writeFolder('/proc/self/out', delivery({ 'a/1': 'y' }))).rejects.toThrow(FileError);
  });

  it('that the command runs in', async () => {
    for (const dir of ['.', '..', '/']) {
      await expect(writeFolder(dir, delivery({ 'a/1': 'y' }))).rejects.toThrow(/runs in/);
    }
  });
});

describe('when writing fails', () => {
  it.each(['a/1', 'b/2'])(
    'reads every file back, and keeps the package before one that differs: %s',
    async (garbled) => {
      await writeFolder(out(), delivery({ 'a/1': 'x' }));
      const before = tree(temporary.path);
      const files = ['a/1', 'b/2'].map((path) => {
        let asked = 0;
        // Its bytes are asked for twice, for the manifest and to be written: a disk that changes a bit in between.
        return {
          path,
          get bytes() {
            return bytes(path === garbled && ++asked === 2 ? 'good' : 'gone');
          },
        };
      });
      const written = writeFolder(out(), { ...delivery({}), files });
      await expect(written).rejects.toThrow(FileError);
      await expect(written).rejects.toThrow(`${garbled} reads back otherwise`);
      expect(tree(temporary.path)).toEqual(before);
    },
  );

  it('puts a folder of others that it moved aside back in its place', async () => {
    mkdirSync(out());
    writeFileSync(join(out(), 'mine.txt'), 'mine');
    const tooLong = `b/${'n'.repeat(300)}`;
    await expect(writeFolder(out(), delivery({ 'a/1': 'y', [tooLong]: 'z' }), true)).rejects.toThrow(FileError);
    expect(tree(temporary.path)).toEqual({ 'out/': '', 'out/mine.txt': 'mine' });
  });

  it('leaves the package before it, and neither a new folder nor a lock', async () => {
    await writeFolder(out(), delivery({ 'a/1': 'x' }));
    const before = tree(temporary.path);
    const tooLong = `b/${'n'.repeat(300)}`;
    await expect(writeFolder(out(), delivery({ 'a/1': 'y', [tooLong]: 'z' }))).rejects.toThrow('too long');
    expect(tree(temporary.path)).toEqual(before);
    await expect(writeFolder(join(temporary.path, 'p/q'), delivery({ [tooLong]: 'z' }))).rejects.toThrow(FileError);
    expect(tree(temporary.path)).toEqual(before);
  });

  it.each([
    '/etc/passwd',
    '../up',
    'a/../../up',
    'a//b',
    './a',
    '',
    'a\\b',
    'c:x',
    'nul.txt',
    'a\u0000b',
    'a/b.',
    'a\nb',
  ])('refuses the unsafe path %j before anything is written', async (path) => {
    const files = [{ path, bytes: bytes('x') }];
    await expect(writeFolder(out(), { ...delivery({}), files })).rejects.toThrow('unsafe path');
    expect(readdirSync(temporary.path)).toEqual([]);
  });

  it.each([[['a/b', 'A/B']], [['a/b', 'a/b/c']], [['manifest.json']]])(
    "refuses paths that get in each other's way: %j",
    async (paths) => {
      const files = paths.map((path) => ({ path, bytes: bytes('x') }));
      await expect(writeFolder(out(), { ...delivery({}), files })).rejects.toThrow(/twice|both/);
      expect(readdirSync(temporary.path)).toEqual([]);
    },
  );
});
