import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { writeXlsx } from '../../lib/writers/xlsx.js';
import { readByOpenpyxl } from '../readers/openpyxl.js';
import { row, table } from './demo-table.js';

describe('writeXlsx, as openpyxl reads it', () => {
  it('types the cells, freezes a bold header row with units, keeps decimals as a format', async () => {
    const notes = ['Cement burns.'];
    const [sheet] = readByOpenpyxl(
      await writeXlsx([table([row('A-1-01', 12, 400.04), row('b', null, -3)], { notes })]),
    );
    expect(sheet).toEqual({
      name: 'blocks',
      frozen: 'A2',
      rows: [
        ['Mark', 'Count', 'Lower arc (mm)'],
        ['A-1-01', 12, 400.04],
        ['b', null, -3],
        [null, null, null],
        ['Cement burns.', null, null],
      ],
      formats: ['General', '0', '0.0'],
      types: ['s', 'n', 'n'],
      boldHeader: true,
    });
  });

  it('shows inches of a tape in sixteenths, and keeps them as numbers', async () => {
    const inches = { key: 'depth', label: 'Depth', kind: 'number', unit: 'in', decimals: 4, inchParts: 16 } as const;
    const tape = { id: 'tape', title: 'Tape', columns: [inches], rows: [{ depth: 136.0625 }] };
    const [sheet] = readByOpenpyxl(await writeXlsx([tape]));
    expect(sheet?.rows[1]).toEqual([136.0625]);
    expect(sheet?.formats).toEqual(['# ??/16']);
  });

  it('writes a sheet a table, names that a workbook can hold, tables without rows too', async () => {
    const sheets = readByOpenpyxl(
      await writeXlsx([table([]), table([row('a', 1, 1)], { id: 'a-table-of-a-very-long-name-indeed-it-is' })]),
    );
    expect(sheets.map((s) => s.name)).toEqual(['blocks', 'a-table-of-a-very-long-name-ind']);
    expect(sheets[0]?.rows).toHaveLength(1);
  });

  it('keeps as text whatever looks like a formula or a date, and escapes what XML would read', async () => {
    const nasty = ['=1+1', '+1', '@SUM(A1)', '2026-05-04', '<b>&"', '00012', ' pad '];
    const [sheet] = readByOpenpyxl(await writeXlsx([table(nasty.map((t) => row(t, 1, 1)))]));
    expect(sheet?.rows.slice(1).map((r) => r[0])).toEqual(nasty);
    expect(sheet?.types[0]).toBe('s');
  });

  it('keeps a text on one line', async () => {
    const [sheet] = readByOpenpyxl(await writeXlsx([table([row('a\r\nb\u0001', 1, 1)])]));
    expect(sheet?.rows[1]?.[0]).toBe('a  b ');
  });

  it('refuses what does not fit its column', async () => {
    await expect(writeXlsx([table([row('a', 1.5, Number.NaN)])])).rejects.toThrow(/Count.*1\.5.*NaN is not a finite/);
  });

  it('gives the same bytes again, whatever the clock says, also for tables that are packed aside', async () => {
    const many = Array.from({ length: 6000 }, (_, i) => row(`mark-${i}`, i, (i * 7919) % 1000));
    const one = await writeXlsx([table(many)]);
    await new Promise((done) => setTimeout(done, 2100));
    const two = await writeXlsx([table(many)]);
    expect(Buffer.compare(one, two)).toBe(0);
    expect(Object.keys(unzipSync(one)).length).toBeGreaterThan(5);
    // Time and date of a local header, as the zip format has them: 1980-01-01 00:00.
    expect(new DataView(one.buffer, one.byteOffset).getUint32(10, true)).toBe(0x00210000);
  });
});
