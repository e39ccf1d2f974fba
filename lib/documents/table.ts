/** One column of a table: typed, with its unit in the header and the decimals to print. */
export interface Column {
  readonly key: string;
  readonly label: string;
  readonly kind: 'text' | 'number' | 'integer';
  /** Unit printed in the header, e.g. `mm`; empty for texts and counts. */
  readonly unit?: string;
  readonly decimals?: number;
  /** Inches for a tape, in whole sixteenths: shown as fractions where people read them. */
  readonly sixteenths?: true;
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
