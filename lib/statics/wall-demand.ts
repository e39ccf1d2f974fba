import { leastStresses, type RingedWall, type Trial } from './firm-line.js';
import { sectionsOfLine } from './pair.js';
import type { ThrustPoint } from './thrust-line.js';

/** What loads from one side ask of the wall. */
export interface WallDemand {
  /** Greatest compression on the line of thrust that is found to have the least, MPa: see `leastStresses`. */
  readonly stressMpa: number;
  /** Greatest |shear| over compression on a joint, on the line that keeps farthest from the faces. */
  readonly friction: number;
}

/** Of each trial, whose lines of thrust keep farthest from the faces; `null` where no thrust fits. */
export function wallDemands(trials: readonly Trial[], shell: RingedWall): (WallDemand | null)[] {
  const stresses = leastStresses(trials, shell);
  return trials.map(({ pair, lines }, i) => {
    const stressMpa = stresses[i];
    if (stressMpa == null) return null;
    const frictions = lines.map((line, side) => lineFriction(line, sectionsOfLine(pair.halves[side === 0 ? 0 : 1])));
    return { stressMpa, friction: Math.max(...frictions) };
  });
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
