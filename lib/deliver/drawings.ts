import type { House } from '../description/house.js';
import { type Sheet, sheetName } from '../documents/sheet.js';
import type { SheetSet } from '../drawings/sheets/house-sheets.js';
import { drawingRegister } from '../tables/drawing-register.js';
import { writeDxfSheet } from '../writers/dxf.js';
import { type PdfSource, writePdf } from '../writers/pdf.js';
import { writeSvgSheet } from '../writers/svg.js';
import type { DrawnSet } from './file.js';

/** Sheets as files: the whole set as one PDF where a maker of PDF is given, each sheet as DXF and SVG. */
export async function drawingSet(house: House, { sheets, summary }: SheetSet, pdf?: PdfSource): Promise<DrawnSet> {
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
