import { SAME_POINT } from '../base/tolerances.js';
import { type Pair, PairProgramme, type PairSection } from './pair-programme.js';

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
 * Least pull of a ring at a height, however strong, that holds what stands above it, so that neither half pushes the wall
 * below outward: all of the thrust of the half that pushes more, kN. The load's own push on the other half goes down the
 * wall, and on the way from one side to the other along the ring, whose pull is the greatest here. `null` where no thrust
 * fits with any. It is least under the safe theorem, since steel yields before it breaks: no other state of balance that
 * fits asks for less.
 */
export function holdingPull({ halves }: Pair, z: number): number | null {
  const [first, second] = halves;
  const below = first.findIndex((s, i) => i > 0 && s.middle[1] <= z - SAME_POINT);
  // One that lies at the ring's own height bears what comes from above, before the ring has pulled.
  const over = (half: readonly PairSection[]) =>
    half.slice(0, below < 0 ? half.length : below).map((s) => ({ ...s, tied: false }));
  const above: Pair = { halves: [over(first), over(second)], tie: { z, most: 0 } };
  const pull = new PairProgramme(above, 'pull').solve(1)?.at[3];
  return pull === undefined ? null : Math.max(0, pull);
}
