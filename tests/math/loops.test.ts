import { describe, expect, it } from 'vitest';
import { circleEdge, type Edge, lineEdge, loopsArea, reversedEdge } from '../../lib/math/curves.js';
import { areaInDisc, loopsApart, piecesOf, withinLoops } from '../../lib/math/loops.js';
import { bordersOf, regionOf } from '../../lib/math/planar.js';
import { length2, sub2, type Vec2 } from '../../lib/math/vec.js';

const square = (x: number, y: number, half: number): Edge[] => {
  const corners: Vec2[] = [
    [x - half, y - half],
    [x + half, y - half],
    [x + half, y + half],
    [x - half, y + half],
  ];
  return corners.map((corner, i) => lineEdge(corner, corners[(i + 1) % 4] as Vec2));
};
const OPTIONS = { tolerance: 1e-6, beside: 1e-3 };
const region = (edges: readonly Edge[], holds: (p: Vec2) => boolean) =>
  regionOf(
    bordersOf(edges, (p) => (holds(p) ? 'in' : null), OPTIONS),
    () => true,
    OPTIONS.tolerance,
  );
const inDisc =
  (centre: Vec2, radius: number) =>
  (p: Vec2): boolean =>
    length2(sub2(p, centre)) < radius;
const grid = Array.from({ length: 41 }, (_, i) => -10.07 + 0.503 * i);
const points = grid.flatMap((x) => grid.map((y): Vec2 => [x, y]));

describe('loops', () => {
  it('hold just the points of a disc with a square hole and a bite of another disc', () => {
    const [whole, bite] = [inDisc([0, 0], 8), inDisc([7, 3], 4)];
    const hole = ([x, y]: Vec2) => Math.abs(x + 3) < 2 && Math.abs(y) < 2;
    const holds = (p: Vec2) => whole(p) && !bite(p) && !hole(p);
    const loops = region([circleEdge([0, 0], 8), circleEdge([7, 3], 4), ...square(-3, 0, 2)], holds);
    for (const p of points) expect(withinLoops(loops, p), String(p)).toBe(holds(p));
  });

  it('hold the points of a whole circle whichever way it runs as a hole', () => {
    const ring = [[circleEdge([0, 0], 8)], [reversedEdge(circleEdge([1, 0], 3))]];
    for (const p of points) expect(withinLoops(ring, p), String(p)).toBe(inDisc([0, 0], 8)(p) && !inDisc([1, 0], 3)(p));
  });

  it('fall into pieces, each with its own holes', () => {
    const holds = ([x, y]: Vec2) =>
      inDisc([0, 0], 8)([x, y]) && Math.abs(x) > 0.5 && !inDisc([-4, 0], 1)([x, y]) && !inDisc([4, 2], 1.5)([x, y]);
    const cut = [-0.5, 0.5].map((x) => lineEdge([x, -9], [x, 9]));
    const loops = region([circleEdge([0, 0], 8), circleEdge([-4, 0], 1), circleEdge([4, 2], 1.5), ...cut], holds);
    const pieces = piecesOf(loops);
    expect(pieces).toHaveLength(2);
    // Half a disc less half the strip: a circular segment, R² acos(h / R) − h √(R² − h²).
    const segment = 64 * Math.acos(0.5 / 8) - 0.5 * Math.sqrt(64 - 0.25);
    const areas = pieces.map((piece) => loopsArea(piece)).sort((a, b) => a - b);
    expect(areas[0]).toBeCloseTo(segment - Math.PI * 2.25, 9);
    expect(areas[1]).toBeCloseTo(segment - Math.PI, 9);
  });

  it('have in common with a disc what very many strips find, and no more where circles nearly coincide', () => {
    const hole = ([x, y]: Vec2) => Math.abs(x + 3) < 2 && Math.abs(y) < 2;
    const holds = (p: Vec2) => inDisc([0, 0], 8)(p) && !inDisc([7, 3], 4)(p) && !hole(p) && p[0] > -6.5;
    const loops = region(
      [circleEdge([0, 0], 8), circleEdge([7, 3], 4), ...square(-3, 0, 2), lineEdge([-6.5, -9], [-6.5, 9])],
      holds,
    );
    for (const disc of [
      { centre: [0, 0] as Vec2, radius: 6 },
      { centre: [0, 0] as Vec2, radius: 2.5 },
      { centre: [1, -2] as Vec2, radius: 5 },
    ]) {
      let found = 0;
      const step = 0.01;
      for (let x = -9 + step / 2; x < 9; x += step)
        for (let y = -9 + step / 2; y < 9; y += step)
          if (inDisc(disc.centre, disc.radius)([x, y]) && holds([x, y])) found += step * step;
      expect(Math.abs(areaInDisc(loops, disc) / found - 1), JSON.stringify(disc)).toBeLessThan(1e-3);
    }
    const whole = loopsArea(loops);
    for (const off of [-1e-3, -1e-6, -1e-9, 0, 1e-9, 1e-6, 1e-3])
      expect(Math.abs(areaInDisc(loops, { centre: [0, 0], radius: 8 + off }) - whole)).toBeLessThan(
        60 * Math.abs(off) + 1e-9,
      );
    expect(areaInDisc(loops, { centre: [0, 0], radius: 20 })).toBeCloseTo(whole, 9);
    expect(areaInDisc(loops, { centre: [30, 0], radius: 5 })).toBeCloseTo(0, 9);
    expect(areaInDisc(loops, { centre: [0, 0], radius: 0 })).toBe(0);
  });

  it('lie as far from a point as their nearest edge or corner', () => {
    expect(loopsApart([square(5, 0, 2)], [0, 0])).toBeCloseTo(3, 12);
    expect(loopsApart([square(5, 5, 2)], [0, 0])).toBeCloseTo(3 * Math.SQRT2, 12);
    expect(loopsApart([[circleEdge([5, 0], 2)]], [0, 0])).toBeCloseTo(3, 12);
    const half = region(
      [circleEdge([0, 0], 2), lineEdge([0, -3], [0, 3])],
      ([x, y]) => x > 0 && inDisc([0, 0], 2)([x, y]),
    );
    expect(loopsApart(half, [-1, 0])).toBeCloseTo(1, 9);
    expect(loopsApart(half, [-1, 3])).toBeCloseTo(Math.SQRT2, 9);
    expect(loopsApart(half, [3, 0])).toBeCloseTo(1, 9);
  });
});
