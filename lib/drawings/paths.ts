import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import type { LayerName, Primitive, Segment } from '../documents/drawing.js';
import { type Edge, edgePart } from '../math/curves.js';
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
