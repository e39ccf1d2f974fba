import type { View } from '../documents/drawing.js';
import type { HouseSetout } from '../setout/house.js';
import { elevationDrawable, SIDES } from './elevation.js';
import { fittedTogether } from './fit.js';
import { planDrawable } from './plan.js';
import { sectionDrawable } from './section.js';
import { houseSections } from './section-plane.js';

/**
 * The first set of a house's drawings: plan, four elevations, and sections that pass the axis of every dome. Plan and
 * elevations share one scale, the sections another: the largest standard ones at which all of them fit A3.
 */
export function houseViews(house: HouseSetout): View[] {
  return [
    ...fittedTogether([planDrawable(house), ...SIDES.map((side) => elevationDrawable(house, side))]),
    ...fittedTogether(houseSections(house).map((plane) => sectionDrawable(house, plane))),
  ];
}
