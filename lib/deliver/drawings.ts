import type { House } from '../description/house.js';
import { type Sheet, sheetName } from '../documents/sheet.js';
import type { Table } from '../documents/table.js';
import type { HandedOver } from '../drawings/handed.js';
import { beginSheets, type SheetSet } from '../drawings/sheets/house-sheets.js';
import { bondHouse } from '../masonry/bond/bond.js';
import { setOutHouse } from '../setout/house.js';
import { drawingRegister } from '../tables/drawing-register.js';
import { writeDxfSheet } from '../writers/dxf.js';
import { type PdfSource, writePdf } from '../writers/pdf.js';
import { writeSvgSheet } from '../writers/svg.js';
import type { PackageFile } from './file.js';

/** A house's drawings as files, a line that tells on what and how large they are, and the list of the sheets. */
export interface DrawingSet {
  readonly files: readonly PackageFile[];
  readonly summary: string;
  readonly register: Table;
}

/** Sheets as files: the whole set as one PDF where a maker of PDF is given, each sheet as DXF and SVG. */
export async function drawingSet(house: House, { sheets, summary }: SheetSet, pdf?: PdfSource): Promise<DrawingSet> {
  const { project } = house;
  const info = {
    title: project.title,
    author: project.drawnBy,
    subject: sheets.map((sheet) => sheetName(sheet)).join('; '),
    date: project.date,
  };
  return {
    files: [
      ...(pdf ? [{ path: 'drawings/set.pdf', bytes: await writePdf(sheets, info, pdf) }] : []),
      ...sheets.flatMap((sheet: Sheet) => [
        { path: `drawings/${sheet.id}.dxf`, bytes: writeDxfSheet(sheet) },
        { path: `drawings/${sheet.id}.svg`, bytes: writeSvgSheet(sheet) },
      ]),
    ],
    summary,
    register: drawingRegister(sheets),
  };
}

/**
 * The same from the description, for a thread that is given no more than that: it begins the views at once, and lays out
 * the sheets when what they show of other stages' results has been handed over.
 */
export async function drawHouse(house: House, handed: Promise<HandedOver>, pdf?: PdfSource): Promise<DrawingSet> {
  const finish = beginSheets(bondHouse(setOutHouse(house)).setout);
  return drawingSet(house, finish(await handed), pdf);
}
