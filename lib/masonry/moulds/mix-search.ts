import { type Bits, bitsOf, hasBit, isWithin, KnownBits, members } from './bits.js';
import { MOST_NODES } from './cover.js';
import { type Kind, leansOf, type Place, type WindowFinder, windowFinder } from './family.js';
import type { FitLimits } from './limits.js';
import { fewestSets, leastSets, type PairSets } from './pair-cover.js';
import { canShare, type Pair, type RingOfTwo, ringOfTwo, sharesOf } from './ring-of-two.js';
import { fitsIn, kindsOf, type MouldPlan, parentsOf, searchMoulds } from './search.js';
import type { Site } from './site.js';
import { leansIn, type MixPlace, reachIn, type Seatings, type Spread, seatingsIn, sideOf, spreadOf } from './spread.js';
import { type Reach, stabLine } from './stab.js';
import { type Mould, slopesOf } from './window.js';

/** One way to lay a course with blocks of two moulds. */
export interface MixFit {
  /** Indices of the moulds in the plan, that with more blocks first. */
  readonly moulds: Pair<number>;
  /** Blocks of each. */
  readonly shares: Pair<number>;
  readonly count: number;
  readonly ring: RingOfTwo;
}

export interface MixPlan extends MouldPlan {
  /** Ways to lay each place with two moulds, in the order given, the best of each number of blocks; none where one mould does. */
  readonly mixes: readonly (readonly MixFit[])[];
}

/** The same where every course is laid with one mould. */
export const wholeCourses = (places: readonly Place[], limits: FitLimits, { counted }: Effort): MixPlan => ({
  ...searchMoulds(places, limits, MOST_NODES, counted),
  mixes: places.map(() => []),
});

type MixKind = MixPlace & Kind;

/** How much is made of a search. */
export interface Effort {
  /** Nodes after which either search of mixed courses ends: each weighs many more moulds than that of whole ones. */
  readonly mixNodes: number;
  /** Whether moulds that were weighed against each other are counted, those too that others make needless. */
  readonly counted: boolean;
}

/** What a house that is built is worth. */
export const FULL_EFFORT: Effort = { mixNodes: 1000, counted: true };

/**
 * The fewest moulds for all places where blocks of two may share a ring. Never more than of one mould a course. The
 * lower bound holds for every mould of the family: each place needs one that fits all its blocks, or two that each fit
 * places of some width in it. What is found is laid and held against every limit; where it needs more than the bound,
 * the true number lies between.
 */
export function searchMixed(
  places: readonly MixPlace[],
  limits: FitLimits,
  { mixNodes: mostNodes } = FULL_EFFORT,
): MixPlan {
  // Those candidates are told that are found here.
  const plain = searchMoulds(places, limits, MOST_NODES, false);
  const { kinds, kindAt } = kindsOf(places);
  const windowsOf = windowFinder(limits);
  const spreads = spreadFinder(limits);
  const served = new Set(kindAt.filter((_, k) => (plain.fits[k] ?? []).length > 0));
  const wanted = bitsOf(served, kinds.length);

  const found = candidates(kinds, windowsOf, spreads);
  const bound = leastSets(outerSets(found, wanted, kinds.length), plain.moulds.length, mostNodes);
  const own = plain.moulds.map((mould) => candidateOf(mould, kinds, windowsOf, spreads));
  const all = [...own, ...found];
  const seatings = seatingFinder(all, kinds, spreads);
  const sets: PairSets = {
    size: kinds.length,
    wanted,
    alone: all.map((c) => c.alone),
    touch: all.map(touchOf),
    together: (a, b, e) => sharesIn(kinds[e] as MixKind, seatings(a, e), seatings(b, e)),
    // Moulds of one set still differ in width.
    outdoes: () => false,
  };
  const { chosen, nodes } = fewestSets(
    sets,
    own.map((_, k) => k),
    bound.atLeast,
    mostNodes,
  );
  const moulds = chosen.map((k) => (all[k] as Candidate).mould);
  const fits = kinds.map((kind) => moulds.flatMap((mould, k) => fitsIn(mould, k, kind, limits, windowsOf)));
  const mixes = kinds.map((kind, e) =>
    (fits[e] ?? []).length > 0 ? [] : mixesIn(kind, moulds, (k) => seatings(chosen[k] as number, e), limits),
  );
  const laid = [...served].every((e) => (fits[e] ?? []).length + (mixes[e] ?? []).length > 0);
  const base = { atLeast: bound.atLeast, nodes: plain.nodes + bound.nodes + nodes, candidates: found.length };
  // Nothing is gained, or what seemed to fit does not.
  if (moulds.length >= plain.moulds.length || !laid)
    return { ...plain, ...base, proven: plain.moulds.length === bound.atLeast, mixes: places.map(() => []) };
  return {
    ...base,
    moulds,
    fits: kindAt.map((e) => fits[e] ?? []),
    proven: moulds.length === bound.atLeast,
    mixes: kindAt.map((e) => mixes[e] ?? []),
  };
}

type SpreadFinder = (parent: Site, kind: MixKind) => Spread;

function spreadFinder(limits: FitLimits): SpreadFinder {
  const known = new Map<Site, Map<MixKind, Spread>>();
  return (parent, kind) => {
    const own = known.get(parent) ?? new Map<MixKind, Spread>();
    known.set(parent, own);
    const found = own.get(kind) ?? spreadOf(parent, kind, limits);
    own.set(kind, found);
    return found;
  };
}

interface Candidate {
  readonly mould: Mould;
  /** Kinds of which it can be all blocks, and those of which it may be the wider or the narrower ones. */
  readonly alone: Bits;
  readonly wide: Bits;
  readonly narrow: Bits;
}

const touchOf = ({ wide, narrow }: Candidate): Bits => wide.map((word, k) => word | (narrow[k] as number));

/** Where between the ends of their stretch moulds of one set are tried. */
const WITHIN = [0.5, 0.1, 0.9];
const SIDES = ['wide', 'narrow'] as const;

/** Moulds of the family by the kinds that they fit alone and in part. */
function candidates(kinds: readonly MixKind[], windowsOf: WindowFinder, spreads: SpreadFinder): Candidate[] {
  const size = kinds.length;
  const known = new KnownBits();
  const found: Candidate[] = [];
  for (const parent of parentsOf(kinds)) {
    const windows = kinds.flatMap((kind) => windowsOf(parent, kind).map((window) => ({ item: kind.item, window })));
    const touched = kinds.flatMap((kind) =>
      SIDES.map((side, k) => ({
        item: (k + 1) * size + kind.item,
        spread: sideOf(spreads(parent, kind), side, kind.counts),
      })),
    );
    const farthest = [
      ...windows.flatMap(({ window }) => window.leans),
      ...touched.flatMap(({ spread }) => leansIn(spread)).filter(Number.isFinite),
    ];
    for (const lean of leansOf(parent, farthest)) {
      const reaches: Reach[] = windows.flatMap(({ item, window }) => {
        if (lean < window.leans[0] || lean > window.leans[1]) return [];
        const [low, high] = slopesOf(window, lean);
        // Who fits a ring alone is on either side of its even share.
        return [0, 1, 2].map((k) => ({ item: k * size + item, low, high }));
      });
      for (const { item, spread } of touched) {
        const reach = reachIn(spread, lean);
        if (reach) reaches.push({ item, low: reach[0], high: reach[1] });
      }
      stabLine(reaches, 3 * size, (_middle, items, _number, [low, high]) => {
        if (!known.add(items)) return;
        const all = members(items);
        const part = (k: number) =>
          bitsOf(
            all.filter((i) => Math.floor(i / size) === k).map((i) => i - k * size),
            size,
          );
        const sets = { alone: part(0), wide: part(1), narrow: part(2) };
        for (const share of WITHIN) found.push({ mould: { parent, slope: low + share * (high - low), lean }, ...sets });
      });
    }
  }
  return found;
}

function candidateOf(
  mould: Mould,
  kinds: readonly MixKind[],
  windowsOf: WindowFinder,
  spreads: SpreadFinder,
): Candidate {
  const { parent, slope, lean } = mould;
  const within = (range: readonly [number, number] | null) => range && range[0] <= slope && slope <= range[1];
  const fits = kinds.filter((kind) => windowsOf(parent, kind).some((window) => within(slopesOf(window, lean))));
  const side = (name: (typeof SIDES)[number]) =>
    kinds.filter((kind) => within(reachIn(sideOf(spreads(parent, kind), name, kind.counts), lean)));
  const bits = (list: readonly Kind[]) =>
    bitsOf(
      list.map(({ item }) => item),
      kinds.length,
    );
  return {
    mould,
    alone: bits(fits),
    wide: bits([...fits, ...side('wide')]),
    narrow: bits([...fits, ...side('narrow')]),
  };
}

/**
 * What no choice of moulds outdoes: a wide and a narrow one in every place that none fits alone. Moulds of one set may
 * share a ring, and so each counts twice.
 */
function outerSets(all: readonly Candidate[], wanted: Bits, size: number): PairSets {
  const parts = [(c: Candidate) => c.alone, (c: Candidate) => c.wide, (c: Candidate) => c.narrow];
  const sizeOf = (c: Candidate) => parts.reduce((sum, part) => sum + members(part(c)).length, 0);
  const kept: Candidate[] = [];
  for (const { c } of all.map((c) => ({ c, size: sizeOf(c) })).sort((a, b) => b.size - a.size)) {
    if (!kept.some((other) => parts.every((part) => isWithin(part(c), part(other), part(c))))) kept.push(c);
  }
  const sets = kept.flatMap((c) => [c, c]);
  const at = (k: number) => sets[k] as Candidate;
  return {
    size,
    wanted,
    alone: sets.map((c) => c.alone),
    touch: sets.map(touchOf),
    together: (a, b, e) =>
      (hasBit(at(a).wide, e) && hasBit(at(b).narrow, e)) || (hasBit(at(b).wide, e) && hasBit(at(a).narrow, e)),
    outdoes: (a, b, rest) => parts.every((part) => isWithin(part(at(b)), part(at(a)), rest)),
  };
}

function seatingFinder(all: readonly Candidate[], kinds: readonly MixKind[], spreads: SpreadFinder) {
  const known = new Map<number, Seatings | null>();
  return (candidate: number, kind: number): Seatings | null => {
    const key = candidate * kinds.length + kind;
    const { mould, wide, narrow } = all[candidate] as Candidate;
    if (!hasBit(wide, kind) && !hasBit(narrow, kind)) return null;
    let found = known.get(key);
    if (found === undefined) {
      found = seatingsIn(mould, spreads(mould.parent, kinds[kind] as MixKind));
      known.set(key, found);
    }
    return found;
  };
}

/** Whether blocks of two moulds make a ring of any of the numbers that a place may have. */
function sharesIn({ counts }: MixKind, one: Seatings | null, other: Seatings | null): boolean {
  if (!one || !other) return false;
  return canShare(counts, [one, other]) || canShare(counts, [other, one]);
}

/** The best ring of two moulds for each number of blocks: perpends as drawn, widths that differ little. */
function mixesIn(
  kind: MixKind,
  moulds: readonly Mould[],
  seatingsOf: (mould: number) => Seatings | null,
  limits: FitLimits,
): MixFit[] {
  const { midRadius } = kind.site.course;
  return kind.counts.flatMap((count): MixFit[] => {
    const options = moulds.flatMap((_, a) =>
      moulds.flatMap((_other, b) => {
        const [own, next] = [seatingsOf(a), seatingsOf(b)];
        if (a === b || !own || !next) return [];
        return [...sharesOf(count, [own, next])].map(({ numbers, perpend, apart }) => {
          return {
            a,
            b,
            seatings: [own, next] as const,
            numbers,
            miss: Math.abs(perpend - limits.joint) + apart * midRadius,
          };
        });
      }),
    );
    for (const { a, b, seatings, numbers } of options.sort((x, y) => x.miss - y.miss)) {
      const pair: Pair<Mould> = [moulds[a] as Mould, moulds[b] as Mould];
      const ring = ringOfTwo(pair, kind.site, numbers, limits, seatings);
      if (ring) return [{ moulds: [a, b], shares: numbers, count, ring }];
    }
    return [];
  });
}
