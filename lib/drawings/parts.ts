import { THIN_MASONRY } from '../base/tolerances.js';
import type { HatchPattern } from '../documents/drawing.js';
import { hypot } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { earlierThan, type HouseSetout } from '../setout/house.js';
import { inMaterial } from '../setout/material.js';
import { inArchFrame, inOuter } from './arch-places.js';

/** What a cut goes through. */
export type Part = 'blocks' | 'arch' | 'passage' | 'skewback' | 'curb' | 'plug' | 'footing' | 'slab' | 'earth';

export const PATTERN_OF: Readonly<Record<Part, HatchPattern>> = {
  blocks: 'blockwork',
  arch: 'cast',
  passage: 'cast',
  skewback: 'cast',
  curb: 'cast',
  plug: 'cast',
  footing: 'concrete',
  slab: 'concrete',
  earth: 'earth',
};

/** The part of the house at a point; `null` outside all material. */
export function partAt(house: HouseSetout, p: Vec3): Part | null {
  if (!inMaterial(house, p)) return null;
  if (p[2] < 0) return baseAt(house, p);
  if (house.passages.some((passage) => inOuter(passage, p))) return 'passage';
  const arch = house.arches.some((a) => {
    const reach = a.faceV ?? a.dome.springingRadius + a.dome.thickness;
    return inOuter(a, p) && inArchFrame(a, p)[1] < reach && !inEarlier(house, a.dome, p);
  });
  if (arch) return 'arch';
  // Where domes overlap, the earlier keeps its wall; only a point on the outermost face may lie a hair outside all.
  const within = (more: number) => house.domes.find((d) => distance(d, p) <= d.outerRadiusAt(p[2]) + more);
  const dome = within(0) ?? within(THIN_MASONRY);
  return dome ? zoneAt(dome, distance(dome, p), p[2]) : 'blocks';
}

/** Whether a point lies within the outside of a dome that this one abuts, and so is none of this one's. */
export const inEarlier = (house: HouseSetout, dome: DomeSetout, p: Vec3): boolean =>
  earlierThan(house, dome).some((d) => distance(d, p) < d.outerRadiusAt(p[2]));

const distance = (dome: DomeSetout, p: Vec3): number => hypot(p[0] - dome.at[0], p[1] - dome.at[1]);

function zoneAt(dome: DomeSetout, r: number, z: number): Part {
  if (z <= dome.springingZ) return 'blocks';
  if (dome.skewback && !past(dome, 0, r, z)) return 'skewback';
  if (dome.curb && past(dome, dome.curb.bedS, r, z)) return 'curb';
  if (dome.plug && past(dome, dome.plug.bedS, r, z)) return 'plug';
  return 'blocks';
}

/** Whether a point lies on the crown's side of the bed at arc length `s`. */
function past(dome: DomeSetout, s: number, r: number, z: number): boolean {
  const p = dome.shell.at(s);
  return (z - p.z) * p.normal[0] - (r - p.r) * p.normal[1] > 0;
}

function baseAt(house: HouseSetout, p: Vec3): Part {
  const { footings, slabs, domes } = house;
  const inSlab = slabs.some((slab) => {
    const dome = domes.find((d) => d.id === slab.domeId);
    if (!dome || !(p[2] > slab.bottomZ) || !(distance(dome, p) < slab.radius)) return false;
    return !earlierThan(house, dome).some((d) => {
      const footing = footings.find((f) => f.domeId === d.id);
      return footing !== undefined && distance(d, p) < footing.outerRadius;
    });
  });
  return inSlab || footings.length === 0 ? 'slab' : 'footing';
}
