import { turnSigned } from '../math/vec.js';
import type { Course } from '../setout/courses.js';

/** Least lap between the perpends of two neighbouring courses, mm at the upper course's middle radius. */
export function leastLap(lower: Course, upper: Course): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < lower.count; i++) {
    const at = lower.startRad + (2 * Math.PI * i) / lower.count;
    const module = (2 * Math.PI) / upper.count;
    const nearest = Math.round((at - upper.startRad) / module) * module + upper.startRad;
    least = Math.min(least, Math.abs(turnSigned(at - nearest)));
  }
  return least * upper.midRadius;
}
