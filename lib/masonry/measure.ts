import { remembered } from '../base/remembered.js';
import { SAME_SHARE } from '../base/tolerances.js';
import { gauss, integrate, integrateSoftEnds } from '../math/quadrature.js';
import { monotoneRoot } from '../math/roots.js';
import { type Column, type ColumnBody, columnLeft } from './column.js';
import type { Cutter } from './cutter.js';

/** Order of the rule on smooth stretches; analytic integrands reach float64's precision with it. */
const SMOOTH_ORDER = 16;

/** How finely a cut body is sampled. */
interface Fineness {
  readonly depthPanels: number;
  readonly depthOrder: number;
  readonly stretchOrder: number;
  /** Stretches of the scan for kinks along i. */
  readonly scan: number;
}

const PLAIN: Fineness = { depthPanels: 2, depthOrder: 6, stretchOrder: 8, scan: 12 };
/** A nick at a corner lies between the plain samples. */
const FINE: Fineness = { depthPanels: 4, depthOrder: 5, stretchOrder: 12, scan: 16 };
/** Cuts that take a smaller share of a body are measured finely. */
const NICK = 0.02;

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

/**
 * Volume that the cutters leave of a body, mm³. Relative error under 1e-5 of the whole body.
 * @param whole of the body uncut, where it is known
 */
export function cutVolume(body: ColumnBody, cutters: readonly Cutter[], whole = wholeVolume(body)): number {
  if (cutters.length === 0) return whole;
  const left: ColumnMeasure = (column) => columnLeft(column, cutters);
  const plain = measureColumns(body, cutters, left);
  return plain < whole * (1 - NICK) ? plain : measureColumns(body, cutters, left, FINE);
}

/** Whether a cutter takes more than `least` of a body, mm³. */
export function takesFrom(body: ColumnBody, cutter: Cutter, least: number): boolean {
  const taken: ColumnMeasure = (column) => column.high - column.low - columnLeft(column, [cutter]);
  let sum = 0;
  for (const { j, weight } of depthsOf(FINE)) {
    sum += weight * sliceVolume(body, j, [cutter], taken, FINE);
    if (sum > least) return true;
  }
  return false;
}

/** What the cutters leave of a surface, mm²: a body of unit thickness whose columns are the same at every depth. */
export const cutArea = (surface: ColumnBody, cutters: readonly Cutter[]): number =>
  sliceVolume(surface, 0, cutters, (column) => columnLeft(column, cutters), FINE);

/** What counts of a column, in units of its run. */
export type ColumnMeasure = (column: Column, i: number, j: number) => number;

/** ∫∫ of a measure of a body's columns that is smooth but for the kinks that the cutters make, mm³. */
export function measureColumns(
  body: ColumnBody,
  cutters: readonly Cutter[],
  measure: ColumnMeasure,
  fineness = PLAIN,
): number {
  let sum = 0;
  for (const { j, weight } of depthsOf(fineness)) sum += weight * sliceVolume(body, j, cutters, measure, fineness);
  return sum;
}

/** Depths at which a body is sliced, and what each slice counts for. */
const depthsOf = remembered(({ depthPanels, depthOrder }: Fineness) => {
  const { nodes, weights } = gauss(depthOrder);
  return Array.from({ length: depthPanels }, (_, panel) =>
    nodes.map((node, k) => ({ j: (panel + node) / depthPanels, weight: (weights[k] as number) / depthPanels })),
  ).flat();
});

/** ∫ over i at one depth, in stretches between the kinks that the cutters' outlines make. */
function sliceVolume(
  body: ColumnBody,
  j: number,
  cutters: readonly Cutter[],
  measure: ColumnMeasure,
  { stretchOrder, scan }: Fineness,
): number {
  const remaining = (i: number) => {
    const column = body(i, j);
    return column.weight * measure(column, i, j);
  };
  const breaks = kinks(body, j, cutters, scan);
  let sum = 0;
  for (let k = 0; k + 1 < breaks.length; k++) {
    sum += integrateSoftEnds(remaining, breaks[k] as number, breaks[k + 1] as number, stretchOrder);
  }
  return sum;
}

function kinks(body: ColumnBody, j: number, cutters: readonly Cutter[], scan: number): number[] {
  const breaks = [0, 1];
  const [first, last] = [body(0, j), body(1, j)];
  for (const { heights } of cutters)
    for (const z of heights) if (z > first.z && z < last.z) breaks.push(monotoneRoot((i) => body(i, j).z - z, 0, 1));
  let before = signature(first, cutters);
  for (let k = 1; k <= scan; k++) {
    const after = signature(k < scan ? body(k / scan, j) : last, cutters);
    if (after !== before) breaks.push(changeBetween(body, j, cutters, (k - 1) / scan, k / scan, before));
    before = after;
  }
  if (breaks.length === 2) return breaks;
  return breaks.sort((a, b) => a - b).filter((b, k, all) => k === 0 || b - (all[k - 1] as number) > SAME_SHARE);
}

/** How each cut lies towards the column's ends, as digits: changes where an integrand of ours has a kink. */
function signature(column: Column, cutters: readonly Cutter[]): number {
  const { low, high } = column;
  let code = 0;
  for (const cutter of cutters) {
    const cut = column.cut(cutter);
    let place = 0;
    if (cut) {
      place = 1;
      if (cut[0] < low) place += 1;
      if (cut[0] < high) place += 2;
      if (cut[1] < low) place += 4;
      if (cut[1] < high) place += 8;
    }
    code = code * 17 + place;
  }
  return code;
}

/** A kink misplaced by a share d of the run costs d² of the volume, at most d^1.5 where a cut begins: 1e-6 here. */
const KINK_STEPS = 10;

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
  for (let step = 0; step < KINK_STEPS; step++) {
    const middle = (a + b) / 2;
    if (signature(body(middle, j), cutters) === before) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
