import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Convex, ConvexRegion, hullOf } from '../../lib/math/convex.js';
import { cross2, sub2, type Vec2 } from '../../lib/math/vec.js';

const changed = (corners: Convex, change: (region: ConvexRegion) => void): Convex => {
  const made = new ConvexRegion(corners);
  change(made);
  return made.corners();
};
const clipConvex = (corners: Convex, a: number, b: number, c: number) => changed(corners, (r) => r.cut(a, b, c));

const whole = fc.integer({ min: -9, max: 9 });
const point: fc.Arbitrary<Vec2> = fc.tuple(whole, whole);
const region = fc.array(point, { minLength: 1, maxLength: 9 }).map(hullOf);
/** Points that decide: a grid over everything the regions can reach. */
const grid = (step: number): Vec2[] => {
  const at = Array.from({ length: Math.floor(60 / step) + 1 }, (_, i) => -30 + i * step + 0.013);
  return at.flatMap((x) => at.map((y): Vec2 => [x, y + 0.007]));
};
const GRID = grid(2.9);

/** Whether a point lies in a region, clearly in or clearly out. */
function inside(corners: Convex, p: Vec2): boolean {
  if (corners.length < 3 || area(corners) < 1e-9) return false;
  return corners.every((a, i) => cross2(sub2(corners[(i + 1) % corners.length] as Vec2, a), sub2(p, a)) >= 0);
}

const area = (corners: Convex): number =>
  corners.reduce((sum, p, i) => sum + cross2(p, corners[(i + 1) % corners.length] as Vec2), 0) / 2;

describe('convex regions', () => {
  it('clipping keeps exactly what lies on the side asked for', () => {
    fc.assert(
      fc.property(region, whole, whole, whole, (corners, a, b, c) => {
        const kept = clipConvex(corners, a, b, c);
        for (const p of GRID) {
          const wanted = inside(corners, p) && a * p[0] + b * p[1] + c >= 0;
          expect(inside(kept, p)).toBe(wanted);
        }
        const other = clipConvex(corners, -a, -b, -c);
        if (a !== 0 || b !== 0) expect(area(kept) + area(other)).toBeCloseTo(area(corners), 9);
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it('what only touches the line is all that is kept', () => {
    const square: Convex = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ];
    // Left of x = 0: one edge; beyond x + y = 2: one corner.
    const edge = clipConvex(square, -1, 0, 0);
    expect([...new Set(edge.map(([x, y]) => `${x + 0} ${y + 0}`))].sort()).toEqual(['0 0', '0 1']);
    expect(new Set(clipConvex(square, 1, 1, -2).map(String))).toEqual(new Set(['1,1']));
  });

  it('a point or a stretch is kept or lost as a whole or in part', () => {
    expect(clipConvex([[1, 1]], 1, 0, 0)).toEqual([[1, 1]]);
    expect(clipConvex([[1, 1]], -1, 0, 0)).toEqual([]);
    const half = clipConvex(
      [
        [-1, 0],
        [1, 0],
      ],
      1,
      0,
      0,
    );
    expect(Math.min(...half.map(([x]) => x))).toBe(0);
    expect(Math.max(...half.map(([x]) => x))).toBe(1);
    expect(clipConvex([], 1, 0, 0)).toEqual([]);
  });

  it('sweeping reaches what a step along a slope of the range reaches, and nothing else', () => {
    fc.assert(
      fc.property(region, whole, fc.integer({ min: 0, max: 5 }), (corners, low, spread) => {
        const high = low + spread;
        const most = 12;
        const swept = changed(corners, (r) => r.sweep(low, high, most));
        // The same by the hull of the region and its farthest images.
        const images = corners.flatMap(([x, y]): Vec2[] =>
          [low, high].map((slope): Vec2 => [most, y + slope * (most - x)]),
        );
        expect(area(swept)).toBeCloseTo(area(hullOf([...corners, ...images])), 6);
      }),
      { seed: 4, numRuns: 200 },
    );
  });

  it('has room for any number of corners, and tells the farthest', () => {
    const round = Array.from({ length: 150 }, (_, i): Vec2 => {
      const turn = (2 * Math.PI * i) / 150;
      return [Math.cos(turn), Math.sin(turn)];
    });
    const region = new ConvexRegion(round);
    expect(region.corners()).toEqual(round);
    expect(region.farthest([1, 0])).toEqual([1, 0]);
    region.cut(-1, 0, 0);
    expect(area(region.corners())).toBeCloseTo(area(round) / 2, 9);
  });

  it('dragging covers both ends and the way between them', () => {
    fc.assert(
      fc.property(region, point, (corners, path) => {
        const moved = changed(corners, (r) => r.drag(path));
        const steps = Array.from({ length: 21 }, (_, i) => i / 20);
        for (const p of GRID) {
          const passed = steps.some((t) => inside(corners, [p[0] - t * path[0], p[1] - t * path[1]]));
          if (passed) expect(inside(moved, p)).toBe(true);
        }
        // Area of a region and of what a width across the path sweeps.
        const across = corners.map((p) => cross2(path, p));
        expect(area(moved)).toBeCloseTo(area(corners) + Math.max(...across) - Math.min(...across), 6);
      }),
      { seed: 4, numRuns: 60 },
    );
  });
});
