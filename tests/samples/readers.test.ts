import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { tools } from '../../cli/tools.js';
import { drawGroup } from '../../lib/deliver/drawn.js';
import type { PackageFile } from '../../lib/deliver/file.js';
import { buildPackage, type Tools } from '../../lib/deliver/package.js';
import { type Study, study } from '../../lib/deliver/study.js';
import type { House } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { measureOf } from '../../lib/documents/dimensioning.js';
import type { Primitive } from '../../lib/documents/drawing.js';
import { HATCHES } from '../../lib/documents/hatches.js';
import { type Sheet, sheetName } from '../../lib/documents/sheet.js';
import { expectCovered } from '../drawings/coverage.js';
import { clashesOf } from '../drawings/reading.js';
import { readByAdmesh } from '../readers/admesh.js';
import { lintDxf } from '../readers/dxf-lint.js';
import { type DxfReading, measureAsRead, readAllByEzdxf } from '../readers/ezdxf.js';
import { readByGltfValidator } from '../readers/gltf.js';
import { checkByQpdf, traceByMutool, wordsByPoppler } from '../readers/pdf.js';
import { titleByXmllint } from '../readers/svg.js';
import { readByLib3mf, requireSchema } from '../readers/threemf.js';

const names = readdirSync('samples')
  .filter((f) => f.endsWith('.yaml') && !f.endsWith('.keeps.yaml'))
  .map((f) => f.replace('.yaml', ''));

describe.each(names)('outside readers on every file of %s', (name) => {
  let house: House;
  let files: readonly PackageFile[];
  let known: Study;
  let sheets: readonly Sheet[];
  beforeAll(async () => {
    house = readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), `${name}.yaml`);
    // The sheets that are written are the ones looked at.
    known = study(house);
    const pdf = await tools.pdf();
    const drawApart: Tools['drawApart'] = async (_, groups) =>
      new Map(await Promise.all(groups.map(async (group) => [group, await drawGroup(group, known, pdf)] as const)));
    files = (await buildPackage(house, { ...tools, drawApart })).files;
    ({ sheets } = await known.sheets);
  });
  const ending = (end: string) => files.filter((f) => f.path.endsWith(end));

  it('admesh finds every STL closed, in as many parts as it stands for', () => {
    const all = ending('.stl');
    const moulds = all.filter((f) => f.path.startsWith('moulds/'));
    const stls = all.filter((f) => !moulds.includes(f) || moulds.indexOf(f) % 11 === 0);
    expect(stls.length).toBeGreaterThan(6);
    for (const { path, bytes } of stls) {
      const read = readByAdmesh(bytes);
      expect({
        path,
        disconnected: read.disconnected,
        degenerate: read.degenerate,
        backwards: read.backwardsEdges,
      }).toEqual({
        path,
        disconnected: 0,
        degenerate: 0,
        backwards: 0,
      });
      expect(read.volume, path).toBeGreaterThan(0);
    }
    const part = (path: string) => readByAdmesh((files.find((f) => f.path === path) as PackageFile).bytes);
    expect(part('model/house.stl').parts).toBe(1);
    expect(part(`model/print-1-${house.print.scale}/whole.stl`).parts).toBe(1);
  });

  it('the glTF validator finds no fault in the GLB, the core schema and lib3mf none in the 3MF', async () => {
    const [glb] = ending('.glb');
    const { issues, info } = await readByGltfValidator((glb as PackageFile).bytes);
    expect(issues).toMatchObject({ numErrors: 0, numWarnings: 0 });
    expect(info.totalTriangleCount).toBeGreaterThan(1000);
    const blocks = ending('/blocks.3mf')[0] as PackageFile;
    requireSchema(blocks.bytes);
    const { warnings, objects, items } = readByLib3mf(blocks.bytes);
    expect({ warnings, items: items.length }).toEqual({ warnings: 0, items: 1 });
    expect(objects.filter((o) => o.valid && o.sound !== false)).toHaveLength(objects.length);
    // Repeats are components of few meshes.
    const repeats = objects.find((o) => o.components !== undefined)?.components ?? 0;
    expect(repeats).toBeGreaterThan(1.2 * (objects.length - 1));
  });

  it('the page to turn stays under 1 MB and 200 bytes a block', () => {
    const [page] = ending('model/house.html');
    const blocks = files.find((f) => f.path === 'tables/blocks.csv')?.bytes ?? new Uint8Array();
    const count = new TextDecoder().decode(blocks).match(/^[\w-]+-\d+-\d+\w?,/gm)?.length ?? 0;
    expect(count).toBeGreaterThan(100);
    expect(page?.bytes.length).toBeLessThan(1e6 + 200 * count);
    expect(page?.bytes.length).toBeGreaterThan(5e4);
  });

  it('ezdxf finds no fault in any DXF, and counts and measures what the sheets say', () => {
    expect(ending('.dxf').flatMap((f) => (f.path.startsWith('drawings/') ? [f.path] : []))).toEqual(
      sheets.map((s) => `drawings/${s.id}.dxf`),
    );
    const bytesOf = (sheet: Sheet) => (files.find((f) => f.path === `drawings/${sheet.id}.dxf`) as PackageFile).bytes;
    const readings = readAllByEzdxf(sheets.map(bytesOf));
    for (const [i, sheet] of sheets.entries()) {
      expect(lintDxf(bytesOf(sheet)), sheet.id).toEqual([]);
      const read = readings[i] as DxfReading;
      expect({ sheet: sheet.id, errors: read.errors, fixes: read.fixes, units: read.units }).toEqual({
        sheet: sheet.id,
        errors: [],
        fixes: [],
        units: 4,
      });
      const primitives = sheet.views.flatMap((v) => v.view.primitives);
      const count = (kind: Primitive['kind']) => [...primitives, ...sheet.paper].filter((p) => p.kind === kind).length;
      // A hatch is an entity for each part of its pattern; a leader's dot is a filled one.
      const hatches = [...primitives, ...sheet.paper].map((p) =>
        p.kind !== 'hatch' ? 0 : p.pattern === 'solid' ? 1 : HATCHES[p.pattern].length,
      );
      const entities = hatches.reduce((sum, n) => sum + n, 0);
      expect(read.counts.HATCH ?? 0, sheet.id).toBe(entities + count('leader'));
      expect(read.counts.ELLIPSE ?? 0, sheet.id).toBe(count('ellipse'));
      expect(read.counts.DIMENSION ?? 0, sheet.id).toBe(count('dimension'));
      expect(read.counts.INSERT ?? 0, sheet.id).toBe(count('symbol'));
      const ours = primitives.filter((p) => p.kind === 'dimension');
      for (const [k, dimension] of read.dimensions.entries()) {
        const dim = ours[k] as (typeof ours)[number];
        const off = Math.abs(dimension.measurement - measureAsRead(dim));
        expect(off, `${sheet.id} dimension ${k}: ${dimension.measurement} for ${measureOf(dim)}`).toBeLessThan(1e-6);
      }
    }
  });

  it('the permit set shows every element of the description on the sheets that it belongs to', async () => {
    expectCovered(known, await known.sheets);
  });

  it('on no sheet does a text lie on another, or a line run through one', () => {
    expect(sheets.flatMap((s) => s.views.flatMap((v) => clashesOf(v.view)))).toEqual([]);
  });

  it('no mould sheet or template has a fault, and each mould has its sheet, block, lining and template', () => {
    const workshop = files.filter((f) => /^(moulds|templates)\//.test(f.path));
    const names = (folder: string, end: string) =>
      workshop.flatMap(({ path }) =>
        path.startsWith(folder) && path.endsWith(end) ? [path.slice(folder.length, -end.length)] : [],
      );
    const moulds = names('moulds/', '.dxf');
    expect(moulds.length).toBeGreaterThan(3);
    expect(names('moulds/', '-block.stl')).toEqual(moulds);
    expect(names('moulds/', '-lining.stl')).toEqual(moulds);
    expect(names('templates/mould-', '.dxf')).toEqual(moulds);
    const drawn = workshop.filter((f) => f.path.endsWith('.dxf'));
    for (const { path, bytes } of drawn) expect(lintDxf(bytes), path).toEqual([]);
    const picked = drawn.filter((_, i) => i % 40 === 7);
    for (const [i, { errors, fixes, units }] of readAllByEzdxf(picked.map((f) => f.bytes)).entries())
      expect({ path: picked[i]?.path, errors, fixes, units }).toEqual({
        path: picked[i]?.path,
        errors: [],
        fixes: [],
        units: 4,
      });
    for (const { bytes } of workshop.filter((f) => f.path.endsWith('.pdf'))) checkByQpdf(bytes);
  });

  it('qpdf finds no fault in the set, which has every sheet at its size; xmllint reads every SVG', () => {
    const [set] = ending('set.pdf');
    if (!set) throw new Error('the drawings have a set');
    checkByQpdf(set.bytes);
    const pages = wordsByPoppler(set.bytes);
    expect(pages.map((p) => [p.width, p.height])).toEqual(
      sheets.map(({ size }) => [expect.closeTo(size.width, 3), expect.closeTo(size.height, 3)]),
    );
    pages.forEach((page, i) => {
      const words = page.words.map((w) => w.text);
      for (const { view } of (sheets[i] as Sheet).views)
        for (const word of view.title.split(' ')) expect(words, view.title).toContain(word);
      for (const { left, right, top, bottom, text } of page.words)
        expect(left > 10 && right < page.width && top > 0 && bottom < page.height, text).toBe(true);
    });
    const drawn = ending('.svg').filter((f) => f.path.startsWith('drawings/'));
    expect(drawn.map((f) => f.path)).toEqual(sheets.map((s) => `drawings/${s.id}.svg`));
    for (const [i, { bytes }] of drawn.entries()) expect(titleByXmllint(bytes)).toBe(sheetName(sheets[i] as Sheet));
  });

  it('prints the plan to scale: the whole house is as long on paper as it should be', () => {
    const [set] = ending('set.pdf');
    const at = sheets.findIndex((s) => s.views.some((v) => v.view.id === 'plan'));
    const plan = sheets[at]?.views.find((v) => v.view.id === 'plan')?.view;
    if (!set || !plan) throw new Error('a sheet has the plan');
    // The longest level dimension of the plan has its line on paper, as long as it measures, over the scale.
    const level = plan.primitives.flatMap((p) =>
      p.kind === 'dimension' && p.type === 'linear' && p.angleDeg === 0 ? [measureOf(p)] : [],
    );
    const longest = Math.max(...level) / plan.scale;
    const lines = traceByMutool(set.bytes, at + 1).flatMap(({ points: [a, b] }) =>
      a && b && Math.abs(a[1] - b[1]) < 1e-4 ? [Math.abs(a[0] - b[0])] : [],
    );
    expect(lines.some((l) => Math.abs(l - longest) < 1e-3)).toBe(true);
  });
});
