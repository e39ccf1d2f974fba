import { describe, expect, it } from 'vitest';
import { paperBounds } from '../../lib/documents/sheet.js';
import { drawingSpace, ISO_SHEETS, type SheetSize } from '../../lib/documents/sheet-size.js';
import type { Table } from '../../lib/documents/table.js';
import { TITLE_BLOCK } from '../../lib/documents/title-block.js';
import { flowPages } from '../../lib/drawings/sheets/flow.js';
import { FreeRoom, GAP } from '../../lib/drawings/sheets/free-room.js';
import type { Page } from '../../lib/drawings/sheets/page.js';

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
    expect(room.addAll([block(50, 30), block(60, 30)])).toBe(false);
    expect(room.placed).toEqual([]);
    expect(room.addAll([block(50, 30), block(40, 60)])).toBe(true);
    for (const { area: a } of room.placed) {
      expect(a.top <= 50 - GAP || a.left >= 50 + GAP).toBe(true);
      expect(a.bottom >= 40 || a.right <= 60).toBe(true);
    }
  });
});
