import { calendarChart } from '../drawings/calendar-chart.js';
import { type CsvOptions, writeCsv } from '../writers/csv.js';
import { writeSvg } from '../writers/svg.js';
import { writeXlsx } from '../writers/xlsx.js';
import type { PackageFile } from './file.js';
import type { Study } from './study.js';
import { tablesOf } from './tables.js';

/** Every table as CSV and all in one workbook, and the calendar as bars. */
export async function tableFiles(known: Study, csv: CsvOptions = {}): Promise<PackageFile[]> {
  const tables = await tablesOf(known);
  return [
    ...tables.map((table) => ({ path: `tables/${table.id}.csv`, bytes: writeCsv(table, csv) })),
    { path: 'tables/tables.xlsx', bytes: await writeXlsx(tables) },
    { path: 'tables/calendar.svg', bytes: writeSvg(calendarChart(known.works.calendar)) },
  ];
}
