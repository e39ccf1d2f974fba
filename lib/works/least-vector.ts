/** Counts, one a kind, and whether no smaller sum of counts would do. */
export interface LeastCounts {
  readonly counts: readonly number[];
  readonly proven: boolean;
}

/** Trials after which the search settles for counts that do, unproven; a count, so that every machine stops alike. */
const MOST_TRIALS = 4000;

/**
 * The smallest sum of counts between `lower` and `upper` that does; of equal sums the first, extra ones going to the
 * kinds listed last. More of a kind must never do worse. `null` where even `upper` doesn't do.
 */
export function leastCounts(
  lower: readonly number[],
  upper: readonly number[],
  does: (counts: readonly number[]) => boolean,
): LeastCounts | null {
  if (!does(upper)) return null;
  const room = lower.map((low, i) => (upper[i] as number) - low);
  const most = room.reduce((sum, n) => sum + n, 0);
  let trials = 0;
  for (let extra = 0; extra < most; extra++) {
    for (const more of spreads(extra, room)) {
      if (trials++ >= MOST_TRIALS) return { counts: shrunk(lower, upper, does), proven: false };
      const counts = lower.map((low, i) => low + (more[i] as number));
      if (does(counts)) return { counts, proven: true };
    }
  }
  return { counts: upper, proven: true };
}

/** Every way to spread `extra` over places with so much room each. */
function* spreads(extra: number, room: readonly number[], from = 0): Generator<number[]> {
  if (from === room.length) {
    if (extra === 0) yield [];
    return;
  }
  for (let here = 0; here <= Math.min(extra, room[from] as number); here++)
    for (const rest of spreads(extra - here, room, from + 1)) yield [here, ...rest];
}

/** Counts from which none can be taken any more. */
function shrunk(
  lower: readonly number[],
  upper: readonly number[],
  does: (counts: readonly number[]) => boolean,
): number[] {
  const counts = [...upper];
  for (const [i, low] of lower.entries()) {
    // The least that still does, by halving: more of a kind never does worse.
    let bad = low - 1;
    let good = counts[i] as number;
    while (good - bad > 1) {
      const middle = (good + bad) >> 1;
      counts[i] = middle;
      if (does(counts)) good = middle;
      else bad = middle;
    }
    counts[i] = good;
  }
  return counts;
}
