import { SAME_POINT } from '../../base/tolerances.js';
import { cos, sin } from '../../math/elementary.js';
import { turnPositive, type Vec2, type Vec3 } from '../../math/vec.js';
import { type Course, perpendBearings } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { spanPoint } from '../../setout/span.js';
import { type DomeFacets, outside } from '../../solids/dome-outlines.js';
import { cornersOf } from '../../solids/outline.js';
import { arcSteps, meridianStations, steps } from '../../solids/sections.js';
import { type Band, bandsOf, isFine, outsideAt, stretchAt } from './bands.js';
import type { PrintSizes } from './sizes.js';
import type { Ring } from './skin.js';

/** Tells whether joints stop at a place of the extrados: there stands the ring of an opening. */
export type Covered = (point: Vec3) => boolean;

/** A dome's outside in level rings, from below the floor to the crown, with its joints cut into it. */
export interface Grooved {
  readonly rings: readonly Ring[];
  /** Heights of the foot and of the point on the axis where the skin closes. */
  readonly ends: readonly [number, number];
  /** Indices of the rings in the middle of bed joints, in the order of `bedJoints`. */
  readonly beds: readonly number[];
  /** Courses whose joints are too close together to be engraved. */
  readonly plain: readonly number[];
}

/**
 * Grooves are V-shaped: half as deep as wide or flatter, so that none overhangs. Beds are rings; perpends are upright
 * and run from bed to bed. What a course's blocks are too small for is left plain, beds beside it as well.
 */
export function groovedDome(
  facets: DomeFacets,
  sizes: PrintSizes,
  { bottom, cuts }: { readonly bottom: number; readonly cuts: readonly number[] },
  covered: Covered,
): Grooved {
  const { dome, sagitta } = facets;
  const { width, depth } = sizes.groove;
  const bands = bandsOf(dome, sizes, cuts);
  const rings: Ring[] = [];
  const beds: number[] = [];
  let reached: Vec2 = [0, 0];
  const half = (s: number) => width / 2 / stretchAt(dome, s);

  const place = (r: number, z: number, bearing: number): Vec3 => [
    dome.at[0] + r * sin(bearing),
    dome.at[1] + r * cos(bearing),
    z,
  ];
  /** A ring of a band at arc length `s`; perpends are cut in by the depth, or the whole of it when it is a bed's. */
  const ring = (s: number, band: Band, { smooth = false, sunk = null as Sunk | null } = {}): void => {
    const flush = outsideAt(dome, s, 0, band.onStem);
    const deep = outsideAt(dome, s, depth, band.onStem);
    const widest = Math.max(flush[0], outsideAt(dome, band.from, 0, band.onStem)[0]);
    const course = band.engraved && !smooth ? band.course : null;
    const size = { widest, radius: flush[0], sagitta, width };
    const columns = sunk ? bedColumns([course, sunk.above], size) : columnsOf(course, size);
    // Where joints stop at an opening's ring, a bed stays level all the same if the model is parted there.
    const isParted = sunk !== null && cuts.some((z) => Math.abs(z - deep[1]) < width);
    const [r, z] = isParted ? [dome.radiusAt(deep[1], dome.thickness), deep[1]] : flush;
    const corners = columns.map(({ bearing, cut }): Vec3 => {
      const corner = place(r, z, bearing);
      return (sunk || cut) && !covered(corner) ? place(...deep, bearing) : corner;
    });
    rings.push({ bearings: columns.map((c) => c.bearing), corners });
    reached = flush;
  };
  const aboveOf = (i: number): Course | null => (bands[i + 1]?.engraved ? (bands[i + 1] as Band).course : null);
  const plainRing = ([r, z]: Vec2): void => {
    const bearings = steps(0, 2 * Math.PI, arcSteps(r, 2 * Math.PI, sagitta)).slice(0, -1);
    rings.push({ bearings, corners: bearings.map((bearing) => place(r, z, bearing)) });
  };

  const foot: Vec2 = [dome.springingRadius + dome.thickness, 0];
  if (bottom < 0) plainRing([foot[0], bottom]);
  if (dome.skewback && dome.stem.length === 0) plainRing(foot);
  for (const [i, band] of bands.entries()) {
    const { from, to, engraved, joint } = band;
    const below = bands[i - 1];
    const restart = from === 0 && dome.skewback !== null;
    if (restart) for (const point of shoulderOf(facets)) plainRing(point);
    if (below === undefined || restart) ring(from, band, { smooth: true });
    const low = engraved || below?.joint ? from + half(from) : from;
    const high = engraved || joint ? to - half(to) : to;
    const stations = stationsOf(dome, low, high, sagitta);
    for (const s of low > from ? stations : stations.slice(1)) if (outsideAt(dome, s, 0)[0] > SAME_POINT) ring(s, band);
    if (high < to) ring(to, band, joint ? { sunk: { above: aboveOf(i) } } : { smooth: true });
    if (joint !== null) beds.push(rings.length - 1);
  }
  const crown = crownOf(facets, reached);
  for (const point of crown.slice(0, -1)) plainRing(point);
  const plain = dome.courses.filter((course) => isFine(dome, course, sizes)).map((c) => c.index);
  return { rings, ends: [Math.min(bottom, 0), (crown.at(-1) as Vec2)[1]], beds, plain };
}

/** In the middle of a bed joint, below a course with perpends or `null`. */
interface Sunk {
  readonly above: Course | null;
}

interface Column {
  readonly bearing: number;
  /** In the middle of a perpend. */
  readonly cut: boolean;
}

interface RingSize {
  readonly radius: number;
  /** Radius of the course's lowest ring: all its rings have the same columns. */
  readonly widest: number;
  readonly sagitta: number;
  /** Of a groove. */
  readonly width: number;
}

/** Corners of a ring: three at each perpend, and as many between as keep the facets near the surface. */
function columnsOf(course: Course | null, { radius, widest, sagitta, width }: RingSize): readonly Column[] {
  if (!course) {
    const count = arcSteps(radius, 2 * Math.PI, sagitta);
    return steps(0, 2 * Math.PI, count)
      .slice(0, -1)
      .map((bearing) => ({ bearing, cut: false }));
  }
  const perpends = perpendBearings(course).sort((a, b) => a - b);
  const half = width / 2 / radius;
  return perpends.flatMap((bearing, i): Column[] => {
    const next = perpends[i + 1] ?? (perpends[0] as number) + 2 * Math.PI;
    const count = arcSteps(widest, next - bearing, sagitta);
    const between = steps(bearing + half, next - half, count).map((b) => ({ bearing: b, cut: false }));
    return [{ bearing, cut: true }, ...between];
  });
}

/** Corners in the middle of a bed: where perpends of either course meet it, and as many between as a ring has. */
function bedColumns(courses: readonly (Course | null)[], size: RingSize): readonly Column[] {
  const { radius, widest, sagitta, width } = size;
  const least = width / 2 / radius;
  const all = courses
    .flatMap((course) => (course ? perpendBearings(course).map(turnPositive) : []))
    .sort((a, b) => a - b);
  const [first] = all;
  if (first === undefined) return columnsOf(null, size);
  const kept: number[] = [];
  for (const bearing of all)
    if (bearing - (kept.at(-1) ?? -Infinity) >= least && (bearing === first || first + 2 * Math.PI - bearing >= least))
      kept.push(bearing);
  return kept.flatMap((bearing, i) => {
    const next = kept[i + 1] ?? first + 2 * Math.PI;
    const count = arcSteps(widest, next - bearing, sagitta);
    return steps(bearing, next, count)
      .slice(0, -1)
      .map((b) => ({ bearing: b, cut: false }));
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
