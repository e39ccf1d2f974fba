import { describe, expect, it } from 'vitest';
import { paperBounds } from '../../lib/documents/sheet.js';
import { drawingSpace, ISO_SHEETS, type SheetSize } from '../../lib/documents/sheet-size.js';
import type { Table } from '../../lib/documents/table.js';
import { TITLE_BLOCK } from '../../lib/documents/title-block.js';
import { flowPages } from '../../lib/drawings/sheets/flow.js';
import type { Page } from '../../lib/drawings/sheets/page.js';

const A3 = ISO_SHEETS.find((s) => s.name === 'A3') as SheetSize;
const table = (title: string, rows: number): Table => ({
  id: title,
  title,
  columns: [{ key: 'a', label: 'what', kind: 'text' }],
  // Words enough to be as wide as the sheet, so that nothing stands beside.
  rows: Array.from({ length: rows }, (_, i) => ({ a: `${title} ${i} ${'of many words '.repeat(13)}` })),
});
const wordsOn = ({ paper }: Page) => paper.flatMap((p) => (p.kind === 'text' ? [p.text] : []));

describe('tables over sheets of words', () => {
  // A sheet has room for 37 rows beside nothing else.
  it.each([
    ['begins in the rest of a sheet where that saves one', [6, 50], 2],
    ['stays whole where that saves none', [6, 35], 2],
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
    if (long === 35) expect(heads).toEqual([[], ['Long']]);
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
});
