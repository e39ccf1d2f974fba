import { UsageError } from '../exit.js';
import { csv as csvWriter, type Table } from '../library.js';
import { didYouMean } from '../suggest.js';
import type { Terminal } from '../terminal.js';
import * as texts from '../texts/look.js';
import { printJson } from './json.js';
import { printTable, tableObject } from './table.js';

const FORMATS = ['text', 'csv', 'json'] as const;

type Format = (typeof FORMATS)[number];

/** How a table is asked for. */
export interface TableArguments {
  format: string | undefined;
  json: boolean;
  csv: boolean;
  'decimal-comma': boolean;
}

export const PRINTED = {
  format: { type: 'string', requiresArg: true, describe: texts.howItIsPrinted },
  csv: { type: 'boolean', default: false, describe: texts.shortForFormatCsv },
} as const;

/**
 * The one way in which a table is to be printed.
 * @throws UsageError when it is none of ours, or two are asked for at once
 */
export function formatOf({ format: asked, json, csv, 'decimal-comma': comma }: TableArguments): Format {
  const format = FORMATS.find((known) => known === asked);
  if (asked !== undefined && format === undefined) {
    const mend = didYouMean(asked, FORMATS, texts.itKnows(FORMATS.join(', ')));
    throw new UsageError(texts.formatKnowsNot(JSON.stringify(asked)), mend);
  }
  const ways = new Set<Format>([
    ...(format ? [format] : []),
    ...(json ? ['json' as const] : []),
    ...(csv || comma ? ['csv' as const] : []),
  ]);
  const [way = 'text', other] = ways;
  if (other) throw new UsageError(texts.andAreTwoWays(way, other), texts.askForOne);
  return way;
}

/** One table in columns, as CSV or as JSON. */
export async function printOneTable(
  terminal: Terminal,
  table: Table,
  format: Format,
  decimalComma: boolean,
): Promise<void> {
  if (format === 'json') printJson(terminal, tableObject(table));
  else if (format === 'csv') terminal.raw((await csvWriter()).writeCsv(table, { decimalComma }));
  else printTable(terminal, table);
}
