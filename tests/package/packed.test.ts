import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const SAMPLE = 'node_modules/ringcourse/samples/garden-studio.yaml';

/** What a user of the library writes; the types must hold without those of Node. */
const CONSUMER = `
import { type House, type HousePackage, type KernelSource, type Problem, buildPackage, DescriptionError, readDescription } from 'ringcourse';

export function read(text: string): House | readonly Problem[] {
  try {
    return readDescription(text, 'house.yaml');
  } catch (error) {
    if (error instanceof DescriptionError) return error.problems;
    throw error;
  }
}

export async function make(house: House, kernel: KernelSource): Promise<HousePackage> {
  return buildPackage(house, { kernel: async () => kernel }, { only: ['tables'], progress: (stage: string) => stage });
}

// @ts-expect-error a house is more than its name
make({ project: 'x' }, { factory: async () => 0, wasm: new Uint8Array() });
`;

let dir: string;
let tarball: string;
let packed: readonly string[];

beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'ringcourse-packed-'));
  // The build is there already, and making it anew here would pull it away from the tests beside this one.
  const report = execFileSync('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', dir], {
    encoding: 'utf8',
  });
  const [{ filename, files }] = JSON.parse(report) as [{ filename: string; files: { path: string }[] }];
  tarball = join(dir, filename);
  packed = files.map(({ path }) => path);
  writeFileSync(join(dir, 'package.json'), '{ "private": true, "type": "module" }');
  const quiet = ['--ignore-scripts', '--no-audit', '--no-fund', '--prefer-offline', '--loglevel=error'];
  execFileSync('npm', ['install', ...quiet, tarball], { cwd: dir, stdio: ['ignore', 'pipe', 'inherit'] });
  writeFileSync(join(dir, 'consumer.ts'), CONSUMER);
});

afterAll(() => rmSync(dir, { recursive: true, force: true }));

describe('the packed package', () => {
  it('holds the build, its types, the samples and the papers, and no sources or tests', () => {
    const needed = [
      'dist/lib/index.js',
      'dist/lib/index.d.ts',
      'dist/cli/main.js',
      'LICENSE',
      'README.md',
      'CHANGELOG.md',
      'cli/PROBLEMS.md',
      'lib/API.md',
      'samples/TABLES.md',
    ];
    expect(packed).toEqual(expect.arrayContaining([...needed, 'package.json', 'samples/garden-studio.yaml']));
    const strange = packed.filter(
      (path) => !/^(dist\/.*\.(js|d\.ts)|samples\/.*|(\w+\/)?[A-Z]+\.md|LICENSE|package\.json)$/.test(path),
    );
    expect(strange).toEqual([]);
  });

  it.each([
    ['nodenext', 'NodeNext'],
    ['bundler', 'ESNext'],
  ])('type-checks in a project with %s resolution', (moduleResolution, module) => {
    const compilerOptions = {
      module,
      moduleResolution,
      target: 'ES2022',
      lib: ['ES2023', 'DOM'],
      types: [],
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
    };
    writeFileSync(join(dir, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['consumer.ts'] }));
    const tsc = resolve('node_modules/.bin/tsc');
    const told = (() => {
      try {
        return execFileSync(tsc, ['-p', 'tsconfig.json'], { cwd: dir, encoding: 'utf8' });
      } catch (error) {
        return (error as { stdout: string }).stdout;
      }
    })();
    expect(told).toBe('');
  });

  // An outside judge of packages: types and code resolve alike under every way that an ES module is imported.
  it('has types that are not wrong', () => {
    const attw = resolve('node_modules/.bin/attw');
    // The page's script is a text that pages carry, and no module to import.
    const left = ['--exclude-entrypoints', './page-script'];
    const { status, stdout } = spawnSync(attw, [tarball, ...left, '--profile', 'esm-only', '--format', 'json'], {
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    });
    const { analysis, problems } = JSON.parse(stdout);
    expect({ status, problems: problems ?? analysis.problems }).toMatchObject({ status: 0 });
    expect(Object.keys(analysis.entrypoints)).toContain('.');
    expect(analysis.types).toMatchObject({ kind: 'included' });
  });

  it('is imported by its name and reads a sample', () => {
    const script = `
      import { readFileSync } from 'node:fs';
      import { readDescription } from 'ringcourse';
      const house = readDescription(readFileSync(${JSON.stringify(SAMPLE)}, 'utf8'), 'sample.yaml');
      console.log(house.domes.length);`;
    const told = execFileSync(process.execPath, ['--input-type=module', '-e', script], { cwd: dir, encoding: 'utf8' });
    expect(Number(told)).toBeGreaterThanOrEqual(1);
  });

  it('has a command that runs by its name and makes the same bytes as here', () => {
    const command = join(dir, 'node_modules/.bin/ringcourse');
    const there = spawnSync(command, ['build', SAMPLE, '-o', 'there'], { cwd: dir, encoding: 'utf8' });
    // A sample may have a check that fails; the package is whole all the same.
    expect([0, 4], there.stderr).toContain(there.status);
    const main = resolve('dist/cli/main.js');
    const here = spawnSync(process.execPath, [main, 'build', SAMPLE, '-o', 'here'], { cwd: dir, encoding: 'utf8' });
    expect(here.status).toBe(there.status);
    const manifest = (name: string) => readFileSync(join(dir, name, 'manifest.json'), 'utf8');
    expect(manifest('there')).toBe(manifest('here'));
  });
});
