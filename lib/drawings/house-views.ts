import type { View } from '../documents/drawing.js';
import type { HouseSetout } from '../setout/house.js';
import { footed } from './draft.js';
import { elevationDraft, SIDES } from './elevation.js';
import { fittedTogether } from './fit.js';
import { planDraft } from './plan.js';
import { sectionDraft } from './section.js';
import { houseSections } from './section-plane.js';
import { projectWords } from './words.js';

/**
 * The views of a house, each a drawing by itself: plan, four elevations, and sections that pass the axis of every dome.
 * Plan and elevations share one scale, the sections another: the largest standard ones at which all of them fit A3.
 */
export function houseViews(house: HouseSetout): View[] {
  const project = projectWords(house.house);
  const levels = [planDraft(house), ...SIDES.map((side) => elevationDraft(house, side))];
  const sections = houseSections(house).map((plane) => sectionDraft(house, plane));
  return [levels, sections].flatMap((drafts) => fittedTogether(drafts.map((draft) => footed(draft, project))));
}
