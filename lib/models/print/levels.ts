import { monotoneRoot } from '../../math/roots.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { busyHeight } from '../../solids/seam.js';
import { bedHeights } from './bands.js';
import type { PrintSizes } from './sizes.js';

/** Where a dome's roof comes off. */
export interface RoofLevel {
  /** Index of its bed among `bedHeights`. */
  readonly bed: number;
  readonly z: number;
  /** Whether the wall leans so much that the cut's edges are too sharp, and get an upright face as high as a wall is thick. */
  readonly blunt: boolean;
}

/** A level cut leaves an edge of 45 degrees where the wall leans by as much. */
const SHARP_RAD = Math.PI / 4;
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
  return bedHeights(dome, sizes).flatMap((z, bed) => {
    if (z < least || !(dome.radiusAt(z) >= WORTH * dome.springingRadius)) return [];
    return [{ bed, z: Math.fround(z), blunt: leanAt(dome, z) > SHARP_RAD }];
  });
}

/** Elevation of the extrados' normal at a height. */
function leanAt(dome: DomeSetout, z: number): number {
  const { shell, thickness, springingZ } = dome;
  if (z <= springingZ) return 0;
  const height = (s: number) => shell.at(s).z + thickness * shell.at(s).normal[1];
  const s = height(0) >= z ? 0 : monotoneRoot((t) => height(t) - z, 0, shell.length);
  return shell.at(s).normalRad;
}
