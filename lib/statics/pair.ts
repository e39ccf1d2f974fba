import { THRUST_MISS } from '../base/tolerances.js';
import { standsClear } from './clear.js';
import { factorBy } from './factor.js';
import { type Pair, PairProgramme, type Unknowns } from './pair-programme.js';
import type { ThrustPoint } from './thrust-line.js';

/** Geometric factor of safety, as for one lune. */
export function pairFactor(pair: Pair): number {
  const programme = new PairProgramme(pair);
  return factorBy((share) => (programme.solve(share)?.value ?? Number.NEGATIVE_INFINITY) + THRUST_MISS);
}

/** Of the first half and of the second. */
export type PairLines = readonly [readonly ThrustPoint[], readonly ThrustPoint[]];

/**
 * Lines of thrust of both halves, as far from the faces as they can be, to be drawn: sought under all limits at once,
 * so that among many as good the one found hangs on no guess. Empty when none fits.
 */
export function pairLines(pair: Pair): PairLines {
  const found = new PairProgramme(pair, { whole: true }).solve(1);
  if (!found || found.value < -THRUST_MISS) return [[], []];
  return linesOf(pair, found.at);
}

/** The lines of thrust of a solution. */
function linesOf(pair: Pair, [h, k, s, t]: Unknowns): PairLines {
  const tieZ = pair.tie?.z ?? 0;
  const line = (half: Pair['halves'][0], sign: 1 | -1) =>
    half
      .filter((section) => standsClear(section, 1))
      .map((section): ThrustPoint => {
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
