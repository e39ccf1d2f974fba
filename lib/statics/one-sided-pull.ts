import { SAME_POINT } from '../base/tolerances.js';
import type { Growing, LineLimits } from './line-joints.js';
import { OneLine } from './one-line.js';

/** What loads from one side ask of a ring tie, kN; a pull per radian of bearing is the pull of the whole ring. */
export interface OneSidedPull {
  /** Least pull with which one line of thrust keeps within wall, strength and friction, down to the foot. */
  readonly fits: number;
  /** Least pull that holds what stands above the tie: see `holdingPull`. */
  readonly holds: number;
}

/** The greater is what the steel must take. */
export const pullAsked = ({ fits, holds }: OneSidedPull): number => Math.max(fits, holds);

/**
 * Least pull of a ring at a height, however strong, that holds what stands above it under the whole load, so that
 * neither half pushes the wall below outward: all of the thrust of the half that pushes more, kN, of a line within the
 * same limits as the whole dome's. The load's own push on the other half goes down the wall, and on the way from one
 * side to the other along the ring, whose pull is the greatest here. `null` where no line fits with any, and then none
 * does down to the foot. It is least under the safe theorem, since steel yields before it breaks: no other state of
 * balance that fits asks for less.
 */
export function holdingPull({ pair, grows }: Growing, limits: LineLimits, z: number): number | null {
  const [first, second] = pair.halves;
  const below = first.findIndex((s, i) => i > 0 && s.middle[1] <= z - SAME_POINT);
  const over = <T>(half: readonly T[]): T[] => half.slice(0, below < 0 ? half.length : below);
  // One that lies at the ring's own height bears what comes from above, before the ring has pulled.
  const untied = (half: typeof first) => over(half).map((s) => ({ ...s, tied: false }));
  const above: Growing = {
    pair: { halves: [untied(first), untied(second)], tie: { z, most: 0 } },
    grows: [over(grows[0]), over(grows[1])],
  };
  const line = new OneLine(above, limits);
  line.holdFeet();
  return line.leastPull();
}
