import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { beforeEach, describe, expect, it } from 'vitest';
import { temporaryFolder } from './folder/helpers.js';
import { HOUSE } from './houses.js';
import { call, callBytes } from './in-process.js';
import { MAIN } from './program.js';

const temporary = temporaryFolder();
const at = (path: string) => join(temporary.path, path);
beforeEach(() => writeFileSync(at('house.yaml'), HOUSE));

describe('a dash in the place of a file', () => {
  it('reads standard input and writes one archive that a reader of archives takes', async () => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [MAIN, 'build', '-', '-o', '-', '--only', 'tables'],
      {
        cwd: temporary.path,
        input: HOUSE,
        maxBuffer: 1 << 28,
      },
    );
    expect([0, 4], String(stderr)).toContain(status);
    writeFileSync(at('house.zip'), stdout);
    // unzip, an outside reader, tests every checksum.
    const listed = spawnSync('python3', ['-m', 'zipfile', '-t', 'house.zip'], {
      cwd: temporary.path,
      encoding: 'utf8',
    });
    expect(listed.stdout).toContain('Done testing');
    const files = unzipSync(stdout);
    const manifest = JSON.parse(new TextDecoder().decode(files['manifest.json']));
    expect(Object.keys(files).sort()).toEqual(
      ['manifest.json', ...manifest.files.map((f: { path: string }) => f.path)].sort(),
    );
    // Everything else went beside it.
    expect(String(stderr)).toMatch(/Checks: \d+ fails/);
    expect(String(stderr)).toContain('Cautions');

    const again = await callBytes(temporary.path, ['build', 'house.yaml', '-o', '-', '--only', 'tables']);
    expect(again.out.equals(stdout)).toBe(true);
  });

  it('names standard input where the description is wrong', () => {
    const { status, stderr } = spawnSync(process.execPath, [MAIN, 'check', '-'], {
      input: 'format: 1\n',
      encoding: 'utf8',
    });
    expect(status).toBe(3);
    expect(stderr).toMatch(/^standard input:1:1: key-missing/m);
  });

  it('takes the first description on standard output', async () => {
    const { code, out, err } = await call(temporary.path, 'new', '-', '--units', 'ft', '--quiet');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('units: ft');
    expect(readdirSync(temporary.path)).toEqual(['house.yaml']);
  });

  it.each([
    [['build', 'house.yaml', '-o', '-', '--json'], 'puts a ZIP on standard output'],
    [['build', 'house.yaml', '-o', '-', '--dry-run'], 'puts a ZIP on standard output'],
    [['watch', '-', '-o', 'out'], 'watch needs a file'],
  ])('%j asks for too much: exit 2', async (args, told) => {
    const { code, err } = await call(temporary.path, ...args);
    expect(code).toBe(2);
    expect(err).toContain(told);
  });
});

describe('options of every command', () => {
  it('--json prints results and troubles as one object each', async () => {
    for (const args of [['tables'], ['schema'], ['table', 'house.yaml', 'circles'], ['new', 'other.yaml']]) {
      const { code, out } = await call(temporary.path, ...args, '--json');
      expect(code).toBe(0);
      expect(() => JSON.parse(out)).not.toThrow();
    }
    const wrong = await call(temporary.path, 'check', 'house.yaml', '--json', '--set', 'domes.room.radius=wide');
    expect(wrong.code).toBe(3);
    expect(JSON.parse(wrong.out).problems).toMatchObject([{ code: 'quantity-unreadable', path: 'domes[0].radius' }]);
    const missing = await call(temporary.path, 'check', 'none.yaml', '--json');
    expect(JSON.parse(missing.out)).toMatchObject({ trouble: { exit: 5, mend: 'Check the spelling of the path.' } });
    const usage = await call(temporary.path, 'check', '--json');
    expect(JSON.parse(usage.out)).toMatchObject({ trouble: { exit: 2 } });
  });

  it('--quiet leaves out progress and hints; without it each stage has its time, and the next command is told', async () => {
    const loud = await call(temporary.path, 'check', 'house.yaml');
    expect(loud.err).toMatch(
      /^ +0\.0 s {2}reading\n +\d+\.\d s {2}checking\nNext: ringcourse build house\.yaml -o house\n$/,
    );
    const quiet = await call(temporary.path, 'check', 'house.yaml', '--quiet');
    expect(quiet.err).toBe('');
    expect(quiet.out.trimStart()).toMatch(/^Checks: \d+ fails, \d+ attention, \d+ ok\n/);
    expect(quiet.out).not.toMatch(/^ {2}(attention|ok) /m);
    expect(quiet.out).toContain('Cautions');
  });

  it('--decimal-comma writes tables for spreadsheets of such regions', async () => {
    const { out } = await call(temporary.path, 'table', 'house.yaml', 'circles', '--decimal-comma');
    expect(out).toMatch(/;\d+(,\d+)?;/);
    await call(temporary.path, 'build', 'house.yaml', '-o', 'out', '--only', 'tables', '--decimal-comma', '--json');
    expect(readFileSync(at('out/tables/circles.csv'), 'utf8')).toBe(out);
  });
});

describe('build with care', () => {
  it('--dry-run tells what would change and writes nothing; --force moves files of others aside', async () => {
    const only = ['--only', 'tables', '--json'];
    const dry = await call(temporary.path, 'build', 'house.yaml', '-o', 'out', '--dry-run', ...only);
    expect(readdirSync(temporary.path)).toEqual(['house.yaml']);
    expect(JSON.parse(dry.out)).toMatchObject({ changed: [], same: [], removed: [] });
    const made = JSON.parse((await call(temporary.path, 'build', 'house.yaml', '-o', 'out', ...only)).out);
    expect(JSON.parse(dry.out).added).toEqual(made.files.map((f: { path: string }) => f.path));

    const text = await call(
      temporary.path,
      'build',
      'house.yaml',
      '-o',
      'out',
      '--dry-run',
      '--only',
      'tables',
      '--set',
      'domes.room.radius=2.1',
    );
    expect(text.out).toMatch(
      /^Nothing was written to out; it would be: 0 new, \d+ changed, \d+ as before, 0 removed$/m,
    );
    expect(text.out).toContain('  ~ tables/blocks.csv');

    writeFileSync(at('out/thesis.txt'), 'mine');
    expect((await call(temporary.path, 'build', 'house.yaml', '-o', 'out', ...only)).code).toBe(5);
    const forced = await call(temporary.path, 'build', 'house.yaml', '-o', 'out', '--force', ...only);
    expect(forced.err).toContain('out.kept-1');
    expect(readFileSync(at('out.kept-1/thesis.txt'), 'utf8')).toBe('mine');
    expect(readdirSync(at('out')).sort()).toEqual(['manifest.json', 'tables']);
  });

  it('a value set from outside makes another package than the file alone', async () => {
    const plain = ['build', 'house.yaml', '-o', 'out', '--json'];
    await call(temporary.path, ...plain, '--only', 'tables');
    const set = await call(temporary.path, ...plain, '--only', 'report', '--set', 'domes.room.radius=2.1');
    expect(JSON.parse(set.out).dropped).toContain('tables/blocks.csv');
  });
});

describe('new at a terminal', () => {
  it('asks, asks again what it can not read, and takes the usual answer for none', async () => {
    const answers = ['', 'big', '3', 'pointed', '2', 'no'];
    const { code, err } = await callBytes(temporary.path, ['new', 'asked.yaml'], answers);
    expect(code, err).toBe(0);
    expect(err).toContain('Inside radius of the dome at the springing, in m [2.5]: ');
    expect(err).toContain('It is a length from 1.80 m to 6.00 m.');
    const text = readFileSync(at('asked.yaml'), 'utf8');
    expect(text).toMatch(/radius: 3 /);
    expect(text).toContain('profile: pointed');
    expect(text).toContain('id: window-2');
    expect(text).not.toContain('oculus:');
    expect(err).toContain('Next: ringcourse check asked.yaml');
  });

  it('takes answers from the call, and says what is wrong with one', async () => {
    const { code, err } = await call(temporary.path, 'new', 'x.yaml', '--profile', 'pointd');
    expect({ code, err }).toEqual({
      code: 2,
      err: 'ringcourse: --profile is "pointd".\n    Did you mean pointed? It is one of hemisphere, segmental, pointed, catenary, elliptical.\n',
    });
    expect((await call(temporary.path, 'new', 'house.yaml')).code).toBe(5);
    expect((await call(temporary.path, 'new', 'house.yaml', '--force', '--radius', '2.8')).code).toBe(0);
    expect(readFileSync(at('house.yaml'), 'utf8')).toContain('radius: 2.8');
  });
});
