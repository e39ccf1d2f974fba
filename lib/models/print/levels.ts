import { cos, tan } from '../../math/elementary.js';
import { monotoneRoot } from '../../math/roots.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { busyHeight } from '../../solids/seam.js';
import { bedJoints } from './bands.js';
import type { PrintSizes } from './sizes.js';

/** Where a dome's roof comes off. */
export interface RoofLevel {
  /** Index of its bed among `bedJoints`. */
  readonly bed: number;
  readonly z: number;
  /** Whether the wall leans so much that the cut's edges are too sharp, and get an upright face as high as a wall is thick. */
  readonly blunt: boolean;
}

/** A level cut leaves an edge of 45 degrees where the wall leans by as much; facets may lean a little more. */
export const SHARP_RAD = (40 * Math.PI) / 180;
/** A roof comes off where it opens the dome to this share of its radius at least. */
const WORTH = 1 / 3;

/**
 * The beds above all that meets the dome (arches, passages, valleys along other domes) and above the level asked for, as
 * long as one can look in there; the lowest first.
 */
export function roofLevels(setout: HouseSetout, dome: DomeSetout, sizes: PrintSizes): RoofLevel[] {
  const { roof } = setout.house.print;
  if (roof === 'fixed') return [];
  const least = Math.max(busyHeight(setout, dome) + sizes.thin, roof === 'above openings' ? 0 : roof);
  return bedJoints(dome, sizes).flatMap(({ z }, bed): RoofLevel[] => {
    if (z < least || !(dome.radiusAt(z) >= WORTH * dome.springingRadius)) return [];
    const lean = leanAt(dome, z);
    if (lean <= SHARP_RAD) return [{ bed, z: Math.fround(z), blunt: false }];
    // The upright faces take their share of what the roof sits on; the thinnest wall is left of it.
    const left = dome.thickness / cos(lean) - 2 * sizes.thin * tan(lean);
    return left < sizes.thin ? [] : [{ bed, z: Math.fround(z), blunt: true }];
  });
}

/** Elevation of the intrados' normal at a height: there the wall leans more than outside. */
export function leanAt({ shell, springingZ, crownZ }: DomeSetout, z: number): number {
  if (z <= springingZ) return 0;
  if (z >= crownZ) return Math.PI / 2;
  return shell.at(monotoneRoot((s) => shell.at(s).z - z, 0, shell.length)).normalRad;
}
