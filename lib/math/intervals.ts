/** Sorted, disjoint, non-empty closed intervals on a line. */
export type Intervals = readonly (readonly [number, number])[];

const NONE: Intervals = [];

/** Sorts and joins intervals; empty and NaN ones fall out. */
export function uniteIntervals(parts: Intervals): Intervals {
  const first = parts[0];
  // Most lines meet nothing or one thing, and this is asked millions of times.
  if (first === undefined) return NONE;
  if (parts.length === 1) return first[1] > first[0] ? parts : NONE;
  const sorted = parts.filter(([a, b]) => b > a).sort((p, q) => p[0] - q[0]);
  const joined: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = joined[joined.length - 1];
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else joined.push([from, to]);
  }
  return joined;
}

/** What of `parts` lies outside all of `holes`. */
export function subtractIntervals(parts: Intervals, holes: Intervals): Intervals {
  let rest = uniteIntervals(parts);
  if (rest.length === 0) return rest;
  for (const [from, to] of holes) {
    if (!(to > from) || !rest.some(([a, b]) => b > from && a < to)) continue;
    const next: [number, number][] = [];
    for (const [a, b] of rest) {
      if (b <= from || a >= to) next.push([a, b]);
      else {
        if (a < from) next.push([a, from]);
        if (b > to) next.push([to, b]);
      }
    }
    rest = next;
  }
  return rest;
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
