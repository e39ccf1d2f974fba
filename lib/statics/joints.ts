import { LEAST_DEPTH } from '../base/tolerances.js';
import { square } from '../math/elementary.js';
import { type PairLines, sectionsOfLine } from './pair.js';
import type { Pair } from './pair-programme.js';
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

/** What a pair's line of thrust that keeps farthest from the faces asks of the wall. */
export interface WallDemand {
  /** Greatest compression, MPa. */
  readonly stressMpa: number;
  /** Greatest |shear| over compression on a joint; another line of thrust may need less. */
  readonly friction: number;
}

/** `null` where no thrust fits and there are no lines. */
export function wallDemand(pair: Pair, lines: PairLines, thickness: number): WallDemand | null {
  if (lines[0].length === 0) return null;
  return {
    stressMpa: Math.max(...lines.map((line) => lineStress(line, thickness))),
    friction: Math.max(...lines.map((line, i) => lineFriction(line, sectionsOfLine(pair.halves[i === 0 ? 0 : 1])))),
  };
}

/** Greatest |shear| over compression where a line crosses sections above the footing, which stand in its order. */
function lineFriction(line: readonly ThrustPoint[], sections: readonly { readonly half: readonly number[] }[]): number {
  let most = 0;
  line.forEach(({ z, horizontal, vertical }, i) => {
    const [c, s] = sections[i]?.half ?? [];
    if (z < 0 || c === undefined || s === undefined) return;
    const across = horizontal * s + vertical * c;
    if (across > 0) most = Math.max(most, Math.abs(horizontal * c - vertical * s) / across);
  });
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
