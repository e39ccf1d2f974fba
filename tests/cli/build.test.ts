import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Manifest } from '../../cli/folder/manifest.js';
import { pixelsOf } from '../readers/raster.js';
import { lastingFolder, temporaryFolder } from './folder/helpers.js';
import { changed, HOUSE } from './houses.js';
import { call } from './in-process.js';
import { OTHER_NODE, type Ran, ringcourse, runBy } from './program.js';

const temporary = temporaryFolder();
const at = (path: string) => join(temporary.path, path);
const run = (...args: readonly string[]) => call(temporary.path, ...args);

/** One build by a process of its own, which several tests look at. */
const lasting = lastingFolder();
let built: Ran;
beforeAll(() => {
  writeFileSync(join(lasting.path, 'house.yaml'), HOUSE);
  built = ringcourse(lasting.path, 'build', 'house.yaml', '-o', 'out');
});
const takeBuilt = (dir: string) => cpSync(join(lasting.path, 'out'), at(dir), { recursive: true });
const manifest = (dir: string): Manifest => JSON.parse(readFileSync(at(`${dir}/manifest.json`), 'utf8'));
const digest = (path: string): string =>
  createHash('sha256')
    .update(readFileSync(at(path)))
    .digest('hex');

/** The last block of what a command prints: a heading, then one caution a line. */
function cautions(out: string): string[] {
  const block = out.trimEnd().split('\n\n').at(-1)?.split('\n') ?? [];
  expect(block[0]).toBe('Cautions');
  return block.slice(1);
}

beforeEach(() => writeFileSync(at('house.yaml'), HOUSE));

describe('build', () => {
  it('writes drawings, model and tables with a manifest that agrees with them', () => {
    const { code, out, err } = built;
    takeBuilt('out');
    expect(code, err).toBeOneOf([0, 4]);
    const { description, files, checks } = manifest('out');
    expect(description.sha256).toBe(digest('house.yaml'));
    expect(code === 4).toBe(checks.some(({ state }) => state === 'fails'));
    const endings = new Set(files.map(({ path }) => path.replace(/^(\w+)\/.*\.(\w+)$/, '$1 $2')));
    for (const ending of [
      'drawings dxf',
      'model stl',
      'moulds dxf',
      'moulds stl',
      'moulds pdf',
      'templates dxf',
      'templates pdf',
    ])
      expect(endings).toContain(ending);
    for (const ending of ['tables csv', 'report.html']) expect(endings).toContain(ending);
    for (const { path, size, sha256 } of files) {
      expect({ path, size: readFileSync(at(`out/${path}`)).length, sha256: digest(`out/${path}`) }).toEqual({
        path,
        size,
        sha256,
      });
    }
    const onDisk = readdirSync(at('out'), { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
    expect(onDisk).toHaveLength(files.length + 1);
    expect(readdirSync(lasting.path).sort()).toEqual(['house.yaml', 'out']);

    expect(out).toContain('Written to out');
    expect(out).toMatch(/^Checks: \d+ fails, \d+ attention, \d+ ok$/m);
    expect(cautions(out).length).toBeGreaterThanOrEqual(1);
    expect(cautions(out).every((line) => line.startsWith('  - '))).toBe(true);
  });

  it('keeps progress on stderr and results on stdout', () => {
    const { out, err } = built;
    expect(err.trim().split('\n').length).toBeGreaterThan(1);
    for (const line of err.trim().split('\n')) expect(out).not.toContain(`${line}\n`);
  });

  it.each([
    ['in another process', process.execPath],
    ['under another version of Node', OTHER_NODE],
  ])('gives the same bytes from the same description %s', (_, node) => {
    takeBuilt('one');
    runBy(node, temporary.path, ['build', 'house.yaml', '-o', 'two']);
    expect(manifest('one')).toEqual(manifest('two'));
    expect(digest('one/manifest.json')).toBe(digest('two/manifest.json'));
  });

  it('has another version of Node beside this one', () => {
    expect(existsSync(OTHER_NODE), '`bash tests/tools/readers.sh` installs it').toBe(true);
    const version = spawnSync(OTHER_NODE, ['--version'], { encoding: 'utf8' }).stdout;
    expect(version).toMatch(/^v\d+/);
    expect(version.split('.')[0]).not.toBe(process.version.split('.')[0]);
  });

  it('carries the other groups over with --only, and drops them when the description changed', async () => {
    takeBuilt('out');
    const before = manifest('out').files;
    const same = await run('build', 'house.yaml', '-o', 'out', '--only', 'tables');
    expect(manifest('out').files).toEqual(before);
    expect(same.out).toMatch(/^ {2}model .*as before$/m);

    writeFileSync(at('house.yaml'), changed('radius: 2.0', 'radius: 2.1'));
    const other = await run('build', 'house.yaml', '-o', 'out', '--only', 'tables,model');
    expect(other.out).toContain('Left out, made from another description: drawings/');
    expect(new Set(manifest('out').files.map(({ path }) => path.split('/')[0]))).toEqual(new Set(['tables', 'model']));
    expect(existsSync(at('out/drawings'))).toBe(false);
  });

  it('refuses a folder with files of someone else: exit 5, named, untouched', async () => {
    mkdirSync(at('out'));
    writeFileSync(at('out/thesis.txt'), 'mine');
    const { code, out, err } = await run('build', 'house.yaml', '-o', 'out');
    expect({ code, out }).toEqual({ code: 5, out: '' });
    expect(err).toContain('thesis.txt');
    expect(readdirSync(at('out'))).toEqual(['thesis.txt']);
    expect(readdirSync(temporary.path).sort()).toEqual(['house.yaml', 'out']);
  });

  it.each([
    ['under a file', 'house.yaml/out'],
    ['in a place that can not be written', '/proc/self/out'],
    ['the folder it runs in', '.'],
    ['a file', 'house.yaml'],
  ])('refuses an output folder %s: exit 5, nothing written', async (_, output) => {
    const { code, out, err } = await run('build', 'house.yaml', '-o', output);
    expect({ code, out }).toEqual({ code: 5, out: '' });
    // Nothing was computed before.
    expect(err).toMatch(/^ringcourse: .+\.\n {4}.+\.\n$/);
    expect(readdirSync(temporary.path)).toEqual(['house.yaml']);
    expect(readFileSync(at('house.yaml'), 'utf8')).toBe(HOUSE);
  });
});

describe('check', () => {
  it('prints the same checks as JSON for programs', async () => {
    const { code, out } = await run('check', 'house.yaml', '--json');
    const verdict = JSON.parse(out);
    const tally = (state: string) => verdict.checks.filter((c: { state: string }) => c.state === state).length;
    const text = await run('check', 'house.yaml');
    expect(text.out).toContain(`Checks: ${tally('fails')} fails, ${tally('attention')} attention, ${tally('ok')} ok`);
    expect(code).toBe(text.code);
    expect(verdict.cautions.length).toBeGreaterThan(3);
    const laying = verdict.checks.find((c: { id: string }) => c.id === 'laying.room');
    expect(laying.demand).toMatchObject({ unit: '1', formula: expect.any(String), source: expect.any(String) });
  });

  it('tells every check and writes nothing', () => {
    const { code, out, err } = ringcourse(temporary.path, 'check', 'house.yaml');
    expect(code, err).toBeOneOf([0, 4]);
    const tally = /^Checks: (\d+) fails, (\d+) attention, (\d+) ok$/m.exec(out)?.slice(1).map(Number) ?? [];
    expect(out.match(/^ {2}(fails|attention|ok) /gm) ?? []).toHaveLength(tally.reduce((a, b) => a + b, 0));
    expect(code === 4).toBe((tally[0] ?? 0) > 0);
    expect(cautions(out).length).toBeGreaterThanOrEqual(1);
    expect(readdirSync(temporary.path)).toEqual(['house.yaml']);
  });

  it('agrees with build', async () => {
    expect((await run('check', 'house.yaml')).code).toBe(built.code);
  });
});

describe('new', () => {
  it('writes a description that builds, and never over a file', async () => {
    const { code, out } = await run('new', 'first.yaml');
    expect({ code, out }).toEqual({ code: 0, out: 'Wrote first.yaml\n' });
    expect((await run('build', 'first.yaml', '-o', 'out')).code).toBe(0);
    const again = await run('new', 'house.yaml');
    expect(again.code).toBe(5);
    expect(readFileSync(at('house.yaml'), 'utf8')).toBe(HOUSE);
    expect((await run('new', 'missing/first.yaml')).code).toBe(5);
  });
});

describe('schema', () => {
  it('is JSON Schema, as editors read it, and nothing else on stdout', async () => {
    const { code, out, err } = await run('schema');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const schema = JSON.parse(out);
    expect(schema.$schema).toContain('json-schema.org/draft-07');
    expect(Object.keys(schema.properties)).toEqual(expect.arrayContaining(['format', 'units', 'domes', 'openings']));
  });
});

describe('table', () => {
  it('lists the tables, and prints each as text, CSV and JSON', async () => {
    const list = await run('tables');
    expect(list.code, list.err).toBe(0);
    const names = list.out
      .trim()
      .split('\n')
      .map((line) => line.split(' ')[0] ?? '');
    await run('build', 'house.yaml', '-o', 'out', '--only', 'tables');
    const written = readdirSync(at('out/tables')).filter((file) => file.endsWith('.csv'));
    expect(written.map((file) => file.replace('.csv', '')).sort()).toEqual([...names].sort());
    for (const name of ['blocks', 'radius-pole', 'bill']) {
      const text = await run('table', 'house.yaml', name);
      const csv = await run('table', 'house.yaml', name, '--csv');
      const json = await run('table', 'house.yaml', name, '--json');
      expect([text.code, csv.code, json.code]).toEqual([0, 0, 0]);
      expect(JSON.parse(json.out)).toMatchObject({ id: name });
      for (const [format, same] of Object.entries({ text, csv, json }))
        expect(await run('table', 'house.yaml', name, '--format', format)).toEqual(same);
      expect(csv.out).toContain(',');
      expect(text.out.split('\n').length).toBeGreaterThan(2);
    }
  });

  it('prints the same CSV as build writes', async () => {
    await run('build', 'house.yaml', '-o', 'out', '--only', 'tables');
    for (const name of ['blocks', 'calendar']) {
      const path = `tables/${name}.csv`;
      expect((await run('table', 'house.yaml', name, '--csv')).out).toBe(readFileSync(at(`out/${path}`), 'utf8'));
    }
  });

  it('suggests a name for a mistyped one: exit 2', async () => {
    const { code, err } = await run('table', 'house.yaml', 'blokcs');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean blocks?');
  });
});

describe('picture', () => {
  it('draws the house, whole or cut, and leaves nothing half-written', async () => {
    const small = ['--width', '160', '--height', '120'];
    for (const more of [[], ['--level', '1.2 m', '--colours', 'course']]) {
      const { code, out } = await run('picture', 'house.yaml', '-o', 'house.png', ...small, ...more);
      expect({ code, out }).toEqual({ code: 0, out: 'Wrote house.png\n' });
      const { width, height, at: pixel } = pixelsOf(readFileSync(at('house.png')));
      expect([width, height]).toEqual([160, 120]);
      // The house in the middle, paper in the corner.
      expect(pixel(80, 60)).not.toEqual(pixel(0, 0));
    }
    const { code, err } = await run('picture', 'house.yaml', '-o', 'none/house.png', ...small);
    expect(code).toBe(5);
    expect(err).toContain("none/house.png can't be written");
    const level = await run('picture', 'house.yaml', '-o', 'house.png', '--level', '1.2 kg');
    expect(level.code).toBe(2);
    expect(readdirSync(at('.')).filter((name) => name.includes('.png'))).toEqual(['house.png']);
  });
});
