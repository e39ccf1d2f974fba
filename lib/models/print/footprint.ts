import { SAME_SHARE } from '../../base/tolerances.js';
import type { Mesh } from '../../documents/mesh.js';
import { hullOf } from '../../math/convex.js';
import { cos, sin } from '../../math/elementary.js';
import { cross2, DEG, dot2, lerp2, sub2, type Vec2 } from '../../math/vec.js';

/** Turns that are tried: half a turn by degrees. */
const TURNS = Array.from({ length: 180 }, (_, turnDeg) => ({ c: cos(turnDeg * DEG), s: sin(turnDeg * DEG) }));

/** The plan of a mesh. */
export function planOf({ positions }: Mesh): Vec2[] {
  // Most corners lie well within the four-sided figure of the farthest ones: they can't be on the outline.
  const [x, y] = [(i: number) => positions[i] as number, (i: number) => positions[i + 1] as number];
  const ways = [x, y, (i: number) => -x(i), (i: number) => -y(i)];
  const far = ways.map((away) => {
    let most = 0;
    for (let i = 3; i < positions.length; i += 3) if (away(i) > away(most)) most = i;
    return [x(most), y(most)] as const;
  }) as [Vec2, Vec2, Vec2, Vec2];
  const sides = far.map((a, k) => [a, sub2(far[(k + 1) % 4] as Vec2, a)] as const);
  const points: Vec2[] = [];
  for (let i = 0; i < positions.length; i += 3)
    if (sides.some(([a, along]) => cross2(along, [x(i) - a[0], y(i) - a[1]]) <= 0)) points.push([x(i), y(i)]);
  return hullOf(points);
}

/** Sizes of an outline turned counter-clockwise by each of the turns. */
function turnedSizes(hull: readonly Vec2[]): Vec2[] {
  return TURNS.map(({ c, s }): Vec2 => {
    let [west, east, south, north] = [Infinity, -Infinity, Infinity, -Infinity];
    for (const [px, py] of hull) {
      const x = c * px - s * py;
      const y = s * px + c * py;
      if (x < west) west = x;
      if (x > east) east = x;
      if (y < south) south = y;
      if (y > north) north = y;
    }
    return [east - west, north - south];
  });
}

/** How an outline lies best on a bed: its turn, and the greater share of the bed's sides that it then takes. */
export function bestTurn(hull: readonly Vec2[], bed: Vec2): { readonly turnDeg: number; readonly share: number } {
  let best = { turnDeg: 0, share: Infinity };
  for (const [turnDeg, [w, d]] of turnedSizes(hull).entries()) {
    const share = Math.max(w / bed[0], d / bed[1]);
    // As it stands unless a turn gains something.
    if (share < best.share - SAME_SHARE && (best.turnDeg > 0 || best.share > 1 || turnDeg === 0))
      best = { turnDeg, share };
  }
  return best;
}

/** Area of a convex outline. */
export function areaOf(hull: readonly Vec2[]): number {
  const [first] = hull;
  if (!first) return 0;
  const corners = hull.slice(1).map((p) => sub2(p, first));
  return corners.slice(1).reduce((sum, p, i) => sum + cross2(corners[i] as Vec2, p), 0) / 2;
}

/** What of a convex outline lies on the positive side of a line: points with p · normal above `offset`. */
export function clipped(hull: readonly Vec2[], normal: Vec2, offset: number): Vec2[] {
  return hull.flatMap((a, i) => {
    const b = hull[(i + 1) % hull.length] as Vec2;
    const [da, db] = [dot2(a, normal) - offset, dot2(b, normal) - offset];
    const kept: Vec2[] = da >= 0 ? [a] : [];
    if (da * db < 0) kept.push(lerp2(a, b, da / (da - db)));
    return kept;
  });
}
