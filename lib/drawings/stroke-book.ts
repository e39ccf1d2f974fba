import { ONE_LINE, STROKES_MEET } from '../base/tolerances.js';
import type { LayerName, Primitive } from '../documents/drawing.js';
import { type Box, type Edge, edgeAt, edgeBox, edgeDistance, edgeLength, edgePart, edgeShare } from '../math/curves.js';
import { subtractIntervals } from '../math/intervals.js';
import { chainEdges } from '../math/planar-chain.js';
import { length2, sub2 } from '../math/vec.js';
import type { Picture } from './feature.js';
import { strokeOf, strokesOf } from './paths.js';
import type { EllipseArc } from './space-curve.js';

/** A line that is drawn, and the box in which it lies. */
interface Drawn {
  readonly edge: Edge;
  readonly box: Box;
}

/**
 * Lines of a view, each place drawn once: what is written first stays, later lines lose what lies on it. So the
 * weightier layers are written first.
 */
export class StrokeBook {
  private readonly drawn: Drawn[] = [];
  private readonly layers = new Map<LayerName, Edge[]>();
  private readonly ellipses: { layer: LayerName; arc: EllipseArc }[] = [];

  /** Takes a place without drawing it: something else draws there. */
  take(edges: readonly Edge[]): void {
    for (const edge of edges) this.drawn.push({ edge, box: edgeBox(edge) });
  }

  write(layer: LayerName, pictures: readonly Picture[]): void {
    for (const picture of pictures) {
      if (picture.kind === 'ellipse') this.ellipses.push({ layer, arc: picture });
      else {
        const rest = this.uncovered(picture);
        this.take(rest);
        const edges = this.layers.get(layer);
        if (edges) edges.push(...rest);
        else this.layers.set(layer, [...rest]);
      }
    }
  }

  /** Joints each for themselves, other lines chained to strokes. */
  primitives(): Primitive[] {
    const paths = [...this.layers].flatMap(([layer, edges]) =>
      layer === 'joint'
        ? strokesOf(layer, edges)
        : chainEdges(edges, STROKES_MEET).map((chain) => strokeOf(layer, chain)),
    );
    return [...paths, ...this.ellipses.map(({ layer, arc }): Primitive => ({ ...arc, layer }))];
  }

  private uncovered(edge: Edge): readonly Edge[] {
    const covers: [number, number][] = [];
    const { min, max } = edgeBox(edge);
    for (const { edge: other, box } of this.drawn) {
      if (box.min[0] > max[0] + ONE_LINE || box.max[0] < min[0] - ONE_LINE) continue;
      if (box.min[1] > max[1] + ONE_LINE || box.max[1] < min[1] - ONE_LINE) continue;
      if (other.kind === edge.kind) addShared(edge, other, covers);
    }
    if (covers.length === 0) return [edge];
    const length = edgeLength(edge);
    return subtractIntervals([[0, 1]], covers)
      .filter(([a, b]) => (b - a) * length > STROKES_MEET)
      .map(([a, b]) => edgePart(edge, a, b));
  }
}

/** Adds the shares of `edge` that lie on `other`. */
function addShared(edge: Edge, other: Edge, covers: [number, number][]): void {
  if (edge.kind === 'line') {
    if (other.kind !== 'line') return;
    const [a, b] = [edgeShare(edge, other.from), edgeShare(edge, other.to)];
    const [from, to] = [Math.max(0, Math.min(a, b)), Math.min(1, Math.max(a, b))];
    if (!(to > from) || edgeDistance(other, edgeAt(edge, from)) > ONE_LINE) return;
    if (edgeDistance(other, edgeAt(edge, to)) <= ONE_LINE) covers.push([from, to]);
    return;
  }
  if (other.kind !== 'arc' || Math.abs(edge.radius - other.radius) > ONE_LINE) return;
  if (length2(sub2(edge.centre, other.centre)) > ONE_LINE) return;
  const [low, high] = [Math.min(edge.start, edge.end), Math.max(edge.start, edge.end)];
  const [low2, high2] = [Math.min(other.start, other.end), Math.max(other.start, other.end)];
  const full = 2 * Math.PI;
  const share = (angle: number) => (angle - edge.start) / (edge.end - edge.start);
  for (let k = Math.ceil((low - high2) / full); low2 + k * full < high; k++) {
    const [from, to] = [Math.max(low, low2 + k * full), Math.min(high, high2 + k * full)];
    if (to > from) covers.push([Math.min(share(from), share(to)), Math.max(share(from), share(to))]);
  }
}
