import { acos, atan2, cos, hypot, sin, square } from './elementary.js';
import { type Intervals, subtractIntervals, uniteIntervals } from './intervals.js';
import type { Vec2 } from './vec.js';

export interface Disc {
  readonly centre: Vec2;
  readonly radius: number;
}

const TURN = 2 * Math.PI;
const ALL: Intervals = [[0, TURN]];

/**
 * Area that `disc` has in common with the union of `others`, exactly: along the boundary of what is common. No two of
 * them are the same.
 */
export function commonArea(disc: Disc, others: readonly Disc[]): number {
  const reached = uniteIntervals(others.flatMap((other) => within(disc, other)));
  let sum = alongArcs(disc, reached);
  for (const [k, other] of others.entries()) {
    const inOthers = others.flatMap((next, n) => (n === k ? [] : within(other, next)));
    sum += alongArcs(other, subtractIntervals(within(other, disc), inOthers));
  }
  return sum;
}

/** Angles in [0, 2π] of the circle round `disc` that lie in `other`. */
function within(disc: Disc, other: Disc): Intervals {
  const [dx, dy] = [other.centre[0] - disc.centre[0], other.centre[1] - disc.centre[1]];
  const apart = hypot(dx, dy);
  if (!(disc.radius > 0) || !(other.radius > 0) || apart >= disc.radius + other.radius) return [];
  if (apart <= Math.abs(disc.radius - other.radius)) return disc.radius <= other.radius ? ALL : [];
  const half = acos((square(disc.radius) + square(apart) - square(other.radius)) / (2 * disc.radius * apart));
  const middle = atan2(dy, dx);
  const from = middle - half + (middle - half < 0 ? TURN : 0);
  const to = from + 2 * half;
  return to <= TURN
    ? [[from, to]]
    : [
        [0, to - TURN],
        [from, TURN],
      ];
}

/** ½ ∮ (x dy − y dx) along arcs of a circle. */
function alongArcs({ centre, radius }: Disc, arcs: Intervals): number {
  let sum = 0;
  for (const [a, b] of arcs) {
    sum += square(radius) * (b - a);
    sum += radius * (centre[0] * (sin(b) - sin(a)) - centre[1] * (cos(b) - cos(a)));
  }
  return sum / 2;
}
