import { PROGRAMME } from '../base/tolerances.js';

/**
 * Linear programmes of few free unknowns and many limits: greatest c·x with A x <= b. Solved on the dual (least b·y
 * with y A = c, y >= 0), whose basis is only as large as there are unknowns, by the revised simplex method; Bland's
 * rule ends ties, so it never cycles. Scale the limits so that their coefficients are near 1.
 */
export interface Limit {
  /** One coefficient for each unknown. */
  readonly of: readonly number[];
  readonly most: number;
}

export type Optimum =
  | { readonly kind: 'found'; readonly value: number; readonly at: readonly number[] }
  /** Nothing meets all limits, or they leave the objective without a bound. */
  | { readonly kind: 'none' };

const MOST_STEPS = 5000;

/** @throws RangeError where a limit has not as many coefficients as the objective, or the search doesn't end. */
export function maximise(objective: readonly number[], limits: readonly Limit[]): Optimum {
  const size = objective.length;
  if (limits.some(({ of }) => of.length !== size)) throw new RangeError('a limit needs a coefficient for each unknown');
  const tableau = new Dual(objective, limits);
  if (!tableau.solve(true)) return { kind: 'none' };
  if (!tableau.solve(false)) return { kind: 'none' };
  const at = tableau.prices(false);
  return { kind: 'found', value: objective.reduce((sum, c, k) => sum + c * (at[k] as number), 0), at };
}

/**
 * The same of many limits that are much alike, of which few hold the optimum: solved with each `every`-th and then
 * with those that its optimum breaks, until it breaks none. The limits taken first must bound the objective.
 */
export function maximiseByCuts(objective: readonly number[], limits: readonly Limit[], every: number): Optimum {
  const taken = new Set(limits.filter((_, i) => i % every === 0 || i === limits.length - 1));
  for (;;) {
    const best = maximise(objective, [...taken]);
    if (best.kind === 'none') return best;
    const broken = limits.filter((limit) => !taken.has(limit) && excess(limit, best.at) > PROGRAMME);
    if (broken.length === 0) return best;
    for (const limit of broken) taken.add(limit);
  }
}

const excess = ({ of, most }: Limit, at: readonly number[]): number =>
  of.reduce((sum, v, k) => sum + v * (at[k] as number), -most);

/** The dual in revised form: columns are the limits, then one artificial column for each unknown. */
class Dual {
  readonly #size: number;
  readonly #limits: readonly Limit[];
  readonly #signs: readonly number[];
  readonly #basis: number[];
  /** Inverse of the basis, row by row. */
  readonly #inverse: number[][];
  readonly #values: number[];

  constructor(objective: readonly number[], limits: readonly Limit[]) {
    const size = objective.length;
    this.#size = size;
    this.#limits = limits;
    this.#signs = objective.map((c) => (c < 0 ? -1 : 1));
    this.#basis = objective.map((_, k) => limits.length + k);
    this.#inverse = objective.map((_, i) => objective.map((_c, j) => (i === j ? (this.#signs[i] as number) : 0)));
    this.#values = objective.map((c) => Math.abs(c));
  }

  #cost(column: number, first: boolean): number {
    if (column >= this.#limits.length) return first ? 1 : 0;
    return first ? 0 : (this.#limits[column] as Limit).most;
  }

  /** Simplex multipliers: the unknowns of the programme itself. */
  prices(first: boolean): number[] {
    const costs = this.#basis.map((column) => this.#cost(column, first));
    return Array.from({ length: this.#size }, (_, k) =>
      costs.reduce((sum, c, i) => sum + c * (this.#inverse[i]?.[k] as number), 0),
    );
  }

  /** Runs one phase; whether it ended at an optimum that counts. */
  solve(first: boolean): boolean {
    for (let step = 0; step < MOST_STEPS; step++) {
      const entering = this.#entering(first, step > MOST_STEPS / 2);
      if (entering < 0) return !first || this.#leftOver() <= PROGRAMME * 1e3;
      const column = this.#times((this.#limits[entering] as Limit).of);
      const row = this.#leaving(column, first);
      if (row < 0) return false;
      this.#pivot(row, column, entering);
    }
    throw new RangeError('a linear programme does not end');
  }

  /** What the artificial columns still hold. */
  #leftOver(): number {
    let sum = 0;
    this.#basis.forEach((column, i) => {
      if (column >= this.#limits.length) sum += Math.abs(this.#values[i] as number);
    });
    return sum;
  }

  #entering(first: boolean, bland: boolean): number {
    const prices = this.prices(first);
    let best = -1;
    let least = -PROGRAMME;
    for (let j = 0; j < this.#limits.length; j++) {
      const { of, most } = this.#limits[j] as Limit;
      let reduced = first ? 0 : most;
      for (let k = 0; k < this.#size; k++) reduced -= (prices[k] as number) * (of[k] as number);
      if (reduced >= least || this.#basis.includes(j)) continue;
      if (bland) return j;
      [best, least] = [j, reduced];
    }
    return best;
  }

  #times(of: readonly number[]): number[] {
    return this.#inverse.map((row) => row.reduce((sum, v, k) => sum + v * (of[k] as number), 0));
  }

  #leaving(column: readonly number[], first: boolean): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.#size; i++) {
      const rate = column[i] as number;
      const artificial = (this.#basis[i] as number) >= this.#limits.length;
      // In the second phase an artificial column that is left at 0 must not grow: it goes first.
      if (!first && artificial && Math.abs(rate) > PROGRAMME) return i;
      if (rate <= PROGRAMME) continue;
      const ratio = (this.#values[i] as number) / rate;
      if (
        ratio < least - PROGRAMME ||
        (ratio < least + PROGRAMME && (this.#basis[i] as number) < (this.#basis[best] ?? 0))
      ) {
        best = i;
        least = ratio;
      }
    }
    return best;
  }

  #pivot(row: number, column: readonly number[], entering: number): void {
    const pivot = column[row] as number;
    const pivotRow = this.#inverse[row] as number[];
    for (let k = 0; k < this.#size; k++) pivotRow[k] = (pivotRow[k] as number) / pivot;
    const value = (this.#values[row] as number) / pivot;
    for (let i = 0; i < this.#size; i++) {
      if (i === row) continue;
      const rate = column[i] as number;
      const other = this.#inverse[i] as number[];
      for (let k = 0; k < this.#size; k++) other[k] = (other[k] as number) - rate * (pivotRow[k] as number);
      this.#values[i] = Math.max(0, (this.#values[i] as number) - rate * value);
    }
    this.#values[row] = value;
    this.#basis[row] = entering;
  }
}
