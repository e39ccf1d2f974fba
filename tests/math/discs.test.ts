import { describe, expect, it } from 'vitest';
import { commonArea, type Disc } from '../../lib/math/discs.js';
import { integrate } from '../../lib/math/quadrature.js';

const disc = (x: number, y: number, radius: number): Disc => ({ centre: [x, y], radius });

/** Lens of two equal circles: 2 r² acos(d/2r) − d/2 √(4r² − d²). Source: plane geometry, common knowledge. */
const lens = (r: number, d: number) => 2 * r * r * Math.acos(d / (2 * r)) - (d / 2) * Math.sqrt(4 * r * r - d * d);

/** Common area by slices x = constant, each the length of a union of chords. */
function sliced(one: Disc, others: readonly Disc[]): number {
  const chord = (d: Disc, x: number) => {
    const h = Math.sqrt(Math.max(0, d.radius ** 2 - (x - d.centre[0]) ** 2));
    return [d.centre[1] - h, d.centre[1] + h] as const;
  };
  const length = (x: number) => {
    const [low, high] = chord(one, x);
    const runs = others.map((o) => chord(o, x)).sort((a, b) => a[0] - b[0]);
    let [sum, end] = [0, low];
    for (const [a, b] of runs) {
      const from = Math.max(a, end);
      const to = Math.min(b, high);
      if (to > from) {
        sum += to - from;
        end = to;
      }
    }
    return sum;
  };
  const [from, steps] = [one.centre[0] - one.radius, 4000];
  const wide = (2 * one.radius) / steps;
  let sum = 0;
  for (let k = 0; k < steps; k++) sum += integrate(length, from + k * wide, from + (k + 1) * wide, 4);
  return sum;
}

describe('area common to a disc and a union of discs', () => {
  it('is the lens of two circles', () => {
    for (const d of [0.1, 1, 1.9]) expect(commonArea(disc(3, 4, 1), [disc(3 + d, 4, 1)])).toBeCloseTo(lens(1, d), 12);
  });

  it('is nothing apart, and the smaller disc inside', () => {
    expect(commonArea(disc(0, 0, 1), [disc(2, 0, 1)])).toBe(0);
    expect(commonArea(disc(0, 0, 1), [disc(0.5, 0, 3)])).toBeCloseTo(Math.PI, 12);
    expect(commonArea(disc(0, 0, 3), [disc(0.5, 0, 1)])).toBeCloseTo(Math.PI, 12);
    expect(commonArea(disc(0, 0, 1), [])).toBe(0);
  });

  it('counts ground that two others share once', () => {
    const others = [disc(1.2, 0, 1), disc(0.6, 1.04, 1), disc(-1.4, 0.2, 0.9), disc(0.9, 0.4, 0.2)];
    expect(commonArea(disc(0, 0, 1), others)).toBeCloseTo(sliced(disc(0, 0, 1), others), 6);
    const apart = others.reduce((sum, other) => sum + commonArea(disc(0, 0, 1), [other]), 0);
    expect(apart).toBeGreaterThan(commonArea(disc(0, 0, 1), others) + 0.1);
    // Wherever angles begin to count.
    for (let k = 1; k < 12; k++) {
      const [c, s] = [Math.cos((k * Math.PI) / 6), Math.sin((k * Math.PI) / 6)];
      const turned = others.map(({ centre: [x, y], radius }) => disc(x * c - y * s, x * s + y * c, radius));
      expect(commonArea(disc(0, 0, 1), turned)).toBeCloseTo(commonArea(disc(0, 0, 1), others), 9);
    }
  });
});
