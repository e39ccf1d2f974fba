import type { Vec2 } from '../math/vec.js';
import type { Anchor, LayerName, PathPrimitive, Segment, TextPrimitive } from './drawing.js';
import { line } from './segments.js';

/** A rectangle as a closed chain. */
export const rectangleLoop = (x0: number, y0: number, x1: number, y1: number): Segment[] => [
  line([x0, y0], [x1, y0]),
  line([x1, y0], [x1, y1]),
  line([x1, y1], [x0, y1]),
  line([x0, y1], [x0, y0]),
];

export const rectangle = (layer: LayerName, x0: number, y0: number, x1: number, y1: number): PathPrimitive => ({
  kind: 'path',
  layer,
  segments: rectangleLoop(x0, y0, x1, y1),
  closed: true,
});

export const stroke = (layer: LayerName, from: Vec2, to: Vec2): PathPrimitive => ({
  kind: 'path',
  layer,
  segments: [line(from, to)],
  closed: false,
});

/** A level line of text. */
export const words = (
  layer: LayerName,
  text: string,
  at: Vec2,
  heightMm: number,
  anchor: Anchor = 'left',
): TextPrimitive => ({ kind: 'text', layer, at, text, heightMm, anchor, rotationDeg: 0 });
