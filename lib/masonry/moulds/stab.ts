/** A stretch of a line of moulds that fits one item, a course with some number of blocks. */
export interface Reach {
  readonly item: number;
  readonly low: number;
  readonly high: number;
}

/** A point of the line and the items that it fits. */
export interface Stab {
  readonly at: number;
  readonly items: readonly number[];
}

/**
 * Points of a line that among them fit every set of items that any point fits: wherever a stretch ends, the middle of
 * what the stretches open there have in common. Stretches are closed; those of no length count.
 */
export function stabLine(reaches: readonly Reach[]): Stab[] {
  const starts = reaches.filter((r) => r.high >= r.low).sort((a, b) => a.low - b.low);
  const ends = [...starts].sort((a, b) => a.high - b.high);
  const open = new Map<number, number>();
  const found: Stab[] = [];
  let next = 0;
  let latest = 0;
  let grown = false;
  for (const end of ends) {
    for (; next < starts.length && (starts[next] as Reach).low <= end.high; next++) {
      const { item, low } = starts[next] as Reach;
      open.set(item, (open.get(item) ?? 0) + 1);
      latest = low;
      grown = true;
    }
    if (grown) found.push({ at: (latest + end.high) / 2, items: [...open.keys()].sort((a, b) => a - b) });
    grown = false;
    const left = (open.get(end.item) as number) - 1;
    if (left === 0) open.delete(end.item);
    else open.set(end.item, left);
  }
  return found;
}
