import { SAME_POINT } from '../../base/tolerances.js';
import { turnPositive } from '../../math/vec.js';
import { placeAngle, type Ring, turnTo } from '../../setout/courses.js';
import { turnToNearest } from '../laps.js';
import { type RingRules, spanEnds } from './merge.js';
import type { LaidSpan } from './spans.js';

/** What decides where the perpends of one ring are best. Bearings and angles in radians. */
export interface StartProblem extends RingRules {
  readonly leastLap: number;
  readonly spans: readonly LaidSpan[];
  /** Perpends of the course below. */
  readonly below: readonly number[];
  /** Those of them that meet a perpend of the course under that one. */
  readonly lines: readonly number[];
  /** Where the first perpend would be if nothing were cut. */
  readonly home: number;
}

/** What is wrong with a start. */
export interface StartCost {
  /** What pieces beside cuts lack of the shortest piece that are too heavy to be one with their neighbours, mm. */
  readonly short: number;
  /** By how much perpends come nearer than a joint to lines through two courses, mm. */
  readonly lines: number;
  /** What laps lack of the least lap, mm. */
  readonly laps: number;
  /** Pieces that become one with their neighbours. */
  readonly merged: number;
  /** Distance from the place it would have if nothing were cut, mm. */
  readonly away: number;
}

/**
 * What one of each counts for. A ring that laps nowhere is worse than a closer that is too short, a line through three
 * courses worse than some short laps, and a block of odd length better than either; common practice, no source.
 */
const WEIGHTS: Readonly<Record<keyof StartCost, number>> = { short: 30, lines: 500, laps: 1, merged: 40, away: 0.001 };

/** The objective: the sum of all that is wrong by its weight. */
export const weighed = (cost: StartCost): number =>
  (Object.keys(WEIGHTS) as (keyof StartCost)[]).reduce((sum, key) => sum + WEIGHTS[key] * cost[key], 0);

/**
 * Bearing of the first perpend past bearing 0 at which the objective is least. It is linear between the bearings at
 * which something begins or stops to count, so that its least value stands at one of these: all are tried.
 */
export function bestStart(problem: StartProblem): number {
  const nearest = nearestTurns(problem.ring);
  const starts = startsOf(problem);
  // What pieces beside cuts count for takes longest to find: those are looked at of few starts.
  const atLeast = starts.map((start) => costWithoutPieces(problem, start, nearest));
  const costs = new Map<number, number>();
  const costAt = (k: number): number => {
    const cost = costs.get(k) ?? weighed(startCost(problem, starts[k] as number, nearest));
    costs.set(k, cost);
    return cost;
  };
  const enough = leastCost(atLeast, costAt) + APART;
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [k, start] of starts.entries()) {
    if ((atLeast[k] as number) >= enough) continue;
    const cost = costAt(k);
    if (cost >= least - SAME_POINT) continue;
    least = cost;
    best = start;
  }
  return best;
}

/** Starts so much worse than the best decide nothing between those that differ by rounding. */
const APART = 1;

/** The least cost of all, sought from the start that can be best: most need not be looked at. */
function leastCost(atLeast: Float64Array, costAt: (k: number) => number): number {
  const order = Uint32Array.from(atLeast, (_, k) => k).sort((a, b) => (atLeast[a] as number) - (atLeast[b] as number));
  let least = Number.POSITIVE_INFINITY;
  for (const k of order) {
    if ((atLeast[k] as number) >= least) break;
    least = Math.min(least, costAt(k));
  }
  return least;
}

/** What all but the pieces beside cuts counts for. */
function costWithoutPieces(
  { radius, joint, leastLap, below, lines, home }: StartProblem,
  start: number,
  nearest: Nearest,
): number {
  const lacking = (list: readonly number[], wanted: number): number => {
    let sum = 0;
    for (const at of list) sum += Math.max(0, wanted - radius * nearest(at - start));
    return sum;
  };
  return (
    WEIGHTS.lines * lacking(lines, joint) +
    WEIGHTS.laps * lacking(below, leastLap) +
    WEIGHTS.away * radius * nearest(home - start)
  );
}

/** All starts to try, ascending, each once. */
function startsOf(problem: StartProblem): Float64Array {
  const all = Float64Array.from(kinks(problem).flatMap((at) => startsWith(problem.ring, at))).sort();
  return all.filter((start, k) => k === 0 || start !== all[k - 1]);
}

/** Starts with which some perpend lies at a bearing. */
function startsWith(ring: Ring, at: number): number[] {
  const most = placeAngle(ring, -1);
  if (!ring.mix) return [inModule(at, most)];
  const turn = turnPositive(at);
  const near = Math.floor((turn * ring.count) / (2 * Math.PI));
  return [-1, 0, 1, 2]
    .map((aside) => turn - turnTo(ring, near + aside - 1))
    .filter((start) => start >= 0 && start < most);
}

function inModule(at: number, module: number): number {
  const rest = at % module;
  const positive = rest < 0 ? rest + module : rest;
  return positive < module ? positive : 0;
}

function kinks(problem: StartProblem): number[] {
  const { ring, radius, joint, shortestPiece, leastLap, heaviestKg, kgPerRadian } = problem;
  const { spans, below, lines, home } = problem;
  const half = joint / 2 / radius;
  const modules = ring.mix ? ring.mix.angles : [placeAngle(ring, 0)];
  // Piece that with a whole block weighs just what may be lifted.
  const heavy = modules.map((module) => heaviestKg / kgPerRadian - module);
  // Where the nearest perpend is another one.
  const between = ring.mix ? modules.flatMap((m) => [m / 2, -m / 2]) : modules.map((m) => m / 2);
  const found = [0, home, ...between.map((b) => home + b)];
  for (const { from, to, fromRadius, toRadius } of spans) {
    for (const d of [0, half, half + shortestPiece / fromRadius, ...heavy.map((h) => half + h)]) found.push(from + d);
    for (const d of [0, half, half + shortestPiece / toRadius, ...heavy.map((h) => half + h)]) found.push(to - d);
  }
  for (const at of below) found.push(at, at + leastLap / radius, at - leastLap / radius, ...between.map((b) => at + b));
  for (const at of lines) found.push(at + joint / radius, at - joint / radius);
  return found;
}

export function startCost(problem: StartProblem, start: number, nearest = nearestTurns(problem.ring)): StartCost {
  const { radius, joint, shortestPiece, leastLap, spans, below, lines, home } = problem;
  const gap = (at: number) => radius * nearest(at - start);
  const lacking = (list: readonly number[], wanted: number) =>
    list.reduce((sum, at) => sum + Math.max(0, wanted - gap(at)), 0);
  let [lack, merged] = [0, 0];
  for (const span of spans) {
    const { short, leftOut } = spanEnds(problem, start, span);
    for (const { length } of short) lack = lack + shortestPiece - length;
    merged += leftOut.length;
  }
  return {
    short: lack,
    lines: lacking(lines, joint),
    laps: lacking(below, leastLap),
    merged,
    away: gap(home),
  };
}

/** Angle from a place in a ring, told by the turn from its first perpend, to the perpend nearest to it. */
type Nearest = (turn: number) => number;

function nearestTurns(ring: Ring): Nearest {
  const { count, mix } = ring;
  if (!mix) {
    const module = placeAngle(ring, 0);
    return (turn) => {
      const t = inModule(-turn, module);
      return Math.min(t, module - t);
    };
  }
  // Turns are differences of bearings within a turn: so many perpends to either side can be the nearest.
  const reach = count + 2;
  const perpends = Float64Array.from({ length: 2 * reach + 1 }, (_, k) => turnTo(ring, k - reach));
  return (turn) => {
    const near = Math.round((turn * count) / (2 * Math.PI)) + reach;
    let least = Number.POSITIVE_INFINITY;
    for (let k = near - 1; k <= near + 1; k++) least = Math.min(least, Math.abs((perpends[k] as number) - turn));
    return least;
  };
}

/** Perpends of `upper` that meet one of `lower`, which ascend: nearer than `within`, radians. */
export const perpendsInLine = (upper: readonly number[], lower: readonly number[], within: number): number[] =>
  upper.filter((at) => turnToNearest(lower, at) < within);
