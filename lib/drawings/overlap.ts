import type { Vec2 } from '../math/vec.js';

/** A convex figure by its corners, in order; a line has two. */
export interface Bounded {
  readonly corners: readonly Vec2[];
  readonly low: Vec2;
  readonly high: Vec2;
}

export function bounded(corners: readonly Vec2[]): Bounded {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of corners) {
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
  }
  return { corners, low: [x0, y0], high: [x1, y1] };
}

/** Whether two convex figures have a point in common: no line square to one of their sides parts them. */
export function meet(a: Bounded, b: Bounded): boolean {
  if (a.low[0] > b.high[0] || b.low[0] > a.high[0] || a.low[1] > b.high[1] || b.low[1] > a.high[1]) return false;
  return !parted(a.corners, b.corners) && !parted(b.corners, a.corners);
}

function parted(a: readonly Vec2[], b: readonly Vec2[]): boolean {
  for (let i = 0; i < a.length; i++) {
    const p = a[i] as Vec2;
    const q = a[(i + 1) % a.length] as Vec2;
    const normal: Vec2 = [q[1] - p[1], p[0] - q[0]];
    const [lowA, highA] = spread(a, normal);
    const [lowB, highB] = spread(b, normal);
    if (highA < lowB || highB < lowA) return true;
  }
  return false;
}

function spread(corners: readonly Vec2[], along: Vec2): Vec2 {
  let [low, high] = [Infinity, -Infinity];
  for (const [x, y] of corners) {
    const t = x * along[0] + y * along[1];
    if (t < low) low = t;
    if (t > high) high = t;
  }
  return [low, high];
}
