import { remembered } from '../base/remembered.js';
import { GROUND_BESIDE, GROUND_MEETING } from '../base/tolerances.js';
import { circleEdge, type Edge, lineEdge, loopsArea } from '../math/curves.js';
import { bordersOf, regionOf } from '../math/planar.js';
import { add2, scale2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import { baseHalf, inMaterial } from '../setout/material.js';
import type { PassageSetout } from '../setout/passage.js';

/** Plan areas of what lies under the floor, mm²; exact for their circles and straight sides. */
export interface GroundAreas {
  readonly footing: number;
  readonly slab: number;
  /** Inside circumference of all rooms at the floor, mm; where domes overlap it is counted whole. */
  readonly perimeter: number;
}

export const groundAreas = remembered((house: HouseSetout): GroundAreas => {
  const footings = { ...house, slabs: [] };
  const z = -1;
  // Footing and slab exclude each other in plan, so the slab is what the footing alone leaves of both.
  const at = ([x, y]: Vec2) => {
    if (house.footings.length > 0 && inMaterial(footings, [x, y, z])) return 'footing';
    return house.slabs.length > 0 && inMaterial(house, [x, y, z]) ? 'slab' : null;
  };
  const borders = bordersOf<'footing' | 'slab'>(outlines(house), at, {
    tolerance: GROUND_MEETING,
    beside: GROUND_BESIDE,
  });
  const areaOf = (part: 'footing' | 'slab') => loopsArea(regionOf(borders, (label) => label === part, GROUND_MEETING));
  return { footing: areaOf('footing'), slab: areaOf('slab'), perimeter: floorPerimeter(house) };
});

/** Every curve that can bound footing or slab. */
function outlines(house: HouseSetout): Edge[] {
  const projection = house.footings[0]?.projection ?? 0;
  const circles = [
    ...house.footings.flatMap((f) => {
      const at = house.domes.find((d) => d.id === f.domeId)?.at as Vec2;
      return [circleEdge(at, f.innerRadius), circleEdge(at, f.outerRadius)];
    }),
    ...house.domes.map((d) => circleEdge(d.at, d.springingRadius + d.thickness)),
  ];
  const barrels = house.arches.flatMap((a) =>
    a.faceV === null ? [] : box(a, a.dome.at, baseHalf(a, projection), a.faceV + projection),
  );
  const vaults = house.passages.flatMap((p) => box(p, p.domes[0].at, baseHalf(p, projection), p.distance));
  return [...circles, ...barrels, ...vaults];
}

function box({ along, across }: ArchSetout | PassageSetout, at: Vec2, half: number, to: number): Edge[] {
  const corner = (u: number, v: number): Vec2 => add2(at, add2(scale2(across, u), scale2(along, v)));
  const corners = [corner(-half, 0), corner(half, 0), corner(half, to), corner(-half, to)];
  return corners.map((p, i) => lineEdge(p, corners[(i + 1) % 4] as Vec2));
}

const floorPerimeter = (house: HouseSetout): number =>
  house.domes.reduce((sum, d) => sum + 2 * Math.PI * d.springingRadius, 0);
