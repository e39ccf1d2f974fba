import { addBit, type Bits, noBits } from './bits.js';
import type { FitLimits } from './limits.js';
import { placeBlock } from './place.js';
import type { Site } from './site.js';
import type { Reach } from './stab.js';
import { slopesOf, type Window, windowOf } from './window.js';

/** A course that may be laid with some numbers of equal blocks. */
export interface Place {
  readonly site: Site;
  readonly counts: readonly number[];
  /** Number of blocks that comes nearest to the asked length, not whole. */
  readonly ideal: number;
}

/** Places that the same moulds fit. */
export interface Kind extends Place {
  readonly item: number;
  /** How many places are of this kind. */
  readonly number: number;
}

/** Slopes of one lean that fit a kind with some number of blocks. */
export interface CountReach extends Reach {
  readonly count: number;
}

/** All moulds of one parent and one lean. */
export interface MouldLine {
  readonly parent: Site;
  readonly lean: number;
  readonly reaches: readonly CountReach[];
}

/** Steps in which a mould may narrow upward more or less than its parent course, mm over its height. */
const TAPER_STEP = 0.5;

/** Finds the windows of a parent's moulds in a place. */
export type WindowFinder = (parent: Site, place: Place) => readonly Window[];

/** The same of one search: what was found once isn't sought again. */
export function windowFinder(limits: FitLimits): WindowFinder {
  const known = new WeakMap<Site, WeakMap<Place, readonly Window[]>>();
  return (parent, place) => {
    const own = known.get(parent) ?? new WeakMap<Place, readonly Window[]>();
    known.set(parent, own);
    const found = own.get(place) ?? windowsIn(parent, place, limits);
    own.set(place, found);
    return found;
  };
}

/**
 * The family of a parent's moulds as lines of one lean each, towards the kinds given; the least lean first.
 * @param worth tells by the kinds that a line can fit at all, as a set that the next line changes, whether it is wanted
 */
export function* mouldLines(
  parent: Site,
  kinds: readonly Kind[],
  windowsOf: WindowFinder,
  worth: (items: Bits) => boolean,
): Generator<MouldLine> {
  const windows = kinds.flatMap((kind) => windowsOf(parent, kind).map((window) => ({ item: kind.item, window })));
  const items = noBits(kinds.reduce((most, { item }) => Math.max(most, item + 1), 0));
  for (const lean of leansOf(
    parent,
    windows.flatMap(({ window }) => window.leans),
  )) {
    items.fill(0);
    for (const { item, window } of windows) if (lean >= window.leans[0] && lean <= window.leans[1]) addBit(items, item);
    if (!worth(items)) continue;
    const reaches: CountReach[] = [];
    for (const { item, window } of windows) {
      if (lean < window.leans[0] || lean > window.leans[1]) continue;
      const [low, high] = slopesOf(window, lean);
      if (high >= low) reaches.push({ item, low, high, count: window.placement.count });
    }
    if (reaches.length > 0) yield { parent, lean, reaches };
  }
}

/** The leans of the family as far out as the farthest of those given. */
export function* leansOf({ course }: Site, farthest: readonly number[]): Generator<number> {
  const step = TAPER_STEP / (2 * (course.to - course.bed));
  let most = 0;
  for (const lean of farthest) most = Math.max(most, Math.floor(Math.abs(lean) / step));
  for (const notch of outward(most)) yield notch * step;
}

function* outward(most: number): Generator<number> {
  yield 0;
  for (let k = 1; k <= most; k++) {
    yield k;
    yield -k;
  }
}

/** Perpends of a parent's mould that keep the joints in a place, for each number of blocks that may be laid there. */
function windowsIn(parent: Site, { site, counts }: Place, limits: FitLimits): Window[] {
  const found: Window[] = [];
  // Misses grow with a block's width: once a count is too small, so are all below it.
  for (const count of [...counts].sort((a, b) => b - a)) {
    const placement = placeBlock(parent, site, count, limits);
    if (!placement) break;
    const window = windowOf(placement, limits);
    if (window.leans[0] <= window.leans[1]) found.push(window);
  }
  return found;
}
