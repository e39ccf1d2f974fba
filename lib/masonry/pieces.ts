import type { Intervals } from '../math/intervals.js';
import type { Vec3 } from '../math/vec.js';
import { type ColumnBody, columnRuns } from './column.js';
import type { Cutter } from './cutter.js';
import type { ColumnMeasure } from './measure.js';

/** Samples along i and j. A bridge between two pieces thinner than a cell (some 8 mm) would break in the hand. */
const ROWS = 32;
const DEPTHS = 8;

/** One of the pieces that cuts leave of a body. */
export interface Piece {
  /** Longest uninterrupted run at mid-depth, mm. */
  readonly longestRun: number;
  /** Middle of the longest run, from the foot of the dome's axis. */
  readonly seed: Vec3;
  /** Counts only this piece's runs. */
  readonly measure: ColumnMeasure;
}

interface Cell {
  readonly runs: Intervals;
  /** Piece of each run. */
  readonly labels: number[];
}

/** The connected pieces that cutters leave of a body, by how the runs of sampled columns overlap. */
export function piecesOf(body: ColumnBody, cutters: readonly Cutter[]): Piece[] {
  const cells: Cell[][] = [];
  const leader: number[] = [];
  const find = (k: number): number => (leader[k] === k ? k : find(leader[k] as number));
  const join = (one: Cell | undefined, other: Cell) => {
    one?.runs.forEach(([a, b], p) => {
      other.runs.forEach(([c, d], q) => {
        if (Math.min(b, d) > Math.max(a, c)) leader[find(one.labels[p] as number)] = find(other.labels[q] as number);
      });
    });
  };
  for (let i = 0; i <= ROWS; i++) {
    const row: Cell[] = [];
    for (let j = 0; j <= DEPTHS; j++) {
      const runs = columnRuns(body(i / ROWS, j / DEPTHS), cutters);
      const cell = { runs, labels: runs.map(() => leader.push(leader.length) - 1) };
      join(cells[i - 1]?.[j], cell);
      join(row[j - 1], cell);
      row.push(cell);
    }
    cells.push(row);
  }
  for (const cell of cells.flat()) for (const [k, label] of cell.labels.entries()) cell.labels[k] = find(label);
  const roots = [...new Set(cells.flat().flatMap((cell) => cell.labels))];
  return roots.map((root) => ({ ...longest(body, cells, root), measure: measureOf(cells, cutters, root) }));
}

function longest(
  body: ColumnBody,
  cells: readonly (readonly Cell[])[],
  root: number,
): { longestRun: number; seed: Vec3 } {
  let best = { longestRun: 0, atMiddle: false, seed: [0, 0, 0] as Vec3 };
  for (let i = 0; i <= ROWS; i++) {
    for (let j = 0; j <= DEPTHS; j++) {
      const cell = (cells[i] as readonly Cell[])[j] as Cell;
      if (!cell.labels.includes(root)) continue;
      const column = body(i / ROWS, j / DEPTHS);
      const atMiddle = j === DEPTHS / 2;
      for (const [k, [from, to]] of cell.runs.entries()) {
        const run = (to - from) * column.unit;
        // Runs at mid-depth come first; a piece that never reaches it is measured where it is.
        const better = atMiddle === best.atMiddle ? run > best.longestRun : atMiddle;
        if (cell.labels[k] === root && better)
          best = { longestRun: run, atMiddle, seed: column.place((from + to) / 2) };
      }
    }
  }
  return { longestRun: best.longestRun, seed: best.seed };
}

function measureOf(cells: readonly (readonly Cell[])[], cutters: readonly Cutter[], root: number): ColumnMeasure {
  return (column, i, j) => {
    const cell = (cells[Math.round(i * ROWS)] as readonly Cell[])[Math.round(j * DEPTHS)] as Cell;
    let sum = 0;
    for (const run of columnRuns(column, cutters)) if (labelOf(run, cell) === root) sum += run[1] - run[0];
    return sum;
  };
}

/** Piece of the sampled run that a run near it overlaps most, or lies nearest to. */
function labelOf([from, to]: readonly [number, number], cell: Cell): number | undefined {
  let best: number | undefined;
  let most = Number.NEGATIVE_INFINITY;
  for (const [k, [a, b]] of cell.runs.entries()) {
    const overlap = Math.min(to, b) - Math.max(from, a);
    if (overlap <= most) continue;
    most = overlap;
    best = cell.labels[k];
  }
  return best;
}
