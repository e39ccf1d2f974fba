import { THRUST_MISS } from '../base/tolerances.js';
import { standsClear } from './clear.js';
import { factorBy } from './factor.js';
import { type Figures, type Pair, PairProgramme, type PairSection, type Unknowns } from './pair-programme.js';
import type { ThrustPoint } from './thrust-line.js';

/** Geometric factor of safety, as for one lune, and lines of thrust in the whole wall as far from the faces as can be. */
export function pairThrust(pair: Pair): { readonly factor: number; readonly lines: PairLines } {
  const programme = new PairProgramme(pair, 1);
  let lines: PairLines = [[], []];
  const factor = factorBy((share) => {
    const found = programme.solve(share);
    const margin = (found?.value ?? Number.NEGATIVE_INFINITY) + THRUST_MISS;
    if (found && share === 1 && margin >= 0) lines = linesOf(pair, found.at);
    return margin;
  });
  return { factor, lines };
}

export const pairFactor = (pair: Pair): number => pairThrust(pair).factor;

/** The sections of a half that its line of thrust has a point on. */
export const sectionsOfLine = (half: readonly PairSection[]): PairSection[] => half.filter((s) => standsClear(s, 1));

/** Of the first half and of the second. */
export type PairLines = readonly [readonly ThrustPoint[], readonly ThrustPoint[]];

/**
 * Lines of thrust of both halves, as far from the faces as they can be, to be drawn: sought under all limits at once,
 * so that among many as good the one found hangs on no guess. Empty when none fits.
 */
export function pairLines(pair: Pair): PairLines {
  const found = new PairProgramme(pair, 1, { of: 'leeway' }, { whole: true }).solve(1);
  if (!found || found.value < -THRUST_MISS) return [[], []];
  return linesOf(pair, found.at);
}

/** The lines of thrust of a solution. */
export function linesOf(pair: Pair, [h, k, s, t, ...rings]: Unknowns): PairLines {
  const tieZ = pair.tie?.z ?? 0;
  const line = (half: readonly PairSection[], sign: 1 | -1) =>
    sectionsOfLine(half).map((section): ThrustPoint => {
      const pull = section.tied ? t : 0;
      const vertical = section.weight + sign * s;
      let horizontal = h + section.push - pull;
      let moment = section.moment + section.pushMoment + k - pull * tieZ;
      rings.forEach((push, j) => {
        const z = pair.rings?.[j] ?? 0;
        if (section.middle[1] > z) return;
        horizontal += push;
        moment += push * z;
      });
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
export const tiltCapacity = (pair: Pair, heights: Figures): number =>
  Math.max(0, new PairProgramme(pair, 100, { of: 'tilt', heights }).solve(1)?.value ?? 0);
