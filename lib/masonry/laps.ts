import { turnSigned } from '../math/vec.js';
import { type Course, perpendBearings } from '../setout/courses.js';

/** Least lap between the perpends of two neighbouring courses, mm at the upper course's middle radius. */
export const leastLap = (lower: Course, upper: Course): number => Math.min(...lapsBetween(lower, upper));

/** Lap of each perpend of the lower course on the nearest of the upper, mm at the upper course's middle radius. */
export function lapsBetween(lower: Course, upper: Course): number[] {
  const above = perpendBearings(upper);
  return perpendBearings(lower).map(
    (at) => upper.midRadius * Math.min(...above.map((other) => Math.abs(turnSigned(at - other)))),
  );
}

/** No lap between rings of n and m equal blocks can be longer everywhere: their perpends share a lattice of lcm(n, m). */
export const lapBound = (lower: number, upper: number, radius: number): number =>
  (Math.PI * radius) / ((lower / commonDivisor(lower, upper)) * upper);

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));
