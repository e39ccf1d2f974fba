import { PROGRAMME, SAME_POINT, THRUST_MISS } from '../base/tolerances.js';
import { maximise } from '../math/linear-programme.js';
import type { Vec2 } from '../math/vec.js';
import { partWay, reachesAxis, sectionPartWay, standsClear } from './clear.js';

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
  /** Heights, from the top down, at which closed rings may push both halves outward with hoop compression, alike. */
  readonly rings?: readonly number[];
}

/** Crown thrust H, its moment K, shear S, pull T of the tie, and the push of each ring. */
export type Unknowns = readonly [h: number, k: number, s: number, t: number, ...rings: number[]];

/** A figure for each section of both halves. */
export type Figures = readonly [readonly number[], readonly number[]];

/**
 * What is sought. `leeway`: by how much the thrust keeps away from all faces, moment over the pair's weight and width.
 * `tilt`: the part of its weight that pushes the pair from the first half's side to the second's; `heights` are the
 * moments of each section's weight above about level 0. `pull`: the least pull of the tie, however strong that is; where it `holds` the halves, that of a ring at
 * their last sections that leaves neither of them any thrust outward.
 */
export type Sought =
  | { readonly of: 'leeway' }
  | { readonly of: 'tilt'; readonly heights: Figures }
  | { readonly of: 'pull'; readonly holds: boolean };

/** Without rings: H, K, S, T and the fifth. */
const UNKNOWNS = 5;
/** The fifth unknown is made greatest, or T least. */
const GREATEST_FIFTH = [0, 0, 0, 0, 1];
const LEAST_PULL = [0, 0, 0, -1, 0];
/**
 * Limits of no section: T at least all that pushes either half outward; T at most the tie's strength and at least 0;
 * the fifth unknown at least nothing, and at most what is asked. Those below are of rings, each pushing at least 0.
 */
const [HOLD_SECOND, HOLD_FIRST, PULL_MOST, PULL_LEAST, VALUE_LEAST, VALUE_MOST] = [-6, -5, -4, -3, -2, -1];
const FIRST_RING = -7;
/** The search begins with the limits of so many sections of either half. */
const FIRST = 8;

export interface PairOptions {
  /** Begin with all limits: where many thrusts are as good, the one that is found then hangs on no guess. */
  readonly whole?: boolean;
}

/** Numbers of a section in a row, so that all are passed in one short loop. */
const [X, Z, HALF_X, HALF_Z, WEIGHT, MOMENT, PUSH, TIED, RINGS, FIGURE, SIGN, NUMBERS] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11,
];

/**
 * A pair's linear programme: limits on H, K, S, T, the pushes of rings and a fifth unknown, at most `most`, that is
 * what is sought; where the least pull is, leeway, of which there need be none.
 *
 * Of a thousand limits five hold the optimum. It is sought under a few, and those that it misses most are taken in
 * until it misses none; they stay for the next share, at which mostly the same hold it.
 */
export class PairProgramme {
  readonly #pair: Pair;
  readonly #rings: readonly number[];
  /** How many unknowns there are, and what is made greatest. */
  readonly #unknowns: number;
  readonly #objective: readonly number[];
  /** Whether the fifth unknown is a tilt; the tie's height. */
  readonly #tilts: boolean;
  readonly #tieZ: number;
  #figures: Figures | null;
  /** What the first so many rings push together, and its moment, as a thrust is looked at. */
  readonly #pushed: Float64Array<ArrayBuffer>;
  readonly #pushedMoment: Float64Array<ArrayBuffer>;
  readonly #length: number;
  readonly #force: number;
  readonly #greatest: number;
  /** Sections of the first half, of the second, and the one in each that just doesn't reach beyond the axis. */
  readonly #sections: Float64Array;
  readonly #ends: readonly [number, number];
  /** Places of sections that are limits at this share; others are passed over. */
  readonly #counts: Uint8Array;
  /** Under this share no section reaches beyond the axis. */
  readonly #clearTo: number;
  /** Limits taken in: twice a section's place, and one more at its outer face. */
  readonly #taken: number[] = [];
  #of: Float64Array<ArrayBuffer>;
  #most = new Float64Array(128);
  #held: readonly number[] = [];

  constructor(pair: Pair, most: number, sought: Sought = { of: 'leeway' }, { whole = false }: PairOptions = {}) {
    const [first, second] = pair.halves;
    this.#pair = pair;
    this.#rings = pair.rings ?? [];
    this.#unknowns = UNKNOWNS + this.#rings.length;
    this.#of = new Float64Array(this.#unknowns * this.#most.length);
    this.#objective = [...(sought.of === 'pull' ? LEAST_PULL : GREATEST_FIFTH), ...this.#rings.map(() => 0)];
    this.#pushed = new Float64Array(this.#rings.length + 1);
    this.#pushedMoment = new Float64Array(this.#rings.length + 1);
    this.#tilts = sought.of === 'tilt';
    this.#tieZ = pair.tie?.z ?? 0;
    this.#figures = sought.of === 'tilt' ? sought.heights : null;
    this.#greatest = most;
    this.#ends = [first.length, first.length + second.length];
    let length = SAME_POINT;
    for (const half of pair.halves) for (const s of half) length = Math.max(length, s.middle[0] + Math.abs(s.half[0]));
    this.#length = length;
    let clearTo = Number.POSITIVE_INFINITY;
    for (const half of pair.halves)
      for (const { middle, half: out } of half) if (out[0] > 0) clearTo = Math.min(clearTo, middle[0] / out[0]);
    this.#clearTo = clearTo;
    this.#force = Math.max(SAME_POINT, first[first.length - 1]?.weight ?? 0);
    const count = first.length + second.length + 2;
    this.#sections = new Float64Array(NUMBERS * count);
    this.#counts = new Uint8Array(count);
    for (const which of [0, 1] as const) {
      const half = pair.halves[which];
      const from = which === 0 ? 0 : first.length;
      for (let i = 0; i < half.length; i++)
        this.#put(from + i, half[i] as PairSection, this.#figures?.[which][i] ?? 1, which);
      const step = whole ? 1 : Math.ceil(half.length / FIRST);
      for (let i = 0; i < half.length; i += step) this.#takeBoth(from + i);
      if (whole) this.#takeBoth(this.#ends[1] + which);
    }
    const bounds = sought.of === 'pull' ? [VALUE_LEAST] : [PULL_MOST];
    const holds = sought.of === 'pull' && sought.holds ? [HOLD_FIRST, HOLD_SECOND] : [];
    const pushes = this.#rings.map((_, j) => FIRST_RING - j);
    for (const bound of [...pushes, ...bounds, ...holds, PULL_LEAST, VALUE_MOST]) this.#take(bound);
  }

  /** From now on each section's leeway is told over its figure; the limits that were taken in stay. */
  recount(figures: Figures): void {
    this.#figures = figures;
    for (const which of [0, 1] as const) {
      const from = which === 0 ? 0 : this.#ends[0];
      const half = figures[which];
      for (let i = 0; i < half.length; i++) this.#sections[NUMBERS * (from + i) + FIGURE] = half[i] as number;
    }
  }

  #put(place: number, s: PairSection, figure: number, which: 0 | 1): void {
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
    let rings = 0;
    while (s.middle[1] <= (this.#rings[rings] ?? Number.NEGATIVE_INFINITY)) rings++;
    all[at + RINGS] = rings;
    all[at + FIGURE] = figure;
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
      const figures = this.#figures?.[which];
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
          this.#put(extra, between(above, s, part), partWay(figures?.[i - 1] ?? 1, figures?.[i] ?? 1, part), which);
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
    const at = this.#unknowns * index;
    if (this.#counts[place] === 0) {
      of.fill(0, at, at + this.#unknowns);
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
    const figure = number(FIGURE);
    of[at + 4] = this.#tilts ? (-side * sign * (figure - z * weight)) / (force * length) : figure;
    const rings = number(RINGS);
    for (let j = 0; j < this.#rings.length; j++) {
      of[at + UNKNOWNS + j] = j < rings ? (-side * (z - (this.#rings[j] as number))) / length : 0;
    }
    most[index] = (side * (x * weight + z * number(PUSH) - number(MOMENT))) / (force * length);
  }

  #fillBound(index: number, bound: number): void {
    const [of, most] = [this.#of, this.#most];
    const at = this.#unknowns * index;
    of.fill(0, at, at + this.#unknowns);
    most[index] = 0;
    if (bound <= FIRST_RING) {
      of[at + UNKNOWNS + FIRST_RING - bound] = -1;
      return;
    }
    if (bound === HOLD_FIRST || bound === HOLD_SECOND) {
      [of[at], of[at + 3]] = [1, -1];
      const held = this.#pair.halves[bound === HOLD_FIRST ? 0 : 1];
      most[index] = -(held[held.length - 1]?.push ?? 0) / this.#force;
      return;
    }
    of[at + (bound === VALUE_MOST || bound === VALUE_LEAST ? 4 : 3)] =
      bound === PULL_LEAST || bound === VALUE_LEAST ? -1 : 1;
    if (bound === VALUE_MOST) most[index] = this.#greatest;
    if (bound === VALUE_LEAST) most[index] = THRUST_MISS;
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
    const [away, tilt] = this.#tilts ? [0, v * moments] : [v, 0];
    const [pushed, pushedMoment] = [this.#pushed, this.#pushedMoment];
    for (let j = 0; j < this.#rings.length; j++) {
      const push = solution[UNKNOWNS + j] as number;
      pushed[j + 1] = (pushed[j] as number) + push;
      pushedMoment[j + 1] = (pushedMoment[j] as number) + push * (this.#rings[j] as number);
    }
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
        const figure = all[at + FIGURE] as number;
        const pull = all[at + TIED] === 1 ? t : 0;
        // The moment about a point of the section is linear in where it lies.
        const alongX = (-sign * s) / length - weight * moments;
        const rings = all[at + RINGS] as number;
        const alongZ =
          (pull - h - (pushed[rings] as number)) / length - (all[at + PUSH] as number) * moments + sign * weight * tilt;
        const middle =
          k +
          ((pushedMoment[rings] as number) - pull * tieZ) / length +
          (all[at + MOMENT] as number) * moments -
          sign * figure * tilt +
          alongX * (all[at + X] as number) +
          alongZ * (all[at + Z] as number);
        const half =
          share * (alongX * (all[at + HALF_X] as number) + alongZ * (all[at + HALF_Z] as number)) + away * figure;
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
      const best = maximise(this.#objective, limits, this.#held);
      if (best.kind === 'none') return null;
      this.#held = best.held;
      if (this.#takeMissed(best.at, share)) continue;
      const [force, length] = [this.#force, this.#length];
      const [h, k, s, t] = best.at as unknown as readonly [number, number, number, number];
      const pushes = best.at.slice(UNKNOWNS).map((push) => push * force);
      return { value: best.value, at: [h * force, k * force * length, s * force, t * force, ...pushes] };
    }
  }
}

const between = (above: PairSection, below: PairSection, part: number): PairSection => ({
  ...sectionPartWay(above, below, part),
  push: partWay(above.push, below.push, part),
  pushMoment: partWay(above.pushMoment, below.pushMoment, part),
  tied: below.tied,
});

function twice(list: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const made = new Float64Array(2 * list.length);
  made.set(list);
  return made;
}
