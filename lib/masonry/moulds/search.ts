import { type Cover, leastCover, MOST_NODES } from './cover.js';
import type { FitLimits } from './limits.js';
import { placeBlock } from './place.js';
import { kindOf, type Site } from './site.js';
import { type Reach, stabLine } from './stab.js';
import { jointsOf, type Mould, slopesOf, type Window, windowOf } from './window.js';

/** A course that may be laid with some numbers of equal blocks. */
export interface Place {
  readonly site: Site;
  readonly counts: readonly number[];
}

/** One way to lay a course: all its blocks from one mould. */
export interface Fit {
  /** Index of the mould in the plan. */
  readonly mould: number;
  readonly count: number;
  /** Thinnest and thickest perpend of dry blocks, over corners and middles of edges of both faces. */
  readonly joints: readonly [number, number];
  readonly faceMiss: number;
  readonly bedOver: number;
  readonly bedUnder: number;
}

export interface MouldPlan {
  readonly moulds: readonly Mould[];
  /** Ways to lay each place, in the order given; none where no mould of the family fits. */
  readonly fits: readonly (readonly Fit[])[];
  readonly atLeast: number;
  readonly proven: boolean;
  readonly nodes: number;
  /** Moulds of the family that were weighed against each other. */
  readonly candidates: number;
}

/** Steps in which a mould may narrow upward more or less than its parent course, mm over its height. */
const TAPER_STEP = 0.5;

/**
 * The fewest moulds for all places, over the family of moulds with any parent among the places, any slope of the
 * perpends, and leans in steps of half a millimetre of taper.
 */
export function searchMoulds(places: readonly Place[], limits: FitLimits, mostNodes = MOST_NODES): MouldPlan {
  const kinds = new Map<string, Kind>();
  const kindAt = places.map(({ site, counts }) => {
    const key = `${kindOf(site)} / ${counts.join(' ')}`;
    const kind = kinds.get(key) ?? { item: kinds.size, site, counts };
    kinds.set(key, kind);
    return kind;
  });
  const all = [...kinds.values()];
  const candidates = new CandidateMoulds();
  for (const parent of parentsOf(all)) addMoulds(candidates, parent, all, limits);

  const cover: Cover = leastCover(
    candidates.list.map((c) => c.items),
    all.length,
    mostNodes,
  );
  const moulds = cover.chosen.map((k) => (candidates.list[k] as Candidate).mould);
  const fitsOf = all.map((kind) => moulds.flatMap((mould, k) => fitsIn(mould, k, kind, limits)));
  return {
    moulds,
    fits: kindAt.map((kind) => fitsOf[kind.item] as readonly Fit[]),
    atLeast: cover.atLeast,
    proven: cover.proven,
    nodes: cover.nodes,
    candidates: candidates.list.length,
  };
}

/** Places that the same moulds fit. */
interface Kind extends Place {
  readonly item: number;
}

/** One parent for all places that differ in nothing but their counts. */
const parentsOf = (all: readonly Kind[]): Site[] => [...new Map(all.map(({ site }) => [kindOf(site), site])).values()];

interface Candidate {
  readonly mould: Mould;
  readonly items: readonly number[];
}

/** Moulds by the set of kinds that they fit; of moulds alike in that the first stays. */
class CandidateMoulds {
  readonly list: Candidate[] = [];
  readonly #seen = new Set<string>();

  add(mould: Mould, items: readonly number[]): void {
    const key = items.join();
    if (this.#seen.has(key)) return;
    this.#seen.add(key);
    this.list.push({ mould, items });
  }
}

function addMoulds(into: CandidateMoulds, parent: Site, all: readonly Kind[], limits: FitLimits): void {
  const windows = all.flatMap((kind) => windowsIn(parent, kind, limits));
  const step = TAPER_STEP / (2 * (parent.course.to - parent.course.bed));
  const most = Math.max(0, ...windows.flatMap(({ leans }) => leans.map((lean) => Math.floor(Math.abs(lean) / step))));
  // Blocks that taper as their parent course does come first, and stay where others fit no more courses.
  for (const notch of outward(most)) {
    const lean = notch * step;
    const reaches: Reach[] = [];
    for (const { item, leans, window } of windows) {
      if (lean < leans[0] || lean > leans[1]) continue;
      const [low, high] = slopesOf(window, lean);
      reaches.push({ item, low, high });
    }
    for (const { at, items } of stabLine(reaches)) into.add({ parent, slope: at, lean }, items);
  }
}

function* outward(most: number): Generator<number> {
  yield 0;
  for (let k = 1; k <= most; k++) {
    yield k;
    yield -k;
  }
}

interface ItemWindow {
  readonly item: number;
  readonly window: Window;
  readonly leans: readonly [number, number];
}

function windowsIn(parent: Site, { item, site, counts }: Kind, limits: FitLimits): ItemWindow[] {
  const found: ItemWindow[] = [];
  // Misses grow with a block's width: once a count is too small, so are all below it.
  for (const count of [...counts].sort((a, b) => b - a)) {
    const placement = placeBlock(parent, site, count, limits);
    if (!placement) break;
    const window = windowOf(placement, limits);
    if (window.leans[0] <= window.leans[1]) found.push({ item, window, leans: window.leans });
  }
  return found;
}

function fitsIn(mould: Mould, index: number, kind: Kind, limits: FitLimits): Fit[] {
  return windowsIn(mould.parent, kind, limits).flatMap(({ window }) => {
    const [low, high] = slopesOf(window, mould.lean);
    if (mould.slope < low || mould.slope > high) return [];
    const { count, faceMiss, bedOver, bedUnder } = window.placement;
    const joints = jointsOf(mould, window.placement, limits);
    return [{ mould: index, count, joints, faceMiss, bedOver, bedUnder }];
  });
}
