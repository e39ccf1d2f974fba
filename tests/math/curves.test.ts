import { describe, expect, it } from 'vitest';
import {
  arcEdge,
  circleEdge,
  edgeAt,
  edgeBox,
  edgeDistance,
  edgeEnd,
  edgePart,
  edgeShare,
  edgeStart,
  edgeTangent,
  lineEdge,
  loopsArea,
  mirroredEdge,
  reversedEdge,
} from '../../lib/math/curves.js';
import { rangesWhere } from '../../lib/math/curves-ranges.js';
import { traceCurve } from '../../lib/math/curves-trace.js';
import type { Vec2 } from '../../lib/math/vec.js';

describe('edges', () => {
  const arc = arcEdge([10, 20], 5, 0.5, 3);

  it('finds the share of a point, turned and not', () => {
    for (const e of [arc, reversedEdge(arc), lineEdge([1, 2], [7, -3]), mirroredEdge(arc, 4)]) {
      for (const t of [0, 0.25, 0.6, 1]) expect(edgeShare(e, edgeAt(e, t))).toBeCloseTo(t, 12);
      expect(edgeDistance(e, edgeAt(e, 0.3))).toBeCloseTo(0, 12);
    }
  });

  it('a part keeps its place and the tangent points along it', () => {
    const part = edgePart(arc, 0.25, 0.75);
    expect(edgeStart(part)).toEqual(edgeAt(arc, 0.25));
    const near = (a: Vec2, b: Vec2) => expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeLessThan(1e-5);
    for (const e of [arc, reversedEdge(arc)]) {
      const [a, b] = [edgeAt(e, 0.5), edgeAt(e, 0.5 + 1e-6)];
      const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
      near(edgeTangent(e, 0.5), [(b[0] - a[0]) / l, (b[1] - a[1]) / l]);
    }
  });

  it('a box holds the quadrant points', () => {
    expect(edgeBox(arcEdge([0, 0], 2, -0.1, Math.PI)).max[1]).toBeCloseTo(2, 12);
    expect(edgeBox(circleEdge([3, 4], 2))).toEqual({ min: [1, 2], max: [5, 6] });
  });

  it('a closed loop of arc and chord has the area of the circular segment', () => {
    const [r, half] = [2500, 0.7];
    const bow = arcEdge([300, -800], r, 1 - half, 1 + half);
    const loop = [bow, lineEdge(edgeEnd(bow), edgeStart(bow))];
    // Circular segment: R²/2 (θ − sin θ).
    expect(loopsArea([loop])).toBeCloseTo(((r * r) / 2) * (2 * half - Math.sin(2 * half)), 5);
    expect(loopsArea([[circleEdge([5, 5], 3)]])).toBeCloseTo(9 * Math.PI, 12);
  });
});

describe('tracing', () => {
  it('gives an arc back as one arc and a line as one line', () => {
    const arc = traceCurve((t) => [3 + 7 * Math.cos(t), 7 * Math.sin(t)], 0.2, 2.9, 1e-6);
    expect(arc).toHaveLength(1);
    expect(arc[0]).toMatchObject({ kind: 'arc', ccw: true });
    expect(arc[0]?.kind === 'arc' && arc[0].radius).toBeCloseTo(7, 9);
    expect(traceCurve((t) => [t * t, 2 * t * t], 0, 3, 1e-6)).toEqual([{ kind: 'line', from: [0, 0], to: [9, 18] }]);
    const clockwise = traceCurve((t) => [7 * Math.cos(-t), 7 * Math.sin(-t)], 0.2, 2.9, 1e-6);
    expect(clockwise[0]).toMatchObject({ kind: 'arc', ccw: false });
  });

  it('stays within its tolerance of an ellipse and encloses its area', () => {
    const [a, b] = [3000, 1800];
    for (const tolerance of [10, 0.1, 1e-3]) {
      const edges = traceCurve((t) => [a * Math.cos(t), b * Math.sin(t)], 0, 2 * Math.PI, tolerance);
      for (const e of edges) {
        for (let i = 0; i <= 40; i++) {
          const [x, y] = edgeAt(e, i / 40);
          // First-order distance from the ellipse.
          const f = (x / a) ** 2 + (y / b) ** 2 - 1;
          const slope = 2 * Math.hypot(x / a ** 2, y / b ** 2);
          expect(Math.abs(f) / slope).toBeLessThan(tolerance * 1.2);
        }
      }
      const area = loopsArea([edges]);
      expect(Math.abs(area / (Math.PI * a * b) - 1)).toBeLessThan(tolerance * 1e-4);
    }
  });

  it('a curve that goes out and comes back beside itself is never a huge circle', () => {
    // What takes a tenth of a millimetre to turn, as an edge does that a shell hides just where it turns.
    for (const aside of [0, 1e-12, 1e-10, 1e-8, 1e-6, 1e-4])
      for (const back of [0.3, 0.37, 0.44, 0.61]) {
        const along = (t: number) => 20 * (t - back) ** 2;
        const edges = traceCurve((t) => [10 * along(t) + aside * t, 5 * along(t)], 0, 1, 0.1);
        for (const e of edges) {
          const { min, max } = edgeBox(e);
          expect(Math.max(...min.map(Math.abs), ...max.map(Math.abs))).toBeLessThan(101);
        }
        expect(edges.length).toBeGreaterThan(1);
      }
  });

  it('follows a wave and a curve whose speed falls to nothing at its end', () => {
    const wave = traceCurve((t) => [t, 50 * Math.sin(t / 100)], 0, 2000, 0.01);
    for (const e of wave) {
      const [x, y] = edgeAt(e, 0.37);
      expect(Math.abs(y - 50 * Math.sin(x / 100))).toBeLessThan(0.012);
    }
    const soft = traceCurve((t) => [100 * t * t * t, 30 * t ** 6], 0, 1, 0.001);
    const [x, y] = edgeEnd(soft[soft.length - 1] as (typeof soft)[number]);
    expect([x, y].map((v) => Number(v.toFixed(9)))).toEqual([100, 30]);
  });
});

describe('ranges', () => {
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-9;
  it('finds the changes of a condition to the asked nearness, ends included', () => {
    const holds = (t: number) => (t > 1.2345 && t < 3) || t > 9.999;
    const ranges = rangesWhere(holds, 0, 10, 25, near);
    expect(ranges).toHaveLength(2);
    expect(ranges[0]?.[0]).toBeCloseTo(1.2345, 8);
    expect(ranges[0]?.[1]).toBeCloseTo(3, 8);
    expect(ranges[1]?.[0]).toBeCloseTo(9.999, 8);
    expect(ranges[1]?.[1]).toBe(10);
  });

  it('gives the whole or nothing', () => {
    expect(rangesWhere(() => true, 2, 5, 3, near)).toEqual([[2, 5]]);
    expect(rangesWhere(() => false, 2, 5, 3, near)).toEqual([]);
  });
});
