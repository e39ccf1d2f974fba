import { remembered } from '../base/remembered.js';
import { atan2, cos, sin } from '../math/elementary.js';
import { turnPositive, type Vec2 } from '../math/vec.js';
import { expandDimension } from './dimensioning.js';
import type { EllipsePrimitive, Primitive, Segment, View } from './drawing.js';
import { boxCorners, type Expansion, type TextBox, textBox } from './expansion.js';
import { expandLeader, expandLevel, expandTag } from './marks.js';
import { symbolParts } from './placing.js';
import { extremePoints } from './segments.js';

/** A box in the plane, model mm. */
export interface Bounds2 {
  readonly min: Vec2;
  readonly max: Vec2;
}

/** Least box round all that a view draws, texts and dimensions included; a point at the origin when it is empty. */
export const viewBounds = remembered((view: View): Bounds2 => {
  const reach = new Reach();
  for (const p of view.primitives) addPrimitive(reach, p, view);
  return reach.box();
});

export function boundsOf(points: readonly Vec2[]): Bounds2 {
  const reach = new Reach();
  for (const p of points) reach.add(p);
  return reach.box();
}

/** A box that grows with what it is given. */
class Reach {
  private x0 = Infinity;
  private y0 = Infinity;
  private x1 = -Infinity;
  private y1 = -Infinity;

  add([x, y]: Vec2): void {
    if (x < this.x0) this.x0 = x;
    if (y < this.y0) this.y0 = y;
    if (x > this.x1) this.x1 = x;
    if (y > this.y1) this.y1 = y;
  }

  round([x, y]: Vec2, r: number): void {
    this.add([x - r, y - r]);
    this.add([x + r, y + r]);
  }

  segment(s: Segment): void {
    if (s.kind === 'line') {
      this.add(s.from);
      this.add(s.to);
    } else for (const p of extremePoints(s)) this.add(p);
  }

  text(box: TextBox): void {
    for (const p of boxCorners(box)) this.add(p);
  }

  expansion(e: Expansion): void {
    for (const s of e.strokes) this.segment(s.segment);
    for (const t of e.texts) this.text(t);
    for (const d of e.dots) this.round(d.centre, d.radius);
  }

  box(): Bounds2 {
    const { x0, y0, x1, y1 } = this;
    return x0 > x1 ? { min: [0, 0], max: [0, 0] } : { min: [x0, y0], max: [x1, y1] };
  }
}

/** Least box round a chain. */
export function chainBounds(segments: readonly Segment[]): Bounds2 {
  const reach = new Reach();
  for (const s of segments) reach.segment(s);
  return reach.box();
}

function addPrimitive(reach: Reach, p: Primitive, view: Pick<View, 'scale' | 'units'>): void {
  const { scale, units } = view;
  switch (p.kind) {
    case 'path':
      for (const s of p.segments) reach.segment(s);
      break;
    case 'hatch':
      for (const loop of p.loops) for (const s of loop) reach.segment(s);
      break;
    case 'circle':
      reach.round(p.centre, p.radius);
      break;
    case 'ellipse':
      for (const point of ellipseExtremes(p)) reach.add(point);
      break;
    case 'text':
      reach.text(textBox(p.text, p.at, p.anchor, p.heightMm * scale, p.rotationDeg));
      break;
    case 'symbol':
      for (const part of symbolParts(p, scale)) addPrimitive(reach, part, view);
      break;
    case 'dimension':
      reach.expansion(expandDimension(p, scale, units));
      break;
    case 'tag':
      reach.expansion(expandTag(p, scale));
      break;
    case 'leader':
      reach.expansion(expandLeader(p, scale));
      break;
    case 'level':
      reach.expansion(expandLevel(p, scale, units));
      break;
  }
}

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
