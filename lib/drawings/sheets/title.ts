import { CAUTION } from '../../base/texts/cautions.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import type { Project } from '../../description/house.js';
import type { Sheet } from '../../documents/sheet.js';

/** A title block of the description's project. */
export function titleBlockOf(
  project: Project,
  title: string,
  rest: { readonly scale: string; readonly size: string; readonly sheet: number; readonly sheets: number },
): Sheet['titleBlock'] {
  return {
    project: project.title,
    address: project.address,
    title,
    documentType: texts.generalArrangementDrawingPreliminary,
    owner: project.client,
    creator: project.drawnBy,
    approvedBy: '',
    number: project.number,
    issued: project.date ?? 'undated',
    revision: project.revision,
    caution: CAUTION.authority,
    ...rest,
  };
}
