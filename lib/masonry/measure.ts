import { SAME_SHARE } from '../base/tolerances.js';
import { gauss, integrate, integrateSoftEnds } from '../math/quadrature.js';
import { type Column, type ColumnBody, columnLeft } from './column.js';
import type { Cutter } from './cutter.js';
import { alike, type Kink, kinksAlong } from './kinks.js';

/** Order of the rule on smooth stretches; analytic integrands reach float64's precision with it. */
const SMOOTH_ORDER = 16;

/** Orders of the rules: along i between two kinks, and in depth within a narrow and a wide range. */
const STRETCH_ORDER = 6;
const DEPTH_ORDER = 3;
const WIDE_ORDER = 4;
const WIDE = 0.5;
/** Steps of the scans for kinks along i, and in depth along the beds. */
const SCAN = 6;
const DEPTH_SCAN = 3;
/** So often a range of depths is split again, and so many halvings find where. */
const SPLITS = 4;
const SPLIT_STEPS = 6;

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
 * Volume that the cutters leave of a body, mm³; its error is some 1e-6 of the whole body, at most 1e-4.
 * @param whole of the body uncut, where it is known
 */
export function cutVolume(body: ColumnBody, cutters: readonly Cutter[], whole = wholeVolume(body)): number {
  if (cutters.length === 0) return whole;
  return measureColumns(body, cutters, (column) => columnLeft(column, cutters));
}

/** Whether a cutter takes more than `least` of a body, mm³. */
export const takesFrom = (body: ColumnBody, cutter: Cutter, least: number): boolean =>
  measureColumns(body, [cutter], (column) => column.high - column.low - columnLeft(column, [cutter])) > least;

/** What the cutters leave of a surface, mm²: a body of unit thickness whose columns are the same at every depth. */
export const cutArea = (surface: ColumnBody, cutters: readonly Cutter[]): number =>
  sliceVolume(surface, 0, cutters, (column) => columnLeft(column, cutters)).volume;

/** What counts of a column, in units of its run. */
export type ColumnMeasure = (column: Column, i: number, j: number) => number;

/** ∫∫ of a measure of a body's columns that is smooth but for the kinks that the cutters make, mm³. */
export function measureColumns(body: ColumnBody, cutters: readonly Cutter[], measure: ColumnMeasure): number {
  // Lines of kinks begin and end at the beds, but for those that turn round or meet within the body.
  const ends = [0, 1].flatMap((i) => kinksAlong((j) => body(i, j), cutters, DEPTH_SCAN).breaks).sort((a, b) => a - b);
  let sum = 0;
  for (let k = 0; k + 1 < ends.length; k++) {
    const [from, to] = [ends[k], ends[k + 1]] as [number, number];
    if (to - from > SAME_SHARE) sum += panelVolume((j) => sliceVolume(body, j, cutters, measure), from, to, SPLITS);
  }
  return sum;
}

/** A slice at one depth: what is left of it, and its kinks. */
interface Slice {
  readonly volume: number;
  readonly kinks: readonly Kink[];
}

/** ∫ over a range of depths; where slices differ in their kinks, it is split between them. */
function panelVolume(slice: (j: number) => Slice, from: number, to: number, splits: number): number {
  const { nodes, weights } = gauss(to - from > WIDE ? WIDE_ORDER : DEPTH_ORDER);
  let sum = 0;
  let before: Slice | null = null;
  for (let n = 0; n < nodes.length; n++) {
    const here = slice(from + (to - from) * (nodes[n] as number));
    if (before && !alike(before.kinks, here.kinks) && splits > 0) {
      const turn = changeBetween(
        slice,
        from + (to - from) * (nodes[n - 1] as number),
        from + (to - from) * (nodes[n] as number),
        before.kinks,
      );
      return panelVolume(slice, from, turn, splits - 1) + panelVolume(slice, turn, to, splits - 1);
    }
    before = here;
    sum += (weights[n] as number) * here.volume;
  }
  return sum * (to - from);
}

/** Depth between two at which kinks come, go or meet, by halving. */
function changeBetween(slice: (j: number) => Slice, from: number, to: number, kinks: readonly Kink[]): number {
  let [a, b] = [from, to];
  for (let step = 0; step < SPLIT_STEPS; step++) {
    const middle = (a + b) / 2;
    if (alike(slice(middle).kinks, kinks)) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** ∫ over i at one depth, in stretches between the kinks that the cutters' outlines make. */
function sliceVolume(body: ColumnBody, j: number, cutters: readonly Cutter[], measure: ColumnMeasure): Slice {
  const remaining = (i: number) => {
    const column = body(i, j);
    return column.weight * measure(column, i, j);
  };
  const { breaks, kinks } = kinksAlong((i) => body(i, j), cutters, SCAN);
  let volume = 0;
  for (let k = 0; k + 1 < breaks.length; k++) {
    volume += integrateSoftEnds(remaining, breaks[k] as number, breaks[k + 1] as number, STRETCH_ORDER);
  }
  return { volume, kinks };
}
