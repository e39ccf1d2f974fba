import { UsageError } from '../exit.js';
import { type Table, writeCsv } from '../library.js';
import type { Terminal } from '../terminal.js';
import { printJson } from './json.js';
import { printTable, tableObject } from './table.js';

/** How a table is asked for. */
export interface TableArguments {
  json: boolean;
  csv: boolean;
  'decimal-comma': boolean;
}

export const CSV = { csv: { type: 'boolean', default: false, describe: 'Print CSV for spreadsheets' } } as const;

/** @throws UsageError when two ways to print are asked for at once */
export function assertOneWay({ json, csv, 'decimal-comma': comma }: TableArguments): void {
  if (json && (csv || comma)) throw new UsageError('--json and CSV are two ways to print.', 'Ask for one of them.');
}

/** One table in columns, as CSV or as JSON. */
export function printOneTable(terminal: Terminal, table: Table, given: TableArguments): void {
  const decimalComma = given['decimal-comma'];
  if (given.json) printJson(terminal, tableObject(table));
  else if (given.csv || decimalComma) terminal.raw(writeCsv(table, { decimalComma }));
  else printTable(terminal, table);
}
