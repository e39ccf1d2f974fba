import type { InchParts } from '../base/measures.js';
/** One column of a table: typed, with its unit in the header and the decimals to print. */
export interface Column {
  readonly key: string;
  readonly label: string;
  readonly kind: 'text' | 'number' | 'integer';
  /** Unit printed in the header, e.g. `mm`; empty for texts and counts. */
  readonly unit?: string;
  readonly decimals?: number;
  /** Inches that people read as feet, inches and a fraction of so many parts: 16 for a tape, 32 in a workshop. */
  readonly inchParts?: InchParts;
}

/** What stands in a cell; `null` for nothing. */
export type Cell = string | number | null;

/** A neutral table: rows in the order to print. `notes` stand below it (cautions belong here). */
export interface Table {
  readonly id: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Readonly<Record<string, Cell>>[];
  readonly notes?: readonly string[];
}
