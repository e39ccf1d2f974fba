import { PARALLEL, SAME_SHARE } from '../base/tolerances.js';
import { arcEdge, type Edge, edgeDistance, edgeLength, edgeShare, lineEdge } from './curves.js';
import { atan2 } from './elementary.js';
import { cross2, dot2, length2, sub2, type Vec2 } from './vec.js';

const DEEPEST = 14;
/** Shares at which a piece is held against the curve; not symmetrical, so that a wave can't pass through all of them. */
const PROBES = [0.07, 0.19, 0.31, 0.43, 0.61, 0.72, 0.83, 0.94];

/** A whole circle is longer than the chain through its probes by less than this. */
const LONGER = 2;

/**
 * A smooth curve as a chain of lines and circular arcs that leave it by at most `tolerance`. A curve that is one line
 * or one arc comes back as that line or arc; others are halved until an arc through both ends and the middle fits.
 * A stretch that stands still gives nothing.
 */
export function traceCurve(at: (t: number) => Vec2, from: number, to: number, tolerance: number): Edge[] {
  const edges: Edge[] = [];
  halve(at, from, to, at(from), at(to), tolerance, DEEPEST, edges);
  return edges;
}

function halve(
  at: (t: number) => Vec2,
  from: number,
  to: number,
  start: Vec2,
  end: Vec2,
  tolerance: number,
  depth: number,
  edges: Edge[],
): void {
  const middle = (from + to) / 2;
  const centre = at(middle);
  const probes = new Probes(at, from, to);
  const chord = length2(sub2(end, start));
  if ([end, centre].every((p) => stands(p, start, tolerance)) && probes.every((p) => stands(p, start, tolerance)))
    return;
  const line = lineEdge(start, end);
  if (chord > 0 && fits(line, probes, centre, tolerance)) {
    edges.push(line);
    return;
  }
  const arc = arcThrough(start, centre, end);
  if (arc && fits(arc, probes, null, tolerance)) {
    edges.push(arc);
    return;
  }
  if (depth === 0) {
    if (chord > 0) edges.push(line);
    return;
  }
  halve(at, from, middle, start, centre, tolerance, depth - 1, edges);
  halve(at, middle, to, centre, end, tolerance, depth - 1, edges);
}

/** Points of a stretch, each made when it is first asked for: most stretches don't fit at the first of them. */
class Probes {
  private readonly made: Vec2[] = [];

  constructor(
    private readonly at: (t: number) => Vec2,
    private readonly from: number,
    private readonly to: number,
  ) {}

  every(holds: (p: Vec2) => boolean): boolean {
    for (let i = 0; i < PROBES.length; i++) {
      this.made[i] ??= this.at(this.from + (PROBES[i] as number) * (this.to - this.from));
      if (!holds(this.made[i] as Vec2)) return false;
    }
    return true;
  }
}

const stands = (p: Vec2, start: Vec2, tolerance: number): boolean => length2(sub2(p, start)) <= tolerance / 100;

/**
 * Whether all points lie near the edge and within it, and it is no longer than they are: a curve that turns back on
 * nearly one line lies near a whole circle as large as one likes, too.
 */
function fits(edge: Edge, probes: Probes, more: Vec2 | null, tolerance: number): boolean {
  let chain = 0;
  let before: Vec2 | null = null;
  const lies = (p: Vec2): boolean => {
    chain += length2(sub2(p, before ?? p));
    before = p;
    if (!(edgeDistance(edge, p) <= tolerance)) return false;
    const share = edgeShare(edge, p);
    return share > -SAME_SHARE && share < 1 + SAME_SHARE;
  };
  return probes.every(lies) && (more === null || lies(more)) && !(edgeLength(edge) > LONGER * chain);
}

/** The arc from `a` through `b` to `c`; `null` when they lie on one line. */
function arcThrough(a: Vec2, b: Vec2, c: Vec2): Edge | null {
  const ab = sub2(b, a);
  const ac = sub2(c, a);
  const double = 2 * cross2(ab, ac);
  if (Math.abs(double) < PARALLEL * length2(ab) * length2(ac) || double === 0) return null;
  const [p, q] = [dot2(ab, ab), dot2(ac, ac)];
  const to: Vec2 = [(ac[1] * p - ab[1] * q) / double, (ab[0] * q - ac[0] * p) / double];
  const centre: Vec2 = [a[0] + to[0], a[1] + to[1]];
  const start = atan2(-to[1], -to[0]);
  const end = atan2(c[1] - centre[1], c[0] - centre[0]);
  const full = 2 * Math.PI;
  // The turn has the sign of the triangle a, b, c.
  const raw = end - start;
  const sweep = double > 0 ? raw - full * Math.floor(raw / full) : raw - full * Math.ceil(raw / full);
  return arcEdge(centre, length2(to), start, start + sweep);
}
