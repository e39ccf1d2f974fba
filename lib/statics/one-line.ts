import { THRUST_MISS } from '../base/tolerances.js';
import { square } from '../math/elementary.js';
import { maximise } from '../math/linear-programme.js';
import { type Growing, jointed, type LineLimits, type LoadedJoint } from './line-joints.js';
import { pairWeight, pairWidth, type Unknowns } from './pair-programme.js';

/** What keeps a load from growing further. */
export type Holding = 'wall' | 'friction' | 'tie';

/** The greatest part of the load that one line of thrust bears. */
export interface BorneLoad {
  readonly factor: number;
  /** None where only `most` does. */
  readonly heldBy: readonly Holding[];
  /** The line. */
  readonly at: Unknowns;
}

/** Parts of a load beyond this are told as this. */
export const MOST_PART = 100;

/** H, K, S, T and the part of the load; then each ring's push. */
const UNKNOWNS = 5;
const [TIE, PART] = [3, 4];
/** The search begins with the faces of so many joints of either half. */
const FIRST = 8;
const MOST_ROUNDS = 400;
/** Over the pair's weight. */
const MOST_PULL = 1000;

/**
 * Numbers of a joint in a row: its middle, the direction to its outer face, half its depth, its width in the middle, what
 * stays and what grows above it (load, push, moment of both), whether the tie pulls above it, how many rings press above
 * it, which half it belongs to, and whether it is of masonry. Forces over the pair's weight, lengths over its width.
 */
const [
  X,
  Z,
  COS,
  SIN,
  HALF,
  WIDTH,
  LOAD,
  GROWS,
  PUSH,
  PUSH_GROWS,
  TURN,
  TURN_GROWS,
  TIED,
  RINGS,
  SIGN,
  MASONRY,
  NUMBERS,
] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16];

/**
 * The greatest part of a load under which one line of thrust keeps at once within the wall, its strength, the friction
 * of its joints and the strength of its tie. All limits are convex in what crosses a joint, N, V and M:
 *
 * - friction: |V| <= μ N.
 * - strength: stresses between 0 and f on a joint of width w(x) give all N and M with, about every point x0 of it,
 *   M − x0 N <= f ∫ w (x − x0) dx from x0 to the outer face, and the like to the inner face: nothing turns more about
 *   x0 than a stress of f all the way beyond it and none before it. Where w is constant, the envelope of these lines is
 *   |M| <= N d / 2 − N² / (2 f w), the rectangular block of EN 1996-1-1:2005, 6.1.2 (from memory). With x0 on the face
 *   it is the limit that the thrust stays inside. The stress is that square to the joint, as the standard has it; shear
 *   is held by friction (6.2) and not put together with it.
 * - the tie pulls between 0 and its strength; a ring presses between 0 and f on its area, and being pressed all round
 *   alike it is in balance by itself and pushes both halves outward alike.
 *
 * So the programme is linear but for the choice of x0, and is solved by cuts: each round takes in, of each half, the
 * joints that miss a limit most, strength at the x0 at which it is missed most, until none misses. By the lower bound
 * theorem the pair bears what is found, if its joints are ductile and where no joint slides as it would collapse: one
 * that slides doesn't open as it does, which the theorem takes for granted. Of the whole dome, whose other lunes push
 * across their own planes, it proves nothing.
 */
export class OneLine {
  readonly #limits: LineLimits;
  readonly #length: number;
  readonly #force: number;
  readonly #tieZ: number;
  /** Heights of rings, strength of the masonry. */
  readonly #rings: readonly number[];
  readonly #strength: number;
  readonly #size: number;
  readonly #joints: Float64Array;
  /** Where the joints of the first half end, and those of the second. */
  readonly #ends: readonly [number, number];
  readonly #rows: number[] = [];
  readonly #most: number[] = [];
  readonly #kinds: (Holding | null)[] = [];
  #held: readonly number[] = [];

  constructor({ pair, grows }: Growing, limits: LineLimits) {
    this.#limits = limits;
    this.#length = pairWidth(pair);
    this.#force = pairWeight(pair);
    this.#tieZ = (pair.tie?.z ?? 0) / this.#length;
    this.#rings = limits.rings.map(({ z }) => z / this.#length);
    this.#strength = ((limits.strengthMpa ?? 0) / 1000) * (square(this.#length) / this.#force);
    this.#size = UNKNOWNS + limits.rings.length;
    const [first, second] = [
      jointed(pair.halves[0], grows[0], limits.rings),
      jointed(pair.halves[1], grows[1], limits.rings),
    ];
    this.#ends = [first.length, first.length + second.length];
    this.#joints = new Float64Array(NUMBERS * this.#ends[1]);
    first.forEach((joint, i) => {
      this.#put(i, joint, 1);
    });
    second.forEach((joint, i) => {
      this.#put(first.length + i, joint, -1);
    });
    // The first is the most that is asked, the second the least, the third what the tie takes.
    this.#bound(PART, 1, 0, null);
    this.#bound(PART, -1, 0, null);
    const pull = (pair.tie?.most ?? 0) / this.#force;
    this.#bound(TIE, 1, pull, pull > 0 ? 'tie' : null);
    this.#bound(TIE, -1, 0, null);
    limits.rings.forEach(({ area }, j) => {
      this.#bound(UNKNOWNS + j, -1, 0, null);
      if (limits.strengthMpa !== null)
        this.#bound(UNKNOWNS + j, 1, this.#strength * (area / square(this.#length)), 'wall');
    });
    for (const [from, to] of [[0, this.#ends[0]], this.#ends] as const) {
      for (let i = from; i < to; i += Math.max(1, Math.ceil((to - from) / FIRST))) {
        this.#takeStrength(i, 1, 0);
        this.#takeStrength(i, -1, 0);
      }
    }
  }

  #put(place: number, { section: s, more, rings }: LoadedJoint, sign: 1 | -1): void {
    const [length, force] = [this.#length, this.#force];
    const moment = force * length;
    const size = Math.sqrt(square(s.half[0]) + square(s.half[1]));
    const [x, z] = s.middle;
    this.#joints.set(
      [
        x / length,
        z / length,
        s.half[0] / size,
        s.half[1] / size,
        size / length,
        Math.max(x, this.#limits.thickness) / length,
        s.weight / force,
        more.weight / force,
        s.push / force,
        more.push / force,
        (s.moment + s.pushMoment) / moment,
        (more.moment + more.pushMoment) / moment,
        s.tied ? 1 : 0,
        rings,
        sign,
        // The footing is of concrete.
        z >= 0 ? 1 : 0,
      ],
      NUMBERS * place,
    );
  }

  #bound(unknown: number, sign: 1 | -1, most: number, kind: Holding | null): void {
    for (let k = 0; k < this.#size; k++) this.#rows.push(k === unknown ? sign : 0);
    this.#most.push(most);
    this.#kinds.push(kind);
  }

  /** Takes in: so many times the moment above a joint, its load down and its push outward together are at most `most`. */
  #take(place: number, times: readonly [about: number, down: number, out: number], most: number, kind: Holding): void {
    const [about, down, out] = times;
    const number = (which: number) => this.#joints[NUMBERS * place + which] as number;
    const sum = (turn: number, load: number, push: number) =>
      about * number(turn) + down * number(load) + out * number(push);
    this.#rows.push(
      out,
      about,
      down * number(SIGN),
      number(TIED) === 1 ? -out - about * this.#tieZ : 0,
      sum(TURN_GROWS, GROWS, PUSH_GROWS),
      ...this.#rings.map((z, j) => (j < number(RINGS) ? out + about * z : 0)),
    );
    this.#most.push(most - sum(TURN, LOAD, PUSH));
    this.#kinds.push(kind);
  }

  /** From here on the tie takes all that pushes either half outward at its lowest joint. */
  holdFeet(): void {
    for (const end of this.#ends) {
      const number = (which: number) => this.#joints[NUMBERS * (end - 1) + which] as number;
      const pressing = this.#rings.map((_, j) => (j < number(RINGS) ? 1 : 0));
      this.#rows.push(1, 0, 0, -1, number(PUSH_GROWS), ...pressing);
      this.#most.push(-number(PUSH));
      this.#kinds.push('tie');
    }
  }

  /** Takes in a joint's strength about the point `depth` from its outer (side 1) or inner face. */
  #takeStrength(place: number, side: 1 | -1, depth: number): void {
    const number = (which: number) => this.#joints[NUMBERS * place + which] as number;
    const off = number(HALF) - depth;
    const times = [side, -side * number(X) - off * number(COS), -side * number(Z) - off * number(SIN)] as const;
    this.#take(place, times, this.#strength * this.#firstMoment(place, side, depth), 'wall');
  }

  #takeFriction(place: number, side: 1 | -1, friction: number): void {
    const [c, s] = [this.#joints[NUMBERS * place + COS] as number, this.#joints[NUMBERS * place + SIN] as number];
    this.#take(place, [0, -side * s - friction * c, side * c - friction * s], 0, 'friction');
  }

  /** Width at a face; inward from there it changes by `-side` times the slope outward, which is the cosine. */
  #faceWidth(place: number, side: 1 | -1): number {
    const at = NUMBERS * place;
    const [width, c, half] = [this.#joints[at + WIDTH], this.#joints[at + COS], this.#joints[at + HALF]];
    return (width as number) + side * (c as number) * (half as number);
  }

  /** Of the part of a joint within `depth` of a face, about where that ends: ∫ w (x − x0) dx. */
  #firstMoment(place: number, side: 1 | -1, depth: number): number {
    const widens = this.#joints[NUMBERS * place + COS] as number;
    return square(depth) * (this.#faceWidth(place, side) / 2 - (side * widens * depth) / 6);
  }

  /** Depth from a face of the part that has this area; all of it where it has less. */
  #blockDepth(place: number, side: 1 | -1, area: number): number {
    const at = NUMBERS * place;
    const face = this.#faceWidth(place, side);
    const left = square(face) - 2 * side * (this.#joints[at + COS] as number) * area;
    const depth = left > 0 ? (2 * area) / (face + Math.sqrt(left)) : Number.POSITIVE_INFINITY;
    return Math.min(2 * (this.#joints[at + HALF] as number), depth);
  }

  /** Takes in, of each half, the joints that miss a limit most; whether there were any. */
  #takeMissed(unknowns: readonly number[]): boolean {
    const { friction } = this.#limits;
    const all = this.#joints;
    const [h, k, shear, tie, part] = unknowns as unknown as readonly [number, number, number, number, number];
    const pushed = [0];
    const pushedMoment = [0];
    this.#rings.forEach((z, j) => {
      const push = unknowns[UNKNOWNS + j] as number;
      pushed.push((pushed[j] as number) + push);
      pushedMoment.push((pushedMoment[j] as number) + push * z);
    });
    let found = false;
    for (const [from, to] of [[0, this.#ends[0]], this.#ends] as const) {
      const worst = [-1, -1, -1, -1];
      const most = [THRUST_MISS, THRUST_MISS, THRUST_MISS, THRUST_MISS];
      const depths = [0, 0];
      for (let place = from; place < to; place++) {
        const at = NUMBERS * place;
        const number = (which: number) => all[at + which] as number;
        const rings = number(RINGS);
        const pull = number(TIED) * tie;
        const down = number(LOAD) + part * number(GROWS) + number(SIGN) * shear;
        const out = number(PUSH) + part * number(PUSH_GROWS) + h - pull + (pushed[rings] as number);
        const about =
          number(TURN) + part * number(TURN_GROWS) + k - pull * this.#tieZ + (pushedMoment[rings] as number);
        const [c, s] = [number(COS), number(SIN)];
        const across = c * down + s * out;
        const turn = about - number(X) * down - number(Z) * out;
        const along = c * out - s * down;
        const crushes = this.#strength > 0 && number(MASONRY) === 1;
        for (const i of [0, 1] as const) {
          const side = i === 0 ? 1 : -1;
          const depth = crushes && across > 0 ? this.#blockDepth(place, side, across / this.#strength) : 0;
          const held = depth > 0 ? this.#strength * this.#firstMoment(place, side, depth) : 0;
          const turned = side * turn - (number(HALF) - depth) * across - held;
          if (turned > (most[i] as number)) [worst[i], most[i], depths[i]] = [place, turned, depth];
          if (friction === null || number(MASONRY) === 0) continue;
          const slid = side * along - friction * across;
          if (slid > (most[2 + i] as number)) [worst[2 + i], most[2 + i]] = [place, slid];
        }
      }
      worst.forEach((place, i) => {
        if (place < 0) return;
        const side = i % 2 === 0 ? 1 : -1;
        if (i < 2) this.#takeStrength(place, side, depths[i] as number);
        else this.#takeFriction(place, side, friction ?? 0);
        found = true;
      });
    }
    return found;
  }

  /**
   * The greatest part of the load, up to `most`; `null` where no line of thrust keeps within all limits under any part.
   *
   * @throws RangeError where the search doesn't end.
   */
  solve(most: number): BorneLoad | null {
    this.#most[0] = most;
    const best = this.#best(PART, 1);
    if (!best) return null;
    const [h, k, s, t, factor] = best.at as unknown as readonly [number, number, number, number, number];
    const [length, force] = [this.#length, this.#force];
    return {
      factor,
      heldBy: [...new Set(best.binding.map((row) => this.#kinds[row] ?? null))].filter((kind) => kind !== null),
      at: [h * force, k * force * length, s * force, t * force],
    };
  }

  /**
   * The least pull of a tie, however strong, with which one line keeps within all other limits under the whole load, kN;
   * `null` where none does.
   *
   * @throws RangeError where the search doesn't end.
   */
  leastPull(): number | null {
    const before = this.#most.slice(0, 3);
    // Part and pull: at most 1, at least 1, at most more than any load is.
    this.#most.splice(0, 3, 1, -1, MOST_PULL);
    const best = this.#best(TIE, -1);
    this.#most.splice(0, 3, ...before);
    return best && Math.max(0, (best.at[TIE] as number) * this.#force);
  }

  /** Where an unknown is greatest (sign 1) or least, and the limits that hold it there. */
  #best(unknown: number, sign: 1 | -1): { readonly at: readonly number[]; readonly binding: readonly number[] } | null {
    const objective = Array.from({ length: this.#size }, (_, k) => (k === unknown ? sign : 0));
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const limits = {
        count: this.#most.length,
        of: Float64Array.from(this.#rows),
        most: Float64Array.from(this.#most),
      };
      const best = maximise(objective, limits, this.#held);
      if (best.kind === 'none') return null;
      this.#held = best.held;
      if (!this.#takeMissed(best.at)) return best;
    }
    throw new RangeError('a line of thrust under all limits is not found');
  }
}
