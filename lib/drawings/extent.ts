import { dot2, type Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { fromArchFrame } from './arch-places.js';

/** From where to where the masonry above the floor reaches along a plan direction, mm. */
export function masonryReach(house: HouseSetout, along: Vec2): Vec2 {
  return reach(
    house,
    along,
    house.domes.map((d) => d.springingRadius + d.thickness),
    () => 0,
  );
}

/** The same for footing and slab; `null` when there is neither. */
export function baseReach(house: HouseSetout, along: Vec2): Vec2 | null {
  const footing = (id: string) => house.footings.find((f) => f.domeId === id);
  const radii = house.domes.map(
    (d) => footing(d.id)?.outerRadius ?? house.slabs.find((s) => s.domeId === d.id)?.radius ?? 0,
  );
  if (!radii.some((r) => r > 0)) return null;
  return reach(house, along, radii, (id) => footing(id)?.projection ?? 0);
}

/**
 * Outermost place of the house at a level as a level look sees it, on the side that `away` says: where a line to a
 * level mark or a dimension begins.
 */
export function sideAt(house: HouseSetout, right: Vec2, z: number, away: 1 | -1): number {
  const outermost = (values: readonly number[]) => (away > 0 ? Math.max(...values) : Math.min(...values));
  if (z < 0) return outermost([...(baseReach(house, right) ?? masonryReach(house, right))]);
  const round = house.domes.map((d) => {
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

function reach(house: HouseSetout, along: Vec2, radii: readonly number[], beyond: (domeId: string) => number): Vec2 {
  const places = house.domes.flatMap((d, i) => {
    const middle = dot2(d.at, along);
    const r = radii[i] as number;
    return [middle - r, middle + r];
  });
  for (const arch of house.arches) {
    if (arch.faceV === null) continue;
    const more = beyond(arch.dome.id);
    const half = baseHalf(arch, more);
    for (const u of [half, -half]) places.push(dot2(fromArchFrame(arch, u, arch.faceV + more), along));
  }
  return [Math.min(...places), Math.max(...places)];
}
