import { SAME_POINT, THRUST_MISS } from '../base/tolerances.js';
import { type Limits, maximise } from '../math/linear-programme.js';
import type { Vec2 } from '../math/vec.js';
import { partWay, reachesAxis, sectionPartWay, standsClear } from './clear.js';
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

const between = (above: PairSection, below: PairSection, part: number): PairSection => ({
  ...sectionPartWay(above, below, part),
  push: partWay(above.push, below.push, part),
  pushMoment: partWay(above.pushMoment, below.pushMoment, part),
  tied: below.tied,
});

/** Crown thrust H, its moment K, shear S, pull T of the tie. */
type Unknowns = readonly [h: number, k: number, s: number, t: number];

/** How a pair is tilted: moments of each section's weight above about level 0, of both halves. */
type Heights = readonly [readonly number[], readonly number[]];

const SIDES = [-1, 1] as const;
const UNKNOWNS = 5;

/**
 * A pair's linear programme: limits on H, K, S, T and a fifth unknown that is made greatest, at most `most`. Without
 * `heights` that is by how much the thrust keeps away from all faces (moment over the pair's weight and width), else
 * the part of its weight that pushes it from the first half's side to the second's.
 */
class PairProgramme {
  readonly #pair: Pair;
  readonly #heights: Heights | null;
  readonly #length: number;
  readonly #force: number;
  readonly #limits: Limits;
  #held: readonly number[] = [];

  constructor(pair: Pair, most: number, heights: Heights | null = null) {
    const [first, second] = pair.halves;
    this.#pair = pair;
    this.#heights = heights;
    let length = SAME_POINT;
    for (const half of pair.halves) for (const s of half) length = Math.max(length, s.middle[0] + Math.abs(s.half[0]));
    this.#length = length;
    this.#force = Math.max(SAME_POINT, first[first.length - 1]?.weight ?? 0);
    const count = 2 * (first.length + second.length + 2) + 3;
    this.#limits = { count, of: new Float64Array(UNKNOWNS * count), most: new Float64Array(count) };
    // 0 <= T <= the tie's strength; the last unknown is bounded.
    this.#setLimit(count - 3, [0, 0, 0, 1, 0], (pair.tie?.most ?? 0) / this.#force);
    this.#setLimit(count - 2, [0, 0, 0, -1, 0], 0);
    this.#setLimit(count - 1, [0, 0, 0, 0, 1], most);
  }

  #setLimit(row: number, of: readonly number[], most: number): void {
    this.#limits.of.set(of, UNKNOWNS * row);
    this.#limits.most[row] = most;
  }

  /** Limits of all sections, and of the one in each half that just doesn't reach beyond the axis. */
  #fill(share: number): void {
    let row = 0;
    for (const which of [0, 1] as const) {
      const half = this.#pair.halves[which];
      const heights = this.#heights?.[which];
      let first: PairSection | null = null;
      let height = 0;
      for (let i = 0; i < half.length; i++) {
        const s = half[i] as PairSection;
        const clear = standsClear(s, share);
        this.#fillSection(row, clear ? s : null, heights?.[i] ?? 0, share, which);
        row += 2;
        const above = half[i - 1];
        if (!first && clear && above) {
          const part = reachesAxis(above, s, share);
          if (part === null) continue;
          first = between(above, s, part);
          height = partWay(heights?.[i - 1] ?? 0, heights?.[i] ?? 0, part);
        }
      }
      this.#fillSection(row, first, height, share, which);
      row += 2;
    }
  }

  /**
   * A section's two limits, one for each face: side · (moment of all about the point there) <= 0. One that is passed
   * over keeps its place, as a limit on nothing. `height` is the moment of the weight above about level 0.
   */
  #fillSection(row: number, s: PairSection | null, height: number, share: number, which: 0 | 1): void {
    const { of, most } = this.#limits;
    const [length, force] = [this.#length, this.#force];
    const tieZ = this.#pair.tie?.z ?? 0;
    const sign = which === 0 ? 1 : -1;
    for (const side of SIDES) {
      const line = row + (side === 1 ? 1 : 0);
      const at = UNKNOWNS * line;
      if (!s) {
        of.fill(0, at, at + UNKNOWNS);
        most[line] = 1;
        continue;
      }
      const x = s.middle[0] + side * share * s.half[0];
      const z = s.middle[1] + side * share * s.half[1];
      of[at] = (-side * z) / length;
      of[at + 1] = side;
      of[at + 2] = (-side * sign * x) / length;
      of[at + 3] = s.tied ? (side * (z - tieZ)) / length : 0;
      of[at + 4] = this.#heights ? (-side * sign * (height - z * s.weight)) / (force * length) : 1;
      most[line] = (side * (x * s.weight + z * s.push - s.moment - s.pushMoment)) / (force * length);
    }
  }

  /** The greatest value with all masonry cut to a share of its thickness, and the thrust it has there. */
  solve(share: number): { readonly value: number; readonly at: Unknowns } | null {
    this.#fill(share);
    const best = maximise([0, 0, 0, 0, 1], this.#limits, this.#held);
    if (best.kind === 'none') return null;
    this.#held = best.held;
    const [h, k, s, t] = best.at as readonly [number, number, number, number, number];
    const [force, length] = [this.#force, this.#length];
    return { value: best.value, at: [h * force, k * force * length, s * force, t * force] };
  }
}

/** Geometric factor of safety, as for one lune. */
export function pairFactor(pair: Pair): number {
  const programme = new PairProgramme(pair, 1);
  return factorBy((share) => (programme.solve(share)?.value ?? Number.NEGATIVE_INFINITY) + THRUST_MISS);
}

/** The sections of a half that its line of thrust has a point on. */
export const sectionsOfLine = (half: readonly PairSection[]): PairSection[] => half.filter((s) => standsClear(s, 1));

/** Lines of thrust of both halves, as far from the faces as they can be; empty when none fits. */
export function pairLines(pair: Pair): readonly [ThrustPoint[], ThrustPoint[]] {
  const found = new PairProgramme(pair, 1).solve(1);
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
  Math.max(0, new PairProgramme(pair, 100, heights).solve(1)?.value ?? 0);
