import { type LeastCounts, leastCounts } from './least-vector.js';

/** What limits casting: whole days from 1. */
export interface TurnRules {
  /** Pours in a day, all moulds together; at least 1. */
  readonly poursPerDay: number;
  /** Days from one filling of a mould to the next; at least 1. */
  readonly period: number;
  /** Fillings of a mould in a day; 1 where the period is longer than a day. */
  readonly turnsPerDay: number;
}

/** Pieces to cast of each kind of mould, kinds in laying order. */
export type Demand = readonly number[];

/** Pieces cast of each kind on each day; `plan[0]` is day 1. */
export type CastingPlan = readonly (readonly number[])[];

const sumOf = (counts: readonly number[]): number => counts.reduce((sum, n) => sum + n, 0);

/** The least days in which so much can be cast with as many moulds as one likes. */
export const leastDays = (demand: Demand, rules: TurnRules): number => Math.ceil(sumOf(demand) / rules.poursPerDay);

/** The fewest copies of moulds with which all is cast in so many days; `null` where no number of them does. */
export function fewestCopies(demand: Demand, days: number, rules: TurnRules): LeastCounts | null {
  const turns = (Math.floor((days - 1) / rules.period) + 1) * rules.turnsPerDay;
  const lower = demand.map((n) => Math.ceil(n / turns));
  return leastCounts(lower, [...demand], (copies) => daysWith(demand, copies, rules) <= days);
}

/** Days that casting takes with these copies. */
export function daysWith(demand: Demand, copies: readonly number[], rules: TurnRules): number {
  if (rules.period === 1) {
    const alone = demand.map((n, i) => Math.ceil(n / ((copies[i] as number) * rules.turnsPerDay)));
    return Math.max(0, leastDays(demand, rules), ...alone.filter((n) => !Number.isNaN(n)));
  }
  const state = begin(demand, copies);
  let day = 0;
  while (sumOf(state.left) > 0) cast(state, ++day, byLevel(state, day, rules.poursPerDay), rules);
  return day;
}

interface State {
  readonly copies: readonly number[];
  readonly left: number[];
  /** Day from which each copy may be filled again. */
  readonly freeFrom: number[][];
}

const begin = (demand: Demand, copies: readonly number[]): State => ({
  copies,
  left: [...demand],
  freeFrom: copies.map((n) => Array.from({ length: n }, () => 1)),
});

const copyOf = (state: State): State => ({
  copies: state.copies,
  left: [...state.left],
  freeFrom: state.freeFrom.map((days) => [...days]),
});

const free = (state: State, kind: number, day: number): number =>
  (state.freeFrom[kind] as number[]).filter((from) => from <= day).length;

/**
 * Fillings of a day where the period is longer than one, longest queue first. Fillings of one copy are a chain with
 * equal delays; for forests of unit tasks with equal delays the highest level first is optimal (Bruno, Jones and So,
 * "Deterministic scheduling with pipelined processors", IEEE Trans. Computers 1980, from memory; held by trial of
 * every plan in the tests).
 */
function byLevel(state: State, day: number, most: number, taken: number[] = state.left.map(() => 0)): number[] {
  const picked = [...taken];
  const open = state.left.map((n, kind) => Math.min(n, free(state, kind, day)));
  for (let pours = sumOf(taken); pours < most; pours++) {
    let best = -1;
    let highest = 0;
    for (const [kind, n] of state.left.entries()) {
      const used = picked[kind] as number;
      if (used >= (open[kind] as number)) continue;
      const level = Math.ceil((n - used) / (state.copies[kind] as number));
      if (level > highest) {
        highest = level;
        best = kind;
      }
    }
    if (best < 0) break;
    picked[best] = (picked[best] as number) + 1;
  }
  return picked;
}

function cast(state: State, day: number, picked: readonly number[], { period, turnsPerDay }: TurnRules): void {
  for (const [kind, n] of picked.entries()) {
    state.left[kind] = (state.left[kind] as number) - n;
    let filled = Math.ceil(n / turnsPerDay);
    const days = state.freeFrom[kind] as number[];
    for (let k = 0; k < days.length && filled > 0; k++) {
      if ((days[k] as number) > day) continue;
      days[k] = day + period;
      filled--;
    }
  }
}

/**
 * What is cast on each day with these copies, in laying order as far as all is still cast within `days`.
 * @throws RangeError when these copies can't do it in so many days
 */
export function castingPlan(demand: Demand, copies: readonly number[], days: number, rules: TurnRules): CastingPlan {
  const state = begin(demand, copies);
  const plan: number[][] = [];
  for (let day = 1; sumOf(state.left) > 0; day++) {
    if (day > days) throw new RangeError(`casting takes longer than ${days} days with these moulds`);
    const picked = rules.period === 1 ? ofDay(state, days - day, rules) : ofLongPeriod(state, day, days, rules);
    cast(state, day, picked, rules);
    plan.push(picked);
  }
  return plan;
}

/** Where moulds turn daily: first what would not be done in time otherwise, then in laying order. */
function ofDay(state: State, daysAfter: number, { poursPerDay, turnsPerDay }: TurnRules): number[] {
  const most = state.copies.map((n) => n * turnsPerDay);
  const picked = state.left.map((n, kind) => Math.max(0, n - (most[kind] as number) * daysAfter));
  let rest = poursPerDay - sumOf(picked);
  for (const [kind, n] of state.left.entries()) {
    const more = Math.max(0, Math.min(rest, Math.min(n, most[kind] as number) - (picked[kind] as number)));
    picked[kind] = (picked[kind] as number) + more;
    rest -= more;
  }
  return picked;
}

/** As many in laying order as leave the rest feasible, the others by level. */
function ofLongPeriod(state: State, day: number, days: number, rules: TurnRules): number[] {
  let good = byLevel(state, day, rules.poursPerDay);
  for (let low = 0, high = rules.poursPerDay; low < high; ) {
    const first = (low + high + 1) >> 1;
    const picked = byLevel(state, day, rules.poursPerDay, inOrder(state, day, first));
    if (finishes(state, day, picked, days, rules)) {
      good = picked;
      low = first;
    } else high = first - 1;
  }
  return good;
}

function inOrder(state: State, day: number, most: number): number[] {
  let rest = most;
  return state.left.map((n, kind) => {
    const here = Math.min(rest, n, free(state, kind, day));
    rest -= here;
    return here;
  });
}

function finishes(state: State, day: number, picked: readonly number[], days: number, rules: TurnRules): boolean {
  const trial = copyOf(state);
  cast(trial, day, picked, rules);
  let at = day;
  while (sumOf(trial.left) > 0 && at < days) cast(trial, ++at, byLevel(trial, at, rules.poursPerDay), rules);
  return sumOf(trial.left) === 0;
}
