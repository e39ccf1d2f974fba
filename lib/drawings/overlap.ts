import type { Vec2 } from '../math/vec.js';

/** A convex figure by its corners, in order; a line has two. */
export interface Bounded {
  readonly corners: readonly Vec2[];
  readonly low: Vec2;
  readonly high: Vec2;
}

export function bounded(corners: readonly Vec2[]): Bounded {
  let x0 = Infinity;
  let y0 = Infinity;
  let x1 = -Infinity;
  let y1 = -Infinity;
  for (const corner of corners) {
    const x = corner[0];
    const y = corner[1];
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
    const q = a[i + 1 < a.length ? i + 1 : 0] as Vec2;
    if (partedAlong(a, b, q[1] - p[1], p[0] - q[0])) return true;
  }
  return false;
}

/** Whether two figures lie apart in a direction. */
function partedAlong(a: readonly Vec2[], b: readonly Vec2[], dx: number, dy: number): boolean {
  let lowA = Infinity;
  let highA = -Infinity;
  let lowB = Infinity;
  let highB = -Infinity;
  for (let i = 0; i < a.length; i++) {
    const p = a[i] as Vec2;
    const t = p[0] * dx + p[1] * dy;
    if (t < lowA) lowA = t;
    if (t > highA) highA = t;
  }
  for (let i = 0; i < b.length; i++) {
    const p = b[i] as Vec2;
    const t = p[0] * dx + p[1] * dy;
    if (t < lowB) lowB = t;
    if (t > highB) highB = t;
  }
  return highA < lowB || highB < lowA;
}
