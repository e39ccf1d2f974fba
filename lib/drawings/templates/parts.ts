import type { LinearDimension, PathPrimitive, Segment } from '../../documents/drawing.js';
import { stroke, words } from '../../documents/shapes.js';
import type { TemplatePrimitive } from '../../documents/template.js';
import type { Vec2 } from '../../math/vec.js';

/** Heights of lettering on a template, mm. */
export const LABEL = 4;
const LINE = 6.5;

/** What is cut along. */
export const outlinePath = (segments: readonly Segment[]): PathPrimitive => ({
  kind: 'path',
  layer: 'cut',
  segments,
  closed: true,
});

export const axisStroke = (from: Vec2, to: Vec2): PathPrimitive => stroke('axis', from, to);

/** Lines of words from a corner downward. */
export const label = (lines: readonly string[], [x, y]: Vec2, height = LABEL): TemplatePrimitive[] =>
  lines.map((text, i) => words('text', text, [x, y - (i * LINE * height) / LABEL], height));

/** A level (0) or upright (90) dimension whose line passes a point. */
export const measure = (angleDeg: 0 | 90, from: Vec2, to: Vec2, line: Vec2, prefix?: string): LinearDimension => ({
  kind: 'dimension',
  type: 'linear',
  from,
  to,
  angleDeg,
  line,
  ...(prefix === undefined ? {} : { prefix }),
});
