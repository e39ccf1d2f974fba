import type { DiagramShape, DiagramStyle } from '../documents/report.js';
import type { Vec2 } from '../math/vec.js';

/** Lays (r, z) in millimetres on a diagram: scale, mirrored or not, y downward. */
export interface Page {
  readonly width: number;
  readonly height: number;
  place(p: Vec2): Vec2;
}

const MARGIN = 36;

/** A page `width` pixels wide that holds r and z between these limits; z grows upward. */
export function pageFor(width: number, r: readonly [number, number], z: readonly [number, number], head = 0): Page {
  const scale = (width - 2 * MARGIN) / (r[1] - r[0]);
  return {
    width,
    height: 2 * MARGIN + head + scale * (z[1] - z[0]),
    place: (p) => [MARGIN + scale * (p[0] - r[0]), MARGIN + head + scale * (z[1] - p[1])],
  };
}

export const line = (page: Page, style: DiagramStyle, points: readonly Vec2[], closed = false): DiagramShape => ({
  kind: 'line',
  style,
  points: points.map((p) => page.place(p)),
  closed,
});

export const label = (at: Vec2, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): DiagramShape => ({
  kind: 'text',
  at,
  text,
  anchor,
});

/** Moves a place on the page. */
export const moved = ([x, y]: Vec2, dx: number, dy: number): Vec2 => [x + dx, y + dy];
