import { type Bits, isWithin, KnownBits, members } from './bits.js';
import { leastCover, MOST_NODES } from './cover.js';
import { type Kind, mouldLines, type Place, type WindowFinder, windowFinder } from './family.js';
import type { FitLimits } from './limits.js';
import { nearestMould, shareOut } from './nearest.js';
import { kindOf, type Site } from './site.js';
import { stabLine } from './stab.js';
import { jointsOf, type Mould, slopesOf } from './window.js';

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
  /** Moulds of the family that were weighed against each other; not all of them where they weren't to be counted. */
  readonly candidates: number;
}

/**
 * The fewest moulds for all places, over the family of moulds with any parent among the places, any slope of the
 * perpends, and leans in steps of half a millimetre of taper. Each mould is then the one whose blocks come nearest to
 * the asked length of all that fit the same courses.
 * @param counted whether all candidates are counted; otherwise those that others make needless are passed over
 */
export function searchMoulds(
  places: readonly Place[],
  limits: FitLimits,
  mostNodes = MOST_NODES,
  counted = true,
): MouldPlan {
  const { kinds, kindAt } = kindsOf(places);
  const parents = parentsOf(kinds);
  const windowsOf = windowFinder(limits);
  const candidates = candidateMoulds(kinds, parents, windowsOf, counted);
  const { chosen, atLeast, proven, nodes } = leastCover(
    candidates.map((c) => c.items),
    kinds.length,
    mostNodes,
  );
  const covering = chosen.map((k) => (candidates[k] as Candidate).mould);
  const shares = shareOut(
    kinds,
    covering.map((mould, k) => kinds.map((kind) => fitsIn(mould, k, kind, limits, windowsOf))),
  );
  const moulds = covering.map((mould, k) => nearestMould(parents, shares[k] as readonly Kind[], windowsOf) ?? mould);
  const fits = kinds.map((kind) => moulds.flatMap((mould, k) => fitsIn(mould, k, kind, limits, windowsOf)));
  return {
    moulds,
    fits: kindAt.map((item) => fits[item] as readonly Fit[]),
    atLeast,
    proven,
    nodes,
    candidates: candidates.length,
  };
}

/** Places that are alike but for their height, as one. */
export function kindsOf<P extends Place>(places: readonly P[]): { kinds: (P & Kind)[]; kindAt: number[] } {
  const found = new Map<string, P & Kind>();
  const kindAt = places.map((place) => {
    const key = `${kindOf(place.site)} / ${place.counts.join(' ')}`;
    const kind = found.get(key) ?? { ...place, item: found.size, number: 0 };
    found.set(key, { ...kind, number: kind.number + 1 });
    return kind.item;
  });
  return { kinds: [...found.values()], kindAt };
}

/** One parent for all places that differ in nothing but their counts. */
export const parentsOf = (kinds: readonly Kind[]): Site[] => [
  ...new Map(kinds.map(({ site }) => [kindOf(site), site])).values(),
];

interface Candidate {
  readonly mould: Mould;
  readonly items: readonly number[];
}

/**
 * Moulds of the family by the set of kinds that they fit; of moulds alike in that the first stays. No least cover needs
 * a set within another: where candidates aren't counted, lines that hold no other sets than such are passed over.
 */
function candidateMoulds(
  kinds: readonly Kind[],
  parents: readonly Site[],
  windowsOf: WindowFinder,
  counted: boolean,
): Candidate[] {
  const known = new KnownBits();
  const found: Candidate[] = [];
  const outer: Bits[] = [];
  const holds = (items: Bits) => outer.some((set) => isWithin(items, set, items));
  for (const parent of parents) {
    for (const { lean, reaches } of mouldLines(parent, kinds, windowsOf, (items) => counted || !holds(items))) {
      stabLine(reaches, kinds.length, (at, items) => {
        if (!known.add(items)) return;
        found.push({ mould: { parent, slope: at, lean }, items: members(items) });
        if (!counted && !holds(items)) outer.push(Uint32Array.from(items));
      });
    }
  }
  return found;
}

/** Ways to lay a place with one mould. */
export function fitsIn(
  mould: Mould,
  index: number,
  place: Place,
  limits: FitLimits,
  windowsOf: WindowFinder = windowFinder(limits),
): Fit[] {
  return windowsOf(mould.parent, place).flatMap((window) => {
    const [low, high] = slopesOf(window, mould.lean);
    if (mould.slope < low || mould.slope > high) return [];
    const { count, faceMiss, bedOver, bedUnder } = window.placement;
    const joints = jointsOf(mould, window.placement, limits);
    return [{ mould: index, count, joints, faceMiss, bedOver, bedUnder }];
  });
}
