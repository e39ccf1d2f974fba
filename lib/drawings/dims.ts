import { formatLength } from '../base/measures.js';
import { ONE_SIZE } from '../base/tolerances.js';
import { DIMENSION_STYLE } from '../documents/dimension-style.js';
import { dimensionTextFits } from '../documents/dimensioning.js';
import type { LinearDimension, Primitive, Spill } from '../documents/drawing.js';
import { textWidth } from '../documents/text-size.js';
import type { Vec2 } from '../math/vec.js';
import type { Layout } from './layout.js';

/** Steps between the dimension line nearest to a figure and it, and between neighbours, paper mm. */
const FIRST_ROW = 8;
const NEXT_ROW = 7;
/** The same where chains have names on their far side, so that none is read with its neighbour's figure. */
const NEXT_NAMED_ROW = 8.5;
/** Length of an extension line that doesn't begin at its figure, with the gap before it. */
const STUB = 3;
/** A chain's name: height and distance from the line, and what the chain is longer at least, paper mm. */
const NAME = { height: 1.8, gap: 0.8, margin: 2 } as const;

/** A chain of dimensions on one line, level (`0`) or upright (`90`). */
export interface ChainSpec {
  readonly angleDeg: 0 | 90;
  /** Places that are measured, along the chain, mm. */
  readonly places: readonly number[];
  /** Where the extension line of a place begins, across the chain: the figure's edge on that side. */
  readonly from: (place: number) => number;
  readonly prefix?: string;
  /** Stands before the last measure alone. */
  readonly lastPrefix?: string;
  /** What is measured: along the chain's other side where that is long enough, else before the measure. */
  readonly name?: string;
}

/**
 * Puts a chain into the first free of the rows, each the place of its dimension line across the chain. Where its
 * extension lines would cross a text on their way from the figure, they are left out up to the row.
 */
export function placeChain(layout: Layout, spec: ChainSpec, rows: readonly number[]): void {
  if (spec.places.length < 2) return;
  const away = (rows[1] as number) > (rows[0] as number) ? 1 : -1;
  const stub = (row: number) => ({ ...spec, from: () => row - away * layout.mm(STUB) });
  layout.place(
    lazily(rows, (row) => chainAt(layout, spec, row)),
    lazily(rows, (row) => chainAt(layout, stub(row), row)),
  );
}

/** The same where a row lies free; gives back whether one did. */
export const placeChainFree = (layout: Layout, spec: ChainSpec, rows: readonly number[]): boolean =>
  layout.placeFree(lazily(rows, (row) => chainAt(layout, spec, row)));

/** Makes one after the other, and only as many as are asked for. */
function* lazily<T, R>(all: Iterable<T>, make: (one: T) => R): Generator<R> {
  for (const one of all) yield make(one);
}

function chainAt(layout: Layout, { name, ...given }: ChainSpec, row: number): Primitive[] {
  if (name === undefined) return chainOnRow(layout, given, row);
  // Beside the longest of its dimensions, so that no terminator stands in it.
  const { places } = given;
  const gaps = places.slice(1).map((to, i) => ({ from: places[i] as number, to }));
  const { from, to } = gaps.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a));
  if (textWidth(name, layout.mm(NAME.height)) + layout.mm(NAME.margin) > to - from)
    return chainOnRow(layout, { ...given, lastPrefix: `${name} ` }, row);
  // Figures stand above a level line and to the left of an upright one.
  const off = layout.mm(NAME.gap + NAME.height);
  const middle = (from + to) / 2;
  return [
    ...chainOnRow(layout, given, row),
    {
      kind: 'text',
      layer: 'dimension',
      at: given.angleDeg === 0 ? [middle, row - off] : [row + off, middle],
      text: name,
      heightMm: NAME.height,
      anchor: 'centre',
      rotationDeg: given.angleDeg,
    },
  ];
}

type Row = Omit<ChainSpec, 'name'>;

function chainOnRow(layout: Layout, spec: Row, row: number): Primitive[] {
  const put = (along: number, across: number): Vec2 => (spec.angleDeg === 0 ? [along, across] : [across, along]);
  const dims = spec.places.slice(1).map((to, i): LinearDimension => {
    const from = spec.places[i] as number;
    const last = i === spec.places.length - 2;
    const prefix = last ? (spec.lastPrefix ?? spec.prefix) : spec.prefix;
    return {
      kind: 'dimension',
      type: 'linear',
      from: put(from, spec.from(from)),
      to: put(to, spec.from(to)),
      angleDeg: spec.angleDeg,
      line: put((from + to) / 2, row),
      ...(prefix ? { prefix } : {}),
    };
  });
  // Texts that fit stand where they belong; the others then go where they disturb least.
  const fitting = dims.filter((d) => dimensionTextFits(d, layout.scale, layout.units));
  const group: Primitive[] = [...fitting];
  dims.forEach((d, i) => {
    if (fitting.includes(d)) return;
    let best: LinearDimension | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const spill of spillsOf(i, dims.length)) {
      const tried = { ...d, spill };
      const faults = layout.faults([...group, tried], least);
      if (faults < least) [best, least] = [tried, faults];
      if (least === 0) break;
    }
    group.push(best as LinearDimension);
  });
  return group;
}

/** Where a figure without room is tried: beyond the chain's end where it stands there, else on a leader. */
function spillsOf(i: number, count: number): readonly Spill[] {
  if (i === count - 1) return ['to', 'out-to', 'out-from', 'from'];
  return i === 0 ? ['from', 'out-from', 'out-to', 'to'] : ['out-from', 'out-to', 'from', 'to'];
}

/** Rows outward from a figure's edge; `away` is −1 below or to the left, 1 above or to the right. */
export const rowsFrom = (layout: Layout, edge: number, away: 1 | -1, most = 12): number[] =>
  Array.from({ length: most }, (_, i) => edge + away * layout.mm(FIRST_ROW + i * NEXT_ROW));

/** The same for chains of which some have names. */
export const namedRowsFrom = (layout: Layout, edge: number): number[] =>
  Array.from({ length: 24 }, (_, i) => edge + layout.mm(FIRST_ROW + i * NEXT_NAMED_ROW));

/** Sorted places, those nearer than half a millimetre told once. */
export function places(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.filter((v, i) => i === 0 || v - (sorted[i - 1] as number) > ONE_SIZE);
}

/** Figures without room that may follow one another within a chain: one on a leader to either side. */
const TIGHT_IN_A_ROW = 2;

/**
 * Places as chains whose figures all have room between their terminators, at the chain's ends or on leaders: where more
 * follow one another closely, some leave the first chain, and are measured from another place each.
 */
export function legibleChains(layout: Layout, all: readonly number[]): number[][] {
  const [first, ...rest] = all;
  const last = rest.pop();
  if (first === undefined || last === undefined) return [];
  const fits = (a: number, b: number) => {
    const gap = Math.abs(b - a);
    const { textHeight, margin } = DIMENSION_STYLE;
    return textWidth(formatLength(gap, layout.units), layout.mm(textHeight)) + layout.mm(2 * margin) <= gap;
  };
  const kept = [first];
  const left: number[] = [];
  let tight = 0;
  for (const place of rest) {
    const free = kept.length === 1 || fits(kept[kept.length - 1] as number, place);
    if (!free && tight === TIGHT_IN_A_ROW) left.push(place);
    else {
      kept.push(place);
      tight = free ? 0 : tight + 1;
    }
  }
  const beside = left.map((place) => {
    const from =
      all.filter((p) => fits(p, place)).sort((a, b) => Math.abs(a - place) - Math.abs(b - place))[0] ?? first;
    return [Math.min(from, place), Math.max(from, place)];
  });
  return [[...kept, last], ...beside];
}
