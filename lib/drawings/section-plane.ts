import { MERIDIAN_CURVE, SAME_ANGLE_RAD } from '../base/tolerances.js';
import {
  alongBearing,
  bearingOf,
  cross2,
  DEG,
  dot2,
  length2,
  perp2,
  scale2,
  sub2,
  turnPositive,
  type Vec2,
} from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout } from '../setout/house.js';
import type { CutPlane } from './slice-upright.js';

export interface SectionOptions {
  /** The dome whose axis the plane goes through; default: the one with the first door, else opening, else the first. */
  readonly domeId?: string;
  /** Bearing of the plane's right end; default: along the dome's first door, else its first opening, else north. */
  readonly bearingDeg?: number;
}

/** An upright plane through a dome's axis, and which way a section looks at what lies beyond it. */
export interface SectionPlane extends CutPlane {
  /** The letter at both of its ends. */
  readonly mark: string;
  readonly dome: DomeSetout;
  /** All whose axes it passes, from left to right. */
  readonly domes: readonly DomeSetout[];
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
  return planeThrough(house, dome, exact(alongBearing(bearingDeg * DEG)), bearingDeg);
}

/**
 * Sections that between them pass every dome's axis and run along every passage: the first along the first door, the
 * others along passages and abutments where one plane passes the axes of several domes.
 */
export function houseSections(house: HouseSetout): SectionPlane[] {
  const planes = [sectionPlane(house)];
  const missing = () => house.domes.filter((d) => !planes.some((p) => p.domes.includes(d)));
  const pairs = neighbours(house).map(([a, b]) => eastward(house, a, b));
  for (;;) {
    const left = missing();
    const gain = (plane: SectionPlane) => plane.domes.filter((d) => left.includes(d)).length;
    const best = pairs.reduce((a: SectionPlane | null, p) => (gain(p) > (a ? gain(a) : 0) ? p : a), null);
    if (!best) break;
    planes.push(best);
  }
  for (let [dome] = missing(); dome; [dome] = missing()) planes.push(sectionPlane(house, { domeId: dome.id }));
  // A passage whose pair no plane passes yet has one of its own.
  for (const { domes } of house.passages)
    if (!planes.some((p) => domes.every((d) => p.domes.includes(d)))) planes.push(eastward(house, ...domes));
  return planes.map((plane, i) => ({ ...plane, mark: markOf(i) }));
}

/** Pairs of domes that a passage joins or of which one abuts the other, each once. */
export function neighbours(house: HouseSetout): (readonly [DomeSetout, DomeSetout])[] {
  const pairs = new Map<string, readonly [DomeSetout, DomeSetout]>();
  const key = (a: DomeSetout, b: DomeSetout) => [a.id, b.id].sort().join(' ');
  for (const { domes } of house.passages) pairs.set(key(...domes), domes);
  for (const later of house.domes) {
    for (const earlier of earlierThan(house, later)) {
      if (!pairs.has(key(earlier, later))) pairs.set(key(earlier, later), [earlier, later]);
    }
  }
  return [...pairs.values()];
}

/** A plane through two axes, its right end to the east, or to the north where it runs so. */
function eastward(house: HouseSetout, a: DomeSetout, b: DomeSetout): SectionPlane {
  const between = sub2(b.at, a.at);
  const toB = exact(scale2(between, 1 / length2(between)));
  const right: Vec2 = toB[0] > 0 || (toB[0] === 0 && toB[1] > 0) ? toB : [-toB[0], -toB[1]];
  return planeThrough(house, a, right, turnPositive(bearingOf(right)) / DEG);
}

function planeThrough(house: HouseSetout, dome: DomeSetout, right: Vec2, bearingDeg: number): SectionPlane {
  const along = (d: DomeSetout) => dot2(sub2(d.at, dome.at), right);
  const domes = house.domes
    .filter((d) => Math.abs(cross2(right, sub2(d.at, dome.at))) < MERIDIAN_CURVE)
    .sort((a, b) => along(a) - along(b));
  return { mark: 'A', dome, domes, bearingDeg, through: dome.at, right, look: perp2(right) };
}

/** A to Z, then AA, AB ... */
const markOf = (i: number): string =>
  (i < 26 ? '' : markOf(Math.floor(i / 26) - 1)) + String.fromCharCode(65 + (i % 26));

/** Directions that rounding left a hair off a main one are put on it, so that level and upright lines are so. */
const exact = ([x, y]: Vec2): Vec2 =>
  Math.abs(x) < SAME_ANGLE_RAD ? [0, Math.sign(y)] : Math.abs(y) < SAME_ANGLE_RAD ? [Math.sign(x), 0] : [x, y];
