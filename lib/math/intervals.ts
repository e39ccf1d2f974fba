/** Sorted, disjoint, non-empty closed intervals on a line. */
export type Intervals = readonly (readonly [number, number])[];

const NONE: Intervals = [];

/** Sorts and joins intervals; empty and NaN ones fall out. What is in order already is given back as it is. */
export function uniteIntervals(parts: Intervals): Intervals {
  let end = Number.NEGATIVE_INFINITY;
  for (const part of parts) {
    if (!(part[1] > part[0]) || part[0] <= end) return joined(parts);
    end = part[1];
  }
  return parts;
}

function joined(parts: Intervals): Intervals {
  // A handful at most: sorted by insertion, which makes nothing but the list.
  const sorted: (readonly [number, number])[] = [];
  for (const part of parts) {
    if (!(part[1] > part[0])) continue;
    let k = sorted.length;
    sorted.push(part);
    for (; k > 0 && (sorted[k - 1] as readonly [number, number])[0] > part[0]; k--) {
      sorted[k] = sorted[k - 1] as readonly [number, number];
    }
    sorted[k] = part;
  }
  let last = 0;
  for (let k = 1; k < sorted.length; k++) {
    const before = sorted[last] as readonly [number, number];
    const part = sorted[k] as readonly [number, number];
    if (part[0] > before[1]) sorted[++last] = part;
    else if (part[1] > before[1]) sorted[last] = [before[0], part[1]];
  }
  sorted.length = Math.min(sorted.length, last + 1);
  return sorted;
}

/** What of `parts` lies outside all of `holes`. */
export function subtractIntervals(parts: Intervals, holes: Intervals): Intervals {
  let rest = uniteIntervals(parts);
  if (rest.length === 0) return rest;
  for (const hole of holes) {
    const from = hole[0];
    const to = hole[1];
    if (!(to > from) || !reachInto(rest, from, to)) continue;
    const next: (readonly [number, number])[] = [];
    for (const part of rest) {
      if (part[1] <= from || part[0] >= to) next.push(part);
      else {
        if (part[0] < from) next.push([part[0], from]);
        if (part[1] > to) next.push([to, part[1]]);
      }
    }
    rest = next;
  }
  return rest;
}

function reachInto(parts: Intervals, from: number, to: number): boolean {
  for (const part of parts) if (part[1] > from && part[0] < to) return true;
  return false;
}

export function intersectIntervals(one: Intervals, other: Intervals): Intervals {
  if (one.length === 0 || other.length === 0) return NONE;
  const common: [number, number][] = [];
  for (const [a, b] of one) {
    for (const [c, d] of other) {
      const from = Math.max(a, c);
      const to = Math.min(b, d);
      if (to > from) common.push([from, to]);
    }
  }
  return uniteIntervals(common);
}

export function intervalsLength(parts: Intervals): number {
  let sum = 0;
  for (const part of parts) sum += part[1] - part[0];
  return sum;
}
