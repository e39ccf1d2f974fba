import { turnPositive } from '../../math/vec.js';
import type { Course } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { spanPoint } from '../../setout/span.js';
import type { Cutter } from '../cutter.js';

/**
 * A stretch of a ring that is laid, between two cuts; bearings, radians, clockwise; `to` may pass 2π. The radii are
 * those at which its ends were measured.
 */
export interface LaidSpan {
  readonly from: number;
  readonly to: number;
  readonly fromRadius: number;
  readonly toRadius: number;
}

/** Heights at which a cut is measured; pieces are judged by their longest run. */
const ROWS = 32;

/**
 * What cuts leave of a course at mid-thickness, each cut where it is narrowest: the pieces beside it have their
 * longest run there. A cut that leaves some height of the course whole parts no block. `null` for an uncut ring.
 */
export function laidSpans(dome: DomeSetout, course: Course, cutters: readonly Cutter[]): LaidSpan[] | null {
  const span = dome[course.part];
  const rows = Array.from({ length: ROWS + 1 }, (_, i) =>
    spanPoint(span, course.bed + ((course.to - course.bed) * i) / ROWS, dome.thickness / 2),
  );
  const cuts = cutters
    .map((cutter) => ({ at: cutter.bearingRad, ...narrowest(rows, cutter) }))
    .filter(({ half }) => half > 0)
    .map(({ at, half, radius }) => ({ start: turnPositive(at - half), width: 2 * half, radius }))
    .sort((a, b) => a.start - b.start);
  const [first] = cuts;
  if (!first) return null;
  const spans: LaidSpan[] = [];
  let [end, fromRadius] = [first.start + first.width, first.radius];
  for (const cut of [...cuts.slice(1), { ...first, start: first.start + 2 * Math.PI, width: 0 }]) {
    if (cut.start > end) spans.push({ from: end, to: cut.start, fromRadius, toRadius: cut.radius });
    if (cut.start + cut.width <= end) continue;
    end = cut.start + cut.width;
    fromRadius = cut.radius;
  }
  return spans;
}

function narrowest(rows: readonly (readonly [number, number])[], cutter: Cutter): { half: number; radius: number } {
  let least = { half: Number.POSITIVE_INFINITY, radius: 0 };
  for (const [radius, z] of rows) {
    const half = z > cutter.lowZ && z < cutter.highZ ? cutter.spreadAt(radius, z) : 0;
    if (half < least.half) least = { half, radius };
  }
  return least;
}
