import type { View } from '../documents/drawing.js';
import type { HouseSetout } from '../setout/house.js';
import { elevationView, SIDES } from './elevation.js';
import { planView } from './plan.js';
import { sectionView } from './section.js';

/**
 * The first set of a house's drawings: plan, four elevations, one section. The elevations share one scale; every view
 * has the largest standard scale at which it fits A3.
 */
export function houseViews(house: HouseSetout): View[] {
  const elevations = SIDES.map((side) => elevationView(house, side));
  const scale = Math.max(...elevations.map((v) => v.scale));
  return [
    planView(house),
    ...elevations.map((v, i) =>
      v.scale === scale ? v : elevationView(house, SIDES[i] as (typeof SIDES)[number], { scale }),
    ),
    sectionView(house),
  ];
}
