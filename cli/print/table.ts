import type { Cell, Column, Table } from '../library.js';
import { feetAndInches } from '../library.js';
import type { Terminal } from '../terminal.js';

function cellText(column: Column, cell: Cell): string {
  if (cell === null) return '';
  if (column.inchParts && typeof cell === 'number') return feetAndInches(cell, column.inchParts);
  return typeof cell === 'number' && column.kind === 'number' ? cell.toFixed(column.decimals ?? 3) : String(cell);
}

const header = ({ label, unit, inchParts }: Column): string => (unit && !inchParts ? `${label} (${unit})` : label);

/** A table in columns as wide as their longest cell, numbers to the right, notes below. */
export function printTable(terminal: Terminal, table: Table): void {
  const columns = table.columns.map((column) => {
    const cells = table.rows.map((row) => cellText(column, row[column.key] ?? null));
    const width = Math.max(header(column).length, ...cells.map((cell) => cell.length));
    const pad = (text: string) => (column.kind === 'text' ? text.padEnd(width) : text.padStart(width));
    return { head: pad(header(column)), cells: cells.map(pad) };
  });
  terminal.out(['strong', table.title]);
  terminal.out(
    columns
      .map(({ head }) => head)
      .join('  ')
      .trimEnd(),
  );
  for (let i = 0; i < table.rows.length; i++) {
    terminal.out(
      columns
        .map(({ cells }) => cells[i] ?? '')
        .join('  ')
        .trimEnd(),
    );
  }
  for (const note of table.notes ?? []) terminal.out(note);
}

/** A table for JSON: numbers rounded to the decimals of their column, an empty cell as null. */
export function tableObject(table: Table): Table {
  const rounded = (column: Column, cell: Cell): Cell =>
    typeof cell === 'number' && column.kind === 'number' ? Number(cell.toFixed(column.decimals ?? 3)) : cell;
  const rows = table.rows.map((row) =>
    Object.fromEntries(table.columns.map((column) => [column.key, rounded(column, row[column.key] ?? null)])),
  );
  return { ...table, rows };
}
