import { unzipSync } from 'fflate';
import writeWorkbook, { type CellObject, type Row, type Sheet } from 'write-excel-file/universal';
import { oneLine } from '../documents/plain-text.js';
import type { Cell, Column, Table } from '../documents/table.js';
import { auditTable, columnHead } from '../documents/table-audit.js';
import { zipFiles } from './zip.js';

/** Characters that a cell of a column is at least and at most wide. */
const WIDTH: readonly [number, number] = [8, 60];
/** Longest name of a sheet, and what it may not hold. */
const LONGEST_NAME = 31;
const UNFIT_IN_NAME = /[\\/?*[\]:]/g;

/**
 * Tables as one XLSX workbook, a sheet a table: a frozen header row `label (unit)`, typed cells with the decimals of
 * their column, then each note in the first cell of a row of its own after an empty one. Same tables, same bytes.
 * @throws DocumentError that tells every cell of a table that doesn't fit its column
 */
export async function writeXlsx(tables: readonly Table[]): Promise<Uint8Array> {
  for (const table of tables) auditTable(table);
  const blob = await writeWorkbook(tables.map(sheetOf)).toBlob();
  return withFixedTimes(new Uint8Array(await blob.arrayBuffer()));
}

function sheetOf(table: Table): Sheet<Blob> {
  const notes = table.notes ?? [];
  const head: Row = table.columns.map((column) => ({
    value: oneLine(columnHead(column)),
    type: String,
    fontWeight: 'bold',
    wrap: true,
    alignVertical: 'top',
    align: column.kind === 'text' ? 'left' : 'right',
  }));
  const rows: Row[] = table.rows.map((row) => table.columns.map((column) => cellOf(row[column.key] ?? null, column)));
  return {
    sheet: table.id.replace(UNFIT_IN_NAME, '-').slice(0, LONGEST_NAME),
    data: [head, ...rows, ...(notes.length > 0 ? [[null], ...notes.map((note): Row => [text(note)])] : [])],
    columns: table.columns.map((column) => ({ width: widthOf(column, table) })),
    stickyRowsCount: 1,
  };
}

const text = (value: string): CellObject => ({ value: oneLine(value), type: String });

function cellOf(cell: Cell, column: Column): CellObject | null {
  if (cell === null) return null;
  if (typeof cell === 'string') return text(cell);
  if (column.inchParts) return { value: cell, type: Number, format: `# ??/${column.inchParts}` };
  const decimals = column.kind === 'integer' ? 0 : (column.decimals ?? 3);
  return { value: cell, type: Number, format: decimals > 0 ? `0.${'0'.repeat(decimals)}` : '0' };
}

/** Wide enough for the cells; headers wrap. */
function widthOf(column: Column, table: Table): number {
  const longest = table.rows.reduce((most, row) => {
    const cell = row[column.key] ?? '';
    const length = typeof cell === 'number' ? cell.toFixed(column.decimals ?? 0).length : cell.length;
    return Math.max(most, length);
  }, 0);
  const word = Math.max(
    ...columnHead(column)
      .split(' ')
      .map((w) => w.length),
  );
  return Math.min(WIDTH[1], Math.max(WIDTH[0], longest + 2, word + 2));
}

/** The same archive with one time on every part, since the clock's would make other bytes of the same tables. */
function withFixedTimes(archive: Uint8Array): Uint8Array {
  const parts = Object.entries(unzipSync(archive)).sort(([a], [b]) => (a < b ? -1 : 1));
  return zipFiles(parts);
}
