import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { transformSync } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readDescription } from '../../lib/description/read.js';
import { DOCUMENTS, fencesOf } from './documents.js';

const fences = DOCUMENTS.flatMap(fencesOf);
const typescript = fences.filter(({ language }) => language === 'ts');

let dir: string;
beforeAll(() => {
  // A project that has the library and what its host gives it.
  dir = mkdtempSync(join(tmpdir(), 'ringcourse-snippets-'));
  mkdirSync(join(dir, 'node_modules/@types'), { recursive: true });
  symlinkSync(resolve('.'), join(dir, 'node_modules/ringcourse'));
  for (const name of ['manifold-3d', 'pdfkit', 'dejavu-fonts-ttf', '@jscad', '@types/node', '@types/pdfkit'])
    symlinkSync(resolve('node_modules', name), join(dir, 'node_modules', name));
  writeFileSync(join(dir, 'package.json'), '{ "private": true, "type": "module" }');
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

describe('pieces of code in the documents', () => {
  it('are all of a language that is tried here', () => {
    expect(new Set(fences.map(({ language }) => language))).toEqual(new Set(['sh', 'yaml', 'ts']));
    expect(new Set(typescript.map(({ document }) => document))).toEqual(new Set(['lib/README.md']));
    expect(typescript.length).toBeGreaterThan(5);
  });

  it('those in TypeScript, one after the other, compile and run', () => {
    const code = typescript.map((fence) => fence.code).join('\n');
    writeFileSync(join(dir, 'all.ts'), code);
    const compilerOptions = {
      module: 'nodenext',
      target: 'es2022',
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      types: ['node'],
      preserveSymlinks: false,
    };
    writeFileSync(join(dir, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['all.ts'] }));
    const tsc = spawnSync(resolve('node_modules/.bin/tsc'), ['-p', '.'], { cwd: dir, encoding: 'utf8' });
    expect(tsc.stdout).toBe('');
    writeFileSync(join(dir, 'all.js'), transformSync(code, { loader: 'ts', format: 'esm', target: 'es2022' }).code);
    const told = execFileSync(process.execPath, ['all.js'], { cwd: dir, encoding: 'utf8' });
    expect(told).toContain('1 dome');
    for (const file of [
      'blocks.csv',
      'plan.dxf',
      'set.pdf',
      'house.stl',
      'triangle.svg',
      'triangle.dxf',
      'lamps.xlsx',
    ]) {
      expect(existsSync(join(dir, file)), file).toBe(true);
      expect(readFileSync(join(dir, file)).length).toBeGreaterThan(100);
    }
  });

  it.each(fences.filter(({ language }) => language === 'yaml'))(
    'a description in $document is read',
    ({ code, document }) => {
      expect(readDescription(code, document).domes.length).toBeGreaterThan(0);
    },
  );
});
