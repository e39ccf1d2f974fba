import { describe, expect, it } from 'vitest';
import type { Table } from '../../lib/documents/table.js';
import { writeCsv } from '../../lib/writers/csv.js';
import { row, table } from './demo-table.js';

const read = (t: Table, options = {}): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(writeCsv(t, options));

describe('writeCsv', () => {
  it('writes a byte order mark, a header with units, CRLF and fixed decimals', () => {
    expect(read(table([row('A-1-01', 12, 400), row('Ø "x", y', 0, 399.96)]))).toBe(
      '\ufeffMark,Count,Lower arc (mm)\r\nA-1-01,12,400.0\r\n"Ø ""x"", y",0,400.0\r\n',
    );
  });

  it('leaves empty cells empty, writes negative numbers plain and no negative zero', () => {
    expect(
      read(table([row(null, null, null), row('a', -3, -12.34), row('b', 0, -0.01)]))
        .split('\r\n')
        .slice(1, 4),
    ).toEqual([',,', 'a,-3,-12.3', 'b,0,0.0']);
  });

  it('disarms every text that a spreadsheet would run', () => {
    const nasty = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\uff1d1'];
    const lines = read(
      table(
        nasty.map((text) => row(text, 1, 1)),
        { notes: ['=HYPERLINK("x")'] },
      ),
    ).split('\r\n');
    for (const line of lines.slice(1, -3)) expect(line).toMatch(/^('| )/);
    expect(lines.at(-2)).toBe(`"'=HYPERLINK(""x"")"`);
  });

  it('keeps each row on one line', () => {
    expect(read(table([row('a\r\nb\nc', 1, 1)])).split('\r\n')).toHaveLength(3);
  });

  it('puts notes below, after an empty row', () => {
    const lines = read(table([row('a', 1, 1)], { notes: ['Cement burns.', 'Lift with two, never alone.'] })).split(
      '\r\n',
    );
    expect(lines.slice(2)).toEqual(['', 'Cement burns.', '"Lift with two, never alone."', '']);
  });

  it('writes a decimal comma with semicolons', () => {
    expect(read(table([row('a, b', 2, 1.25)]), { decimalComma: true })).toBe(
      '\ufeffMark;Count;Lower arc (mm)\r\na, b;2;1,3\r\n',
    );
  });

  it('refuses what does not fit its column, all at once', () => {
    const bad = table([
      row('a', 1.5, Number.NaN),
      row('b', 1, Number.POSITIVE_INFINITY),
      row(3, 'x', 1),
      { mark: 'c', count: 1 } as unknown as ReturnType<typeof row>,
    ]);
    expect(() => read(bad)).toThrow(
      /^blocks: .*Row 1, column "Count": 1\.5.*NaN is not a finite.*Row 2.*Infinity.*Row 3, column "Mark": 3.*"x" stands.*Row 4, column "Lower arc": the cell is missing/,
    );
  });

  it('gives the same bytes again', () => {
    const t = table([row('a', 1, 2)]);
    expect(writeCsv(t)).toEqual(writeCsv(t));
  });
});
