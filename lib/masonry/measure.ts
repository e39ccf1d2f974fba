import { intervalsLength } from '../math/intervals.js';
import { gauss, integrate, integrateSoftEnds } from '../math/quadrature.js';
import { monotoneRoot } from '../math/roots.js';
import { type Column, type ColumnBody, columnRuns } from './column.js';
import type { Cutter } from './cutter.js';

/** Order of the rule on smooth stretches; analytic integrands reach float64's precision with it. */
const SMOOTH_ORDER = 16;
const DEPTH_PANELS = 2;
const DEPTH_ORDER = 4;
const STRETCH_ORDER = 8;
/** Stretches of the scan for kinks along i. */
const SCAN = 12;

/** Volume of a body that nothing cuts, mm³. */
export function wholeVolume(body: ColumnBody): number {
  return integrate(
    (j) =>
      integrate(
        (i) => {
          const column = body(i, j);
          return column.weight * (column.high - column.low);
        },
        0,
        1,
        SMOOTH_ORDER,
      ),
    0,
    1,
    4,
  );
}

/** Volume that the cutters leave of a body, mm³. Relative error under 1e-5 of the whole body. */
export function cutVolume(body: ColumnBody, cutters: readonly Cutter[]): number {
  if (cutters.length === 0) return wholeVolume(body);
  return measureColumns(body, cutters, (column) => intervalsLength(columnRuns(column, cutters)));
}

/** What counts of a column, in units of its run. */
export type ColumnMeasure = (column: Column, i: number, j: number) => number;

/** ∫∫ of a measure of a body's columns that is smooth but for the kinks that the cutters make, mm³. */
export function measureColumns(body: ColumnBody, cutters: readonly Cutter[], measure: ColumnMeasure): number {
  const { nodes, weights } = gauss(DEPTH_ORDER);
  let sum = 0;
  for (let panel = 0; panel < DEPTH_PANELS; panel++) {
    for (let k = 0; k < DEPTH_ORDER; k++) {
      const j = (panel + (nodes[k] as number)) / DEPTH_PANELS;
      sum += ((weights[k] as number) / DEPTH_PANELS) * sliceVolume(body, j, cutters, measure);
    }
  }
  return sum;
}

/** ∫ over i at one depth, in stretches between the kinks that the cutters' outlines make. */
function sliceVolume(body: ColumnBody, j: number, cutters: readonly Cutter[], measure: ColumnMeasure): number {
  const remaining = (i: number) => {
    const column = body(i, j);
    return column.weight * measure(column, i, j);
  };
  const breaks = kinks(body, j, cutters);
  let sum = 0;
  for (let k = 0; k + 1 < breaks.length; k++) {
    sum += integrateSoftEnds(remaining, breaks[k] as number, breaks[k + 1] as number, STRETCH_ORDER);
  }
  return sum;
}

function kinks(body: ColumnBody, j: number, cutters: readonly Cutter[]): number[] {
  const breaks = [0, 1];
  const heights = cutters.flatMap((c) => c.heights);
  const low = body(0, j).z;
  const high = body(1, j).z;
  for (const z of heights) if (z > low && z < high) breaks.push(monotoneRoot((i) => body(i, j).z - z, 0, 1));
  let before = signature(body, 0, j, cutters);
  for (let k = 1; k <= SCAN; k++) {
    const after = signature(body, k / SCAN, j, cutters);
    if (after !== before) breaks.push(changeBetween(body, j, cutters, (k - 1) / SCAN, k / SCAN, before));
    before = after;
  }
  return breaks.sort((a, b) => a - b).filter((b, k, all) => k === 0 || b - (all[k - 1] as number) > 1e-12);
}

/** How each cut lies towards the column's ends, as digits: changes where an integrand of ours has a kink. */
function signature(body: ColumnBody, i: number, j: number, cutters: readonly Cutter[]): number {
  const column = body(i, j);
  const { low, high } = column;
  let code = 0;
  for (const cutter of cutters) {
    const cut = column.cut(cutter);
    const place = cut
      ? 1 + Number(cut[0] < low) + 2 * Number(cut[0] < high) + 4 * Number(cut[1] < low) + 8 * Number(cut[1] < high)
      : 0;
    code = code * 17 + place;
  }
  return code;
}

function changeBetween(
  body: ColumnBody,
  j: number,
  cutters: readonly Cutter[],
  from: number,
  to: number,
  before: number,
): number {
  let a = from;
  let b = to;
  for (let step = 0; step < 30; step++) {
    const middle = (a + b) / 2;
    if (signature(body, middle, j, cutters) === before) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
