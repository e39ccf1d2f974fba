import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import type { LayerName, Primitive, Segment } from '../documents/drawing.js';
import { type Edge, edgePart, lineEdge } from '../math/curves.js';
import type { Chain } from '../math/planar-chain.js';

const isCircle = (e: Edge): boolean => e.kind === 'arc' && Math.abs(e.end - e.start) > 2 * Math.PI - SAME_ANGLE_RAD;

/** A chain of edges as a stroke; a full turn is a circle. */
export function strokeOf(layer: LayerName, { edges, closed }: Chain): Primitive {
  const [first] = edges;
  if (first?.kind === 'arc' && isCircle(first))
    return { kind: 'circle', layer, centre: first.centre, radius: first.radius };
  return { kind: 'path', layer, segments: edges, closed };
}

export const strokesOf = (layer: LayerName, edges: readonly Edge[]): Primitive[] =>
  edges.map((e) => strokeOf(layer, { edges: [e], closed: false }));

/** A closed loop for a hatch: a full turn is two halves. */
export const loopOf = (loop: readonly Edge[]): Segment[] =>
  loop.flatMap((e) => (isCircle(e) ? [edgePart(e, 0, 0.5), edgePart(e, 0.5, 1)] : [e]));

export const rectangle = (x0: number, y0: number, x1: number, y1: number): Edge[] => [
  lineEdge([x0, y0], [x1, y0]),
  lineEdge([x1, y0], [x1, y1]),
  lineEdge([x1, y1], [x0, y1]),
  lineEdge([x0, y1], [x0, y0]),
];
