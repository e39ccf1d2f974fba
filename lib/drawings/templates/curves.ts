import type { Segment } from '../../documents/drawing.js';
import { line } from '../../documents/segments.js';
import { atan2, hypot } from '../../math/elementary.js';
import { cross2, sub2, type Vec2 } from '../../math/vec.js';

/** A chain flatter than this, mm, is a line. */
const STRAIGHT = 1e-4;

/** The arc from `a` to `b` that passes `m`; a line where the three lie on one. */
export function arcThrough(a: Vec2, m: Vec2, b: Vec2): Segment {
  const [am, ab] = [sub2(m, a), sub2(b, a)];
  const turn = cross2(am, ab);
  const chord = hypot(ab[0], ab[1]);
  if (Math.abs(turn) <= STRAIGHT * chord) return line(a, b);
  // Centre from the two perpendicular bisectors, relative to `a`.
  const [mm, bb] = [am[0] * am[0] + am[1] * am[1], ab[0] * ab[0] + ab[1] * ab[1]];
  const x = (mm * ab[1] - bb * am[1]) / (2 * turn);
  const y = (bb * am[0] - mm * ab[0]) / (2 * turn);
  const centre: Vec2 = [a[0] + x, a[1] + y];
  const angle = (p: Vec2) => atan2(p[1] - centre[1], p[0] - centre[0]);
  const [start, through, end] = [angle(a), angle(m), angle(b)];
  const ahead = (from: number, to: number) => (((to - from) % FULL) + FULL) % FULL;
  return { kind: 'arc', centre, radius: hypot(x, y), start, end, ccw: ahead(start, through) <= ahead(start, end) };
}

const FULL = 2 * Math.PI;

/** A smooth curve over [0, 1] as `pieces` arcs, each through its ends and its middle. */
export const curveSegments = (at: (t: number) => Vec2, pieces: number): Segment[] =>
  Array.from({ length: pieces }, (_, i) => arcThrough(at(i / pieces), at((i + 0.5) / pieces), at((i + 1) / pieces)));
