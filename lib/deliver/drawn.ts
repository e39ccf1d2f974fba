import type { House } from '../description/house.js';
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
export async function drawGroup(
  group: DrawnGroup,
  known: Pick<Study, 'plan' | 'setout' | 'laid'>,
  pdf?: PdfSource,
): Promise<DrawnSet> {
  if (group === 'drawings') return (await import('./drawings.js')).drawingSet(known.setout, pdf);
  if (group === 'moulds') return (await import('./mould-files.js')).mouldFiles(known.plan, pdf);
  return (await import('./template-files.js')).templateFiles(known.plan, known.laid, pdf);
}

/** The same from the description, for a thread that is given no more than that. */
export async function drawHouse(
  house: House,
  groups: readonly DrawnGroup[],
  pdf?: PdfSource,
): Promise<Map<DrawnGroup, DrawnSet>> {
  const sets = new Map<DrawnGroup, DrawnSet>();
  // Drawings know nothing of moulds, which take a search.
  if (groups.length === 1 && groups[0] === 'drawings') {
    const { drawingSet } = await import('./drawings.js');
    return sets.set('drawings', await drawingSet(bondHouse(setOutHouse(house)).setout, pdf));
  }
  const known = study(house);
  for (const group of groups) sets.set(group, await drawGroup(group, known, pdf));
  return sets;
}
