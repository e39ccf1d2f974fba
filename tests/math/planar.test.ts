import { describe, expect, it } from 'vitest';
import {
  arcEdge,
  circleEdge,
  type Edge,
  edgeEnd,
  edgeLength,
  edgeStart,
  lineEdge,
  loopsArea,
} from '../../lib/math/curves.js';
import { bordersOf, type PlanarOptions, regionOf, splitEdges } from '../../lib/math/planar.js';
import { chainEdges } from '../../lib/math/planar-chain.js';
import type { Vec2 } from '../../lib/math/vec.js';

const OPTIONS: PlanarOptions = { tolerance: 2e-4, beside: 1e-3 };

const rectangle = (x0: number, y0: number, x1: number, y1: number): Edge[] => [
  lineEdge([x0, y0], [x1, y0]),
  lineEdge([x1, y0], [x1, y1]),
  lineEdge([x1, y1], [x0, y1]),
  lineEdge([x0, y1], [x0, y0]),
];
const within = (p: Vec2, c: Vec2, r: number) => Math.hypot(p[0] - c[0], p[1] - c[1]) < r;

function area(edges: readonly Edge[], inside: (p: Vec2) => boolean): { area: number; loops: Edge[][] } {
  const borders = bordersOf(edges, (p) => (inside(p) ? 'in' : null), OPTIONS);
  const loops = regionOf(borders, () => true, OPTIONS.tolerance);
  return { area: loopsArea(loops), loops };
}

/** Area of a circle's part nearer to its centre than a chord at distance d: R²(π − acos(d/R)) + d √(R² − d²). */
const beyondChord = (r: number, d: number) => r * r * Math.acos(d / r) - d * Math.sqrt(r * r - d * d);

describe('planar regions', () => {
  it('an annulus has its area, as one outer loop and one hole of a single arc each', () => {
    const found = area(
      [circleEdge([0, 0], 3250), circleEdge([0, 0], 3000)],
      (p) => within(p, [0, 0], 3250) && !within(p, [0, 0], 3000),
    );
    expect(found.area).toBeCloseTo(Math.PI * (3250 ** 2 - 3000 ** 2), 3);
    expect(found.loops.map((l) => l.length)).toEqual([1, 1]);
  });

  it('an annulus less a strip has the area of the closed form', () => {
    const [outer, inner, half] = [3250, 3000, 500];
    const strip = rectangle(-half, -4000, half, 0);
    const inside = (p: Vec2) =>
      within(p, [0, 0], outer) && !within(p, [0, 0], inner) && !(Math.abs(p[0]) < half && p[1] < 0);
    const found = area([circleEdge([0, 0], outer), circleEdge([0, 0], inner), ...strip], inside);
    // The half strip in a circle: (R² asin(a/R) + a √(R² − a²)).
    const cut = (r: number) => r * r * Math.asin(half / r) + half * Math.sqrt(r * r - half * half);
    const exact = Math.PI * (outer ** 2 - inner ** 2) - (cut(outer) - cut(inner));
    expect(Math.abs(found.area / exact - 1)).toBeLessThan(1e-9);
    expect(found.loops).toHaveLength(1);
    expect(found.loops[0]).toHaveLength(4);
  });

  it('the lens of two circles has the area of the closed form, its corners on the radical line', () => {
    // Radii 2.5 and 2.0 at 3.0: the chord lies 1.875 from the first centre, half as long as 1.653595.
    const [a, b, d] = [2500, 2000, 3000];
    const found = area(
      [circleEdge([0, 0], a), circleEdge([d, 0], b)],
      (p) => within(p, [0, 0], a) && within(p, [d, 0], b),
    );
    const exact = beyondChord(a, 1875) + beyondChord(b, d - 1875);
    expect(Math.abs(found.area / exact - 1)).toBeLessThan(1e-9);
    const corner = found.loops[0]?.[0];
    if (corner?.kind !== 'arc') throw new Error('the lens is bounded by arcs');
    const y = corner.centre[1] + corner.radius * Math.sin(corner.start);
    expect(Math.abs(y)).toBeCloseTo(1653.595, 3);
  });

  it('is the same figure turned, moved and scaled', () => {
    const make = (turn: number, k: number, by: Vec2) => {
      const to = (p: Vec2): Vec2 => [
        k * (p[0] * Math.cos(turn) - p[1] * Math.sin(turn)) + by[0],
        k * (p[0] * Math.sin(turn) + p[1] * Math.cos(turn)) + by[1],
      ];
      const box = [to([-700, -400]), to([900, -400]), to([900, 500]), to([-700, 500])];
      const edges = box.map((p, i) => lineEdge(p, box[(i + 1) % 4] as Vec2));
      const from = (p: Vec2): Vec2 => {
        const q: Vec2 = [(p[0] - by[0]) / k, (p[1] - by[1]) / k];
        return [q[0] * Math.cos(turn) + q[1] * Math.sin(turn), -q[0] * Math.sin(turn) + q[1] * Math.cos(turn)];
      };
      const inside = (p: Vec2) => {
        const [x, y] = from(p);
        return x > -700 && x < 900 && y > -400 && y < 500 && !within([x, y], [900, 500], 300);
      };
      return area([...edges, circleEdge(to([900, 500]), 300 * k)], inside).area / (k * k);
    };
    const exact = 1600 * 900 - (Math.PI * 300 * 300) / 4;
    for (const turn of [0, 0.3, 1.5707963, 3, 6.2814]) {
      for (const k of [1, 0.1, 25]) expect(Math.abs(make(turn, k, [5e4, -3e4]) / exact - 1)).toBeLessThan(1e-8);
    }
  });

  it('keeps one of two coincident edges and splits overlapping ones at each other’s ends', () => {
    const pieces = splitEdges(
      [lineEdge([0, 0], [100, 0]), lineEdge([100, 0], [0, 0]), lineEdge([40, 0], [160, 0])],
      OPTIONS.tolerance,
    );
    expect(pieces.map(edgeLength).sort((a, b) => a - b)).toEqual([40, 60, 60]);
  });

  it('parts three materials and takes a line that parts nothing away', () => {
    const labelAt = (p: Vec2) =>
      p[1] < 0 || p[1] > 100 ? null : p[0] > 0 && p[0] < 50 ? 'a' : p[0] > 0 && p[0] < 90 ? 'b' : null;
    const edges = [...rectangle(0, 0, 90, 100), lineEdge([50, -20], [50, 120]), lineEdge([0, 30], [90, 30])];
    const borders = bordersOf(edges, labelAt, OPTIONS);
    expect(loopsArea(regionOf(borders, (l) => l === 'a', OPTIONS.tolerance))).toBeCloseTo(5000, 6);
    expect(loopsArea(regionOf(borders, (l) => l === 'b', OPTIONS.tolerance))).toBeCloseTo(4000, 6);
    expect(regionOf(borders, () => true, OPTIONS.tolerance)).toHaveLength(1);
    expect(regionOf(borders, () => true, OPTIONS.tolerance)[0]).toHaveLength(4);
  });

  it('keeps squares that touch at a corner apart', () => {
    const edges = [...rectangle(0, 0, 10, 10), ...rectangle(10, 10, 20, 20)];
    const inside = (p: Vec2) =>
      (p[0] > 0 && p[0] < 10 && p[1] > 0 && p[1] < 10) || (p[0] > 10 && p[0] < 20 && p[1] > 10 && p[1] < 20);
    const found = area(edges, inside);
    expect(found.area).toBeCloseTo(200, 9);
    expect(found.loops.map((l) => l.length)).toEqual([4, 4]);
  });

  it('a nearly straight arc meets a circle where the chord’s closed form has it, whichever is asked first', () => {
    // A circle about the origin, and one of 100 km or more whose nearest point to it lies at (x, 0).
    const [r, x] = [3000, 1200];
    for (const radius of [1e7, 1e8, 1e9]) {
      const flat = arcEdge([x + radius, 0], radius, Math.PI - 5000 / radius, Math.PI + 5000 / radius);
      const circle = circleEdge([0, 0], r);
      // Radical line of the two circles, arranged without differences of great squares.
      const at = (x * x + 2 * x * radius + r * r) / (2 * (x + radius));
      const wanted = [1, -1].map((side): Vec2 => [at, side * Math.sqrt(r * r - at * at)]);
      for (const [a, b] of [
        [flat, circle],
        [circle, flat],
      ] as const) {
        const ends = splitEdges([a, b], OPTIONS.tolerance).flatMap((e) => [edgeStart(e), edgeEnd(e)]);
        for (const [px, py] of wanted) {
          const near = ends.filter((p) => Math.hypot(p[0] - px, p[1] - py) < 1);
          // Two pieces of each curve end there, all within a rounding of the great radius.
          expect(near).toHaveLength(4);
          for (const p of near) expect(Math.hypot(p[0] - px, p[1] - py)).toBeLessThan(1e-6);
        }
      }
    }
  });

  it('a tangent line splits a circle once, not twice', () => {
    const pieces = splitEdges([circleEdge([0, 0], 3250), lineEdge([3250, -600], [3250, 0])], OPTIONS.tolerance);
    expect(pieces).toHaveLength(2);
  });

  it('chains strokes through corners and ends them at forks', () => {
    const chains = chainEdges(
      [
        lineEdge([0, 0], [10, 0]),
        lineEdge([10, 10], [10, 0]),
        lineEdge([10, 10], [20, 10]),
        lineEdge([20, 10], [30, 20]),
        lineEdge([20, 10], [30, 0]),
      ],
      OPTIONS.tolerance,
    );
    expect(chains.map((c) => c.edges.length).sort()).toEqual([1, 1, 3]);
  });
});
