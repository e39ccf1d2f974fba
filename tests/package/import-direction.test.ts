import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** The folders of lib in order: each imports only from rows before its own; `writers` and `page` stand beside them. */
const ROWS = [
  ['base'],
  ['math'],
  ['documents'],
  ['description'],
  ['setout'],
  ['masonry'],
  ['solids', 'statics', 'dwelling', 'works'],
  ['models', 'drawings', 'tables', 'report'],
];
const BESIDE = ['writers', 'page'];
const LAYERS = [...ROWS.flat(), ...BESIDE, 'deliver'];

function mayImport(from: string, to: string): boolean {
  if (from === to || from === 'deliver') return true;
  if (BESIDE.includes(from)) return ['base', 'math', 'documents'].includes(to);
  const row = (layer: string) => ROWS.findIndex((names) => names.includes(layer));
  return row(to) >= 0 && row(to) < row(from);
}

/** Planted lines that every folder of lib must be told off for. */
const FORBIDDEN_IN_LIB = [
  `import '../index.js';`,
  `import '../../cli/run.js';`,
  `import 'node:fs';`,
  `import 'path';`,
  `export const a = Math.random();`,
  `export const { random } = Math;`,
  `export const f = Math.sin(1);`,
  `export const g = Math.hypot(3, 4);`,
  `export const h = 1.1 ** 0.5;`,
  `export const f = Math.sin(1);`,
  `export const g = [3].map((x) => x ** 2);`,
  `export const b = new Date();`,
  `export const c = performance.now();`,
  `console.log(1);`,
  `process.exit();`,
  `export const d = Buffer.alloc(1);`,
  `export const e = globalThis;`,
];

interface Diagnostic {
  readonly severity: string;
  readonly location: { readonly path: string; readonly start: { readonly line: number } };
}

let dir: string;
let reported: ReadonlySet<string>;
const plants = new Map<string, string[]>();

const isReported = (file: string, line: string): boolean =>
  reported.has(`${file}:${(plants.get(file) ?? []).indexOf(line) + 1}`);

beforeAll(() => {
  for (const layer of LAYERS) {
    const imports = LAYERS.map((to) => `import '../${to}/planted.js';`);
    plants.set(`lib/${layer}/planted.ts`, [...imports, `import 'manifold-3d';`, ...FORBIDDEN_IN_LIB]);
    plants.set(
      `lib/${layer}/deeper/planted.ts`,
      LAYERS.map((to) => `export * from '../../${to}/planted.js';`),
    );
  }
  plants.set('lib/solids/kernel.ts', [`import 'manifold-3d';`, `import '../statics/planted.js';`]);
  plants.set('lib/index.ts', [`import './deliver/planted.js';`, `import '../cli/run.js';`, `import 'node:fs';`]);
  plants.set('cli/planted.ts', [`import '../lib/index.js';`, `import 'manifold-3d';`, `import 'node:fs';`]);
  plants.set('cli/tools.ts', [`import '../lib/index.js';`, `export const kernel = import('manifold-3d');`]);
  plants.set('cli/library.ts', [`import '../lib/index.js';`, `import '../tests/planted.js';`]);

  dir = mkdtempSync(join(tmpdir(), 'ringcourse-lint-'));
  cpSync('biome.json', join(dir, 'biome.json'));
  // The rules of our own that the configuration names.
  cpSync('tests/tools', join(dir, 'tests/tools'), { recursive: true, filter: (path) => /(tools|\.grit)$/.test(path) });
  for (const [file, lines] of plants) {
    mkdirSync(dirname(join(dir, file)), { recursive: true });
    writeFileSync(join(dir, file), lines.join('\n'));
  }
  const biome = join(process.cwd(), 'node_modules/.bin/biome');
  const args = ['lint', '--reporter=json', '--max-diagnostics=none', '--diagnostic-level=error'];
  let output: string;
  try {
    output = execFileSync(biome, args, { cwd: dir, encoding: 'utf8', stdio: 'pipe', maxBuffer: 1 << 28 });
  } catch (error) {
    output = (error as { stdout: string }).stdout;
  }
  const { diagnostics } = JSON.parse(output) as { diagnostics: Diagnostic[] };
  reported = new Set(diagnostics.map(({ location }) => `${location.path}:${location.start.line}`));
});

afterAll(() => rmSync(dir, { recursive: true, force: true }));

describe('the lint rule for the direction of imports', () => {
  it.each(LAYERS)('lets lib/%s import what lies before it and nothing else', (from) => {
    for (const to of LAYERS) {
      const plain = isReported(`lib/${from}/planted.ts`, `import '../${to}/planted.js';`);
      const deeper = isReported(`lib/${from}/deeper/planted.ts`, `export * from '../../${to}/planted.js';`);
      expect({ from, to, plain, deeper }).toEqual({
        from,
        to,
        plain: !mayImport(from, to),
        deeper: !mayImport(from, to),
      });
    }
  });

  it.each(LAYERS)('keeps Node, the clock, the console, random numbers and unlike last bits out of lib/%s', (layer) => {
    for (const line of FORBIDDEN_IN_LIB) expect(isReported(`lib/${layer}/planted.ts`, line), line).toBe(true);
  });

  it('lets one file of lib know the geometry kernel, and one of cli hand it over', () => {
    for (const layer of LAYERS) expect(isReported(`lib/${layer}/planted.ts`, `import 'manifold-3d';`)).toBe(true);
    expect(isReported('lib/solids/kernel.ts', `import 'manifold-3d';`)).toBe(false);
    expect(isReported('lib/solids/kernel.ts', `import '../statics/planted.js';`)).toBe(true);
    expect(isReported('cli/planted.ts', `import 'manifold-3d';`)).toBe(true);
    expect(isReported('cli/tools.ts', `export const kernel = import('manifold-3d');`)).toBe(false);
    expect(isReported('cli/tools.ts', `import '../lib/index.js';`)).toBe(true);
  });

  it('has the command line meet the library in one file', () => {
    expect(isReported('lib/index.ts', `import './deliver/planted.js';`)).toBe(false);
    expect(isReported('lib/index.ts', `import '../cli/run.js';`)).toBe(true);
    expect(isReported('lib/index.ts', `import 'node:fs';`)).toBe(true);
    expect(isReported('cli/planted.ts', `import '../lib/index.js';`)).toBe(true);
    expect(isReported('cli/planted.ts', `import 'node:fs';`)).toBe(false);
    expect(isReported('cli/library.ts', `import '../lib/index.js';`)).toBe(false);
    expect(isReported('cli/library.ts', `import '../tests/planted.js';`)).toBe(true);
  });

  it('has a rule for every folder of lib', () => {
    const folders = readdirSync('lib', { withFileTypes: true }).filter((entry) => entry.isDirectory());
    for (const { name } of folders) expect(LAYERS).toContain(name);
  });
});
