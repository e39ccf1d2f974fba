import type { Cell, Table } from '../../lib/documents/table.js';

/** A small table with a column of each kind. */
export const table = (rows: Table['rows'], more: Partial<Table> = {}): Table => ({
  id: 'blocks',
  title: 'Blocks',
  columns: [
    { key: 'mark', label: 'Mark', kind: 'text' },
    { key: 'count', label: 'Count', kind: 'integer' },
    { key: 'length', label: 'Lower arc', kind: 'number', unit: 'mm', decimals: 1 },
  ],
  rows,
  ...more,
});

export const row = (mark: Cell, count: Cell, length: Cell) => ({ mark, count, length });
