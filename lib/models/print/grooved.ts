import { SAME_POINT } from '../../base/tolerances.js';
import { cos, sin } from '../../math/elementary.js';
import type { Vec2, Vec3 } from '../../math/vec.js';
import { type Course, perpendBearings } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { spanPoint } from '../../setout/span.js';
import { type DomeFacets, outside } from '../../solids/dome-outlines.js';
import { cornersOf } from '../../solids/outline.js';
import { arcSteps, meridianStations, steps } from '../../solids/sections.js';
import type { PrintSizes } from './sizes.js';
import type { Ring } from './skin.js';

/** Tells whether joints stop at a place of the extrados: there stands the ring of an opening. */
export type Covered = (point: Vec3) => boolean;

/** A dome's outside in level rings, from below the floor to the crown, with its joints cut into it. */
export interface Grooved {
  readonly rings: readonly Ring[];
  /** Heights of the foot and of the point on the axis where the skin closes. */
  readonly ends: readonly [number, number];
  /** Rings that lie in the middle of a bed joint: indices, and their level. */
  readonly beds: readonly { readonly ring: number; readonly z: number; readonly courseAbove: number | null }[];
  /** Courses whose joints are too close together to be engraved. */
  readonly plain: readonly number[];
}

/** A stretch of the outside between two beds; arc lengths on the intrados are negative on the stem wall. */
interface Band {
  readonly from: number;
  readonly to: number;
  readonly course: Course | null;
  readonly onStem: boolean;
}

/**
 * Grooves are V-shaped: half as deep as wide or flatter, so that none overhangs. Beds are rings; perpends are upright
 * and run from bed to bed. What a course's blocks are too small for is left plain, beds beside it as well.
 */
export function groovedDome(facets: DomeFacets, sizes: PrintSizes, bottom: number, covered: Covered): Grooved {
  const { dome, sagitta } = facets;
  const { width, depth, apart } = sizes.groove;
  const bands = bandsOf(dome);
  const rings: Ring[] = [];
  let reached: Vec2 = [0, 0];
  const half = (s: number) => width / 2 / stretchAt(dome, s);
  const beds: { ring: number; z: number; courseAbove: number | null }[] = [];
  const isPlain = (course: Course) => heightOf(dome, course) < apart || lengthOf(dome, course) < apart;

  const place = (r: number, z: number, bearing: number): Vec3 => [
    dome.at[0] + r * sin(bearing),
    dome.at[1] + r * cos(bearing),
    z,
  ];
  /** A ring at arc length `s`; perpends are cut in by the depth, or the whole of it is when `sunk`. */
  const ring = (s: number, { course, onStem }: Pick<Band, 'course' | 'onStem'>, sunk: boolean): void => {
    const flush = outsideAt(dome, s, 0, onStem);
    const deep = outsideAt(dome, s, depth, onStem);
    const columns = columnsOf(dome, course && !isPlain(course) ? course : null, flush[0], sagitta, width);
    const corners = columns.map(({ bearing, cut }): Vec3 => {
      const corner = place(...flush, bearing);
      return (sunk || cut) && !covered(corner) ? place(...deep, bearing) : corner;
    });
    rings.push({ bearings: columns.map((c) => c.bearing), corners });
    reached = flush;
  };
  const plainRing = ([r, z]: Vec2): void => {
    const bearings = steps(0, 2 * Math.PI, arcSteps(r, 2 * Math.PI, sagitta)).slice(0, -1);
    rings.push({ bearings, corners: bearings.map((bearing) => place(r, z, bearing)) });
  };

  const foot: Vec2 = [dome.springingRadius + dome.thickness, 0];
  if (bottom < 0) plainRing([foot[0], bottom]);
  if (dome.skewback && dome.stem.length === 0) plainRing(foot);
  for (const [i, band] of bands.entries()) {
    const { from, to, course, onStem } = band;
    const [below, above] = [bands[i - 1], bands[i + 1]];
    const engraved = course !== null && !isPlain(course);
    const joined = (other: Band | undefined) =>
      other !== undefined && (engraved || course === null) && (other.course === null || !isPlain(other.course));
    const smooth = { course: null, onStem };
    if (from === 0 && dome.skewback) for (const point of shoulderOf(facets)) plainRing(point);
    if (below === undefined || (from === 0 && dome.skewback)) ring(from, smooth, false);
    const low = engraved || joined(below) ? from + half(from) : from;
    const high = engraved || joined(above) ? to - half(to) : to;
    const stations = stationsOf(dome, low, high, sagitta);
    for (const s of low > from ? stations : stations.slice(1))
      if (outsideAt(dome, s, 0)[0] > SAME_POINT) ring(s, band, false);
    const bed = above !== undefined && joined(above) && !(to === 0 && dome.skewback);
    if (bed)
      beds.push({
        ring: rings.length,
        z: outsideAt(dome, to, depth, onStem)[1],
        courseAbove: above.course?.index ?? null,
      });
    if (high < to) ring(to, bed ? band : smooth, bed);
  }
  const crown = crownOf(facets, reached);
  for (const point of crown.slice(0, -1)) plainRing(point);
  const plain = dome.courses.filter(isPlain).map((c) => c.index);
  return { rings, ends: [Math.min(bottom, 0), (crown.at(-1) as Vec2)[1]], beds, plain };
}

/** Point on the outside at arc length `s` of the intrados, or `depth` inside it. */
function outsideAt(dome: DomeSetout, s: number, depth: number, onStem = s < 0): Vec2 {
  const offset = dome.thickness - depth;
  return onStem && s <= 0 ? [dome.springingRadius + offset, dome.springingZ + s] : spanPoint(dome.shell, s, offset);
}

/** How much longer the outside is than the intrados at arc length `s`. */
const stretchAt = (dome: DomeSetout, s: number): number =>
  s < 0 ? 1 : 1 + dome.thickness * dome.shell.at(s).curvature;

/** Beds in the middle of their joints; the crown's plug or what is under the curb is a band without perpends. */
function bandsOf(dome: DomeSetout): Band[] {
  const { courses, shell, curb, stem, springingZ, skewback } = dome;
  const signed = (course: Course, s: number) => (course.part === 'stem' ? s - springingZ : s);
  /** On the floor and on the skewback the first course begins where the wall does. */
  const begins = ({ part, from }: Course) => from === 0 && (part === 'stem' || stem.length === 0 || skewback !== null);
  const start = (course: Course) => signed(course, begins(course) ? 0 : (course.from + course.bed) / 2);
  const top = curb?.bedS ?? shell.length;
  const bands = courses.map((course, i): Band => {
    const next = courses[i + 1];
    const to = next ? start(next) : signed(course, course.to);
    return { from: start(course), to, course, onStem: course.part === 'stem' };
  });
  const end = bands.at(-1)?.to ?? 0;
  if (end < top - SAME_POINT) bands.push({ from: end, to: top, course: null, onStem: false });
  return bands;
}

const heightOf = (dome: DomeSetout, { bed, to, part }: Course): number =>
  (to - bed) * (part === 'stem' ? 1 : stretchAt(dome, (bed + to) / 2));

/** Least length of a block on the outside. */
function lengthOf(dome: DomeSetout, { count, to, part }: Course): number {
  const r = part === 'stem' ? dome.springingRadius + dome.thickness : spanPoint(dome.shell, to, dome.thickness)[0];
  return (2 * Math.PI * r) / count;
}

interface Column {
  readonly bearing: number;
  /** In the middle of a perpend. */
  readonly cut: boolean;
}

/** Corners of a ring of radius `r`: three at each perpend, and as many between as keep the facets near the surface. */
function columnsOf(
  dome: DomeSetout,
  course: Course | null,
  r: number,
  sagitta: number,
  width: number,
): readonly Column[] {
  const widest = dome.springingRadius + dome.thickness;
  if (!course) {
    const count = arcSteps(widest, 2 * Math.PI, sagitta);
    return steps(0, 2 * Math.PI, count)
      .slice(0, -1)
      .map((bearing) => ({ bearing, cut: false }));
  }
  const perpends = perpendBearings(course).sort((a, b) => a - b);
  const half = width / 2 / r;
  return perpends.flatMap((bearing, i): Column[] => {
    const next = perpends[i + 1] ?? (perpends[0] as number) + 2 * Math.PI;
    // All rings of a course have the same columns, whatever their radius.
    const count = arcSteps(widest, next - bearing, sagitta);
    const between = steps(bearing + half, next - half, count).map((b) => ({ bearing: b, cut: false }));
    return [{ bearing, cut: true }, ...between];
  });
}

/** Stations between two arc lengths, across the springing as well. */
function stationsOf(dome: DomeSetout, from: number, to: number, sagitta: number): number[] {
  if (to <= 0) return [from, to];
  const shell = meridianStations(dome.shell, Math.max(0, from), to, dome.thickness, sagitta);
  return from < 0 ? [from, ...shell] : shell;
}

/** What the outside has between the stem wall and the first normal: the skewback's shoulder. */
function shoulderOf(facets: DomeFacets): Vec2[] {
  const { dome } = facets;
  const [first] = spanPoint(dome.shell, 0, dome.thickness);
  return profileOf(facets).filter(([r, z]) => r > first + SAME_POINT && z > dome.springingZ + SAME_POINT);
}

/** The outside past the last ring: the curb's side and top, or what is left to the crown, and the point on the axis. */
function crownOf(facets: DomeFacets, [r, z]: Vec2): Vec2[] {
  const { curb } = facets.dome;
  if (curb)
    return [
      [curb.bedOuter[0], curb.topZ],
      [0, curb.topZ],
    ];
  const left = profileOf(facets).filter((p) => p[0] < r - SAME_POINT && p[0] > SAME_POINT && p[1] > z + SAME_POINT);
  return [...left, [0, facets.dome.topZ]];
}

const profileOf = (facets: DomeFacets): Vec2[] => cornersOf(outside(facets, 0)).map(({ point }) => point);
