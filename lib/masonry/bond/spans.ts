import { turnPositive } from '../../math/vec.js';
import type { Course } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { spanPoint } from '../../setout/span.js';
import type { Cutter } from '../cutter.js';

/** A stretch of a ring that is laid, between two cuts; bearings, radians, clockwise; `to` may pass 2π. */
export interface LaidSpan {
  readonly from: number;
  readonly to: number;
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
    .map((c) => ({
      at: c.bearingRad,
      half: Math.min(...rows.map(([r, z]) => (z > c.lowZ && z < c.highZ ? c.spreadAt(r, z) : 0))),
    }))
    .filter(({ half }) => half > 0)
    .map(({ at, half }) => ({ start: turnPositive(at - half), width: 2 * half }))
    .sort((a, b) => a.start - b.start);
  const [first] = cuts;
  if (!first) return null;
  const spans: LaidSpan[] = [];
  let end = first.start + first.width;
  for (const { start, width } of [...cuts.slice(1), { start: first.start + 2 * Math.PI, width: 0 }]) {
    if (start > end) spans.push({ from: end, to: start });
    end = Math.max(end, start + width);
  }
  return spans;
}
