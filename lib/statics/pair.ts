import { THRUST_MISS } from '../base/tolerances.js';
import { standsClear } from './clear.js';
import { factorBy } from './factor.js';
import { type Heights, type Pair, PairProgramme, type PairSection } from './pair-programme.js';
import type { ThrustPoint } from './thrust-line.js';

/** Geometric factor of safety, as for one lune. */
export function pairFactor(pair: Pair): number {
  const programme = new PairProgramme(pair, 1);
  return factorBy((share) => (programme.solve(share)?.value ?? Number.NEGATIVE_INFINITY) + THRUST_MISS);
}

/** The sections of a half that its line of thrust has a point on. */
export const sectionsOfLine = (half: readonly PairSection[]): PairSection[] => half.filter((s) => standsClear(s, 1));

/** Of the first half and of the second. */
export type PairLines = readonly [readonly ThrustPoint[], readonly ThrustPoint[]];

/** Lines of thrust of both halves, as far from the faces as they can be; empty when none fits. */
export function pairLines(pair: Pair): PairLines {
  const found = new PairProgramme(pair, 1, { whole: true }).solve(1);
  if (!found || found.value < -THRUST_MISS) return [[], []];
  const [h, k, s, t] = found.at;
  const tieZ = pair.tie?.z ?? 0;
  const line = (half: readonly PairSection[], sign: 1 | -1) =>
    sectionsOfLine(half).map((section): ThrustPoint => {
      const pull = section.tied ? t : 0;
      const vertical = section.weight + sign * s;
      const horizontal = h + section.push - pull;
      const moment = section.moment + section.pushMoment + k - pull * tieZ;
      const { middle, half: out } = section;
      const across = 2 * (out[0] * vertical + out[1] * horizontal);
      const off = moment - middle[0] * vertical - middle[1] * horizontal;
      const place = across > 0 ? 0.5 + off / across : 0.5;
      return {
        r: middle[0] + (2 * place - 1) * out[0],
        z: middle[1] + (2 * place - 1) * out[1],
        horizontal,
        vertical,
        place,
      };
    });
  return [line(pair.halves[0], 1), line(pair.halves[1], -1)];
}

/**
 * Greatest part of its own weight that may push the whole arch sideways: from the first half's side to the second's.
 * `height` gives the moment of a section's weight above about level 0. 0 when it doesn't stand at all.
 */
export const tiltCapacity = (pair: Pair, heights: Heights): number =>
  Math.max(0, new PairProgramme(pair, 100, { heights }).solve(1)?.value ?? 0);
