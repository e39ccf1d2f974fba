import { SAME_POINT } from '../base/tolerances.js';
import { type Pair, PairProgramme, type PairSection } from './pair-programme.js';

/** What loads from one side ask of a ring tie, kN; a pull per radian of bearing is the pull of the whole ring. */
export interface OneSidedPull {
  /** Least pull with which a thrust fits, down to the foot. */
  readonly fits: number;
  /**
   * Least pull that holds what stands above the tie, so that neither half pushes the wall below outward: all of the
   * thrust of the half that pushes more. The load's own push on the other half goes down the wall, and on the way from
   * one side to the other along the ring, whose pull is the greatest here.
   */
  readonly holds: number;
}

/** The greater is what the steel must take. */
export const pullAsked = ({ fits, holds }: OneSidedPull): number => Math.max(fits, holds);

/**
 * Pull of a ring at a height, however strong, on a pair whose sections from there down are `tied`; `null` where no
 * thrust fits with any. Both are least under the safe theorem, since steel yields before it breaks: no other state of
 * balance that fits asks for less.
 */
export function oneSidedPull({ halves }: Pair, z: number): OneSidedPull | null {
  const tie = { z, most: 0 };
  const [first, second] = halves;
  const below = first.findIndex((s, i) => i > 0 && s.middle[1] <= z - SAME_POINT);
  // One that lies at the ring's own height bears what comes from above, before the ring has pulled.
  const over = (half: readonly PairSection[]) =>
    half.slice(0, below < 0 ? half.length : below).map((s) => ({ ...s, tied: false }));
  const above = [over(first), over(second)] as const;
  const fits = new PairProgramme({ halves, tie }, { of: 'pull', holds: false }).solve(1)?.at[3];
  const holds = new PairProgramme({ halves: above, tie }, { of: 'pull', holds: true }).solve(1)?.at[3];
  return fits === undefined || holds === undefined ? null : { fits: Math.max(0, fits), holds: Math.max(0, holds) };
}
