import type { Intervals } from '../math/intervals.js';
import type { Vec3 } from '../math/vec.js';
import { type Column, type ColumnBody, columnRuns } from './column.js';
import type { Cutter } from './cutter.js';
import type { ColumnMeasure } from './measure.js';

/** Samples along i and j. A bridge between two pieces thinner than a cell (some 8 mm) would break in the hand. */
const ROWS = 32;
const DEPTHS = 8;
const WIDE = DEPTHS + 1;
/** The last step in which a longer run is sought between the samples, as a share of the height. */
const LEAST_STEP = 1e-4;

/** One of the pieces that cuts leave of a body. */
export interface Piece {
  /** Longest uninterrupted run at mid-depth, mm. */
  readonly longestRun: number;
  /** Middle of the longest run, from the foot of the dome's axis. */
  readonly seed: Vec3;
  /** Counts only this piece's runs. */
  readonly measure: ColumnMeasure;
}

/** Runs of the columns at a body's sample points, row by row, numbered through. */
interface Samples {
  readonly columns: readonly Column[];
  readonly runs: readonly Intervals[];
  /** Number of each column's first run. */
  readonly first: readonly number[];
  /** Piece of each run, as the number of one of its runs. */
  readonly pieces: readonly number[];
}

/** The connected pieces that cutters leave of a body, by how the runs of sampled columns overlap. */
export function piecesOf(body: ColumnBody, cutters: readonly Cutter[]): Piece[] {
  const samples = sampled(body, cutters);
  return [...longestRuns(samples)].map(([piece, longest]) => {
    const { longestRun, column, run } = longestBeside(longest, body, cutters);
    return {
      longestRun,
      seed: column.place((run[0] + run[1]) / 2),
      measure: measureOf(samples, cutters, piece),
    };
  });
}

function sampled(body: ColumnBody, cutters: readonly Cutter[]): Samples {
  const columns: Column[] = [];
  const runs: Intervals[] = [];
  const first: number[] = [];
  const leader: number[] = [];
  const find = (run: number): number => {
    let k = run;
    while (leader[k] !== k) k = leader[k] as number;
    return k;
  };
  const join = (one: number, other: number): void => {
    const [a, b] = [runs[one] as Intervals, runs[other] as Intervals];
    for (let p = 0; p < a.length; p++) {
      for (let q = 0; q < b.length; q++) {
        const [run, next] = [a[p] as Intervals[number], b[q] as Intervals[number]];
        if (Math.min(run[1], next[1]) > Math.max(run[0], next[0]))
          leader[find((first[one] as number) + p)] = find((first[other] as number) + q);
      }
    }
  };
  for (let i = 0; i <= ROWS; i++) {
    for (let j = 0; j <= DEPTHS; j++) {
      const at = columns.length;
      const column = body(i / ROWS, j / DEPTHS);
      const own = columnRuns(column, cutters);
      columns.push(column);
      runs.push(own);
      first.push(leader.length);
      for (let k = 0; k < own.length; k++) leader.push(leader.length);
      if (i > 0) join(at - WIDE, at);
      if (j > 0) join(at - 1, at);
    }
  }
  return { columns, runs, first, pieces: leader.map((_, run) => find(run)) };
}

interface Longest {
  readonly longestRun: number;
  /** Where along i and j its column is. */
  readonly place: readonly [number, number];
  readonly atMiddle: boolean;
  readonly column: Column;
  readonly run: Intervals[number];
}

/** Longest run of each piece, in the order in which the pieces are met. */
function longestRuns({ columns, runs, first, pieces }: Samples): Map<number, Longest> {
  const best = new Map<number, Longest>();
  for (let at = 0; at < columns.length; at++) {
    const column = columns[at] as Column;
    const own = runs[at] as Intervals;
    const atMiddle = at % WIDE === DEPTHS / 2;
    for (let k = 0; k < own.length; k++) {
      const run = own[k] as Intervals[number];
      const piece = pieces[(first[at] as number) + k] as number;
      const before = best.get(piece);
      const longestRun = (run[1] - run[0]) * column.unit;
      // Runs at mid-depth come first; a piece that never reaches it is measured where it is.
      const better = !before || (atMiddle === before.atMiddle ? longestRun > before.longestRun : atMiddle);
      const place = [Math.floor(at / WIDE) / ROWS, (at % WIDE) / DEPTHS] as const;
      if (better) best.set(piece, { longestRun, place, atMiddle, column, run });
    }
  }
  return best;
}

/** The longest run of the same piece at the same depth between the sampled columns, in steps along i that become smaller. */
function longestBeside(sampledOne: Longest, body: ColumnBody, cutters: readonly Cutter[]): Longest {
  let best = sampledOne;
  for (let step = 0.5 / ROWS; step > LEAST_STEP; step /= 2) {
    const [from, j] = best.place;
    for (const i of [from - step, from + step]) {
      if (i < 0 || i > 1) continue;
      const column = body(i, j);
      const runs = columnRuns(column, cutters);
      const run = runs[nearestRun(best.run, runs)];
      const longestRun = run ? (run[1] - run[0]) * column.unit : 0;
      if (run && longestRun > best.longestRun) best = { ...best, longestRun, place: [i, j], column, run };
    }
  }
  return best;
}

function measureOf({ runs, first, pieces }: Samples, cutters: readonly Cutter[], piece: number): ColumnMeasure {
  return (column, i, j) => {
    const at = Math.round(i * ROWS) * WIDE + Math.round(j * DEPTHS);
    const known = runs[at] as Intervals;
    let sum = 0;
    for (const run of columnRuns(column, cutters)) {
      const near = nearestRun(run, known);
      if (near >= 0 && pieces[(first[at] as number) + near] === piece) sum += run[1] - run[0];
    }
    return sum;
  };
}

/** Which of the sampled runs a run near them overlaps most, or lies nearest to; -1 where there are none. */
function nearestRun([from, to]: readonly [number, number], known: Intervals): number {
  let best = -1;
  let most = Number.NEGATIVE_INFINITY;
  for (const [k, [a, b]] of known.entries()) {
    const overlap = Math.min(to, b) - Math.max(from, a);
    if (overlap <= most) continue;
    most = overlap;
    best = k;
  }
  return best;
}
