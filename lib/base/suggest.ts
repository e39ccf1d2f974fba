const LONGEST = 40;

/** Words as compared: lower case, `courseHeight` and `course_height` like `course-height`. */
const folded = (word: string): string =>
  word
    .slice(0, LONGEST)
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .replace(/[_\s]+/g, '-')
    .toLowerCase();

/**
 * The candidate that a misspelt word most likely stands for, or `null` when none is near: at most one edit
 * (a letter more, less, other, or two neighbours swapped) for every three letters. Of equals the first wins.
 */
export function nearest(word: string, candidates: readonly string[]): string | null {
  const asked = folded(word);
  let best: string | null = null;
  let least = Math.max(1, Math.floor(asked.length / 3)) + 1;
  for (const candidate of candidates) {
    const distance = edits(asked, folded(candidate), least);
    if (distance >= least) continue;
    // A word of one or two letters is near everything.
    if (distance > 0 && Math.max(asked.length, candidate.length) < 3) continue;
    best = candidate;
    least = distance;
  }
  return best;
}

/** Optimal string alignment distance, or `limit` when it is not smaller. */
function edits(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(
        (row[j - 1] as number) + 1,
        (above[j] as number) + 1,
        (above[j - 1] as number) + (same ? 0 : 1),
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] as number) + 1);
      row.push(cost);
    }
    before = above;
    above = row;
  }
  return Math.min(limit, above[b.length] as number);
}
