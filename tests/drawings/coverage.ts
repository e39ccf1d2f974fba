import { expect } from 'vitest';
import { formatAngle, formatLength, formatLevel, type WrittenUnits } from '../../lib/base/measures.js';
import type { Study } from '../../lib/deliver/study.js';
import { SHEET_KINDS } from '../../lib/description/schema/drawings.js';
import type { Primitive, View } from '../../lib/documents/drawing.js';
import { scaleWords } from '../../lib/documents/scales.js';
import { auditSheet, type Sheet, sheetForm } from '../../lib/documents/sheet.js';
import { drawingSpace } from '../../lib/documents/sheet-size.js';
import type { SheetSet } from '../../lib/drawings/sheets/house-sheets.js';
import { writtenUnits } from '../../lib/drawings/words.js';
import type { LaidBlock } from '../../lib/masonry/block.js';
import { earlierThan, type HouseSetout } from '../../lib/setout/house.js';
import { partitionsOf } from '../../lib/setout/partition.js';
import { drawingRegister } from '../../lib/tables/drawing-register.js';
import { paperBounds } from '../tools/paper.js';

export const kindOf = (sheet: Sheet): string =>
  SHEET_KINDS.find((kind) => sheet.id.replace(/^sheet-\d+-/, '').startsWith(kind.replace(/s$/, ''))) ?? sheet.id;

const viewWords = (view: View): string[] =>
  view.primitives.flatMap((p: Primitive) =>
    p.kind === 'text' || p.kind === 'leader' ? [p.text] : p.kind === 'level' ? [p.label] : [],
  );

/** All that is written on the sheets of one kind. */
export function written(sheets: readonly Sheet[], kind: string): string {
  const own = sheets.filter((s) => kindOf(s) === kind);
  return own
    .flatMap((s) => [
      ...sheetForm(s).flatMap((p) => (p.kind === 'text' ? [p.text] : [])),
      ...s.views.flatMap((v) => viewWords(v.view)),
    ])
    .join('\n');
}

export function expectScaleBars(sheets: readonly Sheet[], units: WrittenUnits): void {
  for (const { id, views, paper } of sheets) {
    const told = paper.flatMap((p) => (p.kind === 'text' ? [p.text] : []));
    for (const scale of new Set(views.map(({ view }) => view.scale)))
      expect(told, `a scale bar on ${id}`).toContain(`Scale ${scaleWords(scale, units)}`);
  }
}

/** Holds that a whole set shows every element of its description on the sheets that it belongs to. */
export function expectCovered(known: Study, { sheets, summary }: SheetSet): void {
  const { setout } = known;
  const { house } = setout;
  const units = writtenUnits(house);
  for (const sheet of sheets) expect(auditSheet(sheet), sheet.id).toEqual([]);
  expectScaleBars(sheets, units);
  expectFilled(sheets);
  const on = (kind: string) => written(sheets, kind);
  const has = (kind: string, text: string) => expect(on(kind), `${kind}: ${text}`).toContain(text);
  // What one gets through in need: the clear rectangle of each opening, width and height as dwelling rules ask.
  for (const { clear } of known.dwelling.openings)
    for (const size of [clear.width, clear.height]) has('openings', formatLength(size, units));

  const wanted = SHEET_KINDS.filter((k) => k !== 'site' || house.site.plot !== null);
  expect([...new Set(sheets.map(kindOf))]).toEqual(wanted);

  // Cover: whose house, its sheets, loads, materials, cautions, and why the sheets and scales were chosen; on one sheet.
  const cover = on('cover').replaceAll('\n', ' ');
  for (const text of [house.project.title, 'snow on the ground', 'dry density', 'Cautions', 'General notes'])
    expect(cover).toContain(text);
  const lines = on('cover').split('\n');
  for (const { titleBlock } of sheets) expect(lines).toContain(titleBlock.title);
  const covers = lines.filter((line) => line.startsWith('Cover sheet'));
  expect(covers).toEqual(['Cover sheet', 'Cover sheet']);
  expect(sheets.filter((s) => kindOf(s) === 'cover')).toHaveLength(1);
  const choice = summary.replace(/^\d+ sheets? of /, '');
  expect(choice).toMatch(/largest standard scale|as asked for|no usual sheet/);
  expect(cover).toContain(`Sheets of ${choice}.`);

  for (const dome of setout.domes) {
    for (const kind of ['footing', 'roof', 'courses']) has(kind, dome.id);
    has('roof', formatLevel(dome.topZ, units));
    for (const course of dome.courses) has('courses', `${course.index}: ${course.count}`);
  }
  // A number that was turned into other units is told to what can be measured.
  for (const kind of wanted) expect(on(kind), kind).not.toMatch(/\d\.\d{5}/);
  for (const arch of setout.arches) {
    for (const kind of ['plan', 'openings', 'courses', 'roof'].filter((k) => k !== 'roof' || arch.faceV !== null))
      has(kind, arch.id);
    has('plan', formatAngle(arch.opening.bearingDeg));
  }
  for (const passage of setout.passages) for (const kind of ['plan', 'courses']) has(kind, passage.id);
  const plan = on('plan').replaceAll('\n', ' ');
  for (const room of house.rooms) {
    expect(plan).toContain(room.name);
    const floor = known.dwelling.rooms.find((r) => r.room.id === room.id)?.floor as number;
    expect(plan).toContain(units === 'metric' ? `${floor.toFixed(1)} m²` : `${(floor / 0.09290304).toFixed(0)} ft²`);
  }
  if (setout.domes.some((d) => earlierThan(setout, d).length > 0)) has('roof', 'valley');
  // Partitions: their marks on the plan, their sizes and places among its notes.
  for (const { mark, partition, dome } of partitionsOf(setout)) {
    expect(on('plan').split('\n'), `mark of ${mark}`).toContain(mark);
    expect(plan, mark).toContain(`${mark} in ${dome.id}, ${formatLength(partition.thickness, units)} thick`);
  }
  expectDetails(setout, on('details').replaceAll('\n', ' '));
  for (const dome of setout.domes) expectMarks(dome.id, known.laid.blocks, sheets);

  const register = drawingRegister(sheets);
  expect(register.rows.map((r) => r.file)).toEqual(sheets.map((s) => `drawings/${s.id}.dxf`));
}

/** Each detail that a house asks for, and in it what is built there besides the masonry. */
function expectDetails(setout: HouseSetout, told: string): void {
  const { house, domes, footings, slabs, passages } = setout;
  const abuts = domes.some((d) => earlierThan(setout, d).length > 0);
  const tie = house.tie !== null && house.tie !== 'none';
  const asked: readonly (readonly [asked: boolean, what: string])[] = [
    ...['Wall foot', 'damp-proof course', 'ground falls', 'land drain', 'gravel'].map((w) => [true, w] as const),
    [footings.length > 0, 'concrete footing'],
    [slabs.length > 0, 'concrete slab'],
    [slabs.length > 0, 'sheet against damp'],
    [house.wall.renderOutside > 0, 'outside render'],
    [house.wall.renderInside > 0, 'inside render'],
    ...['Head of', 'Springing of', 'courses of blocks cut'].map((w) => [house.openings.length > 0, w] as const),
    [domes.some((d) => d.curb), 'Curb of'],
    [domes.some((d) => d.curb), 'up the curb'],
    [domes.some((d) => d.plug), 'Crown plug'],
    [tie, 'Ring tie'],
    ...['Abutment of', 'up both shells', 'movement joint'].map((w) => [abuts, w] as const),
    [passages.length > 0, 'movement joint'],
  ];
  for (const [, what] of asked.filter(([is]) => is)) expect(told, `details: ${what}`).toContain(what);
}

/** Every block of a dome has its number on its unrolled courses: in the block, or beside its course. */
function expectMarks(domeId: string, blocks: readonly LaidBlock[], sheets: readonly Sheet[]): void {
  const views = sheets
    .flatMap((s) => s.views.map((v) => v.view))
    .filter((v) => v.id === `courses-${domeId}-east` || v.id === `courses-${domeId}-west`);
  const told = new Map<number, number>();
  for (const text of views.flatMap(viewWords)) {
    const list = /^\d+$/.test(text) ? text : (/no room: (.*)$/.exec(text)?.[1] ?? '');
    for (const part of list.split(', ').filter((p) => p !== '')) {
      const [from, to] = part.split(' to ').map(Number) as [number, number?];
      for (let n = from; n <= (to ?? from); n++) told.set(n, (told.get(n) ?? 0) + 1);
    }
  }
  const own = new Set(blocks.filter((b) => b.domeId === domeId).map((b) => `${b.course} ${b.number}`));
  const laid = new Map<number, number>();
  for (const key of own) {
    const n = Number(key.split(' ')[1]);
    laid.set(n, (laid.get(n) ?? 0) + 1);
  }
  const missing = [...laid].filter(([n, count]) => (told.get(n) ?? 0) < count).map(([n]) => n);
  expect(missing, `numbers of blocks of ${domeId} that stand nowhere`).toEqual([]);
}

/**
 * Holds that no sheet of tables and notes is nearly empty, and that notes stand under the table they belong to or right
 * of it. Of fields of 20 mm at least a third hold something: less reads as a scrap in a corner; common practice, no source.
 */
export function expectFilled(sheets: readonly Sheet[]): void {
  for (const sheet of sheets.filter((s) => s.views.length === 0)) {
    const { left, right, bottom, top } = drawingSpace(sheet.size);
    const [columns, rows] = [Math.round((right - left) / 20), Math.round((top - bottom) / 20)];
    const taken = new Set<number>();
    for (const p of sheet.paper) {
      const { min, max } = paperBounds([p]);
      const field = (v: number, from: number, to: number, count: number) =>
        Math.min(count - 1, Math.max(0, Math.floor(((v - from) / (to - from)) * count)));
      for (let i = field(min[0], left, right, columns); i <= field(max[0], left, right, columns); i++)
        for (let k = field(min[1], bottom, top, rows); k <= field(max[1], bottom, top, rows); k++)
          taken.add(i * rows + k);
    }
    expect(taken.size / (columns * rows), `${sheet.id} is nearly empty`).toBeGreaterThan(1 / 3);
  }
  for (const { id, paper } of sheets) {
    const headings = paper.flatMap((p) => (p.kind === 'text' ? [p] : []));
    for (const notes of headings.filter((p) => p.text.endsWith(': notes'))) {
      const table = notes.text.slice(0, -': notes'.length);
      const own = headings.filter((p) => p.text === table || p.text.startsWith(`${table} (`));
      if (own.length === 0) continue;
      const near = own.some(({ at: [x, y] }) => notes.at[0] >= x - 1e-6 && notes.at[1] <= y + 1e-6);
      expect(near, `${id}: ${notes.text} stand away from their table`).toBe(true);
    }
  }
}
