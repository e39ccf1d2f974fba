import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import { circlePoint } from '../math/curves.js';
import { add2, length2, lerp2, perp2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { Segment } from './drawing.js';

export type ArcSegment = Extract<Segment, { kind: 'arc' }>;

const FULL = 2 * Math.PI;

/** Turn of an arc in radians: positive counter-clockwise, in (−2π, 2π]; equal angles give 0. */
export function arcSweep(arc: ArcSegment): number {
  const turn = arc.ccw ? arc.end - arc.start : arc.start - arc.end;
  const sweep = turn > 0 && turn <= FULL ? turn : turn - FULL * Math.floor(turn / FULL);
  return arc.ccw ? sweep : -sweep;
}

export const segmentStart = (s: Segment): Vec2 =>
  s.kind === 'line' ? s.from : circlePoint(s.centre, s.radius, s.start);

export const segmentEnd = (s: Segment): Vec2 => (s.kind === 'line' ? s.to : circlePoint(s.centre, s.radius, s.end));

/** Point at a share `t` in [0, 1] of the segment's length. */
export const segmentAt = (s: Segment, t: number): Vec2 =>
  s.kind === 'line' ? lerp2(s.from, s.to, t) : circlePoint(s.centre, s.radius, s.start + t * arcSweep(s));

/** Points that bound the segment's box: its ends and, on an arc, the quadrant points that it passes. */
export function extremePoints(s: Segment): Vec2[] {
  const points = [segmentStart(s), segmentEnd(s)];
  if (s.kind === 'line') return points;
  const sweep = arcSweep(s);
  const [low, high] = sweep > 0 ? [s.start, s.start + sweep] : [s.start + sweep, s.start];
  for (let q = Math.ceil(low / (Math.PI / 2)); q * (Math.PI / 2) < high; q++)
    points.push(circlePoint(s.centre, s.radius, q * (Math.PI / 2)));
  return points;
}

/** The arc in equal pieces that each turn by at most `most` radians. */
export function splitArc(arc: ArcSegment, most: number): ArcSegment[] {
  const sweep = arcSweep(arc);
  const n = Math.max(1, Math.ceil(Math.abs(sweep) / most - SAME_ANGLE_RAD));
  return Array.from({ length: n }, (_, i) => ({
    ...arc,
    start: arc.start + (sweep * i) / n,
    end: arc.start + (sweep * (i + 1)) / n,
  }));
}

export const line = (from: Vec2, to: Vec2): Segment => ({ kind: 'line', from, to });

/** Unit vector from a to b; +x when they are one point. */
export function direction(a: Vec2, b: Vec2): Vec2 {
  const d = sub2(b, a);
  const l = length2(d);
  return l > 0 ? scale2(d, 1 / l) : [1, 0];
}

/** `p` moved by `along` in the unit direction `d` and by `aside` to its left. */
export const shifted = (p: Vec2, d: Vec2, along: number, aside = 0): Vec2 =>
  add2(add2(p, scale2(d, along)), scale2(perp2(d), aside));
