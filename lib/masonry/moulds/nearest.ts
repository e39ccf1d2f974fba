import { type Bits, countShared } from './bits.js';
import { type CountReach, type Kind, mouldLines, type WindowFinder } from './family.js';
import type { Site } from './site.js';
import { stabLine } from './stab.js';
import type { Mould } from './window.js';

const missOf = (count: number, { ideal }: Kind): number => Math.abs(count / ideal - 1);

/**
 * Gives every kind to the mould that fits it with blocks nearest to the asked length.
 * @param fits for each mould, for each kind, the numbers of blocks that it fits
 */
export function shareOut(
  kinds: readonly Kind[],
  fits: readonly (readonly (readonly { readonly count: number }[])[])[],
): Kind[][] {
  const shares: Kind[][] = fits.map(() => []);
  for (const [k, kind] of kinds.entries()) {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const [m, own] of fits.entries()) {
      for (const { count } of own[k] ?? []) {
        const miss = missOf(count, kind);
        if (miss >= least) continue;
        least = miss;
        best = m;
      }
    }
    shares[best]?.push(kind);
  }
  return shares;
}

/** Of all moulds that fit every one of the kinds, the one whose blocks come nearest to the asked length. */
export function nearestMould(parents: readonly Site[], kinds: readonly Kind[], windowsOf: WindowFinder): Mould | null {
  let best: Mould | null = null;
  const size = 1 + Math.max(-1, ...kinds.map(({ item }) => item));
  let least = Number.POSITIVE_INFINITY;
  const fitsAll = (items: Bits) => countShared(items, items) === kinds.length;
  for (const parent of parents) {
    if (kinds.some((kind) => windowsOf(parent, kind).length === 0)) continue;
    for (const { lean, reaches } of mouldLines(parent, kinds, windowsOf, fitsAll)) {
      if (leastMiss(kinds, reaches) >= least) continue;
      stabLine(reaches, size, (at, _items, number) => {
        if (number < kinds.length) return;
        const miss = missAt(kinds, reaches, at);
        if (miss >= least) return;
        least = miss;
        best = { parent, slope: at, lean };
      });
    }
  }
  return best;
}

/** No mould of a line misses by less; infinite where none fits every kind. Reaches come in the order of the kinds. */
function leastMiss(kinds: readonly Kind[], reaches: readonly CountReach[]): number {
  let [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let sum = 0;
  let next = 0;
  for (const kind of kinds) {
    let [low, high, least] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (; reaches[next]?.item === kind.item; next++) {
      const reach = reaches[next] as CountReach;
      low = Math.min(low, reach.low);
      high = Math.max(high, reach.high);
      least = Math.min(least, missOf(reach.count, kind));
    }
    from = Math.max(from, low);
    to = Math.min(to, high);
    sum += kind.number * least;
  }
  return from <= to ? sum : Number.POSITIVE_INFINITY;
}

/**
 * How far a mould's blocks are from the asked length, over all places; of the numbers that fit a kind the nearest
 * counts. Reaches come in the order of the kinds.
 */
function missAt(kinds: readonly Kind[], reaches: readonly CountReach[], at: number): number {
  let sum = 0;
  let next = 0;
  for (const kind of kinds) {
    let least = Number.POSITIVE_INFINITY;
    for (; reaches[next]?.item === kind.item; next++) {
      const { low, high, count } = reaches[next] as CountReach;
      if (low <= at && at <= high) least = Math.min(least, missOf(count, kind));
    }
    sum += kind.number * least;
  }
  return sum;
}
