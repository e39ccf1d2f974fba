import { THIN_MASONRY } from '../base/tolerances.js';
import { hypot } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { inArchFrame } from './arch-places.js';

/** Whether a plan point lies within the outer faces of the house. */
export function underRoof(house: HouseSetout, x: number, y: number): boolean {
  const inDome = house.domes.some((d) => hypot(x - d.at[0], y - d.at[1]) < d.springingRadius + d.thickness);
  const inPassage = house.passages.some((p) => {
    const [u, v] = inArchFrame(p, [x, y]);
    return v > 0 && v < p.distance && Math.abs(u) < p.section.width / 2 + p.ring;
  });
  return (
    inDome ||
    inPassage ||
    house.arches.some((a) => {
      const [u, v] = inArchFrame(a, [x, y]);
      return a.faceV !== null && v > 0 && v < a.faceV && Math.abs(u) < a.section.width / 2 + a.ring;
    })
  );
}

/** What stands above ground outside. */
export const aboveGround = (house: HouseSetout) => {
  const { ground } = house.house.site;
  return (p: Vec3): boolean => p[2] > ground - THIN_MASONRY;
};

/** What a section shows: outside what stands above ground, inside what stands on the floor. */
export const aboveGroundOrFloor = (house: HouseSetout) => {
  const outside = aboveGround(house);
  return (p: Vec3): boolean => outside(p) || (p[2] > -THIN_MASONRY && underRoof(house, p[0], p[1]));
};
