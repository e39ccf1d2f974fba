import { DRAWN_CURVE, ONE_LINE, STROKES_MEET } from '../base/tolerances.js';
import { arcEdge, type Edge, lineEdge } from '../math/curves.js';
import { traceCurve } from '../math/curves-trace.js';
import { atan2, cos, hypot, sin } from '../math/elementary.js';
import { add2, cross2, dot2, length2, scale2, sub2, type Vec2, type Vec3 } from '../math/vec.js';

/** An edge of the house in space, with a parameter from `from` to `to`. */
export type SpaceCurve =
  | { readonly kind: 'line'; readonly start: Vec3; readonly end: Vec3; readonly from: number; readonly to: number }
  | SpaceCircle
  | { readonly kind: 'free'; readonly at: (t: number) => Vec3; readonly from: number; readonly to: number };

/** `centre + cos t · a + sin t · b`, the half axes square to each other and equally long. */
export interface SpaceCircle {
  readonly kind: 'circle';
  readonly centre: Vec3;
  readonly a: Vec3;
  readonly b: Vec3;
  readonly from: number;
  readonly to: number;
}

/** An ellipse's arc on paper, from parameter `start` to `end` counter-clockwise. */
export interface EllipseArc {
  readonly kind: 'ellipse';
  readonly centre: Vec2;
  readonly major: Vec2;
  readonly ratio: number;
  readonly start: number;
  readonly end: number;
}

export const spaceLine = (start: Vec3, end: Vec3): SpaceCurve => ({ kind: 'line', start, end, from: 0, to: 1 });

/** A level circle round an upright axis. */
export const levelCircle = (at: Vec2, radius: number, z: number, from = 0, to = 2 * Math.PI): SpaceCircle => ({
  kind: 'circle',
  centre: [at[0], at[1], z],
  a: [radius, 0, 0],
  b: [0, radius, 0],
  from,
  to,
});

/** The half of a level circle that lies towards a plan direction. */
export function halfToward(circle: SpaceCircle, toward: Vec2): SpaceCircle {
  const middle = atan2(toward[1], toward[0]);
  return { ...circle, from: middle - Math.PI / 2, to: middle + Math.PI / 2 };
}

export function curveAt(c: SpaceCurve, t: number): Vec3 {
  if (c.kind === 'free') return c.at(t);
  if (c.kind === 'line') {
    const { start, end } = c;
    return [start[0] + (end[0] - start[0]) * t, start[1] + (end[1] - start[1]) * t, start[2] + (end[2] - start[2]) * t];
  }
  const { centre, a, b } = c;
  const x = cos(t);
  const y = sin(t);
  return [centre[0] + x * a[0] + y * b[0], centre[1] + x * a[1] + y * b[1], centre[2] + x * a[2] + y * b[2]];
}

/** An edge that lies in an upright plane, (u, z), put in its place: u along `across` from `origin`. */
export function standing(e: Edge, origin: Vec2, across: Vec2): SpaceCurve {
  const put = (p: Vec2): Vec3 => [origin[0] + p[0] * across[0], origin[1] + p[0] * across[1], p[1]];
  if (e.kind === 'line') return spaceLine(put(e.from), put(e.to));
  return {
    kind: 'circle',
    centre: put(e.centre),
    a: [e.radius * across[0], e.radius * across[1], 0],
    b: [0, 0, e.radius],
    from: e.start,
    to: e.end,
  };
}

/** A plan edge laid at a level. */
export const lying = (e: Edge, z: number): SpaceCurve =>
  e.kind === 'line'
    ? spaceLine([e.from[0], e.from[1], z], [e.to[0], e.to[1], z])
    : levelCircle(e.centre, e.radius, z, e.start, e.end);

/** Length of a stretch of the curve, roughly. */
export function roughLength(c: SpaceCurve): number {
  const n = c.kind === 'line' ? 1 : 12;
  let length = 0;
  let before = curveAt(c, c.from);
  for (let i = 1; i <= n; i++) {
    const p = curveAt(c, c.from + ((c.to - c.from) * i) / n);
    const step = hypot(p[0] - before[0], p[1] - before[1], p[2] - before[2]);
    if (Number.isFinite(step)) length += step;
    before = p;
  }
  return length;
}

/** What a stretch of the curve looks like on paper; nothing where it is seen end on. */
export function pictureOf(c: SpaceCurve, project: (p: Vec3) => Vec2, from: number, to: number): (Edge | EllipseArc)[] {
  if (c.kind === 'free') return traceCurve((t) => project(c.at(t)), from, to, DRAWN_CURVE);
  if (c.kind === 'line') {
    const edge = lineEdge(project(curveAt(c, from)), project(curveAt(c, to)));
    return length2(sub2(edge.to, edge.from)) > STROKES_MEET ? [edge] : [];
  }
  const centre = project(c.centre);
  const a = sub2(project(sum(c.centre, c.a)), centre);
  const b = sub2(project(sum(c.centre, c.b)), centre);
  return circlePicture(centre, a, b, from, to);
}

const sum = (p: Vec3, q: Vec3): Vec3 => [p[0] + q[0], p[1] + q[1], p[2] + q[2]];

/** Picture of `centre + cos t · a + sin t · b`: an arc, an ellipse's arc, or a line when seen edge on. */
function circlePicture(centre: Vec2, a: Vec2, b: Vec2, from: number, to: number): (Edge | EllipseArc)[] {
  const size = Math.max(length2(a), length2(b));
  const skew = Math.max(Math.abs(dot2(a, b)) / size, Math.abs(length2(a) - length2(b)));
  if (skew < STROKES_MEET / 10) {
    const turn = atan2(a[1], a[0]);
    const way = cross2(a, b) > 0 ? 1 : -1;
    return [arcEdge(centre, length2(a), turn + way * from, turn + way * to)];
  }
  const peak = atan2(2 * dot2(a, b), dot2(a, a) - dot2(b, b)) / 2;
  const along = (t: number): Vec2 => add2(scale2(a, cos(t)), scale2(b, sin(t)));
  const major = along(peak);
  const minor = along(peak + Math.PI / 2);
  if (length2(minor) < ONE_LINE) {
    const stops = [from, to];
    for (let k = Math.ceil((from - peak) / Math.PI); peak + k * Math.PI < to; k++) stops.push(peak + k * Math.PI);
    stops.sort((p, q) => p - q);
    const point = (t: number): Vec2 => add2(centre, scale2(major, cos(t - peak)));
    return stops
      .slice(1)
      .map((t, i) => lineEdge(point(stops[i] as number), point(t)))
      .filter((e) => length2(sub2(e.to, e.from)) > STROKES_MEET);
  }
  const ratio = length2(minor) / length2(major);
  const turned = cross2(major, minor) > 0;
  const [start, end] = turned ? [from - peak, to - peak] : [peak - to, peak - from];
  return [{ kind: 'ellipse', centre, major, ratio, start, end }];
}
