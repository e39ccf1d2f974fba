import type { House } from '../description/house.js';
import { sheetName } from '../documents/sheet.js';
import { houseSheets } from '../drawings/sheets/house-sheets.js';
import { bondHouse } from '../masonry/bond/bond.js';
import { type HouseSetout, setOutHouse } from '../setout/house.js';
import { writeDxfSheet } from '../writers/dxf.js';
import { type PdfSource, writePdf } from '../writers/pdf.js';
import { writeSvgSheet } from '../writers/svg.js';
import type { PackageFile } from './file.js';

/** A house's drawings as files, and a line that tells on what and how large they are. */
export interface DrawingSet {
  readonly files: readonly PackageFile[];
  readonly summary: string;
}

/**
 * The sheets of a house: the whole set as one PDF where a maker of PDF is given, each sheet as DXF and SVG.
 * @throws DescriptionError when the house is too large for the largest sheet.
 */
export async function drawingSet(setout: HouseSetout, pdf?: PdfSource): Promise<DrawingSet> {
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

/** The same from the description, for a thread that is given no more than that. */
export const drawHouse = (house: House, pdf?: PdfSource): Promise<DrawingSet> =>
  drawingSet(bondHouse(setOutHouse(house)).setout, pdf);
