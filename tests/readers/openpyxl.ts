import { readWith } from './run.js';

export interface SheetReading {
  readonly name: string;
  /** First cell below and beside what is frozen, `A2` under one header row. */
  readonly frozen: string | null;
  readonly rows: readonly (readonly (string | number | null)[])[];
  /** Number formats of the second row. */
  readonly formats: readonly string[];
  /** Types of the second row: n number, s text. */
  readonly types: readonly string[];
  readonly boldHeader: boolean;
}

const SCRIPT = `
import json, sys, openpyxl
book = openpyxl.load_workbook(sys.argv[-1])
def told(sheet):
    # Asking for a row makes it, so only rows that are there are asked for.
    second = list(sheet[2]) if sheet.max_row > 1 else []
    return {
        'name': sheet.title,
        'frozen': sheet.freeze_panes,
        'rows': [[cell.value for cell in row] for row in sheet.iter_rows()],
        'formats': [cell.number_format for cell in second],
        'types': [cell.data_type for cell in second],
        'boldHeader': all(cell.font.b for cell in sheet[1]),
    }
print(json.dumps([told(sheet) for sheet in book]))
`;

/** What openpyxl (Debian's python3-openpyxl) reads in a workbook, a sheet each. */
export function readByOpenpyxl(xlsx: Uint8Array): SheetReading[] {
  const program = { command: '/usr/bin/python3', args: ['-c', SCRIPT], debianPackage: 'python3-openpyxl' };
  return JSON.parse(readWith(program, { name: 'tables.xlsx', bytes: xlsx }));
}
