import { atan2, cos, sin } from './elementary.js';
import { add2, cross2, dot2, length2, lerp2, scale2, sub2, type Vec2 } from './vec.js';

/** Straight edge in the plane. */
export interface LineEdge {
  readonly kind: 'line';
  readonly from: Vec2;
  readonly to: Vec2;
}

/** Circular edge from angle `start` to `end`, radians counter-clockwise from +x; `ccw` says `end > start`. At most one turn. */
export interface ArcEdge {
  readonly kind: 'arc';
  readonly centre: Vec2;
  readonly radius: number;
  readonly start: number;
  readonly end: number;
  readonly ccw: boolean;
}

/** An edge of a planar figure, with a direction and a share `t` in [0, 1] of its length. */
export type Edge = LineEdge | ArcEdge;

export interface Box {
  readonly min: Vec2;
  readonly max: Vec2;
}

export const lineEdge = (from: Vec2, to: Vec2): LineEdge => ({ kind: 'line', from, to });

export const arcEdge = (centre: Vec2, radius: number, start: number, end: number): ArcEdge => ({
  kind: 'arc',
  centre,
  radius,
  start,
  end,
  ccw: end > start,
});

export const circleEdge = (centre: Vec2, radius: number): ArcEdge => arcEdge(centre, radius, 0, 2 * Math.PI);

export const circlePoint = (centre: Vec2, radius: number, angle: number): Vec2 => [
  centre[0] + radius * cos(angle),
  centre[1] + radius * sin(angle),
];

export const edgeAt = (e: Edge, t: number): Vec2 =>
  e.kind === 'line' ? lerp2(e.from, e.to, t) : circlePoint(e.centre, e.radius, e.start + t * (e.end - e.start));

export const edgeStart = (e: Edge): Vec2 => (e.kind === 'line' ? e.from : circlePoint(e.centre, e.radius, e.start));
export const edgeEnd = (e: Edge): Vec2 => (e.kind === 'line' ? e.to : circlePoint(e.centre, e.radius, e.end));

export const edgeLength = (e: Edge): number =>
  e.kind === 'line' ? length2(sub2(e.to, e.from)) : e.radius * Math.abs(e.end - e.start);

/** Unit vector along the edge's direction. */
export function edgeTangent(e: Edge, t: number): Vec2 {
  if (e.kind === 'line') return scale2(sub2(e.to, e.from), 1 / length2(sub2(e.to, e.from)));
  const angle = e.start + t * (e.end - e.start);
  const turn = e.ccw ? 1 : -1;
  return [-sin(angle) * turn, cos(angle) * turn];
}

export const reversedEdge = (e: Edge): Edge =>
  e.kind === 'line' ? lineEdge(e.to, e.from) : arcEdge(e.centre, e.radius, e.end, e.start);

/** The stretch of an edge between two shares of its length; its own ends are kept to the last bit. */
export function edgePart(e: Edge, t0: number, t1: number): Edge {
  if (e.kind === 'line') return lineEdge(t0 === 0 ? e.from : edgeAt(e, t0), t1 === 1 ? e.to : edgeAt(e, t1));
  const angle = (t: number) => (t === 0 ? e.start : t === 1 ? e.end : e.start + t * (e.end - e.start));
  return arcEdge(e.centre, e.radius, angle(t0), angle(t1));
}

/** Share of the edge's length nearest to `p` on the prolonged line or circle; on an arc in (−½ gap, 1 + ½ gap). */
export function edgeShare(e: Edge, p: Vec2): number {
  if (e.kind === 'line') {
    const d = sub2(e.to, e.from);
    return dot2(sub2(p, e.from), d) / dot2(d, d);
  }
  const sweep = e.end - e.start;
  const middle = (e.start + e.end) / 2;
  const off = atan2(p[1] - e.centre[1], p[0] - e.centre[0]) - middle;
  const full = 2 * Math.PI;
  return 0.5 + (off - full * Math.round(off / full)) / sweep;
}

/** Distance of a point from the prolonged line or circle. */
export function edgeDistance(e: Edge, p: Vec2): number {
  if (e.kind === 'arc') return Math.abs(length2(sub2(p, e.centre)) - e.radius);
  const d = sub2(e.to, e.from);
  return Math.abs(cross2(d, sub2(p, e.from))) / length2(d);
}

/** Box of the edge, quadrant points included. */
export function edgeBox(e: Edge): Box {
  const points = [edgeStart(e), edgeEnd(e)];
  if (e.kind === 'arc') {
    const quarter = Math.PI / 2;
    const [low, high] = e.ccw ? [e.start, e.end] : [e.end, e.start];
    for (let q = Math.ceil(low / quarter); q * quarter <= high; q++)
      points.push(circlePoint(e.centre, e.radius, q * quarter));
  }
  return boxOf(points);
}

export function boxOf(points: readonly Vec2[]): Box {
  let left = Number.POSITIVE_INFINITY;
  let bottom = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let top = Number.NEGATIVE_INFINITY;
  for (const p of points) {
    left = Math.min(left, p[0]);
    bottom = Math.min(bottom, p[1]);
    right = Math.max(right, p[0]);
    top = Math.max(top, p[1]);
  }
  return { min: [left, bottom], max: [right, top] };
}

export const uniteBoxes = (boxes: readonly Box[]): Box => boxOf(boxes.flatMap((b) => [b.min, b.max]));

/** Area swept about `about` along the edge: its share in the area of a closed loop. */
export function sweptArea(e: Edge, about: Vec2): number {
  if (e.kind === 'line') return cross2(sub2(e.from, about), sub2(e.to, about)) / 2;
  const { radius, start, end } = e;
  const [x, y] = sub2(e.centre, about);
  const moved = x * (sin(end) - sin(start)) - y * (cos(end) - cos(start));
  return (radius * radius * (end - start) + radius * moved) / 2;
}

/** Signed area of closed loops: counter-clockwise ones count up, clockwise ones down. */
export function loopsArea(loops: readonly (readonly Edge[])[]): number {
  let area = 0;
  for (const loop of loops) {
    const [first] = loop;
    if (first) for (const e of loop) area += sweptArea(e, edgeStart(first));
  }
  return area;
}

/** The edge mirrored about the upright line x = `x`. */
export const mirroredEdge = (e: Edge, x: number): Edge => {
  const flip = (p: Vec2): Vec2 => [2 * x - p[0], p[1]];
  return e.kind === 'line'
    ? lineEdge(flip(e.from), flip(e.to))
    : arcEdge(flip(e.centre), e.radius, Math.PI - e.start, Math.PI - e.end);
};

export const movedEdge = (e: Edge, by: Vec2): Edge =>
  e.kind === 'line' ? lineEdge(add2(e.from, by), add2(e.to, by)) : { ...e, centre: add2(e.centre, by) };
