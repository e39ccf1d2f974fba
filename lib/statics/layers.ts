import { cos, sin } from '../math/elementary.js';
import { gauss } from '../math/quadrature.js';
import type { SpanPoint } from '../setout/span.js';

/** What one radian of a layer weighs: weight, its moment about the axis and about the floor (kN, kN mm). */
export interface Weights {
  readonly weight: number;
  readonly moment: number;
  readonly height: number;
}

export const NO_WEIGHT: Weights = { weight: 0, moment: 0, height: 0 };

export const sumWeights = (...all: readonly Weights[]): Weights =>
  all.reduce(
    (a, b) => ({ weight: a.weight + b.weight, moment: a.moment + b.moment, height: a.height + b.height }),
    NO_WEIGHT,
  );

/**
 * Weights of a layer between two depths outside the intrados, per radian and per unit of the intrados' arc length;
 * none of it beyond the axis. Exact: the integrands are polynomials of the depth of degree 3 at most.
 */
export function layerAt(p: SpanPoint, from: number, to: number, unitWeight: number): Weights {
  const c = cos(p.normalRad);
  const s = sin(p.normalRad);
  const low = p.r + from * c < 0 ? -p.r / c : from;
  if (!(to > low)) return NO_WEIGHT;
  const { nodes, weights } = gauss(2);
  let [weight, moment, height] = [0, 0, 0];
  for (let k = 0; k < 2; k++) {
    const d = low + (to - low) * (nodes[k] as number);
    const r = p.r + d * c;
    const part = (weights[k] as number) * (to - low) * r * (1 + p.curvature * d) * unitWeight;
    weight += part;
    moment += part * r;
    height += part * (p.z + d * s);
  }
  return { weight, moment, height };
}

const PANEL_ORDER = 3;

/** Sum over arc lengths from `low` to `high` of what `load` gives per unit of arc length. */
export function alongArc(
  at: (s: number) => SpanPoint,
  load: (p: SpanPoint) => Weights,
  low: number,
  high: number,
): Weights {
  const { nodes, weights } = gauss(PANEL_ORDER);
  let [weight, moment, height] = [0, 0, 0];
  for (let k = 0; k < PANEL_ORDER; k++) {
    const w = load(at(low + (high - low) * (nodes[k] as number)));
    const share = (weights[k] as number) * (high - low);
    weight += share * w.weight;
    moment += share * w.moment;
    height += share * w.height;
  }
  return { weight, moment, height };
}

/** Weights per radian of a ring with level top and bottom, radii and heights as given. */
export function ringWeights(
  radii: readonly [number, number],
  heights: readonly [number, number],
  unit: number,
): Weights {
  const [a, b] = radii;
  const tall = heights[1] - heights[0];
  const weight = ((b * b - a * a) / 2) * tall * unit;
  return {
    weight,
    moment: ((b * b * b - a * a * a) / 3) * tall * unit,
    height: (weight * (heights[0] + heights[1])) / 2,
  };
}

/** Weights per radian between two curves over the radii [from, to]. */
export function betweenCurves(
  [from, to]: readonly [number, number],
  low: (r: number) => number,
  high: (r: number) => number,
  unit: number,
): Weights {
  if (!(to > from)) return NO_WEIGHT;
  const { nodes, weights } = gauss(24);
  let [weight, moment, height] = [0, 0, 0];
  for (let k = 0; k < nodes.length; k++) {
    const r = from + (to - from) * (nodes[k] as number);
    const [below, above] = [low(r), high(r)];
    const part = (weights[k] as number) * (to - from) * r * (above - below) * unit;
    weight += part;
    moment += part * r;
    height += (part * (below + above)) / 2;
  }
  return { weight, moment, height };
}
