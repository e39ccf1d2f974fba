import { SAME_POINT } from '../../base/tolerances.js';
import { monotoneRoot } from '../../math/roots.js';
import type { Vec2 } from '../../math/vec.js';
import type { Course } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { spanPoint } from '../../setout/span.js';
import type { PrintSizes } from './sizes.js';

/** A joint that is moved along the shell is looked for within so many grooves' widths. */
const MOVED = 3;

/** A stretch of the outside between two beds; arc lengths on the intrados are negative on the stem wall. */
export interface Band {
  readonly from: number;
  readonly to: number;
  readonly course: Course | null;
  readonly onStem: boolean;
  /** Whether its perpends are engraved; without a course it has none. */
  readonly engraved: boolean;
  /** Whether the joint above it is engraved; `null` at the top, and under a skewback. */
  readonly joint: boolean | null;
}

/** Point on the outside at arc length `s` of the intrados, or `depth` inside it. */
export function outsideAt(dome: DomeSetout, s: number, depth: number, onStem = s < 0): Vec2 {
  const offset = dome.thickness - depth;
  return onStem && s <= 0 ? [dome.springingRadius + offset, dome.springingZ + s] : spanPoint(dome.shell, s, offset);
}

/** How much longer the outside is than the intrados at arc length `s`. */
export const stretchAt = (dome: DomeSetout, s: number): number =>
  s < 0 ? 1 : 1 + dome.thickness * dome.shell.at(s).curvature;

/**
 * Beds in the middle of their joints; the crown's plug or what is under the curb is a band without perpends.
 * @param cuts levels at which the model is parted: a joint as near to one as a groove is wide is moved there
 */
export function bandsOf(dome: DomeSetout, sizes: PrintSizes, cuts: readonly number[] = []): Band[] {
  const bands = bandsAsLaid(dome, sizes);
  if (cuts.length === 0) return bands;
  const moved = bands.map((band) => {
    const cut = cuts.find((z) => Math.abs(z - jointZ(dome, band, sizes)) < sizes.groove.width);
    if (band.joint === null || cut === undefined) return band.to;
    if (band.onStem) return cut - dome.springingZ;
    const near = sizes.groove.width;
    const height = (s: number) => outsideAt(dome, s, band.joint ? sizes.groove.depth : 0)[1] - cut;
    return monotoneRoot(
      height,
      Math.max(0, band.to - near * MOVED),
      Math.min(dome.shell.length, band.to + near * MOVED),
    );
  });
  return bands.map((band, i) => ({
    ...band,
    from: i === 0 ? band.from : (moved[i - 1] as number),
    to: moved[i] as number,
  }));
}

/** Height of the joint above a band, on the outside. */
const jointZ = (dome: DomeSetout, { to, joint, onStem }: Band, { groove }: PrintSizes): number =>
  outsideAt(dome, to, joint ? groove.depth : 0, onStem)[1];

function bandsAsLaid(dome: DomeSetout, sizes: PrintSizes): Band[] {
  const { courses, shell, curb, stem, springingZ, skewback } = dome;
  const signed = (course: Course, s: number) => (course.part === 'stem' ? s - springingZ : s);
  /** On the floor and on the skewback the first course begins where the wall does. */
  const begins = ({ part, from }: Course) => from === 0 && (part === 'stem' || stem.length === 0 || skewback !== null);
  const start = (course: Course) => signed(course, begins(course) ? 0 : (course.from + course.bed) / 2);
  const top = curb?.bedS ?? shell.length;
  const bands = courses.map((course, i) => {
    const next = courses[i + 1];
    const to = next ? start(next) : signed(course, course.to);
    return { from: start(course), to, course: course as Course | null, onStem: course.part === 'stem' };
  });
  const end = bands.at(-1)?.to ?? 0;
  if (end < top - SAME_POINT) bands.push({ from: end, to: top, course: null, onStem: false });
  const isPlain = (course: Course | null) => course !== null && isFine(dome, course, sizes);
  return bands.map((band, i): Band => {
    const above = bands[i + 1];
    const under = above !== undefined && !(band.to === 0 && skewback);
    return {
      ...band,
      engraved: band.course !== null && !isPlain(band.course),
      joint: under ? !isPlain(band.course) && !isPlain(above.course) : null,
    };
  });
}

const heightOf = (dome: DomeSetout, { bed, to, part }: Course): number =>
  (to - bed) * (part === 'stem' ? 1 : stretchAt(dome, (bed + to) / 2));

/** Least length of a block on the outside. */
function lengthOf(dome: DomeSetout, { count, to, part }: Course): number {
  const r = part === 'stem' ? dome.springingRadius + dome.thickness : spanPoint(dome.shell, to, dome.thickness)[0];
  return (2 * Math.PI * r) / count;
}

/** Whether a course's blocks are too small for joints of the nozzle's width. */
export const isFine = (dome: DomeSetout, course: Course, { groove }: PrintSizes): boolean =>
  heightOf(dome, course) < groove.apart || lengthOf(dome, course) < groove.apart;

/** A bed at which a dome can be parted. */
export interface BedJoint {
  /** On the outside. */
  readonly z: number;
  /** The course under it; `null` under a crown. */
  readonly course: number | null;
  /** Not engraved itself, while perpends beside it are: they end there in a slope. */
  readonly sloped: boolean;
}

/** The beds at which a dome can be parted, from below. */
export const bedJoints = (dome: DomeSetout, sizes: PrintSizes): BedJoint[] =>
  bandsOf(dome, sizes).flatMap((band, i, all) => {
    if (band.joint === null) return [];
    const sloped = !band.joint && (band.engraved || all[i + 1]?.engraved === true);
    return [{ z: jointZ(dome, band, sizes), course: band.course?.index ?? null, sloped }];
  });
