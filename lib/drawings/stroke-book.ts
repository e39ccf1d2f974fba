import type { LayerName, Primitive } from '../documents/drawing.js';
import { type Edge, edgeDistance, edgeEnd, edgeLength, edgePart, edgeShare, edgeStart } from '../math/curves.js';
import { type Intervals, intersectIntervals, subtractIntervals } from '../math/intervals.js';
import { chainEdges } from '../math/planar-chain.js';
import { length2, sub2 } from '../math/vec.js';
import type { Picture } from './feature.js';
import { MEET } from './fineness.js';
import { strokeOf, strokesOf } from './paths.js';
import type { EllipseArc } from './space-curve.js';

/** Lines nearer than this to one another fall on one line on paper, model mm. */
const ONE_LINE = 0.02;

/**
 * Lines of a view, each place drawn once: what is written first stays, later lines lose what lies on it. So the
 * weightier layers are written first.
 */
export class StrokeBook {
  private readonly drawn: Edge[] = [];
  private readonly layers = new Map<LayerName, Edge[]>();
  private readonly ellipses: { layer: LayerName; arc: EllipseArc }[] = [];

  /** Takes a place without drawing it: something else draws there. */
  take(edges: readonly Edge[]): void {
    this.drawn.push(...edges);
  }

  write(layer: LayerName, pictures: readonly Picture[]): void {
    for (const picture of pictures) {
      if (picture.kind === 'ellipse') this.ellipses.push({ layer, arc: picture });
      else {
        const rest = this.uncovered(picture);
        this.drawn.push(...rest);
        this.layers.set(layer, [...(this.layers.get(layer) ?? []), ...rest]);
      }
    }
  }

  /** Joints each for themselves, other lines chained to strokes. */
  primitives(): Primitive[] {
    const paths = [...this.layers].flatMap(([layer, edges]) =>
      layer === 'joint' ? strokesOf(layer, edges) : chainEdges(edges, MEET).map((chain) => strokeOf(layer, chain)),
    );
    return [...paths, ...this.ellipses.map(({ layer, arc }): Primitive => ({ ...arc, layer }))];
  }

  private uncovered(edge: Edge): Edge[] {
    const length = edgeLength(edge);
    const covers: [number, number][] = this.drawn.flatMap((other) => sharedShares(edge, other));
    const rest: Intervals = covers.length > 0 ? subtractIntervals([[0, 1]], covers) : [[0, 1]];
    return rest.filter(([a, b]) => (b - a) * length > MEET).map(([a, b]) => edgePart(edge, a, b));
  }
}

/** Shares of `edge` that lie on `other`. */
function sharedShares(edge: Edge, other: Edge): [number, number][] {
  if (edge.kind === 'line') {
    if (other.kind !== 'line') return [];
    const [a, b] = [edgeShare(edge, other.from), edgeShare(edge, other.to)];
    const [from, to] = [Math.max(0, Math.min(a, b)), Math.min(1, Math.max(a, b))];
    if (!(to > from)) return [];
    const on = [from, to].every((t) => edgeDistance(other, pointOn(edge, t)) < ONE_LINE);
    return on ? [[from, to]] : [];
  }
  if (other.kind !== 'arc' || Math.abs(edge.radius - other.radius) > ONE_LINE) return [];
  if (length2(sub2(edge.centre, other.centre)) > ONE_LINE) return [];
  const [low, high] = [Math.min(edge.start, edge.end), Math.max(edge.start, edge.end)];
  const [low2, high2] = [Math.min(other.start, other.end), Math.max(other.start, other.end)];
  const full = 2 * Math.PI;
  const first = Math.ceil((low - high2) / full);
  const common: [number, number][] = [];
  for (let k = first; low2 + k * full < high; k++)
    for (const [a, b] of intersectIntervals([[low, high]], [[low2 + k * full, high2 + k * full]])) common.push([a, b]);
  const share = (angle: number) => (angle - edge.start) / (edge.end - edge.start);
  return common.map(([a, b]) => [Math.min(share(a), share(b)), Math.max(share(a), share(b))]);
}

const pointOn = (edge: Edge, t: number) =>
  t === 0 ? edgeStart(edge) : t === 1 ? edgeEnd(edge) : edgeStart(edgePart(edge, t, 1));
