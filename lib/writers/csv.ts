import { stringify } from 'csv-stringify/browser/esm/sync';
import { oneLine } from '../documents/plain-text.js';
import type { Cell, Column, Table } from '../documents/table.js';
import { auditTable, columnHead } from '../documents/table-audit.js';

export interface CsvOptions {
  /** Decimal comma, and with it semicolons between cells, as spreadsheets of such regions expect. */
  readonly decimalComma?: boolean;
}

/**
 * A table as CSV (UTF-8 with a byte order mark, CRLF): a header row `label (unit)`, the rows, then each note in the
 * first cell of a row of its own after an empty one. A text that a spreadsheet would run as a formula is disarmed by
 * an apostrophe.
 * @throws DocumentError that tells every cell that doesn't fit its column; numbers must be finite.
 */
export function writeCsv(table: Table, options: CsvOptions = {}): Uint8Array {
  auditTable(table);
  const notes = table.notes ?? [];
  const records: Cell[][] = [
    table.columns.map(columnHead),
    ...table.rows.map((row) => table.columns.map((column) => row[column.key] ?? null)),
    ...(notes.length > 0 ? [[''], ...notes.map((note) => [note])] : []),
  ];
  const { decimalComma = false } = options;
  const text = stringify(records, {
    bom: true,
    record_delimiter: 'windows',
    delimiter: decimalComma ? ';' : ',',
    escape_formulas: true,
    cast: {
      number: (value, context) => numberText(value, table.columns[context.index], decimalComma),
      string: (value) => oneLine(value),
    },
  });
  return new TextEncoder().encode(text);
}

function numberText(value: number, column: Column | undefined, decimalComma: boolean): string {
  const text = column?.decimals === undefined ? String(value) : value.toFixed(column.decimals);
  const unsigned = Number(text) === 0 ? text.replace('-', '') : text;
  return decimalComma ? unsigned.replace('.', ',') : unsigned;
}
