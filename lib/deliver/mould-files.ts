import * as texts from '../base/texts/package.js';
import { sheetName } from '../documents/sheet.js';
import { mouldSheets } from '../drawings/moulds/mould-sheet.js';
import type { LaidHouse } from '../masonry/block.js';
import { castForms } from '../masonry/forms.js';
import { castShape } from '../masonry/moulds/shape.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { mouldBlock, mouldLining } from '../solids/mould-solids.js';
import { writeDxfSheet } from '../writers/dxf.js';
import { type PdfSource, writePdf } from '../writers/pdf.js';
import { writeStl } from '../writers/stl.js';
import type { DrawnSet } from './file.js';

/**
 * A sheet of each mould as DXF, those of longer blocks among them, all of them as one PDF where a maker of PDF is given, and as STL the block of each and
 * the lining that it is cast in.
 * @throws DocumentError naming the mould when a solid isn't closed.
 */
export async function mouldFiles(
  plan: Pick<MasonryPlan, 'setout' | 'moulds'>,
  laid: LaidHouse,
  pdf?: PdfSource,
): Promise<DrawnSet> {
  const { project, blocks } = plan.setout.house;
  const sheets = mouldSheets(plan, laid);
  const info = {
    title: texts.mouldsTitle(project.title),
    author: project.drawnBy,
    subject: sheets.map(sheetName).join('; '),
    date: project.date,
  };
  const solids = castForms(plan, laid).flatMap(({ id, block }) => {
    const shape = castShape(block, blocks);
    return [mouldBlock(`${id}-block`, shape), mouldLining(`${id}-lining`, shape)];
  });
  return {
    files: [
      ...(pdf && sheets.length > 0 ? [{ path: 'moulds/moulds.pdf', bytes: await writePdf(sheets, info, pdf) }] : []),
      ...sheets.map((sheet) => ({ path: `moulds/${sheet.id}.dxf`, bytes: writeDxfSheet(sheet) })),
      ...solids.map((mesh) => ({
        path: `moulds/${mesh.name}.stl`,
        bytes: writeStl([mesh], { title: `${project.title} ${mesh.name}` }),
      })),
    ],
    summary: sheets.length === 1 ? texts.oneMouldFiles : texts.manyMouldFiles(sheets.length),
  };
}
