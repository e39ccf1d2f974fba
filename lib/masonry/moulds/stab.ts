import { addBit, type Bits, noBits, removeBit } from './bits.js';

/** A stretch of a line of moulds that fits one item, a course with some number of blocks. */
export interface Reach {
  readonly item: number;
  readonly low: number;
  readonly high: number;
}

/** Told a point of the line, the items that it fits (a set that the next point changes), how many they are, and between which points they are the same. */
export type StabVisit = (at: number, items: Bits, number: number, ends: readonly [number, number]) => void;

/**
 * Visits points of a line that among them fit every set of items below `size` that any point fits: wherever a stretch
 * ends, the middle of what the stretches open there have in common. Stretches are closed; those of no length count.
 */
export function stabLine(reaches: readonly Reach[], size: number, visit: StabVisit): void {
  const starts = reaches.filter((r) => r.high >= r.low).sort((a, b) => a.low - b.low);
  const ends = [...starts].sort((a, b) => a.high - b.high);
  const open = new Uint16Array(size);
  const items = noBits(size);
  let number = 0;
  let next = 0;
  let latest = 0;
  let grown = false;
  for (const end of ends) {
    for (; next < starts.length && (starts[next] as Reach).low <= end.high; next++) {
      const { item, low } = starts[next] as Reach;
      if (open[item] === 0) {
        number++;
        addBit(items, item);
      }
      open[item] = (open[item] as number) + 1;
      latest = low;
      grown = true;
    }
    if (grown) visit((latest + end.high) / 2, items, number, [latest, end.high]);
    grown = false;
    const left = (open[end.item] as number) - 1;
    open[end.item] = left;
    if (left > 0) continue;
    number--;
    removeBit(items, end.item);
  }
}
