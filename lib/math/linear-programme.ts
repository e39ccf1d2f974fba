import { PROGRAMME, PROGRAMME_START } from '../base/tolerances.js';

/**
 * Linear programmes of few free unknowns and many limits: greatest c·x with A x <= b. Solved on the dual (least b·y
 * with y A = c, y >= 0), whose basis is only as large as there are unknowns, by the revised simplex method; what doesn't
 * end in many steps is ended by Bland's rule, which never cycles. Scale the limits so that their coefficients are near 1:
 * where they aren't, rounding may keep it from ending all the same.
 */
export interface Limits {
  readonly count: number;
  /** One coefficient for each unknown, limit after limit. */
  readonly of: Float64Array;
  readonly most: Float64Array;
}

export type Optimum =
  | {
      readonly kind: 'found';
      readonly value: number;
      readonly at: readonly number[];
      /** Limits that hold it, to start a programme from whose limits are much alike. */
      readonly held: readonly number[];
      /** Those of them that would let the value be greater if they were wider. */
      readonly binding: readonly number[];
    }
  /** Nothing meets all limits, or they leave the objective without a bound. */
  | { readonly kind: 'none' };

const MOST_STEPS = 5000;

/**
 * @param start limits that may hold the optimum; wrong ones cost time alone
 * @throws RangeError where a limit has not as many coefficients as the objective, or the search doesn't end.
 */
export function maximise(objective: readonly number[], limits: Limits, start: readonly number[] = []): Optimum {
  if (limits.of.length < limits.count * objective.length || limits.most.length < limits.count) {
    throw new RangeError('a limit needs a coefficient for each unknown');
  }
  let dual = new Dual(objective, limits);
  if (start.length > 0 && !dual.startFrom(start)) dual = new Dual(objective, limits);
  if (!dual.solve(true) || !dual.solve(false)) return { kind: 'none' };
  const at = dual.prices(false);
  const value = objective.reduce((sum, c, k) => sum + c * (at[k] as number), 0);
  return { kind: 'found', value, at: [...at], held: dual.held(), binding: dual.binding() };
}

/** The dual in revised form: columns are the limits, then one artificial column for each unknown. */
class Dual {
  readonly #size: number;
  readonly #limits: Limits;
  readonly #basis: Int32Array;
  /** Inverse of the basis, row by row. */
  readonly #inverse: Float64Array;
  readonly #values: Float64Array;
  readonly #prices: Float64Array;
  readonly #column: Float64Array;

  constructor(objective: readonly number[], limits: Limits) {
    const size = objective.length;
    this.#size = size;
    this.#limits = limits;
    this.#basis = Int32Array.from(objective, (_, k) => limits.count + k);
    this.#inverse = new Float64Array(size * size);
    objective.forEach((c, k) => {
      this.#inverse[k * size + k] = c < 0 ? -1 : 1;
    });
    this.#values = Float64Array.from(objective, (c) => Math.abs(c));
    this.#prices = new Float64Array(size);
    this.#column = new Float64Array(size);
  }

  held(): number[] {
    return [...this.#basis].filter((column) => column < this.#limits.count);
  }

  binding(): number[] {
    return this.held().filter((column) => (this.#values[this.#basis.indexOf(column)] as number) > PROGRAMME);
  }

  /** Takes limits into the basis; whether that is one to go on from. */
  startFrom(columns: readonly number[]): boolean {
    const { count } = this.#limits;
    for (const entering of columns) {
      if (entering >= count) return false;
      this.#load(entering);
      let row = -1;
      for (let i = 0; i < this.#size; i++) {
        const artificial = (this.#basis[i] as number) >= count;
        if (artificial && (row < 0 || this.#rate(i) > this.#rate(row))) row = i;
      }
      if (row < 0 || this.#rate(row) < PROGRAMME_START) return false;
      this.#pivot(row, entering);
    }
    for (let i = 0; i < this.#size; i++) {
      if ((this.#values[i] as number) < -PROGRAMME) return false;
      this.#values[i] = Math.max(0, this.#values[i] as number);
    }
    return true;
  }

  #rate(row: number): number {
    return Math.abs(this.#column[row] as number);
  }

  /** Simplex multipliers: the unknowns of the programme itself. */
  prices(first: boolean): Float64Array {
    const size = this.#size;
    const { count, most } = this.#limits;
    this.#prices.fill(0);
    for (let i = 0; i < size; i++) {
      const column = this.#basis[i] as number;
      const artificial = column >= count;
      const cost = first ? (artificial ? 1 : 0) : artificial ? 0 : (most[column] as number);
      if (cost === 0) continue;
      for (let k = 0; k < size; k++) {
        this.#prices[k] = (this.#prices[k] as number) + cost * (this.#inverse[i * size + k] as number);
      }
    }
    return this.#prices;
  }

  /** Runs one phase; whether it ended at an optimum that counts. */
  solve(first: boolean): boolean {
    if (first && this.#leftOver() === 0) return true;
    for (let step = 0; step < MOST_STEPS; step++) {
      const bland = step > MOST_STEPS / 2;
      const entering = this.#entering(first, bland);
      if (entering < 0) return !first || this.#leftOver() <= PROGRAMME * 1e3;
      this.#load(entering);
      const row = this.#leaving(first, bland);
      if (row < 0) return false;
      this.#pivot(row, entering);
      for (let i = 0; i < this.#size; i++) this.#values[i] = Math.max(0, this.#values[i] as number);
    }
    throw new RangeError('a linear programme does not end');
  }

  /** What the artificial columns still hold. */
  #leftOver(): number {
    let sum = 0;
    for (let i = 0; i < this.#size; i++) {
      if ((this.#basis[i] as number) >= this.#limits.count) sum += Math.abs(this.#values[i] as number);
    }
    return sum;
  }

  #entering(first: boolean, bland: boolean): number {
    const size = this.#size;
    const { count, of, most } = this.#limits;
    const prices = this.prices(first);
    let best = -1;
    let least = -PROGRAMME;
    for (let j = 0, at = 0; j < count; j++, at += size) {
      let reduced = first ? 0 : (most[j] as number);
      for (let k = 0; k < size; k++) reduced -= (prices[k] as number) * (of[at + k] as number);
      if (reduced >= least || this.#basis.includes(j)) continue;
      if (bland) return j;
      best = j;
      least = reduced;
    }
    return best;
  }

  /** The entering limit in terms of the basis. */
  #load(entering: number): void {
    const size = this.#size;
    const { of } = this.#limits;
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let k = 0; k < size; k++)
        sum += (this.#inverse[i * size + k] as number) * (of[entering * size + k] as number);
      this.#column[i] = sum;
    }
  }

  /** Of the rows that go out alike the one with the greatest pivot, for a small one spoils the inverse; by Bland's rule the first. */
  #leaving(first: boolean, bland: boolean): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.#size; i++) {
      const rate = this.#column[i] as number;
      const artificial = (this.#basis[i] as number) >= this.#limits.count;
      // In the second phase an artificial column that is left at 0 must not grow: it goes first.
      if (!first && artificial && Math.abs(rate) > PROGRAMME) return i;
      if (rate <= PROGRAMME) continue;
      const ratio = (this.#values[i] as number) / rate;
      const alike = ratio < least + PROGRAMME;
      const before = bland ? (this.#basis[i] as number) < (this.#basis[best] ?? 0) : rate > this.#rate(best);
      if (ratio < least - PROGRAMME || (alike && before)) {
        best = i;
        least = ratio;
      }
    }
    return best;
  }

  /** Puts the loaded limit in a row's place. */
  #pivot(row: number, entering: number): void {
    const size = this.#size;
    const inverse = this.#inverse;
    const pivot = this.#column[row] as number;
    for (let k = 0; k < size; k++) inverse[row * size + k] = (inverse[row * size + k] as number) / pivot;
    const value = (this.#values[row] as number) / pivot;
    for (let i = 0; i < size; i++) {
      const rate = this.#column[i] as number;
      if (i === row || rate === 0) continue;
      for (let k = 0; k < size; k++) {
        inverse[i * size + k] = (inverse[i * size + k] as number) - rate * (inverse[row * size + k] as number);
      }
      this.#values[i] = (this.#values[i] as number) - rate * value;
    }
    this.#values[row] = value;
    this.#basis[row] = entering;
  }
}
