import * as texts from '../base/texts/document-faults.js';
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
      return fault ? [texts.rowAndColumn(r + 1, column.label, fault)] : [];
    }),
  );
  if (faults.length > 0) throw new DocumentError('bad-cell', table.id, faults.join(' '));
}

function cellFault(cell: Cell | undefined, column: Column): string | undefined {
  if (cell === undefined) return texts.cellIsMissingEmpty;
  if (cell === null) return undefined;
  if (column.kind === 'text') return typeof cell === 'string' ? undefined : texts.standsInColumnOfTexts(cell);
  if (typeof cell !== 'number') return texts.standsInColumn(oneLine(cell));
  if (!Number.isFinite(cell)) return texts.isNotFiniteNumber(cell);
  return column.kind === 'integer' && !Number.isSafeInteger(cell) ? texts.isNotWholeNumber(cell) : undefined;
}

/** What stands over a column: its label, and its unit where it has one. */
export const columnHead = ({ label, unit }: Column): string => (unit ? `${label} (${unit})` : label);
