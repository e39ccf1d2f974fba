import { CUT_BESIDE, CUT_POINT } from '../base/tolerances.js';
import { circleEdge, type Edge, lineEdge } from '../math/curves.js';
import { bordersOf, regionOf } from '../math/planar.js';
import type { HouseSetout } from '../setout/house.js';
import { fromArchFrame, type Prism } from './arch-places.js';
import { underRoof } from './ground.js';

/** Outer faces of the house at the floor: domes, barrels and passages as one outline, courtyards as holes in it. */
export function footprint(house: HouseSetout): Edge[][] {
  const edges: Edge[] = [
    ...house.domes.map((d) => circleEdge(d.at, d.springingRadius + d.thickness)),
    ...house.arches.flatMap((a) => (a.faceV === null ? [] : strip(a, a.faceV))),
    ...house.passages.flatMap((p) => strip(p, p.distance)),
  ];
  const borders = bordersOf(edges, ([x, y]) => (underRoof(house, x, y) ? 'house' : null), {
    tolerance: CUT_POINT,
    beside: CUT_BESIDE,
  });
  return regionOf(borders, () => true, CUT_POINT);
}

/** Outline in plan of a prism's walls from its origin out to `end`. */
function strip(prism: Prism, end: number): Edge[] {
  const half = prism.section.width / 2 + prism.ring;
  const corners = [
    fromArchFrame(prism, -half, 0),
    fromArchFrame(prism, half, 0),
    fromArchFrame(prism, half, end),
    fromArchFrame(prism, -half, end),
  ] as const;
  return corners.map((from, i) => lineEdge(from, corners[(i + 1) % 4] as (typeof corners)[0]));
}
