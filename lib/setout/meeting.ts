import { monotoneRoot } from '../math/roots.js';
import { length2, sub2 } from '../math/vec.js';
import type { DomeSetout } from './dome.js';

/**
 * Height up to which a surface of `one`, its outside when none is given, meets the outside of `other`; mm above the
 * floor, 0 where they stand apart there. Both lean inward.
 */
export function meetingLevel(
  one: DomeSetout,
  other: DomeSetout,
  radiusAt: (z: number) => number = (z) => one.outerRadiusAt(z),
): number {
  const distance = length2(sub2(one.at, other.at));
  const gap = (z: number) => {
    const meets = radiusAt(z) + other.outerRadiusAt(z) - distance;
    // Curbs and pointed tips end with a jump.
    return Number.isNaN(meets) ? -distance : meets;
  };
  return gap(0) <= 0 ? 0 : monotoneRoot(gap, 0, Math.min(one.topZ, other.topZ));
}
