import { SAME_POINT } from '../base/tolerances.js';
import { acos, asin } from '../math/elementary.js';
import { length2, sub2, turnPositive } from '../math/vec.js';
import type { PathPrimitive, Segment } from './drawing.js';
import type { Bounds2 } from './drawing-bounds.js';
import { arcSweep, extremePoints, segmentAt, segmentEnd, segmentStart } from './segments.js';

/** What of a path lies in a box: whole where all of it does, else open chains that end on the box. */
export function clipPath(path: PathPrimitive, box: Bounds2): PathPrimitive[] {
  if (path.segments.every((s) => extremePoints(s).every((p) => inside(p, box)))) return [path];
  const chains: Segment[][] = [];
  for (const piece of path.segments.flatMap((s) => clipSegment(s, box))) {
    const open = chains[chains.length - 1];
    const last = open?.[open.length - 1];
    if (open && last && meets(last, piece)) open.push(piece);
    else chains.push([piece]);
  }
  // A closed path that begins inside goes on over its own beginning.
  const [first, last] = [chains[0], chains[chains.length - 1]];
  const joins = first && last && first !== last && meets(last[last.length - 1] as Segment, first[0] as Segment);
  if (path.closed && joins) chains.splice(0, 1, [...(chains.pop() as Segment[]), ...first]);
  return chains.map((segments) => ({ ...path, segments, closed: false }));
}

/** The pieces of a line or arc that lie in a box, in its direction. */
function clipSegment(segment: Segment, box: Bounds2): Segment[] {
  const stops = [...new Set([0, ...crossings(segment, box), 1])].sort((a, b) => a - b);
  const length = segment.kind === 'line' ? length2(sub2(segment.to, segment.from)) : segment.radius * arcSweep(segment);
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i] as number;
    if (Math.abs((to - from) * length) < SAME_POINT || !inside(segmentAt(segment, (from + to) / 2), box)) return [];
    return [part(segment, from, to)];
  });
}

/** Shares of a segment's length at which it meets one of the four lines of a box. */
function crossings(segment: Segment, { min, max }: Bounds2): number[] {
  const shares: number[] = [];
  for (const axis of [0, 1] as const) {
    for (const at of [min[axis], max[axis]]) {
      if (segment.kind === 'line') {
        const run = segment.to[axis] - segment.from[axis];
        if (run !== 0) shares.push((at - segment.from[axis]) / run);
        continue;
      }
      const share = (at - segment.centre[axis]) / segment.radius;
      if (Math.abs(share) > 1) continue;
      const angle = axis === 0 ? acos(share) : asin(share);
      for (const turn of axis === 0 ? [angle, -angle] : [angle, Math.PI - angle]) shares.push(shareOf(segment, turn));
    }
  }
  return shares.filter((t) => t > 0 && t < 1);
}

/** Share of an arc's sweep at an angle; above 1 where the arc doesn't reach it. */
function shareOf(arc: Extract<Segment, { kind: 'arc' }>, angle: number): number {
  const turn = arc.ccw ? angle - arc.start : arc.start - angle;
  return turnPositive(turn) / Math.abs(arcSweep(arc));
}

function part(s: Segment, from: number, to: number): Segment {
  if (from === 0 && to === 1) return s;
  if (s.kind === 'line') return { ...s, from: segmentAt(s, from), to: segmentAt(s, to) };
  const sweep = arcSweep(s);
  return { ...s, start: s.start + from * sweep, end: s.start + to * sweep };
}

const meets = (a: Segment, b: Segment): boolean => length2(sub2(segmentEnd(a), segmentStart(b))) < SAME_POINT;

const inside = ([x, y]: readonly [number, number], { min, max }: Bounds2): boolean =>
  x >= min[0] - SAME_POINT && x <= max[0] + SAME_POINT && y >= min[1] - SAME_POINT && y <= max[1] + SAME_POINT;
