import { LEAST_DEPTH } from '../base/tolerances.js';
import { square } from '../math/elementary.js';
import type { ThrustPoint } from './thrust-line.js';

/** Greatest compression on the part of the wall that a line of thrust stands in the middle of, MPa. */
export function lineStress(line: readonly ThrustPoint[], thickness: number): number {
  let most = 0;
  for (const p of line) {
    // At the crown the lune shrinks to nothing, the masonry doesn't.
    if (p.r < thickness || p.z < 0) continue;
    const depth = 2 * Math.max(LEAST_DEPTH, Math.min(p.place, 1 - p.place)) * thickness;
    most = Math.max(most, (1000 * Math.sqrt(square(p.horizontal) + square(p.vertical))) / (p.r * depth));
  }
  return most;
}

/**
 * Greatest pressure under either half, on the width of the footing that the resultant stands in the middle of, kPa;
 * `null` without a footing or a line. A half that is lifted presses on nothing.
 */
export function linePressure(lines: readonly (readonly ThrustPoint[])[], width: number, radius: number): number | null {
  let most: number | null = null;
  for (const line of lines) {
    const foot = line[line.length - 1];
    if (!foot) return null;
    const bears = width * Math.max(LEAST_DEPTH, 1 - 2 * Math.abs(foot.place - 0.5));
    most = Math.max(most ?? 0, (Math.max(0, foot.vertical) * 1e6) / (radius * bears));
  }
  return most;
}
