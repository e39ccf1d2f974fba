import { describe, expect, it } from 'vitest';
import { drawingSpace, ISO_SHEETS, type SheetSize } from '../../lib/documents/sheet-size.js';
import type { Table } from '../../lib/documents/table.js';
import { TITLE_BLOCK } from '../../lib/documents/title-block.js';
import { flowPages } from '../../lib/drawings/sheets/flow.js';
import { FreeRoom, GAP } from '../../lib/drawings/sheets/free-room.js';
import type { Page } from '../../lib/drawings/sheets/page.js';
import { paperBounds } from '../tools/paper.js';

const A3 = ISO_SHEETS.find((s) => s.name === 'A3') as SheetSize;
const LONG_WORDS = ['b', 'c', 'd', 'e', 'f'];
const table = (title: string, rows: number): Table => ({
  id: title,
  title,
  columns: ['a', ...LONG_WORDS].map((key) => ({ key, label: key, kind: 'text' })),
  // Words long enough to make it as wide as the sheet, so that nothing stands beside, and none is broken.
  rows: Array.from({ length: rows }, (_, i) => ({
    a: `${title} ${i} of`,
    ...Object.fromEntries(LONG_WORDS.map((key) => [key, 'one-word-that-is-broken-nowhere'])),
  })),
});
/** A table that is about as wide as a third of a sheet. */
const narrow = (title: string, rows: number): Table => ({
  id: title,
  title,
  columns: ['a', 'b'].map((key) => ({ key, label: key, kind: 'text' })),
  rows: Array.from({ length: rows }, (_, i) => ({ a: `${title} ${i} of`, b: 'one-word-that-is-broken-nowhere' })),
});
const wordsOn = ({ paper }: Page) => paper.flatMap((p) => (p.kind === 'text' ? [p.text] : []));

describe('tables over sheets of words', () => {
  // A sheet has room for 37 rows beside nothing else.
  it.each([
    ['begins in the rest of a sheet where that saves one', [6, 50], 2],
    ['stays whole where that saves none', [20, 35], 2],
    ['begins there too where that sheet would else be nearly empty', [6, 35], 2],
    ['stays whole where hardly a row has room', [34, 50], 3],
  ])('one %s', (_, [short, long], sheets) => {
    const pages = flowPages(A3, [table('Short', short as number), table('Long', long as number)]);
    expect(pages).toHaveLength(sheets);
    const rows = pages.flatMap(wordsOn).flatMap((w) => /^(Short|Long) \d+ of/.exec(w)?.[0] ?? []);
    expect(rows).toEqual(
      [['Short', short] as const, ['Long', long] as const].flatMap(([name, n]) =>
        Array.from({ length: n as number }, (_, i) => `${name} ${i} of`),
      ),
    );
    const heads = pages.map((page) => wordsOn(page).filter((w) => /^Long($| \(\d of \d\)$)/.test(w)));
    if (short === 20) expect(heads).toEqual([[], ['Long']]);
    else if (sheets === 2) expect(heads).toEqual([['Long (1 of 2)'], ['Long (2 of 2)']]);
    else expect(heads).toEqual([[], ['Long (1 of 2)'], ['Long (2 of 2)']]);
    const { left, right, bottom } = drawingSpace(A3);
    for (const { paper } of pages) {
      const { min, max } = paperBounds(paper);
      expect(min[0]).toBeGreaterThan(left);
      expect(max[0]).toBeLessThan(right);
      expect(min[1]).toBeGreaterThan(bottom + TITLE_BLOCK.height);
    }
  });

  it('goes on in the next column where that saves a sheet', () => {
    const pages = flowPages(A3, [narrow('Short', 30), narrow('Long', 60)]);
    expect(pages).toHaveLength(1);
    const [page] = pages as [Page];
    const long = page.paper.filter((p) => p.kind === 'text' && /^Long \d+ of$/.test(p.text));
    expect(long.map((p) => (p.kind === 'text' ? p.text : ''))).toEqual(
      Array.from({ length: 60 }, (_, i) => `Long ${i} of`),
    );
    expect(new Set(long.map((p) => (p.kind === 'text' ? p.at[0] : 0))).size).toBeGreaterThan(1);
    expect(wordsOn(page).filter((w) => /^Long \(\d of \d\)$/.test(w)).length).toBeGreaterThan(1);
  });

  it('may be half as wide as a sheet where that saves one', () => {
    const wordy: Table = {
      id: 'wordy',
      title: 'Wordy',
      columns: [1, 2, 3, 4].map((n) => ({ key: `c${n}`, label: `column ${n}`, kind: 'text' })),
      rows: Array.from({ length: 45 }, () => ({
        c1: 'a',
        c2: 'b',
        c3: 'some words '.repeat(6),
        c4: 'and others '.repeat(6),
      })),
    };
    expect(flowPages(A3, [wordy])).toHaveLength(1);
  });
});

describe('sheets of words that would look empty', () => {
  const A1 = ISO_SHEETS.find((s) => s.name === 'A1') as SheetSize;
  const heights = ({ paper }: Page) => [...new Set(paper.flatMap((p) => (p.kind === 'text' ? [p.heightMm] : [])))];

  it('have letters of the next sizes of ISO 3098 where one sheet holds them', () => {
    const usual = heights(flowPages(A3, [narrow('Short', 60), narrow('Long', 60)])[0] as Page);
    for (const [size, rows, times] of [
      [A3, 60, Math.SQRT2],
      [A1, 20, 2],
    ] as const) {
      const pages = flowPages(size, [narrow('Short', rows)]);
      expect(pages).toHaveLength(1);
      const [page] = pages as [Page];
      expect(heights(page)).toEqual(usual.map((h) => expect.closeTo(h * times, 9)));
      const { left, right, bottom, top } = drawingSpace(size);
      const { min, max } = paperBounds(page.paper);
      expect(min[0]).toBeGreaterThan(left);
      expect(max[0]).toBeLessThan(right);
      expect(max[1]).toBeLessThan(top);
      expect(min[1]).toBeGreaterThan(bottom);
      for (const p of page.paper) {
        const box = paperBounds([p]);
        expect(box.min[1] > bottom + TITLE_BLOCK.height || box.max[0] < right - TITLE_BLOCK.width).toBe(true);
      }
    }
  });

  it('share rows out where the last sheet would hold few of them', () => {
    const pages = flowPages(A3, [table('Long', 45)]);
    const rows = pages.map((page) => wordsOn(page).filter((w) => /^Long \d+ of/.test(w)).length);
    expect(rows).toHaveLength(2);
    expect(Math.min(...rows)).toBeGreaterThan(15);
    expect(Math.max(...rows) + Math.min(...rows)).toBe(45);
  });

  it('say what is too large for any sheet', () => {
    expect(() => flowPages(A3, [{ width: 500, height: 20, primitives: [] }])).toThrow(
      'a block of 500 by 20 mm fits no A3',
    );
  });
});

describe('blocks in free room', () => {
  const area = { left: 0, right: 100, bottom: 0, top: 100 };
  const block = (width: number, height: number) => ({ width, height, primitives: [] });
  const corners = (room: FreeRoom) => room.placed.map(({ area: a }) => [a.left, a.top]);

  it('stand in columns, and a later small one in what an earlier column leaves; the next goes on where the last one stood', () => {
    const room = new FreeRoom(area);
    expect(room.add(block(40, 60))).toBe(true);
    expect(room.add(block(40, 80))).toBe(true);
    // Too high for the rest of the second column, and too wide for a third.
    expect(room.add(block(40, 30))).toBe(true);
    expect(room.add(block(40, 10))).toBe(true);
    expect(room.add(block(40, 30))).toBe(false);
    expect(corners(room)).toEqual([
      [0, 100],
      [40 + GAP, 100],
      [0, 40 - GAP],
      [40 + GAP, 20 - GAP],
    ]);
  });

  it('keep off what is taken, and either all of some or none are added', () => {
    const room = new FreeRoom(
      area,
      [{ left: 60, right: 100, bottom: 0, top: 40 }],
      [{ left: 0, right: 50, bottom: 50, top: 100 }],
    );
    expect(room.add(block(50, 30), block(60, 30))).toBe(false);
    expect(room.placed).toEqual([]);
    expect(room.add(block(50, 30))).toBe(true);
    expect(room.add(block(40, 60))).toBe(true);
    for (const { area: a } of room.placed) {
      expect(a.top <= 50 - GAP || a.left >= 50 + GAP).toBe(true);
      expect(a.bottom >= 40 || a.right <= 60).toBe(true);
    }
  });

  it('that belong together stand right under or right beside each other, or are left out', () => {
    const room = new FreeRoom(area, [], [{ left: 0, right: 40, bottom: 60, top: 100 }]);
    // To the right both have room only under each other, on the left only beside each other.
    expect(room.add(block(50, 40), block(50, 50))).toBe(true);
    expect(corners(room)).toEqual([
      [40 + GAP, 100],
      [40 + GAP, 60 - GAP],
    ]);
    const low = new FreeRoom(area, [], [{ left: 0, right: 100, bottom: 50, top: 100 }]);
    expect(low.add(block(40, 43), block(50, 20))).toBe(true);
    expect(corners(low)).toEqual([
      [0, 50 - GAP],
      [40 + GAP, 50 - GAP],
    ]);
    expect(low.groups).toHaveLength(1);
    // Each has room, but not near the other.
    const split = new FreeRoom(area, [
      { left: 0, right: 60, bottom: 40, top: 60 },
      { left: 60, right: 100, bottom: 40, top: 100 },
    ]);
    expect(split.add(block(60, 40), block(100, 40))).toBe(false);
    expect(split.placed).toEqual([]);
  });
});
