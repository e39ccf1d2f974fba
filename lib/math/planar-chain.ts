import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import { arcEdge, type Edge, edgeEnd, edgeStart, lineEdge, reversedEdge } from './curves.js';
import { PointIndex } from './planar-points.js';
import { cross2, dot2, length2, sub2 } from './vec.js';

/** Neighbours of a chain that lie on one line or circle become one edge; with `closed`, across the seam too. */
export function joinEdges(chain: readonly Edge[], closed: boolean, tolerance: number): Edge[] {
  const joined: Edge[] = [];
  for (const edge of chain) {
    const last = joined[joined.length - 1];
    const both = last && joinTwo(last, edge, tolerance);
    if (both) joined[joined.length - 1] = both;
    else joined.push(edge);
  }
  const [first, last] = [joined[0], joined[joined.length - 1]];
  if (closed && first && last && joined.length > 1) {
    const both = joinTwo(last, first, tolerance);
    if (both) return [both, ...joined.slice(1, -1)];
  }
  return joined;
}

/** Two edges, the second going on where the first ends, as one; `null` when they don't lie on one line or circle. */
function joinTwo(a: Edge, b: Edge, tolerance: number): Edge | null {
  if (a.kind === 'line' && b.kind === 'line') {
    const whole = sub2(b.to, a.from);
    const off = Math.abs(cross2(whole, sub2(a.to, a.from))) / (length2(whole) || 1);
    return off <= tolerance && dot2(sub2(a.to, a.from), sub2(b.to, b.from)) > 0 ? lineEdge(a.from, b.to) : null;
  }
  if (a.kind !== 'arc' || b.kind !== 'arc' || a.ccw !== b.ccw) return null;
  if (Math.abs(a.radius - b.radius) > tolerance || length2(sub2(a.centre, b.centre)) > tolerance) return null;
  const sweep = a.end - a.start + (b.end - b.start);
  const full = 2 * Math.PI;
  if (Math.abs(sweep) > full + SAME_ANGLE_RAD) return null;
  return arcEdge(a.centre, a.radius, a.start, a.start + Math.sign(sweep) * Math.min(full, Math.abs(sweep)));
}

export interface Chain {
  readonly edges: readonly Edge[];
  readonly closed: boolean;
}

/**
 * Undirected edges as the longest strokes that run on without a fork: a place where one or more than two edges meet
 * ends a stroke.
 */
export function chainEdges(edges: readonly Edge[], tolerance: number): Chain[] {
  const points = new PointIndex(tolerance);
  const meeting = new Map<number, Edge[]>();
  for (const edge of edges) {
    for (const at of [points.of(edgeStart(edge)), points.of(edgeEnd(edge))])
      meeting.set(at, [...(meeting.get(at) ?? []), edge]);
  }
  const used = new Set<Edge>();
  const goOn = (end: number): Edge | undefined => {
    const here = meeting.get(end) ?? [];
    return here.length === 2 ? here.find((e) => !used.has(e)) : undefined;
  };
  const follow = (first: Edge): Edge[] => {
    const chain = [first];
    let end = points.of(edgeEnd(first));
    for (let next = goOn(end); next; next = goOn(end)) {
      used.add(next);
      const turned = points.of(edgeStart(next)) === end ? next : reversedEdge(next);
      chain.push(turned);
      end = points.of(edgeEnd(turned));
    }
    return chain;
  };
  const chains: Chain[] = [];
  for (const edge of edges) {
    if (used.has(edge)) continue;
    used.add(edge);
    const forward = follow(edge);
    const backward = follow(reversedEdge(edge)).slice(1).map(reversedEdge).reverse();
    const chain = [...backward, ...forward];
    const [first, last] = [chain[0] as Edge, chain[chain.length - 1] as Edge];
    const closed = points.of(edgeStart(first)) === points.of(edgeEnd(last));
    chains.push({ edges: joinEdges(chain, closed, tolerance), closed });
  }
  return chains;
}
