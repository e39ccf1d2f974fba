import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import { cos, sin } from '../math/elementary.js';
import { type Intervals, intervalsLength, subtractIntervals } from '../math/intervals.js';
import { turnPositive, turnSigned, type Vec2, type Vec3 } from '../math/vec.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { type MeridianSpan, type SpanPoint, spanPoint } from '../setout/span.js';
import type { Cutter } from './cutter.js';

/**
 * A body is measured as a bundle of columns: for each pair (i, j) in the unit square a level run of material
 * from `low` to `high`, of which the cutters take away a part. `weight` turns run × di × dj into volume.
 * Curved bodies run along the bearing (radians), flat-faced ones along the block's chord (mm).
 */
export interface Column {
  readonly z: number;
  readonly weight: number;
  readonly low: number;
  readonly high: number;
  /** Millimetres of one unit of the run. */
  readonly unit: number;
  /** The point at `t` of the run, from the foot of the dome's axis. */
  place(t: number): Vec3;
  /** Run that the cutter takes away, `null` where it takes nothing. */
  cut(cutter: Cutter): readonly [number, number] | null;
}

export type ColumnBody = (i: number, j: number) => Column;

/** Box in (arc length, depth, bearing) of a figure of revolution. */
export const revolvedBox = (
  span: MeridianSpan,
  s: readonly [number, number],
  depth: readonly [number, number],
  bearing: readonly [number, number],
): ColumnBody => headedBoxes(span, s, depth)(() => bearing);

/** Scans take 12, 16 or 32 steps. */
const SAMPLED_HEIGHTS = 96;

/** Bodies that share heights and depths, and differ in the bearings that they have at (r, z). */
export type HeadedBoxes = (bearings: (r: number, z: number) => readonly [number, number]) => ColumnBody;

/** The same between bearings that differ from place to place. */
export function headedBoxes(
  span: MeridianSpan,
  s: readonly [number, number],
  depth: readonly [number, number],
): HeadedBoxes {
  const height = s[1] - s[0];
  const thickness = depth[1] - depth[0];
  // Bodies are sampled at the same heights at every depth; those between, where kinks are sought, never come again.
  const known = new Map<number, SpanPoint>();
  const pointAt = (i: number): SpanPoint => {
    const at = i * SAMPLED_HEIGHTS;
    if (!Number.isInteger(at)) return span.at(s[0] + height * i);
    let p = known.get(at);
    if (!p) {
      p = span.at(s[0] + height * i);
      known.set(at, p);
    }
    return p;
  };
  return (bearings) => (i, j) => {
    const p = pointAt(i);
    const d = depth[0] + thickness * j;
    const r = p.r + d * p.normal[0];
    const z = p.z + d * p.normal[1];
    return bearingColumn(r, z, r * (1 + p.curvature * d) * height * thickness, bearings(r, z));
  };
}

/** A column of a figure of revolution at radius r: the run is the bearing. */
export const bearingColumn = (r: number, z: number, weight: number, bearing: readonly [number, number]): Column =>
  new BearingColumn(r, z, weight, bearing[0], bearing[1]);

/** A class, for millions of these are made: methods are shared. */
class BearingColumn implements Column {
  readonly unit: number;
  readonly z: number;
  readonly weight: number;
  readonly low: number;
  readonly high: number;

  constructor(r: number, z: number, weight: number, low: number, high: number) {
    this.unit = r;
    this.z = z;
    this.weight = weight;
    this.low = low;
    this.high = high;
  }

  place(t: number): Vec3 {
    return [this.unit * sin(t), this.unit * cos(t), this.z];
  }

  cut(cutter: Cutter): readonly [number, number] | null {
    const spread = cutter.spreadAt(this.unit, this.z);
    if (!(spread > 0)) return null;
    const middle = (this.low + this.high) / 2;
    const centre = middle + turnSigned(cutter.bearingRad - middle);
    return [centre - spread, centre + spread];
  }
}

/**
 * Block with flat faces between four corners (distance from the axis, height) of its upright middle plane at the
 * bearing `middle`, in order round it; across that plane a run of ± `half`, which is linear in the plane.
 */
export function flatBlock(
  [a, b, c, d]: readonly [Vec2, Vec2, Vec2, Vec2],
  middle: number,
  half: (distance: number, z: number) => number,
): ColumnBody {
  const [sine, cosine] = [sin(middle), cos(middle)];
  return (i, j) => {
    const at = (k: 0 | 1) => (1 - i) * ((1 - j) * a[k] + j * b[k]) + i * ((1 - j) * d[k] + j * c[k]);
    const di = (k: 0 | 1) => (1 - j) * (d[k] - a[k]) + j * (c[k] - b[k]);
    const dj = (k: 0 | 1) => (1 - i) * (b[k] - a[k]) + i * (c[k] - d[k]);
    const p = at(0);
    const z = at(1);
    const run = half(p, z);
    return {
      z,
      weight: Math.abs(di(0) * dj(1) - di(1) * dj(0)),
      low: -run,
      high: run,
      unit: 1,
      place: (x) => [p * sine + x * cosine, p * cosine - x * sine, z],
      cut: (cutter) => cutter.chordAt(p, middle, z),
    };
  };
}

/** Where a box lies at the least: its least radius, and its lowest point. */
export interface BoxFoot {
  readonly narrowest: number;
  readonly lowest: number;
}

export function footOf(dome: DomeSetout, { part, bed, to }: Course): BoxFoot {
  const span = dome[part];
  return { narrowest: span.at(to).r, lowest: span.at(bed).z };
}

/** Those of the cutters that reach into the heights of a ring between two arc lengths of its wall's intrados. */
export function reaching(
  cutters: readonly Cutter[],
  span: MeridianSpan,
  [from, to]: readonly [number, number],
  thickness: number,
): Cutter[] {
  const low = span.at(from).z;
  const high = spanPoint(span, to, thickness)[1];
  return cutters.filter(({ lowZ, highZ }) => lowZ < high && highZ > low);
}

/** Quick test on bearings alone whether a cutter can come near a box at all. */
export function comesNear(cutter: Cutter, foot: BoxFoot, bearing: readonly [number, number]): boolean {
  const middle = (bearing[0] + bearing[1]) / 2;
  const reach = cutter.widestSpread(foot.narrowest, foot.lowest) + (bearing[1] - bearing[0]) / 2;
  return Math.abs(turnSigned(middle - cutter.bearingRad)) < reach;
}

/**
 * A full turn of bearings in stretches whose ends no cut straddles: a column takes each cut once, at the nearer end.
 * It is one stretch where nothing is cut at some bearing; else thirds, for no cut takes more than half a turn.
 */
export function fullTurn(cutters: readonly Cutter[], narrowest: number): (readonly [number, number])[] {
  const start = freeBearing(cutters.map((c) => ({ at: c.bearingRad, half: c.widestSpread(narrowest) })));
  if (start !== null) return [[start, start + 2 * Math.PI]];
  const third = (2 * Math.PI) / 3;
  return [0, 1, 2].map((k) => [k * third, (k + 1) * third]);
}

/** The middle of the widest stretch of bearings that no arc covers, rad; 0 where there is no arc, `null` for no stretch. */
export function freeBearing(all: readonly { readonly at: number; readonly half: number }[]): number | null {
  const arcs = all.filter(({ half }) => half > 0);
  if (arcs.length === 0) return 0;
  let start: number | null = null;
  let widest = 0;
  for (const { at, half } of arcs) {
    const edge = at + half;
    // Free stretch from this edge clockwise to the nearest beginning of another arc.
    const free = Math.min(...arcs.map((a) => turnPositive(a.at - a.half - edge)));
    const covered = arcs.some((a) => Math.abs(turnSigned(edge - a.at)) < a.half - SAME_ANGLE_RAD);
    if (covered || free <= widest) continue;
    widest = free;
    start = edge + free / 2;
  }
  return start;
}

/** Length of the column that the cutters leave, in units of its run. */
export function columnLeft(column: Column, cutters: readonly Cutter[]): number {
  if (cutters.length !== 1) return intervalsLength(columnRuns(column, cutters));
  const { low, high } = column;
  const cut = column.cut(cutters[0] as Cutter);
  return high - low - (cut ? Math.max(0, Math.min(high, cut[1]) - Math.max(low, cut[0])) : 0);
}

/** Runs of the column that the cutters leave. */
export function columnRuns(column: Column, cutters: readonly Cutter[]): Intervals {
  const { low, high } = column;
  const cuts: (readonly [number, number])[] = [];
  for (const cutter of cutters) {
    const cut = column.cut(cutter);
    if (cut && cut[0] < high && cut[1] > low) cuts.push(cut);
  }
  const [first] = cuts;
  if (!first) return [[low, high]];
  return cuts.length === 1 && low < high ? besideCut(low, high, first) : subtractIntervals([[low, high]], cuts);
}

/** What one cut that reaches into a run leaves of it: most columns meet no more. */
function besideCut(low: number, high: number, [from, to]: readonly [number, number]): Intervals {
  const rest = [];
  if (low < from) rest.push([low, from] as const);
  if (to < high) rest.push([to, high] as const);
  return rest;
}
