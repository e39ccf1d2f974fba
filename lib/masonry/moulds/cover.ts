import { type Bits, bitsOf, countShared, hasBit, isEmpty, isWithin, members, noBits, without } from './bits.js';

/** The fewest sets that together hold every element, or what is known of them when the search was cut short. */
export interface Cover {
  /** Indices of the sets taken, ascending. */
  readonly chosen: readonly number[];
  /** No cover has fewer sets; equal to the number taken when `proven`. */
  readonly atLeast: number;
  readonly proven: boolean;
  readonly nodes: number;
  /** Elements that no set holds. */
  readonly unmet: readonly number[];
}

/** Nodes of the search after which the best found so far stands beside its lower bound. */
export const MOST_NODES = 200_000;

/**
 * Least cover of `size` elements by exact search: sets and elements that others make needless fall away, what hangs
 * together in nothing is searched apart, and each number of sets below the answer is refuted in turn. The search
 * stops after `mostNodes` nodes, never by the clock, so that the same input gives the same result everywhere.
 */
export function leastCover(sets: readonly (readonly number[])[], size: number, mostNodes = MOST_NODES): Cover {
  const held = noBits(size);
  const all = sets.map((s) => bitsOf(s, size));
  for (const s of all) for (let k = 0; k < held.length; k++) held[k] = (held[k] as number) | (s[k] as number);
  const unmet = Array.from({ length: size }, (_, e) => e).filter((e) => !hasBit(held, e));

  const { live, wanted } = reduce(all, held);
  const budget = { nodes: 0, most: mostNodes };
  const chosen: number[] = [];
  let atLeast = 0;
  let proven = true;
  for (const part of componentsOf(all, live, wanted)) {
    const found = searchPart(all, part, budget);
    chosen.push(...found.chosen);
    atLeast += found.atLeast;
    proven &&= found.proven;
  }
  return { chosen: chosen.sort((a, b) => a - b), atLeast, proven, nodes: budget.nodes, unmet };
}

/** Drops sets within other sets and elements that come with other elements, until nothing changes. */
function reduce(all: readonly Bits[], held: Bits): { live: number[]; wanted: Bits } {
  let wanted = held;
  let live = all.map((_, k) => k);
  for (;;) {
    const kept = maximal(all, live, wanted);
    const rest = hardest(all, kept, wanted);
    const done = kept.length === live.length && rest.length === members(wanted).length;
    live = kept;
    wanted = bitsOf(rest, 32 * held.length);
    if (done) return { live, wanted };
  }
}

function maximal(all: readonly Bits[], live: readonly number[], wanted: Bits): number[] {
  const sized = live.map((k) => ({ k, size: countShared(all[k] as Bits, wanted) })).filter(({ size }) => size > 0);
  sized.sort((a, b) => b.size - a.size || a.k - b.k);
  const kept: number[] = [];
  for (const { k } of sized) {
    if (!kept.some((other) => isWithin(all[k] as Bits, all[other] as Bits, wanted))) kept.push(k);
  }
  return kept.sort((a, b) => a - b);
}

/** Elements left when those fall away that every set of some other element holds. */
function hardest(all: readonly Bits[], live: readonly number[], wanted: Bits): number[] {
  const elements = members(wanted);
  const full = bitsOf(
    live.map((_, at) => at),
    live.length,
  );
  const holders = new Map(
    elements.map((e) => [
      e,
      bitsOf(
        live.flatMap((k, at) => (hasBit(all[k] as Bits, e) ? [at] : [])),
        live.length,
      ),
    ]),
  );
  const kept: number[] = [];
  for (const [at, e] of elements.entries()) {
    const own = holders.get(e) as Bits;
    const needless = elements.some((other, otherAt) => {
      const theirs = holders.get(other) as Bits;
      // Of elements with the same sets the first stays.
      return other !== e && isWithin(theirs, own, full) && (otherAt < at || !isWithin(own, theirs, full));
    });
    if (!needless) kept.push(e);
  }
  return kept;
}

interface Part {
  readonly sets: readonly number[];
  readonly wanted: Bits;
}

function componentsOf(all: readonly Bits[], live: readonly number[], wanted: Bits): Part[] {
  const parts: Part[] = [];
  let left = [...live];
  let rest = wanted;
  while (!isEmpty(rest)) {
    const own = noBits(32 * wanted.length);
    const [first] = members(rest);
    const sets = new Set<number>();
    const queue = [first as number];
    while (queue.length > 0) {
      const e = queue.pop() as number;
      if (hasBit(own, e)) continue;
      own[e >>> 5] = (own[e >>> 5] as number) | (1 << (e & 31));
      for (const k of left) {
        if (sets.has(k) || !hasBit(all[k] as Bits, e)) continue;
        sets.add(k);
        queue.push(...members(all[k] as Bits).filter((m) => hasBit(rest, m)));
      }
    }
    parts.push({ sets: left.filter((k) => sets.has(k)), wanted: own });
    left = left.filter((k) => !sets.has(k));
    rest = without(rest, own);
  }
  return parts;
}

type PartCover = Pick<Cover, 'chosen' | 'atLeast' | 'proven'>;

function searchPart(all: readonly Bits[], part: Part, budget: { nodes: number; most: number }): PartCover {
  const search = new PartSearch(all, part, budget);
  const greedy = search.greedy();
  for (let k = search.apartFrom(part.wanted); k < greedy.length; k++) {
    const found = search.within(part.wanted, k);
    if (found === 'capped') return { chosen: greedy, atLeast: k, proven: false };
    if (found) return { chosen: found, atLeast: k, proven: true };
  }
  return { chosen: greedy, atLeast: greedy.length, proven: true };
}

class PartSearch {
  /** Sets that hold an element. */
  readonly #holders = new Map<number, readonly number[]>();
  /** Elements that share some set with an element. */
  readonly #near = new Map<number, Bits>();
  /** Greatest number of sets proven too few for what is left to cover. */
  readonly #refuted = new Map<string, number>();

  constructor(
    readonly all: readonly Bits[],
    readonly part: Part,
    readonly budget: { nodes: number; most: number },
  ) {
    for (const e of members(part.wanted)) {
      const holders = part.sets.filter((k) => hasBit(all[k] as Bits, e));
      const near = noBits(32 * part.wanted.length);
      for (const k of holders) {
        const set = all[k] as Bits;
        for (let w = 0; w < near.length; w++) near[w] = (near[w] as number) | (set[w] as number);
      }
      this.#holders.set(e, holders);
      this.#near.set(e, near);
    }
  }

  greedy(): number[] {
    const chosen: number[] = [];
    let left = this.part.wanted;
    while (!isEmpty(left)) {
      let best = -1;
      let most = 0;
      for (const k of this.part.sets) {
        const gain = countShared(this.all[k] as Bits, left);
        if (gain <= most) continue;
        most = gain;
        best = k;
      }
      chosen.push(best);
      left = without(left, this.all[best] as Bits);
    }
    return chosen;
  }

  /** How many of the elements left share no set pairwise: each needs a set of its own. */
  apartFrom(wanted: Bits): number {
    let left = wanted;
    let count = 0;
    while (!isEmpty(left)) {
      const e = this.#tightest(left);
      left = without(left, this.#near.get(e) as Bits);
      count++;
    }
    return count;
  }

  /** A cover of at most `k` sets; `null` when there is none. */
  within(left: Bits, k: number): number[] | null | 'capped' {
    if (isEmpty(left)) return [];
    if (k === 0) return null;
    const key = left.join();
    if ((this.#refuted.get(key) ?? 0) >= k || this.apartFrom(left) > k) return null;
    if (++this.budget.nodes > this.budget.most) return 'capped';
    const e = this.#tightest(left);
    const tried: Bits[] = [];
    const byGain = (this.#holders.get(e) as readonly number[])
      .map((s) => ({ s, gain: countShared(this.all[s] as Bits, left) }))
      .sort((a, b) => b.gain - a.gain || a.s - b.s);
    for (const { s } of byGain) {
      const set = this.all[s] as Bits;
      if (tried.some((t) => isWithin(set, t, left))) continue;
      tried.push(set);
      const rest = this.within(without(left, set), k - 1);
      if (rest === 'capped') return rest;
      if (rest) return [s, ...rest];
    }
    this.#refuted.set(key, k);
    return null;
  }

  /** The element that the fewest sets hold. */
  #tightest(left: Bits): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const e of members(left)) {
      const count = (this.#holders.get(e) as readonly number[]).length;
      if (count >= least) continue;
      least = count;
      best = e;
    }
    return best;
  }
}
