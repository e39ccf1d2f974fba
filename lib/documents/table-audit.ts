import { DocumentError } from './document-error.js';
import { oneLine } from './plain-text.js';
import type { Cell, Column, Table } from './table.js';

/**
 * Holds every cell against its column, before a table is written.
 * @throws DocumentError that tells every cell that doesn't fit its column; numbers must be finite.
 */
export function auditTable(table: Table): void {
  const faults = table.rows.flatMap((row, r) =>
    table.columns.flatMap((column) => {
      const fault = cellFault(row[column.key], column);
      return fault ? [`Row ${r + 1}, column "${column.label}": ${fault}`] : [];
    }),
  );
  if (faults.length > 0) throw new DocumentError('bad-cell', table.id, faults.join(' '));
}

function cellFault(cell: Cell | undefined, column: Column): string | undefined {
  if (cell === undefined) return 'the cell is missing; an empty one is null.';
  if (cell === null) return undefined;
  if (column.kind === 'text') return typeof cell === 'string' ? undefined : `${cell} stands in a column of texts.`;
  if (typeof cell !== 'number') return `"${oneLine(cell)}" stands in a column of numbers.`;
  if (!Number.isFinite(cell)) return `${cell} is not a finite number.`;
  return column.kind === 'integer' && !Number.isSafeInteger(cell) ? `${cell} is not a whole number.` : undefined;
}

/** What stands over a column: its label, and its unit where it has one. */
export const columnHead = ({ label, unit }: Column): string => (unit ? `${label} (${unit})` : label);
