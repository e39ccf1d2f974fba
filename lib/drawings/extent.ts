import { dot2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { baseHalf, levelMaterial } from '../setout/material.js';
import { fromArchFrame } from './arch-places.js';

/** From where to where the masonry above the floor reaches along a plan direction, mm. */
export const masonryReach = (house: HouseSetout, along: Vec2): Vec2 =>
  hull(house.domes.map((d) => reach(house, d, along, d.springingRadius + d.thickness, 0)));

/** The same for footing and slab; `null` when there is neither. */
export function baseReach(house: HouseSetout, along: Vec2): Vec2 | null {
  const each = house.domes.flatMap((d) => baseReaches(house, d, along));
  return each.length > 0 ? hull(each) : null;
}

/** From where to where a dome's footing or slab reaches; nothing when it has neither. */
export function baseReaches(house: HouseSetout, dome: DomeSetout, along: Vec2): Vec2[] {
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const radius = footing?.outerRadius ?? house.slabs.find((s) => s.domeId === dome.id)?.radius;
  return radius === undefined ? [] : [reach(house, dome, along, radius, footing?.projection ?? 0)];
}

/** What of a house reaches beyond the plane through a place that a view looks from. */
export function beyondPlane(house: HouseSetout, through: Vec2, look: Vec2): HouseSetout {
  const domes = house.domes.filter((d) => dot2(sub2(d.at, through), look) > -(d.springingRadius + d.thickness));
  return {
    ...house,
    domes,
    arches: house.arches.filter((a) => domes.some((d) => d.id === a.dome.id)),
  };
}

/** Steps between the levels at which a cut is followed, mm. */
const CUT_STEP = 250;

/** From where to where an upright plane cuts masonry, footing or slab, from the place that it goes through. */
export function cutReach(house: HouseSetout, { through, right }: { through: Vec2; right: Vec2 }): Vec2 {
  const top = Math.max(...house.domes.map((d) => d.topZ));
  const levels = [-1, ...Array.from({ length: Math.ceil(top / CUT_STEP) }, (_, i) => 1 + i * CUT_STEP)];
  const stretches = levels.flatMap((z) => levelMaterial(house, z, through, right));
  return hull(stretches.map(([from, to]): Vec2 => [from, to]));
}

const hull = (reaches: readonly Vec2[]): Vec2 => [
  Math.min(...reaches.map((r) => r[0])),
  Math.max(...reaches.map((r) => r[1])),
];

/**
 * Outermost place of the house at a level as a level look sees it, on the side that `away` says: where a line to a
 * level mark or a dimension begins.
 */
export function sideAt(house: HouseSetout, right: Vec2, z: number, away: 1 | -1): number {
  const outermost = (values: readonly number[]) => (away > 0 ? Math.max(...values) : Math.min(...values));
  if (z < 0) return outermost([...(baseReach(house, right) ?? masonryReach(house, right))]);
  const reaching = house.domes.filter((d) => z <= d.topZ);
  const round = (reaching.length > 0 ? reaching : house.domes).map((d) => {
    const radius = z < d.topZ ? d.outerRadiusAt(z) : 0;
    return dot2(d.at, right) + away * (Number.isFinite(radius) ? radius : 0);
  });
  const barrels = house.arches.flatMap((arch) => {
    const { faceV, topZ } = arch;
    if (faceV === null || z > topZ) return [];
    return [1, -1].map((s) => dot2(fromArchFrame(arch, s * arch.outerHalfAt(z), faceV), right));
  });
  return outermost([...round, ...barrels]);
}

/** A dome's circle and its barrels, these wider and longer by `more`. */
function reach(house: HouseSetout, dome: DomeSetout, along: Vec2, radius: number, more: number): Vec2 {
  const middle = dot2(dome.at, along);
  const places = [middle - radius, middle + radius];
  for (const arch of archesOf(house, dome)) {
    if (arch.faceV === null) continue;
    const half = baseHalf(arch, more);
    for (const u of [half, -half]) places.push(dot2(fromArchFrame(arch, u, arch.faceV + more), along));
  }
  return [Math.min(...places), Math.max(...places)];
}
