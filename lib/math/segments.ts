import { hypot } from './elementary.js';
import { cross2, dot2, sub2, type Vec2 } from './vec.js';

/** Distance between two segments; 0 where they cross. */
export function segmentsApart(a: Vec2, b: Vec2, c: Vec2, d: Vec2): number {
  const side = (p: Vec2, q: Vec2, r: Vec2) => cross2(sub2(q, p), sub2(r, p));
  if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return 0;
  return Math.min(pointApart(a, c, d), pointApart(b, c, d), pointApart(c, a, b), pointApart(d, a, b));
}

/** Distance from a point to a segment. */
export function pointApart(p: Vec2, a: Vec2, b: Vec2): number {
  const along = sub2(b, a);
  const square = dot2(along, along);
  const t = square > 0 ? Math.min(1, Math.max(0, dot2(sub2(p, a), along) / square)) : 0;
  return hypot(p[0] - a[0] - along[0] * t, p[1] - a[1] - along[1] * t);
}
