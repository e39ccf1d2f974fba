import { describe, expect, it } from 'vitest';
import { boxCorners, textBox } from '../../lib/documents/expansion.js';
import { placed } from '../../lib/documents/placing.js';
import { scaleWords, standardScales } from '../../lib/documents/scales.js';
import { auditSheet, sheetForm } from '../../lib/documents/sheet.js';
import { drawingSpace, ISO_SHEETS, US_SHEETS } from '../../lib/documents/sheet-size.js';
import { splitTable, tableBlock } from '../../lib/documents/table-block.js';
import { TITLE_BLOCK, titleBlockForm } from '../../lib/documents/title-block.js';
import { paperBounds } from '../tools/paper.js';
import { DEMO_TITLES, demoSheet } from './demo-sheet.js';

describe('sheets', () => {
  it('have the sizes of their standards, each ISO size half the next', () => {
    // ISO 216 and ISO 5457:1999; drawing spaces derived from its margins of 20 and 10 mm.
    expect(ISO_SHEETS.map((s) => [s.name, s.height, s.width])).toEqual([
      ['A3', 297, 420],
      ['A2', 420, 594],
      ['A1', 594, 841],
      ['A0', 841, 1189],
    ]);
    const spaces = ISO_SHEETS.map((s) => drawingSpace(s)).map((d) => [d.top - d.bottom, d.right - d.left]);
    expect(spaces).toEqual([
      [277, 390],
      [400, 564],
      [574, 811],
      [821, 1159],
    ]);
    // Inches, from memory.
    expect(
      US_SHEETS.map((s) => [Math.round((s.width / 25.4) * 1e6) / 1e6, Math.round((s.height / 25.4) * 1e6) / 1e6]),
    ).toEqual([
      [17, 11],
      [24, 18],
      [36, 24],
      [48, 36],
    ]);
  });

  it('write scales as their readers do: a foot at 1/4" to the foot is 1/48 of itself', () => {
    expect(standardScales('metric').map((s) => scaleWords(s, 'metric'))).toEqual(['1:20', '1:50', '1:100', '1:200']);
    for (const scale of standardScales('feet-inches')) {
      const [, over, under] = /^(\d+)\/(\d+)" = 1'-0"$/.exec(scaleWords(scale, 'feet-inches')) ?? [];
      expect((Number(over) / Number(under)) * scale).toBeCloseTo(12, 9);
    }
    expect(scaleWords(48, 'feet-inches')).toBe('1/4" = 1\'-0"');
    expect(scaleWords(480, 'feet-inches')).toBe('1" = 40\'-0"');
  });

  it('are audited: views apart, within the frame, off the title block, sound in themselves', () => {
    const sheet = demoSheet();
    const codes = (change: Partial<typeof sheet>) => auditSheet({ ...sheet, ...change }).map((f) => f.code);
    expect(codes({})).toEqual([]);
    const [first, second] = sheet.views;
    if (!first || !second) throw new Error('the sheet has two views');
    expect(codes({ views: [first, { ...second, at: [200, 240] }] })).toEqual(['views-overlap']);
    expect(codes({ views: [{ ...first, at: [30, 250] }] })).toEqual(['outside-frame']);
    expect(codes({ views: [{ ...second, at: [500, 60] }] })).toEqual(['on-title-block']);
    expect(codes({ views: [{ ...first, view: { ...first.view, scale: Number.NaN } }] })).toEqual(['unsound-view']);
    expect(
      codes({
        paper: [
          ...sheet.paper,
          { kind: 'text', layer: 'text', at: [1, 1], text: 'x', heightMm: 0, anchor: 'left', rotationDeg: 0 },
        ],
      }),
    ).toEqual(['unsound-view']);
    expect(codes({ paper: [{ kind: 'circle', layer: 'text', centre: [10, 10], radius: 30 }] })).toEqual([
      'outside-frame',
    ]);
  });

  it('keep every word of the title block in its own field, however long', () => {
    const long = 'W'.repeat(60);
    for (const text of ['', 'short', 'several words of middling length', `${long} ${long} ${long}`]) {
      const filled = Object.fromEntries(
        Object.entries(DEMO_TITLES).map(([k, v]) => [k, typeof v === 'string' ? text : v]),
      );
      const form = titleBlockForm({ ...DEMO_TITLES, ...filled }, 500, 20);
      const { min, max } = paperBounds(form);
      expect([min, max]).toEqual([
        [500 - TITLE_BLOCK.width, 20],
        [500, 20 + TITLE_BLOCK.height],
      ]);
      const boxes = form.flatMap((p) =>
        p.kind === 'text' ? [boxCorners(textBox(p.text, p.at, p.anchor, p.heightMm))] : [],
      );
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) {
          const apart = [0, 1].some((k) => {
            const of = (q: typeof a, which: 'min' | 'max') => Math[which](...q.map((p) => p[k as 0 | 1]));
            return of(a, 'max') <= of(b, 'min') + 1e-6 || of(b, 'max') <= of(a, 'min') + 1e-6;
          });
          expect(apart, text).toBe(true);
        }
      });
    }
  });

  it('say what ISO 7200 wants said', () => {
    const told = sheetForm(demoSheet()).map((p) => (p.kind === 'text' ? p.text : ''));
    for (const label of [
      'Legal owner',
      'Number',
      'Date of issue',
      'Sheet',
      'Title',
      'Approved by',
      'Created by',
      'Document type',
    ])
      expect(told, label).toContain(label);
    expect(told).toContain('1 of 2');
  });
});

describe('tables on sheets', () => {
  const rows = Array.from({ length: 40 }, (_, i) => ({ a: `row ${i}`, b: i }));
  const table = {
    id: 't',
    title: 'Rows',
    columns: [
      { key: 'a', label: 'name', kind: 'text' as const },
      { key: 'b', label: 'number', kind: 'integer' as const, unit: 'mm' },
    ],
    rows,
  };

  it('are as large as what they hold', () => {
    const block = tableBlock(table);
    const { min, max } = paperBounds(block.primitives);
    expect(min[0]).toBeGreaterThanOrEqual(0);
    expect(max[0]).toBeLessThanOrEqual(block.width + 1e-9);
    expect(min[1]).toBeCloseTo(-block.height, 9);
    expect(max[1]).toBeLessThanOrEqual(0);
  });

  it('are parted where they are too high, each part with its heads, and no row is lost', () => {
    const parts = splitTable(table, 100);
    expect(parts.length).toBeGreaterThan(2);
    expect(parts.flatMap((p) => p.rows)).toEqual(rows);
    for (const part of parts) expect(tableBlock(part).height).toBeLessThanOrEqual(100);
    expect(splitTable(table, 1000)).toEqual([table]);
  });

  it('keep their columns’ widths in every part', () => {
    // The widest words stand in the first part alone.
    const wide = { ...table, rows: rows.map((row, i) => (i === 2 ? { ...row, a: 'a row of many more words' } : row)) };
    const widths = (of: Parameters<typeof tableBlock>[0]) =>
      tableBlock(of).primitives.flatMap((p) =>
        p.kind === 'path' ? p.segments.flatMap((s) => (s.kind === 'line' ? [s.from[0], s.to[0]] : [])) : [],
      );
    const edges = (of: Parameters<typeof tableBlock>[0]) => [...new Set(widths(of))].sort((a, b) => a - b);
    const parts = splitTable(wide, 100);
    expect(parts.length).toBeGreaterThan(2);
    expect(edges(wide)).toHaveLength(3);
    for (const part of parts) expect(edges(part)).toEqual(edges(wide));
  });

  it('may begin in less room than they go on in', () => {
    const parts = splitTable(table, 150, 400, 60);
    expect(parts.map((p) => p.title)).toEqual(parts.map((_, i) => `Rows (${i + 1} of ${parts.length})`));
    expect(parts.flatMap((p) => p.rows)).toEqual(rows);
    const heights = parts.map((p) => tableBlock(p).height);
    expect(heights[0]).toBeLessThanOrEqual(60);
    // Rows are 5 mm high: a further one would not fit.
    expect(heights[0]).toBeGreaterThan(55);
    expect(heights[1]).toBeGreaterThan(145);
    for (const height of heights) expect(height).toBeLessThanOrEqual(150);
  });
});

it('a primitive is put into its place: turned, enlarged, moved', () => {
  const place = { turnDeg: 90, scale: 2, offset: [10, 0] as const };
  const path = placed(
    {
      kind: 'path',
      layer: 'text',
      closed: false,
      segments: [
        { kind: 'line', from: [0, 0], to: [1, 0] },
        { kind: 'arc', centre: [1, 1], radius: 1, start: -Math.PI / 2, end: 0, ccw: true },
      ],
    },
    place,
  );
  expect(path.segments).toEqual([
    { kind: 'line', from: [10, 0], to: [expect.closeTo(10, 12), 2] },
    { kind: 'arc', centre: [expect.closeTo(8, 12), 2], radius: 2, start: 0, end: Math.PI / 2, ccw: true },
  ]);
  const ellipse = placed(
    { kind: 'ellipse', layer: 'text', centre: [1, 0], major: [2, 0], ratio: 0.5, start: 0, end: 1 },
    place,
  );
  expect(ellipse).toMatchObject({ centre: [expect.closeTo(10, 12), 2], major: [expect.closeTo(0, 12), 4], ratio: 0.5 });
});
