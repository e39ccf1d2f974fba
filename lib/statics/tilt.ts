import { FACES_ALONE, type Growing } from './line-joints.js';
import { MOST_PART, OneLine } from './one-line.js';
import type { Burden, Pair } from './pair-programme.js';

/**
 * Greatest part of its own weight that may push the whole arch sideways: from the first half's side to the second's.
 * `heights` are the moments of each section's weight above about level 0. 0 when it doesn't stand at all.
 */
export function tiltCapacity(pair: Pair, heights: readonly [readonly number[], readonly number[]]): number {
  const leaning = (which: 0 | 1, sign: 1 | -1): Burden[] =>
    pair.halves[which].map(({ weight }, i) => ({
      weight: 0,
      moment: 0,
      push: sign * weight,
      pushMoment: sign * (heights[which][i] as number),
    }));
  const growing: Growing = { pair, grows: [leaning(0, -1), leaning(1, 1)] };
  return new OneLine(growing, FACES_ALONE).solve(MOST_PART)?.factor ?? 0;
}
