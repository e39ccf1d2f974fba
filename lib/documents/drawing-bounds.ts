import { remembered } from '../base/remembered.js';
import { atan2, cos, sin } from '../math/elementary.js';
import { turnPositive, type Vec2 } from '../math/vec.js';
import { expandDimension } from './dimensioning.js';
import type { EllipsePrimitive, Primitive, View } from './drawing.js';
import { boxCorners, type Expansion, textBox } from './expansion.js';
import { expandLeader, expandLevel, expandTag } from './marks.js';
import { symbolParts } from './placing.js';
import { extremePoints } from './segments.js';

/** A box in the plane, model mm. */
export interface Bounds2 {
  readonly min: Vec2;
  readonly max: Vec2;
}

/** Least box round all that a view draws, texts and dimensions included; a point at the origin when it is empty. */
export const viewBounds = remembered(
  (view: View): Bounds2 => boundsOf(view.primitives.flatMap((p) => pointsOf(p, view))),
);

export function boundsOf(points: readonly Vec2[]): Bounds2 {
  if (points.length === 0) return { min: [0, 0], max: [0, 0] };
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    x0 = Math.min(x0, x);
    y0 = Math.min(y0, y);
    x1 = Math.max(x1, x);
    y1 = Math.max(y1, y);
  }
  return { min: [x0, y0], max: [x1, y1] };
}

function pointsOf(p: Primitive, view: Pick<View, 'scale' | 'units'>): Vec2[] {
  switch (p.kind) {
    case 'path':
      return p.segments.flatMap(extremePoints);
    case 'hatch':
      return p.loops.flatMap((loop) => loop.flatMap(extremePoints));
    case 'circle':
      return cornersRound(p.centre, p.radius);
    case 'ellipse':
      return ellipseExtremes(p);
    case 'text':
      return boxCorners(textBox(p.text, p.at, p.anchor, p.heightMm * view.scale, p.rotationDeg));
    case 'symbol':
      return symbolParts(p, view.scale).flatMap((part) => pointsOf(part, view));
    case 'dimension':
      return expansionPoints(expandDimension(p, view.scale, view.units));
    case 'tag':
      return expansionPoints(expandTag(p, view.scale));
    case 'leader':
      return expansionPoints(expandLeader(p, view.scale));
    case 'level':
      return expansionPoints(expandLevel(p, view.scale, view.units));
  }
}

const expansionPoints = (e: Expansion): Vec2[] => [
  ...e.strokes.flatMap((s) => extremePoints(s.segment)),
  ...e.texts.flatMap(boxCorners),
  ...e.dots.flatMap((d) => cornersRound(d.centre, d.radius)),
];

const cornersRound = ([x, y]: Vec2, r: number): Vec2[] => [
  [x - r, y - r],
  [x + r, y + r],
];

/** Point of an ellipse at a parameter. */
export function ellipseAt(e: EllipsePrimitive, t: number): Vec2 {
  const [ax, ay] = e.major;
  const [c, s] = [cos(t), sin(t) * e.ratio];
  return [e.centre[0] + ax * c - ay * s, e.centre[1] + ay * c + ax * s];
}

/** Turn of the parameter from start to end, in (0, 2π]. */
export function ellipseTurn(e: EllipsePrimitive): number {
  const turn = turnPositive(e.end - e.start);
  return turn === 0 ? 2 * Math.PI : turn;
}

function ellipseExtremes(e: EllipsePrimitive): Vec2[] {
  const [ax, ay] = e.major;
  const turn = ellipseTurn(e);
  // Where the derivative of x or of y vanishes; each has two such parameters, half a turn apart.
  const stops = [atan2(-ay * e.ratio, ax), atan2(ax * e.ratio, ay)].flatMap((t) => [t, t + Math.PI]);
  const inside = stops.filter((t) => turnPositive(t - e.start) <= turn);
  return [e.start, e.start + turn, ...inside].map((t) => ellipseAt(e, t));
}
