import type { WrittenUnits } from '../base/measures.js';
import { expandDimension } from '../documents/dimensioning.js';
import type { EllipsePrimitive, LayerName, LayerStyle, Primitive, Segment, View } from '../documents/drawing.js';
import { chainBounds } from '../documents/drawing-bounds.js';
import { type Dot, type Expansion, type Stroke, type TextBox, textBox } from '../documents/expansion.js';
import { type HatchLine, hatchLines } from '../documents/hatches.js';
import { LAYERS } from '../documents/layers.js';
import { expandLeader, expandLevel, expandTag } from '../documents/marks.js';
import { symbolParts } from '../documents/placing.js';
import type { Vec2 } from '../math/vec.js';

/** Draws on paper what a view consists of; it is given model mm and knows where they lie on its paper. */
export interface Pen {
  /** What follows lies on this layer; called for each layer that isn't empty, in the order of drawing. */
  beginLayer(layer: LayerStyle): void;
  endLayer(): void;
  path(segments: readonly Segment[], closed: boolean): void;
  circle(centre: Vec2, radius: number): void;
  ellipse(ellipse: EllipsePrimitive): void;
  /** Even-odd. */
  fill(loops: readonly (readonly Segment[])[]): void;
  hatch(loops: readonly (readonly Segment[])[], lines: readonly HatchLine[]): void;
  /** A mark's line in a weight of its own. */
  stroke(stroke: Stroke): void;
  dot(dot: Dot): void;
  text(box: TextBox): void;
}

type Drawable = Pick<View, 'scale' | 'primitives'> & { readonly units: WrittenUnits };

/** Draws a view layer by layer. */
export function drawWith(pen: Pen, view: Drawable): void {
  const { scale, units } = view;
  const parts = byLayer(view.primitives.flatMap((p) => (p.kind === 'symbol' ? symbolParts(p, scale) : [p])));
  for (const layer of LAYERS) {
    const own = parts.get(layer.name);
    if (!own) continue;
    pen.beginLayer(layer);
    for (const p of own) drawPrimitive(pen, p, scale, units);
    pen.endLayer();
  }
}

/** Primitives by their layers, those of each in their order. */
export function byLayer<P extends Primitive>(primitives: readonly P[]): ReadonlyMap<LayerName, readonly P[]> {
  const layers = new Map<LayerName, P[]>();
  for (const p of primitives) {
    const layer = layerOf(p);
    const own = layers.get(layer);
    if (own) own.push(p);
    else layers.set(layer, [p]);
  }
  return layers;
}

/** The layer of a primitive; dimensions and marks have one of their own. */
const layerOf = (p: Primitive): LayerName => ('layer' in p ? p.layer : 'dimension');

function drawPrimitive(pen: Pen, p: Exclude<Primitive, { kind: 'symbol' }>, scale: number, units: View['units']): void {
  switch (p.kind) {
    case 'path':
      pen.path(p.segments, p.closed);
      break;
    case 'circle':
      pen.circle(p.centre, p.radius);
      break;
    case 'ellipse':
      pen.ellipse(p);
      break;
    case 'hatch': {
      const box = chainBounds(p.loops.flat());
      if (p.pattern === 'solid') pen.fill(p.loops);
      else pen.hatch(p.loops, hatchLines(p.pattern, box, scale));
      break;
    }
    case 'text':
      pen.text(textBox(p.text, p.at, p.anchor, p.heightMm * scale, p.rotationDeg));
      break;
    case 'dimension':
      drawExpansion(pen, expandDimension(p, scale, units));
      break;
    case 'tag':
      drawExpansion(pen, expandTag(p, scale));
      break;
    case 'leader':
      drawExpansion(pen, expandLeader(p, scale));
      break;
    case 'level':
      drawExpansion(pen, expandLevel(p, scale, units));
      break;
  }
}

function drawExpansion(pen: Pen, e: Expansion): void {
  for (const s of e.strokes) pen.stroke(s);
  for (const d of e.dots) pen.dot(d);
  for (const t of e.texts) pen.text(t);
}
