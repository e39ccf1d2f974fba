import { PARALLEL } from '../base/tolerances.js';
import {
  type ArcEdge,
  type Edge,
  edgeDistance,
  edgeEnd,
  edgeLength,
  edgeShare,
  edgeStart,
  type LineEdge,
} from './curves.js';
import { add2, cross2, dot2, length2, perp2, scale2, sub2, type Vec2 } from './vec.js';

/**
 * Places, as shares of `a`, at which `a` meets `b`: crossings, touches, and the ends of a common stretch.
 * Lines and circles closer than `tolerance` touch in one place.
 */
export function meetings(a: Edge, b: Edge, tolerance: number): number[] {
  const points = [...crossings(a, b, tolerance), edgeStart(b), edgeEnd(b)];
  const slackA = tolerance / edgeLength(a);
  const slackB = tolerance / edgeLength(b);
  const shares: number[] = [];
  for (const p of points) {
    // Most are far from it, which is sooner told than where along it they stand.
    if (edgeDistance(a, p) > tolerance) continue;
    const t = edgeShare(a, p);
    if (t < -slackA || t > 1 + slackA) continue;
    const other = edgeShare(b, p);
    if (other < -slackB || other > 1 + slackB) continue;
    shares.push(Math.min(1, Math.max(0, t)));
  }
  return shares;
}

/** Common points of the prolonged lines and circles. */
function crossings(a: Edge, b: Edge, tolerance: number): Vec2[] {
  if (a.kind === 'line') return b.kind === 'line' ? lineLine(a, b) : lineArc(a, b, tolerance);
  return b.kind === 'line' ? lineArc(b, a, tolerance) : arcArc(a, b, tolerance);
}

function lineLine(a: LineEdge, b: LineEdge): Vec2[] {
  const da = sub2(a.to, a.from);
  const db = sub2(b.to, b.from);
  const turn = cross2(da, db);
  if (Math.abs(turn) < PARALLEL * length2(da) * length2(db)) return [];
  return [add2(a.from, scale2(da, cross2(sub2(b.from, a.from), db) / turn))];
}

function lineArc(line: LineEdge, arc: ArcEdge, tolerance: number): Vec2[] {
  const along = scale2(sub2(line.to, line.from), 1 / length2(sub2(line.to, line.from)));
  const foot = add2(line.from, scale2(along, dot2(sub2(arc.centre, line.from), along)));
  return alongChord(foot, along, length2(sub2(foot, arc.centre)), arc.radius, tolerance);
}

function arcArc(a: ArcEdge, b: ArcEdge, tolerance: number): Vec2[] {
  // From the smaller circle, and with differences before squares: nearly straight arcs have radii of many kilometres.
  const [small, large] = a.radius <= b.radius ? [a, b] : [b, a];
  const between = sub2(large.centre, small.centre);
  const d = length2(between);
  if (d < tolerance) return [];
  const towards = scale2(between, 1 / d);
  const from = ((d - large.radius) * (d + large.radius) + small.radius * small.radius) / (2 * d);
  const foot = add2(small.centre, scale2(towards, from));
  return alongChord(foot, perp2(towards), Math.abs(from), small.radius, tolerance);
}

/** Points on a chord's line at the distance that a circle of `radius` cuts off, its centre `off` from the line. */
function alongChord(foot: Vec2, along: Vec2, off: number, radius: number, tolerance: number): Vec2[] {
  if (off > radius + tolerance) return [];
  if (off > radius - tolerance) return [foot];
  const half = Math.sqrt((radius - off) * (radius + off));
  return [add2(foot, scale2(along, half)), add2(foot, scale2(along, -half))];
}
