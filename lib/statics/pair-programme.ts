import { PROGRAMME, SAME_POINT } from '../base/tolerances.js';
import { maximise } from '../math/linear-programme.js';
import type { Vec2 } from '../math/vec.js';
import { partWay, reachesAxis, sectionPartWay, standsClear } from './clear.js';

/** What one half bears above a section. */
export interface Burden {
  /** Load above, and its moment about the axis. */
  readonly weight: number;
  readonly moment: number;
  /** Horizontal load above, outward, and its moment about level 0. */
  readonly push: number;
  readonly pushMoment: number;
}

/**
 * An arch of two halves that aren't loaded alike: an opposite pair of lunes as a tapered arch, or an arch that is
 * tilted. Unknowns: crown thrust H, its moment K, the shear S that one half hands the other at the crown, the pull T
 * of a tie. Staying inside a section is linear in them (safe theorem, as for one lune). Lengths mm, forces kN.
 */
export interface PairSection extends Burden {
  readonly middle: Vec2;
  /** From the middle to the outer face. */
  readonly half: Vec2;
  /** Whether the tie pulls above it. */
  readonly tied: boolean;
}

export interface Pair {
  /** Each from the crown down. */
  readonly halves: readonly [readonly PairSection[], readonly PairSection[]];
  readonly tie: { readonly z: number; readonly most: number } | null;
}

/** Crown thrust H, its moment K, shear S, pull T of the tie. */
export type Unknowns = readonly [h: number, k: number, s: number, t: number];

/** H, K, S, T and the leeway. */
const UNKNOWNS = 5;
const GREATEST_LEEWAY = [0, 0, 0, 0, 1];
/** Limits of no section: T at most the tie's strength and at least 0; the leeway at most one. */
const [PULL_MOST, PULL_LEAST, VALUE_MOST] = [-3, -2, -1];
/** The search begins with the limits of so many sections of either half. */
const FIRST = 8;

export interface PairOptions {
  /** Begin with all limits: where many thrusts are as good, the one that is found then hangs on no guess. */
  readonly whole?: boolean;
}

/** Numbers of a section in a row, so that all are passed in one short loop. */
const [X, Z, HALF_X, HALF_Z, WEIGHT, MOMENT, PUSH, TIED, SIGN, NUMBERS] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];

/**
 * A pair's linear programme: limits on H, K, S, T and the leeway, which is sought: by how much the thrust keeps away
 * from all faces, moment over the pair's weight and width.
 *
 * Of a thousand limits five hold the optimum. It is sought under a few, and those that it misses most are taken in
 * until it misses none; they stay for the next share, at which mostly the same hold it.
 */
export class PairProgramme {
  readonly #pair: Pair;
  readonly #tieZ: number;
  readonly #length: number;
  readonly #force: number;
  /** Sections of the first half, of the second, and the one in each that just doesn't reach beyond the axis. */
  readonly #sections: Float64Array;
  readonly #ends: readonly [number, number];
  /** Places of sections that are limits at this share; others are passed over. */
  readonly #counts: Uint8Array;
  /** Under this share no section reaches beyond the axis. */
  readonly #clearTo: number;
  /** Limits taken in: twice a section's place, and one more at its outer face. */
  readonly #taken: number[] = [];
  #of = new Float64Array(UNKNOWNS * 128);
  #most = new Float64Array(128);
  #held: readonly number[] = [];

  constructor(pair: Pair, { whole = false }: PairOptions = {}) {
    const [first, second] = pair.halves;
    this.#pair = pair;
    this.#tieZ = pair.tie?.z ?? 0;
    this.#ends = [first.length, first.length + second.length];
    this.#length = pairWidth(pair);
    let clearTo = Number.POSITIVE_INFINITY;
    for (const half of pair.halves)
      for (const { middle, half: out } of half) if (out[0] > 0) clearTo = Math.min(clearTo, middle[0] / out[0]);
    this.#clearTo = clearTo;
    this.#force = pairWeight(pair);
    const count = first.length + second.length + 2;
    this.#sections = new Float64Array(NUMBERS * count);
    this.#counts = new Uint8Array(count);
    for (const which of [0, 1] as const) {
      const half = pair.halves[which];
      const from = which === 0 ? 0 : first.length;
      for (let i = 0; i < half.length; i++) this.#put(from + i, half[i] as PairSection, which);
      const step = whole ? 1 : Math.ceil(half.length / FIRST);
      for (let i = 0; i < half.length; i += step) this.#takeBoth(from + i);
      if (whole) this.#takeBoth(this.#ends[1] + which);
    }
    for (const bound of [PULL_MOST, PULL_LEAST, VALUE_MOST]) this.#take(bound);
  }

  #put(place: number, s: PairSection, which: 0 | 1): void {
    const all = this.#sections;
    const at = NUMBERS * place;
    all[at + X] = s.middle[0];
    all[at + Z] = s.middle[1];
    all[at + HALF_X] = s.half[0];
    all[at + HALF_Z] = s.half[1];
    all[at + WEIGHT] = s.weight;
    all[at + MOMENT] = s.moment + s.pushMoment;
    all[at + PUSH] = s.push;
    all[at + TIED] = s.tied ? 1 : 0;
    all[at + SIGN] = which === 0 ? 1 : -1;
  }

  /** Finds which sections count when all masonry is cut to a share, and the one in each half that ends on the axis. */
  #cutTo(share: number): void {
    if (share < this.#clearTo) {
      this.#counts.fill(1, 0, this.#ends[1]).fill(0, this.#ends[1]);
      return;
    }
    for (const which of [0, 1] as const) {
      const half = this.#pair.halves[which];
      const from = which === 0 ? 0 : this.#ends[0];
      const extra = this.#ends[1] + which;
      this.#counts[extra] = 0;
      let clearAbove = true;
      for (let i = 0; i < half.length; i++) {
        const s = half[i] as PairSection;
        const clear = standsClear(s, share);
        this.#counts[from + i] = clear ? 1 : 0;
        const above = half[i - 1];
        if (clear && !clearAbove && above && this.#counts[extra] === 0) {
          const part = reachesAxis(above, s, share) ?? 0;
          this.#put(extra, between(above, s, part), which);
          this.#counts[extra] = 1;
        }
        clearAbove = clear;
      }
    }
  }

  /**
   * Writes a limit of those taken in: at one face of a section, side · (moment of all about the point there) <= 0.
   * Of a section that is passed over it is a limit on nothing.
   */
  #fill(index: number, share: number): void {
    const limit = this.#taken[index] as number;
    if (limit < 0) {
      this.#fillBound(index, limit);
      return;
    }
    const place = limit >> 1;
    const side = (limit & 1) === 1 ? 1 : -1;
    const [of, most, all] = [this.#of, this.#most, this.#sections];
    const at = UNKNOWNS * index;
    if (this.#counts[place] === 0) {
      of.fill(0, at, at + UNKNOWNS);
      most[index] = 1;
      return;
    }
    const number = (which: number) => all[NUMBERS * place + which] as number;
    const [length, force] = [this.#length, this.#force];
    const [sign, weight] = [number(SIGN), number(WEIGHT)];
    const x = number(X) + side * share * number(HALF_X);
    const z = number(Z) + side * share * number(HALF_Z);
    of[at] = (-side * z) / length;
    of[at + 1] = side;
    of[at + 2] = (-side * sign * x) / length;
    of[at + 3] = number(TIED) === 1 ? (side * (z - this.#tieZ)) / length : 0;
    of[at + 4] = 1;
    most[index] = (side * (x * weight + z * number(PUSH) - number(MOMENT))) / (force * length);
  }

  #fillBound(index: number, bound: number): void {
    const [of, most] = [this.#of, this.#most];
    const at = UNKNOWNS * index;
    of.fill(0, at, at + UNKNOWNS);
    most[index] = 0;
    of[at + (bound === VALUE_MOST ? 4 : 3)] = bound === PULL_LEAST ? -1 : 1;
    if (bound === VALUE_MOST) most[index] = 1;
    if (bound === PULL_MOST) most[index] = (this.#pair.tie?.most ?? 0) / this.#force;
  }

  #takeBoth(place: number): void {
    this.#take(2 * place);
    this.#take(2 * place + 1);
  }

  #take(limit: number): void {
    this.#taken.push(limit);
    if (this.#taken.length > this.#most.length) {
      [this.#of, this.#most] = [twice(this.#of), twice(this.#most)];
    }
  }

  /** Takes in the limit that a thrust misses most at either face of either half; whether there was a new one. */
  #takeMissed(solution: readonly number[], share: number): boolean {
    const [h, k, s, t, v] = solution as unknown as readonly [number, number, number, number, number];
    const all = this.#sections;
    const counts = this.#counts;
    const [length, force] = [this.#length, this.#force];
    const moments = 1 / (force * length);
    const tieZ = this.#tieZ;
    let found = false;
    for (const which of [0, 1] as const) {
      const [from, to] = which === 0 ? [0, this.#ends[0]] : this.#ends;
      let inner = -1;
      let outer = -1;
      let innerMost: number = PROGRAMME;
      let outerMost: number = PROGRAMME;
      for (let i = from; i <= to; i++) {
        // Last comes the section on the axis.
        const place = i < to ? i : this.#ends[1] + which;
        if (counts[place] === 0) continue;
        const at = NUMBERS * place;
        const weight = all[at + WEIGHT] as number;
        const sign = all[at + SIGN] as number;
        const pull = all[at + TIED] === 1 ? t : 0;
        // The moment about a point of the section is linear in where it lies.
        const alongX = (-sign * s) / length - weight * moments;
        const alongZ = (pull - h) / length - (all[at + PUSH] as number) * moments;
        const middle =
          k -
          (pull * tieZ) / length +
          (all[at + MOMENT] as number) * moments +
          alongX * (all[at + X] as number) +
          alongZ * (all[at + Z] as number);
        const half = share * (alongX * (all[at + HALF_X] as number) + alongZ * (all[at + HALF_Z] as number)) + v;
        if (half - middle > innerMost) {
          inner = 2 * place;
          innerMost = half - middle;
        }
        if (half + middle > outerMost) {
          outer = 2 * place + 1;
          outerMost = half + middle;
        }
      }
      for (const limit of [inner, outer]) {
        if (limit < 0 || this.#taken.includes(limit)) continue;
        this.#take(limit);
        found = true;
      }
    }
    return found;
  }

  /** The greatest value with all masonry cut to a share of its thickness, and the thrust it has there. */
  solve(share: number): { readonly value: number; readonly at: Unknowns } | null {
    this.#cutTo(share);
    let filled = 0;
    for (;;) {
      for (; filled < this.#taken.length; filled++) this.#fill(filled, share);
      const limits = { count: filled, of: this.#of, most: this.#most };
      const best = maximise(GREATEST_LEEWAY, limits, this.#held);
      if (best.kind === 'none') return null;
      this.#held = best.held;
      if (this.#takeMissed(best.at, share)) continue;
      const [force, length] = [this.#force, this.#length];
      const [h, k, s, t] = best.at as unknown as readonly [number, number, number, number];
      return { value: best.value, at: [h * force, k * force * length, s * force, t * force] };
    }
  }
}

/** The section a part of the way from one to the next. */
export const between = (above: PairSection, below: PairSection, part: number): PairSection => ({
  ...sectionPartWay(above, below, part),
  push: partWay(above.push, below.push, part),
  pushMoment: partWay(above.pushMoment, below.pushMoment, part),
  tied: below.tied,
});

/** By which lengths and forces are told, so that a programme's limits are near 1. */
export const pairWidth = ({ halves }: Pair): number =>
  Math.max(SAME_POINT, ...halves.flatMap((half) => half.map((s) => s.middle[0] + Math.abs(s.half[0]))));
/** The greatest of all: where wind lifts nearly all that weighs, what is left at the foot is no measure. */
export const pairWeight = ({ halves }: Pair): number =>
  Math.max(SAME_POINT, ...halves.flatMap((half) => half.flatMap((s) => [Math.abs(s.weight), Math.abs(s.push)])));

function twice(list: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const made = new Float64Array(2 * list.length);
  made.set(list);
  return made;
}
