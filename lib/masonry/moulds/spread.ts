import { SAME_ANGLE_RAD } from '../../base/tolerances.js';
import type { Place } from './family.js';
import type { FitLimits } from './limits.js';
import { keepsRooms, settleBlock } from './place.js';
import type { Site } from './site.js';
import { type Mould, middleJoint, slopesOf, type Window, windowOf } from './window.js';

/** A course in which blocks of two moulds may lie: their places are wider and narrower than an even share of the ring. */
export interface MixPlace extends Place {
  /** Whole numbers of blocks, ascending: no place is wider than of the first of them, none narrower than of the last. */
  readonly spread: readonly number[];
}

/** Windows of a parent's moulds in places of a course, from the narrowest place to the widest that they come near. */
export interface Spread {
  readonly stations: readonly Station[];
  /** Neighbouring stations between which some place may fit; a single one stands for itself. */
  readonly cells: readonly (readonly [Window, Window])[];
}

interface Station {
  readonly angle: number;
  readonly window: Window;
  readonly fits: boolean;
}

/** Least difference in width of neighbouring stations: between them gauges are straight lines to some micrometres. */
const STEP = 1.04;

/** Stations at whole numbers of blocks; the last may be the first that is too wide, so that all that fit lie between. */
export function spreadOf(parent: Site, { site, spread, counts }: MixPlace, limits: FitLimits): Spread {
  const stations: Station[] = [];
  const [fewest] = spread;
  let last = Number.POSITIVE_INFINITY;
  for (const count of [...spread].reverse()) {
    if (count * STEP > last && count !== fewest && !(counts.length === 1 && counts[0] === count)) continue;
    last = count;
    const placement = settleBlock(parent, site, count, limits);
    if (!placement) break;
    const window = windowOf(placement, limits);
    const stands = keepsRooms(placement, limits);
    stations.push({ angle: (2 * Math.PI) / count, window, fits: stands && window.leans[0] <= window.leans[1] });
    if (!stands) break;
  }
  return spreadAt(stations);
}

/** The part of a spread whose places are as wide as an even share of the ring or wider, or as narrow or narrower. */
export function sideOf({ stations }: Spread, side: 'wide' | 'narrow', counts: readonly number[]): Spread {
  const shares = counts.map((count) => (2 * Math.PI) / count);
  const [least, most] = [Math.min(...shares) - SAME_ANGLE_RAD, Math.max(...shares) + SAME_ANGLE_RAD];
  return spreadAt(stations.filter(({ angle }) => (side === 'wide' ? angle >= least : angle <= most)));
}

/** Least and greatest lean of a mould that can fit any place of a spread. */
export function leansIn(spread: Spread): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [a, b] of spread.cells) {
    low = Math.min(low, a.leans[0], b.leans[0]);
    high = Math.max(high, a.leans[1], b.leans[1]);
  }
  return [low, high];
}

/**
 * Slopes of one lean outside which no mould fits any place of the spread: between two stations its gauges change one
 * way. `null` where none can.
 */
export function reachIn(spread: Spread, lean: number): readonly [number, number] | null {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const take = (window: Window): void => {
    const [least, most] = slopesOf(window, lean);
    low = Math.min(low, least);
    high = Math.max(high, most);
  };
  let taken: Window | null = null;
  for (const [a, b] of spread.cells) {
    if (lean < Math.min(a.leans[0], b.leans[0]) || lean > Math.max(a.leans[1], b.leans[1])) continue;
    if (a !== taken) take(a);
    if (b !== a) take(b);
    taken = b;
  }
  return low <= high ? [low, high] : null;
}

function spreadAt(stations: readonly Station[]): Spread {
  const cells: (readonly [Window, Window])[] = [];
  const [first] = stations;
  if (first?.fits && stations.length === 1) cells.push([first.window, first.window]);
  for (const [k, b] of stations.entries()) {
    const a = stations[k - 1];
    if (a && (a.fits || b.fits)) cells.push([a.window, b.window]);
  }
  return { stations, cells };
}

/** Places of a course that a mould fits, by the angle of the ring that they take, and the perpends they leave in the middle of the heads. */
export interface Seatings {
  readonly angles: readonly [number, number];
  readonly perpends: readonly [number, number];
}

/** What is taken off the ends of each range, mm of perpend: they are interpolated. */
const MARGIN = 0.01;

/** The places that one mould fits; `null` for none. */
export function seatingsIn({ parent, slope, lean }: Mould, { stations }: Spread): Seatings | null {
  const good = stations.filter((s) => s.fits);
  const [first, last] = [good[0], good[good.length - 1]];
  if (!first || !last || good.length < 2) return null;
  let [narrow, wide] = [first.angle, last.angle];
  for (const seat of first.window.gauges.keys()) {
    const at = (kind: 'thick' | 'thin') => (s: (typeof good)[number]) => {
      const { across, distance, up } = (s.window.gauges[seat] as Window['gauges'][number])[kind];
      return (across - lean * up) / distance;
    };
    // The perpend is thick enough from a width on, and thin enough up to another.
    narrow = Math.max(narrow, angleWhere(good, at('thin'), slope));
    wide = Math.min(wide, angleWhere(good, at('thick'), slope));
  }
  if (narrow >= wide) return null;
  const mould = { parent, slope, lean };
  const perpend = (angle: number) => {
    const near = good.reduce((a, b) => (Math.abs(b.angle - angle) < Math.abs(a.angle - angle) ? b : a));
    return middleJoint(mould, { ...near.window.placement, count: (2 * Math.PI) / angle });
  };
  const [low, high] = [perpend(narrow), perpend(wide)];
  if (high - low <= 2 * MARGIN) return null;
  const rate = (wide - narrow) / (high - low);
  return {
    angles: [narrow + MARGIN * rate, wide - MARGIN * rate],
    perpends: [low + MARGIN, high - MARGIN],
  };
}

/** Where a rising line through the stations takes a value; infinite where that is before the first or after the last. */
function angleWhere<S extends { readonly angle: number }>(
  stations: readonly S[],
  valueAt: (s: S) => number,
  value: number,
): number {
  const k = stations.findIndex((s) => valueAt(s) >= value);
  const [before, after] = [stations[k - 1], stations[k]];
  if (!after) return Number.POSITIVE_INFINITY;
  if (!before) return Number.NEGATIVE_INFINITY;
  const [a, b] = [valueAt(before), valueAt(after)];
  return before.angle + ((after.angle - before.angle) * (value - a)) / (b - a);
}
