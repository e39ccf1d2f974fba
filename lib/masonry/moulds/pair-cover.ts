import { addBit, type Bits, countShared, hasBit, isEmpty, members, noBits, without } from './bits.js';

/** Sets of which one may hold an element alone, or two that both touch it may hold it together. */
export interface PairSets {
  readonly size: number;
  /** Elements to hold. */
  readonly wanted: Bits;
  readonly alone: readonly Bits[];
  /** All that a set holds alone it touches as well. */
  readonly touch: readonly Bits[];
  /** Whether two sets that touch an element hold it together. */
  together(one: number, other: number, element: number): boolean;
  /** Whether one set can stand for another wherever these elements are left. */
  outdoes(one: number, other: number, rest: Bits): boolean;
}

interface State {
  readonly chosen: readonly number[];
  readonly held: Bits;
  /** Elements that some chosen set touches. */
  readonly touched: Bits;
}

/** Nodes after which a search ends, never the clock: the same input gives the same result everywhere. */
export interface Ended {
  readonly nodes: number;
}

/**
 * The greatest number up to `most` such that no fewer sets hold every wanted element, alone or two together: every
 * smaller number is refuted in turn, as far as `mostNodes` nodes reach.
 */
export function leastSets(sets: PairSets, most: number, mostNodes: number): { atLeast: number } & Ended {
  const search = new PairSearch(sets, mostNodes);
  let k = 0;
  while (k < most && search.within(search.begin(), k, noBits(sets.alone.length)) === null) k++;
  return { atLeast: k, nodes: search.nodes };
}

/** The fewest sets found that hold every wanted element, not above `start`, each number below the last sought in turn down to `least`. */
export function fewestSets(
  sets: PairSets,
  start: readonly number[],
  least: number,
  mostNodes: number,
): { chosen: readonly number[] } & Ended {
  const search = new PairSearch(sets, mostNodes);
  const greedy = search.greedy();
  let best = greedy && greedy.length < start.length ? greedy : start;
  while (best.length > least) {
    const found = search.within(search.begin(), best.length - 1, noBits(sets.alone.length));
    if (found === null || found === 'capped') break;
    best = found;
  }
  return { chosen: [...best].sort((a, b) => a - b), nodes: search.nodes };
}

class PairSearch {
  nodes = 0;

  constructor(
    readonly sets: PairSets,
    readonly mostNodes: number,
  ) {}

  begin(): State {
    return { chosen: [], held: noBits(this.sets.size), touched: noBits(this.sets.size) };
  }

  /** Takes the set that adds most, until all is held, and then leaves out what isn't needed; `null` where that ends. */
  greedy(): number[] | null {
    let state = this.begin();
    const none = noBits(this.sets.alone.length);
    while (!isEmpty(without(this.sets.wanted, state.held))) {
      const need = this.#need(state);
      let best: State | null = null;
      let most = 0;
      let first = -1;
      for (const { x, supply } of this.#open(state, none)) {
        if (supply < most) break;
        const next = this.#with(state, x);
        const gain = need - this.#need(next);
        // Of those that add as much the first.
        if (gain < most || (gain === most && x > first)) continue;
        most = gain;
        first = x;
        best = next;
      }
      if (!best) return null;
      state = best;
    }
    return this.#pruned(state.chosen);
  }

  #pruned(chosen: readonly number[]): number[] {
    let kept = [...chosen];
    for (const x of chosen) {
      const rest = kept.filter((k) => k !== x);
      const state = rest.reduce((s, k) => this.#with(s, k), this.begin());
      if (isEmpty(without(this.sets.wanted, state.held))) kept = rest;
    }
    return kept.sort((a, b) => a - b);
  }

  /** A choice of at most `k` more sets that holds all; `null` when there is none. */
  within(state: State, k: number, left: Bits): readonly number[] | null | 'capped' {
    const rest = without(this.sets.wanted, state.held);
    if (isEmpty(rest)) return state.chosen;
    if (k === 0) return null;
    if (++this.nodes > this.mostNodes) return 'capped';
    const open = this.#open(state, left);
    const supplies = open.slice(0, k).reduce((sum, { supply }) => sum + supply, 0);
    if (supplies < this.#need(state)) return null;
    const hardest = this.#hardest(rest, open);
    const gone = Uint32Array.from(left);
    const tried: number[] = [];
    for (const { x } of open) {
      if (!hasBit(this.sets.touch[x] as Bits, hardest)) continue;
      if (tried.some((t) => this.sets.outdoes(t, x, rest))) continue;
      tried.push(x);
      const found = this.within(this.#with(state, x), k - 1, gone);
      if (found) return found;
      // Every choice with it has been tried.
      addBit(gone, x);
    }
    return null;
  }

  /** The element that the fewest of the sets touch. */
  #hardest(rest: Bits, open: readonly { readonly x: number }[]): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const e of members(rest)) {
      let count = 0;
      for (const { x } of open) if (hasBit(this.sets.touch[x] as Bits, e)) count++;
      if (count >= least) continue;
      least = count;
      best = e;
    }
    return best;
  }

  /** Touches that are missing: two for an element that none touches yet. */
  #need({ held, touched }: State): number {
    const rest = without(this.sets.wanted, held);
    return countShared(rest, rest) + countShared(rest, without(rest, touched));
  }

  /** Sets that may still be taken, with what each supplies: none makes the need less by more. Those with most come first. */
  #open({ chosen, held, touched }: State, left: Bits): { readonly x: number; readonly supply: number }[] {
    const { wanted, alone, touch } = this.sets;
    const rest = without(wanted, held);
    const bare = without(rest, touched);
    const open: { x: number; supply: number }[] = [];
    for (let x = 0; x < alone.length; x++) {
      if (hasBit(left, x) || chosen.includes(x)) continue;
      const supply = countShared(touch[x] as Bits, rest) + countShared(alone[x] as Bits, bare);
      if (supply > 0) open.push({ x, supply });
    }
    return open.sort((a, b) => b.supply - a.supply || a.x - b.x);
  }

  #with({ chosen, held, touched }: State, x: number): State {
    const [alone, touch] = [this.sets.alone[x] as Bits, this.sets.touch[x] as Bits];
    const [nextHeld, nextTouched] = [Uint32Array.from(held), Uint32Array.from(touched)];
    for (let w = 0; w < held.length; w++) {
      nextHeld[w] = (held[w] as number) | (alone[w] as number);
      nextTouched[w] = (touched[w] as number) | (touch[w] as number);
    }
    for (const e of members(touched)) {
      if (hasBit(nextHeld, e) || !hasBit(touch, e)) continue;
      if (chosen.some((c) => hasBit(this.sets.touch[c] as Bits, e) && this.sets.together(c, x, e))) addBit(nextHeld, e);
    }
    return { chosen: [...chosen, x], held: nextHeld, touched: nextTouched };
  }
}
