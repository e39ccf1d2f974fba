import { SAME_POINT, THRUST_MISS } from '../base/tolerances.js';
import { type Limit, maximiseByCuts } from '../math/linear-programme.js';
import type { Vec2 } from '../math/vec.js';
import { factorBy, type ThrustPoint } from './thrust.js';

/**
 * An arch of two halves that aren't loaded alike: an opposite pair of lunes as a tapered arch, or an arch that is
 * tilted. Unknowns: crown thrust H, its moment K, the shear S that one half hands the other at the crown, the pull T
 * of a tie. Staying inside a section is linear in them (safe theorem, as for one lune). Lengths mm, forces kN.
 */
export interface PairSection {
  readonly middle: Vec2;
  /** From the middle to the outer face. */
  readonly half: Vec2;
  /** Load above, and its moment about the axis. */
  readonly weight: number;
  readonly moment: number;
  /** Horizontal load above, outward, and its moment about level 0. */
  readonly push: number;
  readonly pushMoment: number;
  /** Whether the tie pulls above it. */
  readonly tied: boolean;
}

export interface Pair {
  /** Each from the crown down. */
  readonly halves: readonly [readonly PairSection[], readonly PairSection[]];
  readonly tie: { readonly z: number; readonly most: number } | null;
}

/** Whether a section cut to a share of its thickness doesn't reach beyond the axis; others are passed over. */
const standsClear = ({ middle, half }: PairSection, share: number): boolean =>
  middle[0] - share * half[0] >= -SAME_POINT;

interface Scale {
  readonly length: number;
  readonly force: number;
}

function scaleOf({ halves }: Pair): Scale {
  const all = halves.flat();
  const last = halves[0][halves[0].length - 1];
  return {
    length: Math.max(SAME_POINT, ...all.map((s) => s.middle[0] + Math.abs(s.half[0]))),
    force: Math.max(SAME_POINT, last?.weight ?? 0),
  };
}

/** Limits of one half on H, K, S, T and a fifth unknown that is made greatest; `extra` gives each limit's coefficient of the fifth unknown. */
function limitsOf(
  half: readonly PairSection[],
  sign: 1 | -1,
  share: number,
  tieZ: number,
  scale: Scale,
  extra: (s: PairSection, at: Vec2, side: 1 | -1) => number,
): Limit[] {
  const { length, force } = scale;
  return half
    .filter((s) => standsClear(s, share))
    .flatMap((s) => {
      const sides = [-1, 1] as const;
      return sides.map((side): Limit => {
        const x = s.middle[0] + side * share * s.half[0];
        const z = s.middle[1] + side * share * s.half[1];
        // side · (moment of all about the point) <= 0: the resultant passes within.
        const tied = s.tied ? z - tieZ : 0;
        const miss = x * s.weight + z * s.push - s.moment - s.pushMoment;
        return {
          of: [
            (-side * z) / length,
            side,
            (-side * sign * x) / length,
            (side * tied) / length,
            extra(s, [x, z], side) / (force * length),
          ],
          most: (side * miss) / (force * length),
        };
      });
    });
}

function tieLimits({ tie }: Pair, { force }: Scale): Limit[] {
  return [
    { of: [0, 0, 0, 1, 0], most: (tie?.most ?? 0) / force },
    { of: [0, 0, 0, -1, 0], most: 0 },
  ];
}

/** Limits of neighbouring sections are much alike: every so manieth is looked at first. Odd, so that both faces are. */
const FIRST_LIMITS = 9;

/** H, K, S, T in units of force (and length) that keep the thrust inside; `null` when nothing does. */
function solve(pair: Pair, share: number): readonly number[] | null {
  const scale = scaleOf(pair);
  const slack = scale.force * scale.length;
  const tieZ = pair.tie?.z ?? 0;
  const limits = [
    ...limitsOf(pair.halves[0], 1, share, tieZ, scale, () => slack),
    ...limitsOf(pair.halves[1], -1, share, tieZ, scale, () => slack),
    ...tieLimits(pair, scale),
    { of: [0, 0, 0, 0, 1], most: 1 },
  ];
  const best = maximiseByCuts([0, 0, 0, 0, 1], limits, FIRST_LIMITS);
  if (best.kind === 'none' || best.value < -THRUST_MISS) return null;
  const [h, k, s, t] = best.at as [number, number, number, number, number];
  return [h * scale.force, k * slack, s * scale.force, t * scale.force];
}

/** Geometric factor of safety, as for one lune. */
export const pairFactor = (pair: Pair): number => factorBy((share) => solve(pair, share) !== null);

/** Lines of thrust of both halves, as far from the faces as they can be; empty when none fits. */
export function pairLines(pair: Pair): readonly [ThrustPoint[], ThrustPoint[]] {
  const found = solve(pair, 1);
  if (!found) return [[], []];
  const [h, k, s, t] = found as [number, number, number, number];
  const tieZ = pair.tie?.z ?? 0;
  const line = (half: readonly PairSection[], sign: 1 | -1) =>
    half
      .filter((s) => standsClear(s, 1))
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

/**
 * Greatest part of its own weight that may push the whole arch sideways: from the first half's side to the second's.
 * `height` gives the moment of a section's weight above about level 0. 0 when it doesn't stand at all.
 */
export function tiltCapacity(pair: Pair, heights: readonly [readonly number[], readonly number[]]): number {
  const scale = scaleOf(pair);
  const tieZ = pair.tie?.z ?? 0;
  const tilted = (which: 0 | 1) => {
    const heightOf = new Map(pair.halves[which].map((s, i) => [s, heights[which][i] as number]));
    const outward = which === 0 ? -1 : 1;
    return (s: PairSection, at: Vec2, side: 1 | -1) =>
      side * outward * ((heightOf.get(s) as number) - at[1] * s.weight);
  };
  const limits = [
    ...limitsOf(pair.halves[0], 1, 1, tieZ, scale, tilted(0)),
    ...limitsOf(pair.halves[1], -1, 1, tieZ, scale, tilted(1)),
    ...tieLimits(pair, scale),
    { of: [0, 0, 0, 0, 1], most: 100 },
  ];
  const best = maximiseByCuts([0, 0, 0, 0, 1], limits, FIRST_LIMITS);
  return best.kind === 'none' ? 0 : Math.max(0, best.value);
}
