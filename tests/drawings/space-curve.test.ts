import { describe, expect, it } from 'vitest';
import { ellipseAt, ellipseTurn } from '../../lib/documents/drawing-bounds.js';
import { curveAt, levelCircle, pictureOf, type SpaceCurve } from '../../lib/drawings/space-curve.js';
import { edgeAt, edgeEnd, edgeStart } from '../../lib/math/curves.js';
import type { Vec2, Vec3 } from '../../lib/math/vec.js';

const upright = (radius: number, across: Vec2): SpaceCurve => ({
  kind: 'circle',
  centre: [100, 200, 300],
  a: [radius * across[0], radius * across[1], 0],
  b: [0, 0, radius],
  from: 0.3,
  to: 2.5,
});
const south = (p: Vec3): Vec2 => [p[0], p[2]];

describe('pictures of circles', () => {
  it('square to the sight: an arc with the same ends', () => {
    for (const across of [
      [1, 0],
      [-1, 0],
    ] as const) {
      const curve = upright(50, across);
      const [arc] = pictureOf(curve, south, curve.from, curve.to);
      if (arc?.kind !== 'arc') throw new Error('expected an arc');
      expect(arc.radius).toBeCloseTo(50, 12);
      expect(Math.hypot(...sub(edgeStart(arc), south(curveAt(curve, curve.from))))).toBeLessThan(1e-9);
      expect(Math.hypot(...sub(edgeEnd(arc), south(curveAt(curve, curve.to))))).toBeLessThan(1e-9);
      expect(Math.hypot(...sub(edgeAt(arc, 0.5), south(curveAt(curve, 1.4))))).toBeLessThan(1e-9);
    }
  });

  it('at an angle: an ellipse’s arc from end to end, counter-clockwise', () => {
    for (const turn of [0.4, 1.2, 2.1, -0.9]) {
      const curve = upright(50, [Math.cos(turn), Math.sin(turn)]);
      const [arc] = pictureOf(curve, south, curve.from, curve.to);
      if (arc?.kind !== 'ellipse') throw new Error('expected an ellipse');
      expect(arc.ratio).toBeCloseTo(Math.abs(Math.cos(turn)), 9);
      const ellipse = { ...arc, layer: 'visible' } as const;
      const ends = [ellipseAt(ellipse, arc.start), ellipseAt(ellipse, arc.end)];
      const wanted = [curve.from, curve.to].map((t) => south(curveAt(curve, t)));
      const apart = (p: readonly Vec2[]) =>
        Math.hypot(...sub(p[0] as Vec2, wanted[0] as Vec2)) + Math.hypot(...sub(p[1] as Vec2, wanted[1] as Vec2));
      expect(Math.min(apart(ends), apart([...ends].reverse()))).toBeLessThan(1e-9);
      const middle = ellipseAt(ellipse, arc.start + ellipseTurn(ellipse) / 2);
      expect(Math.hypot(...sub(middle, south(curveAt(curve, 1.4))))).toBeLessThan(1e-9);
    }
  });

  it('edge on: lines that together reach from side to side', () => {
    const lines = pictureOf(levelCircle([10, 0], 30, 7), south, 0, 2 * Math.PI);
    const xs = lines.flatMap((l) => (l.kind === 'line' ? [l.from, l.to] : [])).map((p) => p[0]);
    expect(lines.every((l) => l.kind === 'line')).toBe(true);
    expect([Math.min(...xs), Math.max(...xs)].map((x) => Number(x.toFixed(9)))).toEqual([-20, 40]);
  });

  it('end on: nothing', () => {
    const line: SpaceCurve = { kind: 'line', start: [5, 0, 5], end: [5, 900, 5], from: 0, to: 1 };
    expect(pictureOf(line, south, 0, 1)).toEqual([]);
  });
});

const sub = (a: Vec2, b: Vec2): [number, number] => [a[0] - b[0], a[1] - b[1]];
