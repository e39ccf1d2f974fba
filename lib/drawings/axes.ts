import type { Primitive } from '../documents/drawing.js';
import { type Edge, lineEdge } from '../math/curves.js';
import { strokesOf } from './paths.js';
import { StrokeBook } from './stroke-book.js';

/** Centre lines, each place drawn once. */
export function axisPrimitives(edges: readonly Edge[]): Primitive[] {
  const book = new StrokeBook();
  for (const e of edges) book.write('axis', [e]);
  return book.primitives();
}

/** An upright axis in an elevation or section. */
export const uprightAxis = (x: number, low: number, high: number): Primitive[] =>
  strokesOf('axis', [lineEdge([x, low], [x, high])]);
