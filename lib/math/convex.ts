import { cross2, sub2, type Vec2 } from './vec.js';

/**
 * Convex regions of the plane as their corners, counter-clockwise; a point or a stretch counts as a region, an empty
 * list is none. They hold all solutions of a linear programme of two unknowns at once.
 */
export type Convex = readonly Vec2[];

/** What of a region lies where a x + b y + c >= 0. */
export function clipConvex(region: Convex, a: number, b: number, c: number): Convex {
  const kept = [...region];
  cutConvex(kept, a, b, c);
  return kept;
}

/** `clipConvex` in the list itself: programmes clip by thousands of lines, of which most take little or nothing. */
export function cutConvex(region: Vec2[], a: number, b: number, c: number): void {
  const size = region.length;
  if (size === 0) return;
  let first = 0;
  while (first < size && heightOf(region[first] as Vec2, a, b, c) >= 0) first++;
  if (first === size) return;
  // A convex region leaves by one run of corners, which may go round the list's end.
  let from = first;
  if (first === 0) {
    from = size - 1;
    while (from > 0 && !(heightOf(region[from] as Vec2, a, b, c) >= 0)) from--;
    if (from === 0) {
      region.length = 0;
      return;
    }
    from++;
  }
  let count = 0;
  while (!(heightOf(region[(from + count) % size] as Vec2, a, b, c) >= 0)) count++;
  const enter = crossing(region[from - 1] as Vec2, region[from % size] as Vec2, a, b, c);
  const last = (from + count - 1) % size;
  const leave = crossing(region[(last + 1) % size] as Vec2, region[last] as Vec2, a, b, c);
  const wrapped = Math.max(0, from + count - size);
  region.splice(from, count - wrapped, enter, leave);
  if (wrapped > 0) region.splice(0, wrapped);
}

/** Where the stretch from a point inside to one outside crosses the line. */
function crossing(p: Vec2, q: Vec2, a: number, b: number, c: number): Vec2 {
  const hp = heightOf(p, a, b, c);
  const t = hp / (hp - heightOf(q, a, b, c));
  return [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
}

const heightOf = (p: Vec2, a: number, b: number, c: number): number => a * p[0] + b * p[1] + c;

/** The corner that goes farthest along a direction. */
export function farthest(region: Convex, direction: Vec2): Vec2 {
  let best = region[0] as Vec2;
  let most = Number.NEGATIVE_INFINITY;
  for (const p of region) {
    const along = p[0] * direction[0] + p[1] * direction[1];
    if (along > most) [best, most] = [p, along];
  }
  return best;
}

/** The region swept by moving it along any direction (1, slope), slope in [low, high], as far as x = `most`. */
export function sweepConvex(region: Convex, low: number, high: number, most: number): Vec2[] {
  if (region.length === 0) return [];
  const upper = region.indexOf(farthest(region, [-high, 1]));
  const lower = region.indexOf(farthest(region, [low, -1]));
  const swept: Vec2[] = [];
  // Counter-clockwise from the upper tangent point by the left side to the lower one.
  for (let i = upper; ; i = (i + 1) % region.length) {
    swept.push(region[i] as Vec2);
    if (i === lower) break;
  }
  const [lx, ly] = region[lower] as Vec2;
  const [ux, uy] = region[upper] as Vec2;
  if (lx < most) swept.push([most, ly + low * (most - lx)]);
  if (ux < most) swept.push([most, uy + high * (most - ux)]);
  return swept;
}

/** The region swept by moving it along `path` and no farther. */
export function dragConvex(region: Convex, path: Vec2): Vec2[] {
  return hullOf([...region, ...region.map(([x, y]): Vec2 => [x + path[0], y + path[1]])]);
}

/** Smallest convex region that holds all points. */
export function hullOf(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const chain = (list: readonly Vec2[]): Vec2[] => {
    const hull: Vec2[] = [];
    for (const p of list) {
      while (hull.length > 1) {
        const [a, b] = [hull[hull.length - 2] as Vec2, hull[hull.length - 1] as Vec2];
        if (cross2(sub2(b, a), sub2(p, b)) > 0) break;
        hull.pop();
      }
      hull.push(p);
    }
    return hull;
  };
  if (sorted.length < 2) return sorted;
  const lower = chain(sorted);
  const upper = chain(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}
