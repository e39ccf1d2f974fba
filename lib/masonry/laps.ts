import { turnPositive, turnSigned } from '../math/vec.js';
import { type Course, perpendBearings } from '../setout/courses.js';

/** Least lap between the perpends of two neighbouring courses, mm at the upper course's middle radius. */
export const leastLap = (lower: Course, upper: Course): number => Math.min(...lapsBetween(lower, upper));

/** Lap of each perpend of the lower course on the nearest of the upper, mm at the upper course's middle radius. */
export function lapsBetween(lower: Course, upper: Course): number[] {
  const above = perpendBearings(upper);
  return perpendBearings(lower).map((at) => upper.midRadius * turnToNearest(above, at));
}

/** Angle from a bearing to the nearest of others, which ascend within one turn; infinite where there are none. */
export function turnToNearest(others: readonly number[], at: number): number {
  const first = others[0] ?? 0;
  const sought = first + turnPositive(at - first);
  let [low, high] = [0, others.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((others[middle] as number) < sought) low = middle + 1;
    else high = middle;
  }
  let least = Number.POSITIVE_INFINITY;
  // The neighbours on either side, round the ring.
  for (const near of [low - 1, low, 0, others.length - 1]) {
    const other = others[near];
    if (other !== undefined) least = Math.min(least, Math.abs(turnSigned(at - other)));
  }
  return least;
}

/** No lap between rings of n and m equal blocks can be longer everywhere: their perpends share a lattice of lcm(n, m). */
export const lapBound = (lower: number, upper: number, radius: number): number =>
  (Math.PI * radius) / ((lower / commonDivisor(lower, upper)) * upper);

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));
