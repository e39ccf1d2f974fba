import { sheetName } from '../documents/sheet.js';
import { houseSheets } from '../drawings/sheets/house-sheets.js';
import type { HouseSetout } from '../setout/house.js';
import { writeDxfSheet } from '../writers/dxf.js';
import { type PdfSource, writePdf } from '../writers/pdf.js';
import { writeSvgSheet } from '../writers/svg.js';
import type { DrawnSet } from './file.js';

/**
 * The sheets of a house: the whole set as one PDF where a maker of PDF is given, each sheet as DXF and SVG.
 * @throws DescriptionError when the house is too large for the largest sheet.
 */
export async function drawingSet(setout: HouseSetout, pdf?: PdfSource): Promise<DrawnSet> {
  const { sheets, summary } = houseSheets(setout);
  const { project } = setout.house;
  const info = {
    title: project.title,
    author: project.drawnBy,
    subject: sheets.map((sheet) => sheetName(sheet)).join('; '),
    date: project.date,
  };
  return {
    files: [
      ...(pdf ? [{ path: 'drawings/set.pdf', bytes: await writePdf(sheets, info, pdf) }] : []),
      ...sheets.flatMap((sheet) => [
        { path: `drawings/${sheet.id}.dxf`, bytes: writeDxfSheet(sheet) },
        { path: `drawings/${sheet.id}.svg`, bytes: writeSvgSheet(sheet) },
      ]),
    ],
    summary,
  };
}
