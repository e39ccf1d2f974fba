import { once } from '../base/remembered.js';
import type { House } from '../description/house.js';
import type { HandedOver } from '../drawings/handed.js';
import type { beginSheets } from '../drawings/sheets/house-sheets.js';
import { bondHouse } from '../masonry/bond/bond.js';
import { setOutHouse } from '../setout/house.js';
import type { PdfSource } from '../writers/pdf.js';
import type { DrawnSet } from './file.js';
import { type Study, study } from './study.js';

/** Groups of outputs that are drawn on paper. */
export const DRAWN_GROUPS = ['drawings', 'moulds', 'templates'] as const;
/** One of the groups that are drawn on paper. */
export type DrawnGroup = (typeof DRAWN_GROUPS)[number];

/** One of these groups; each brings its own code. */
export async function drawGroup(group: DrawnGroup, known: Study, pdf?: PdfSource): Promise<DrawnSet> {
  if (group === 'drawings')
    return (await import('./drawings.js')).drawingSet(known.setout.house, await known.sheets, pdf);
  return drawWorkshop(group, known, pdf);
}

/** What is drawn for the workshop needs nothing of statics or works. */
async function drawWorkshop(
  group: Exclude<DrawnGroup, 'drawings'>,
  known: Pick<Study, 'plan' | 'laid'>,
  pdf?: PdfSource,
): Promise<DrawnSet> {
  if (group === 'moulds') return (await import('./mould-files.js')).mouldFiles(known.plan, known.laid, pdf);
  return (await import('./template-files.js')).templateFiles(known.plan, known.laid, pdf);
}

/**
 * The same from the description, for a thread that is given no more than that: it begins the views at once, and lays out
 * the sheets when what they show of other stages' results has been handed over.
 */
export async function drawHouse(
  house: House,
  groups: readonly DrawnGroup[],
  handed: Promise<HandedOver>,
  pdf?: PdfSource,
): Promise<Map<DrawnGroup, DrawnSet>> {
  const sets = new Map<DrawnGroup, DrawnSet>();
  const wanted = new Set(groups);
  // Sheets know nothing of moulds, which take a search.
  const known = once(() => study(house));
  let finish: ReturnType<typeof beginSheets> | undefined;
  if (wanted.has('drawings')) {
    const setout = wanted.size > 1 ? known().setout : bondHouse(setOutHouse(house)).setout;
    finish = (await import('../drawings/sheets/house-sheets.js')).beginSheets(setout);
  }
  for (const group of groups) if (group !== 'drawings') sets.set(group, await drawWorkshop(group, known(), pdf));
  if (finish) {
    const { drawingSet } = await import('./drawings.js');
    sets.set('drawings', await drawingSet(house, finish(await handed), pdf));
  }
  return sets;
}
