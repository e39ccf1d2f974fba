import { stringify } from 'csv-stringify/browser/esm/sync';
import { DocumentError } from '../documents/document-error.js';
import { oneLine } from '../documents/plain-text.js';
import type { Cell, Column, Table } from '../documents/table.js';

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
  const faults = table.rows.flatMap((row, r) =>
    table.columns.flatMap((column) => {
      const fault = cellFault(row[column.key], column);
      return fault ? [`Row ${r + 1}, column "${column.label}": ${fault}`] : [];
    }),
  );
  if (faults.length > 0) throw new DocumentError('bad-cell', table.id, faults.join(' '));

  const notes = table.notes ?? [];
  const records: Cell[][] = [
    table.columns.map(({ label, unit }) => (unit ? `${label} (${unit})` : label)),
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

function cellFault(cell: Cell | undefined, column: Column): string | undefined {
  if (cell === undefined) return 'the cell is missing; an empty one is null.';
  if (cell === null) return undefined;
  if (column.kind === 'text') return typeof cell === 'string' ? undefined : `${cell} stands in a column of texts.`;
  if (typeof cell !== 'number') return `"${oneLine(cell)}" stands in a column of numbers.`;
  if (!Number.isFinite(cell)) return `${cell} is not a finite number.`;
  return column.kind === 'integer' && !Number.isSafeInteger(cell) ? `${cell} is not a whole number.` : undefined;
}

function numberText(value: number, column: Column | undefined, decimalComma: boolean): string {
  const text = column?.decimals === undefined ? String(value) : value.toFixed(column.decimals);
  const unsigned = Number(text) === 0 ? text.replace('-', '') : text;
  return decimalComma ? unsigned.replace('.', ',') : unsigned;
}
