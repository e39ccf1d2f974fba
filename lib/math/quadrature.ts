import { NOISE } from '../base/tolerances.js';
import { cos } from './elementary.js';
/** Gauss-Legendre rules on [0, 1], made once per order by Newton's method on the Legendre polynomial. */
export interface GaussRule {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

const rules = new Map<number, GaussRule>();

export function gauss(order: number): GaussRule {
  const known = rules.get(order);
  if (known) return known;
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < order; i++) {
    let x = cos((Math.PI * (i + 0.75)) / (order + 0.5));
    let slope = 1;
    for (let step = 0; step < 50; step++) {
      let previous = 1;
      let value = x;
      for (let k = 2; k <= order; k++) {
        const next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
        previous = value;
        value = next;
      }
      if (order === 1) previous = 1;
      slope = (order * (x * value - previous)) / (x * x - 1);
      const change = value / slope;
      x -= change;
      if (Math.abs(change) < NOISE) break;
    }
    nodes.push((1 - x) / 2);
    weights.push(1 / ((1 - x * x) * slope * slope));
  }
  const rule = { nodes, weights };
  rules.set(order, rule);
  return rule;
}

/** ∫ f over [from, to] by one Gauss-Legendre panel. */
export function integrate(f: (x: number) => number, from: number, to: number, order = 16): number {
  const { nodes, weights } = gauss(order);
  const span = to - from;
  let sum = 0;
  for (let i = 0; i < order; i++) sum += (weights[i] as number) * f(from + span * (nodes[i] as number));
  return sum * span;
}

/**
 * ∫ f over [from, to] where f may behave like a square root at either end: the substitution
 * x = from + span · t²(3 − 2t) makes such an integrand smooth before the panel is applied.
 */
export function integrateSoftEnds(f: (x: number) => number, from: number, to: number, order = 16): number {
  const { nodes, weights } = gauss(order);
  const span = to - from;
  let sum = 0;
  for (let i = 0; i < order; i++) {
    const t = nodes[i] as number;
    sum += (weights[i] as number) * (f(from + span * t * t * (3 - 2 * t)) * 6 * t * (1 - t) * span);
  }
  return sum;
}
