import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import { alongBearing, DEG, perp2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import type { CutPlane } from './slice-upright.js';

export interface SectionOptions {
  /** The dome whose axis the plane goes through; default: the one with the first door, else opening, else the first. */
  readonly domeId?: string;
  /** Bearing of the plane's right end; default: along the dome's first door, else its first opening, else north. */
  readonly bearingDeg?: number;
}

/** An upright plane through a dome's axis, and which way a section looks at what lies beyond it. */
export interface SectionPlane extends CutPlane {
  readonly dome: DomeSetout;
  readonly bearingDeg: number;
  readonly look: Vec2;
}

/** @throws RangeError when no dome has the id that is asked for. */
export function sectionPlane(house: HouseSetout, options: SectionOptions = {}): SectionPlane {
  const { domeId } = options;
  const named = domeId === undefined ? undefined : house.domes.find((d) => d.id === domeId);
  if (domeId !== undefined && !named)
    throw new RangeError(`The section asks for dome "${domeId}", which the house doesn't have; name one of its domes.`);
  const doors = house.arches.filter((a) => a.opening.use === 'door');
  const dome = named ?? doors[0]?.dome ?? house.arches[0]?.dome ?? house.domes[0];
  if (!dome) throw new RangeError('A section needs a house with at least one dome.');
  const own = archesOf(house, dome);
  const along = own.find((a) => a.opening.use === 'door') ?? own[0];
  const bearingDeg = options.bearingDeg ?? along?.opening.bearingDeg ?? 0;
  const right = exact(alongBearing(bearingDeg * DEG));
  return { dome, bearingDeg, through: dome.at, right, look: perp2(right) };
}

/** Directions that rounding left a hair off a main one are put on it, so that level and upright lines are so. */
export const exact = ([x, y]: Vec2): Vec2 =>
  Math.abs(x) < SAME_ANGLE_RAD ? [0, Math.sign(y)] : Math.abs(y) < SAME_ANGLE_RAD ? [Math.sign(x), 0] : [x, y];
