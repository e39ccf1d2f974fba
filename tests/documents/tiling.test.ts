import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../lib/base/texts/cautions.js';
import { clipPath } from '../../lib/documents/clip.js';
import type { PathPrimitive, Segment } from '../../lib/documents/drawing.js';
import { pageStrip, STRIP_HEIGHT } from '../../lib/documents/page-strip.js';
import { arcSweep, segmentAt } from '../../lib/documents/segments.js';
import { auditSheet } from '../../lib/documents/sheet.js';
import { TEMPLATE_PAGES } from '../../lib/documents/sheet-size.js';
import type { TemplatePiece } from '../../lib/documents/template.js';
import { numbered, packPieces, tilePiece } from '../../lib/documents/tiling.js';
import { writePdf } from '../../lib/writers/pdf.js';
import { checkByQpdf, traceByMutool, wordsByPoppler } from '../readers/pdf.js';
import { nodePdf } from '../tools/pdf.js';

const WORDS = { title: 'Rib', project: 'Test house', caution: 'Preliminary.' };
const INFO = { title: 'Templates', author: '', subject: '', date: null };
const source = await nodePdf();

const lengthOf = (s: Segment): number =>
  s.kind === 'line' ? Math.hypot(s.to[0] - s.from[0], s.to[1] - s.from[1]) : s.radius * Math.abs(arcSweep(s));
const total = (paths: readonly PathPrimitive[]): number =>
  paths.flatMap((p) => p.segments).reduce((sum, s) => sum + lengthOf(s), 0);

describe('clipping', () => {
  it('pieces of neighbouring boxes are together as long as the path, and each lies in its box', () => {
    const arc: Segment = { kind: 'arc', centre: [3, -2], radius: 47, start: 0.3, end: 5.9, ccw: true };
    const back: Segment = { kind: 'line', from: segmentAt(arc, 1), to: segmentAt(arc, 0) };
    for (const [segments, closed] of [
      [[arc, back], true],
      [[{ ...arc, start: 5.9, end: 0.3, ccw: false }], false],
    ] as const) {
      const path: PathPrimitive = { kind: 'path', layer: 'cut', segments, closed };
      let sum = 0;
      for (let x = -60; x < 60; x += 20) {
        for (let y = -60; y < 60; y += 15) {
          const box = { min: [x, y], max: [x + 20, y + 15] } as const;
          const kept = clipPath(path, box);
          sum += total(kept);
          for (const s of kept.flatMap((p) => p.segments))
            for (const t of [0, 0.2, 0.5, 0.9, 1]) {
              const [px, py] = segmentAt(s, t);
              expect(px >= x - 1e-6 && px <= x + 20 + 1e-6 && py >= y - 1e-6 && py <= y + 15 + 1e-6).toBe(true);
            }
        }
      }
      expect(sum).toBeCloseTo(total([path]), 6);
    }
  });

  it('leaves whole what lies inside, and nothing of what lies outside', () => {
    const path: PathPrimitive = {
      kind: 'path',
      layer: 'cut',
      segments: [{ kind: 'line', from: [0, 0], to: [5, 5] }],
      closed: false,
    };
    expect(clipPath(path, { min: [0, 0], max: [9, 9] })).toEqual([path]);
    expect(clipPath(path, { min: [6, 0], max: [9, 9] })).toEqual([]);
  });
});

/** A half ring whose corners and radius are known: 1500 mm wide, on a foot that leans. */
const [R, FOOT] = [700, 120];
const ring: TemplatePiece = {
  name: 'ring',
  primitives: [
    {
      kind: 'path',
      layer: 'cut',
      closed: true,
      segments: [
        { kind: 'arc', centre: [0, 0], radius: R, start: 0, end: Math.PI, ccw: true },
        { kind: 'line', from: [-R, 0], to: [-R - 50, -FOOT] },
        { kind: 'line', from: [-R - 50, -FOOT], to: [R + 50, -FOOT] },
        { kind: 'line', from: [R + 50, -FOOT], to: [R, 0] },
      ],
    },
    { kind: 'text', layer: 'text', at: [-8, 300], text: 'a text', heightMm: 4, anchor: 'left', rotationDeg: 0 },
    {
      kind: 'dimension',
      type: 'linear',
      from: [-R - 50, -FOOT],
      to: [R + 50, -FOOT],
      angleDeg: 0,
      line: [0, -FOOT + 30],
    },
  ],
};

type Point = readonly [number, number];
const close = (a: Point, b: Point, far: number) => Math.hypot(a[0] - b[0], a[1] - b[1]) < far;

/** What a reader sees of a page: middles of register marks, and where the template's own wide lines go; y upward. */
function pageOf(pdf: Uint8Array, page: number) {
  const strokes = traceByMutool(pdf, page).filter((p) => p.kind === 'stroke');
  const span = (p: (typeof strokes)[number], i: 0 | 1) =>
    Math.max(...p.points.map((q) => q[i])) - Math.min(...p.points.map((q) => q[i]));
  const level = strokes.filter((p) => p.points.length === 2 && Math.abs(span(p, 0) - 9) < 1e-3 && span(p, 1) < 1e-6);
  const marks = level.map(({ points: [a, b] }): Point => [((a as Point)[0] + (b as Point)[0]) / 2, -(a as Point)[1]]);
  const ends = strokes
    .filter((p) => Math.abs(p.width - 0.5) < 1e-3)
    .flatMap((p) => p.ends.map(([x, y]): Point => [x, -y]));
  return { marks, ends };
}

describe.each([TEMPLATE_PAGES.iso[0], TEMPLATE_PAGES.iso[1], TEMPLATE_PAGES.us[0]])('on pages of $name', (size) => {
  it('joined cross on cross the pages give the template to a tenth of a millimetre', async () => {
    const sheets = numbered(tilePiece(ring, size, WORDS, 'metric'));
    expect(sheets.length).toBeGreaterThan(3);
    for (const sheet of sheets) expect(auditSheet(sheet), sheet.id).toEqual([]);
    const pdf = await writePdf(sheets, INFO, source);
    checkByQpdf(pdf);
    const words = wordsByPoppler(pdf).map((page) => page.words.map((w) => w.text));
    const pages = sheets.map((_, i) => ({ ...pageOf(pdf, i + 1), ...placeOf(words[i] as string[]) }));
    // The first page stays; each other is laid on the one to its left or above it, by two crosses or more.
    const placed = new Map<number, Point>();
    pages.forEach((page, i) => {
      const left = pages.findIndex((p) => p.row === page.row && p.column === page.column - 1);
      const above = pages.findIndex((p) => p.row === page.row - 1 && p.column === page.column);
      const j = left >= 0 ? left : above;
      if (j < 0) placed.set(i, [0, 0]);
      else {
        const found = shiftBetween((pages[j] as typeof page).marks, page.marks, left >= 0 ? 0 : 1);
        const at = placed.get(j) as Point;
        placed.set(i, [at[0] + found[0], at[1] + found[1]]);
      }
    });
    expect(placed.size).toBe(pages.length);
    const joined = pages.flatMap((page, i) =>
      page.ends.map(([x, y]): Point => [x + (placed.get(i) as Point)[0], y + (placed.get(i) as Point)[1]]),
    );
    // A figure may lie turned by a quarter to save pages.
    const spread = (i: 0 | 1) => Math.max(...joined.map((p) => p[i])) - Math.min(...joined.map((p) => p[i]));
    const ends = spread(1) > spread(0) ? joined.map(([x, y]): Point => [y, -x]) : joined;
    // The foot's two corners tell where the template came to lie.
    const low = Math.min(...ends.map((p) => p[1]));
    const foot = ends.filter((p) => Math.abs(p[1] - low) < 0.1);
    const [left, right] = [Math.min(...foot.map((p) => p[0])), Math.max(...foot.map((p) => p[0]))];
    expect(right - left).toBeCloseTo(2 * (R + 50), 1);
    const centre: Point = [(left + right) / 2, low + FOOT];
    for (const p of ends) {
      const [x, y] = [p[0] - centre[0], p[1] - centre[1]];
      const off =
        y >= 0
          ? Math.abs(Math.hypot(x, y) - R)
          : Math.min(Math.abs(y + FOOT), Math.abs((Math.abs(x) - R) * FOOT + y * 50) / Math.hypot(FOOT, 50));
      expect(off, `${x} ${y}`).toBeLessThan(0.1);
    }
    // Every page shows what it should: neighbours share their band.
    for (const corner of [
      [-R, 0],
      [R, 0],
      [-R - 50, -FOOT],
      [R + 50, -FOOT],
    ] as const)
      expect(ends.some((p) => close(p, [centre[0] + corner[0], centre[1] + corner[1]], 0.1))).toBe(true);
    expect(words.filter((w) => w.includes('text'))).toHaveLength(1);
    expect(words.filter((w) => w.includes('1500'))).toHaveLength(1);
    for (const w of words) expect(w.join(' ')).toContain('this bar must measure 100 mm');
  });
});

/** `Page B2 of`: second column, second row. */
function placeOf(words: readonly string[]): { column: number; row: number } {
  const name = words[words.indexOf('Page') + 1] as string;
  return { column: name.charCodeAt(0) - 65, row: Number(name.slice(1)) - 1 };
}

/** How far a page is moved to the right (0) or down (1) to bring two of its crosses on crosses of another. */
function shiftBetween(fixed: readonly Point[], loose: readonly Point[], axis: 0 | 1): Point {
  for (const a of fixed)
    for (const b of loose) {
      const shift: Point = [a[0] - b[0], a[1] - b[1]];
      const ahead = axis === 0 ? shift[0] : -shift[1];
      if (ahead < 100 || Math.abs(shift[1 - axis] as number) > 0.01) continue;
      const on = loose.filter((p) => fixed.some((q) => close([p[0] + shift[0], p[1] + shift[1]], q, 0.05)));
      if (on.length >= 2) return shift;
    }
  throw new Error('no two crosses of one page lie on those of the other');
}

describe('packing', () => {
  it('puts what has room on one page, nothing on another, and leaves nothing out', () => {
    const small = (name: string): TemplatePiece => ({
      name,
      primitives: [
        {
          kind: 'path',
          layer: 'cut',
          closed: true,
          segments: [
            { kind: 'line', from: [0, 0], to: [90, 0] },
            { kind: 'line', from: [90, 0], to: [45, 70] },
            { kind: 'line', from: [45, 70], to: [0, 0] },
          ],
        },
      ],
    });
    const pieces = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map(small);
    const sheets = packPieces(
      [...pieces.slice(0, 3), ring, ...pieces.slice(3)],
      TEMPLATE_PAGES.iso[0],
      WORDS,
      'metric',
    );
    for (const sheet of sheets) expect(auditSheet(sheet)).toEqual([]);
    const titles = sheets.map((s) => s.titleBlock.title);
    expect(titles[0]).toBe('a; b; c');
    expect(titles[titles.length - 1]).toBe('d; e; f; g');
    const paths = sheets[0]?.views[0]?.view.primitives.filter((p) => p.kind === 'path') ?? [];
    expect(paths).toHaveLength(3);
  });
});

describe('the foot of a page', () => {
  it('tells the whole caution, inside the page, however narrow that is', () => {
    const words = {
      title: 'Centering',
      project:
        'Plum Bank family house: no. PB-008; 2 Plum Bank; for the family at Plum Bank; drawn by drawing office; revision B; 2026-04-20.',
      caution: `${CAUTION.rings} ${CAUTION.authority}`,
    };
    for (const page of TEMPLATE_PAGES.iso) {
      const { primitives } = pageStrip(words, { columns: 6, rows: 2, column: 2, row: 0 }, page.width - 20, 'metric');
      const lines = primitives.flatMap((p) => (p.kind === 'text' ? [p] : []));
      expect(lines.map((p) => p.text).join(' ')).toContain(words.caution);
      for (const p of lines) expect(p.at[1], p.text).toBeGreaterThan(-STRIP_HEIGHT + 0.5);
    }
  });
});
