import { describe, expect, it } from 'vitest';
import { pairFactor, pairLines } from '../../lib/statics/pair.js';
import type { PairSection } from '../../lib/statics/pair-programme.js';
import { geometricFactor } from '../../lib/statics/thrust.js';
import { tiltCapacity } from '../../lib/statics/tilt.js';
import { luneBody } from '../tools/lunes.js';

const DEG = Math.PI / 180;

/** Half an arch of radius 1 cut by radial joints at the given angles from the upright; closed forms of a sector. */
function half(thickness: number, angles: readonly number[]) {
  const [inner, outer] = [1 - thickness / 2, 1 + thickness / 2];
  const sections = angles.map((a): PairSection => {
    const third = (outer ** 3 - inner ** 3) / 3;
    return {
      middle: [Math.sin(a), Math.cos(a)],
      half: [(thickness / 2) * Math.sin(a), (thickness / 2) * Math.cos(a)],
      weight: ((outer ** 2 - inner ** 2) / 2) * a,
      moment: third * (1 - Math.cos(a)),
      push: 0,
      pushMoment: 0,
      tied: false,
    };
  });
  const third = (outer ** 3 - inner ** 3) / 3;
  return { sections, heights: angles.map((a) => third * Math.sin(a)) };
}

function capacity(thickness: number, embrace: number, joints: number): number {
  const angles = (from: number) =>
    Array.from({ length: joints + 1 }, (_, i) => (embrace * (i - joints / 2)) / joints).filter((a) => a * from > 0);
  const ordered = (from: 1 | -1) =>
    angles(from)
      .map(Math.abs)
      .sort((a, b) => a - b);
  const [one, two] = [half(thickness, ordered(1)), half(thickness, ordered(-1))];
  return tiltCapacity({ halves: [one.sections, two.sections], tie: null }, [one.heights, two.heights]);
}

describe('an arch on tilted ground', () => {
  it('seven voussoirs over 157.5 degrees, t/R 0.15, bear 0.37 g (Oppenheim 1992; 0.370010 derived)', () => {
    expect(capacity(0.15, 157.5 * DEG, 7)).toBeCloseTo(0.37001, 5);
  });

  it('with a joint anywhere they bear 0.353407 g (derived)', () => {
    expect(Math.abs(capacity(0.15, 157.5 * DEG, 240) - 0.353407)).toBeLessThan(2e-5);
  });

  it.each([
    [0.12, 0.04616],
    [0.15, 0.144327],
    [0.2, 0.283744],
  ])('semicircle t/R %f: %f g (derived)', (thickness, wanted) => {
    expect(Math.abs(capacity(thickness, Math.PI, 240) - wanted)).toBeLessThan(2e-4);
  });
});

describe('a pair of halves', () => {
  const angles = Array.from({ length: 101 }, (_, i) => (i * Math.PI) / 200);
  it('loaded alike has the factor and the thrust of one half', () => {
    const { sections } = half(0.15, angles);
    const factor = pairFactor({ halves: [sections, sections], tie: null });
    const alone = geometricFactor(luneBody({ thickness: 0.15, arch: true, sections: 100 }));
    expect(Math.abs(factor / alone - 1)).toBeLessThan(1e-5);
    const [left, right] = pairLines({ halves: [sections, sections], tie: null });
    left.forEach((p, i) => {
      expect(p.horizontal).toBeCloseTo(right[i]?.horizontal as number, 9);
      expect(Math.abs(p.place - 0.5)).toBeLessThan(0.5);
    });
  });

  it('loses its factor as one side is loaded more', () => {
    const { sections } = half(0.15, angles);
    const loaded = (more: number) =>
      pairFactor({
        halves: [
          sections,
          sections.map((s) => ({
            ...s,
            weight: s.weight + more * s.middle[0],
            moment: s.moment + (more * s.middle[0] ** 2) / 2,
          })),
        ],
        tie: null,
      });
    const factors = [0, 0.01, 0.02, 0.04].map(loaded);
    expect(factors).toEqual([...factors].sort((a, b) => b - a));
    expect(new Set(factors).size).toBe(4);
  });
});

describe('a pair that a tie holds and a push leans on', () => {
  it('stands as well, and with the same thrust, wherever level 0 is', () => {
    const tieZ = 0.4;
    const angles = Array.from({ length: 60 }, (_, i) => ((i + 1) * 90 * DEG) / 60);
    const { sections, heights } = half(0.12, angles);
    const raised = (by: number) => {
      const side = (sign: 1 | -1) =>
        sections.map((s, i): PairSection => {
          const push = sign * 0.05 * s.weight;
          const pushMoment = sign * 0.05 * (heights[i] as number) + push * by;
          return { ...s, middle: [s.middle[0], s.middle[1] + by], push, pushMoment, tied: s.middle[1] <= tieZ };
        });
      return { halves: [side(-1), side(1)], tie: { z: tieZ + by, most: 0.02 } } as const;
    };
    const [low, high] = [raised(0), raised(2)];
    expect(pairFactor(low)).toBeGreaterThan(1);
    expect(pairFactor(high)).toBeCloseTo(pairFactor(low), 4);
    // The tie does something.
    expect(pairFactor(low)).toBeGreaterThan(pairFactor({ ...low, tie: null }) + 0.01);
    const [one, other] = [pairLines(low), pairLines(high)];
    for (const which of [0, 1] as const) {
      expect(one[which].length).toBeGreaterThan(50);
      for (const [i, { place }] of one[which].entries()) expect(other[which][i]?.place).toBeCloseTo(place, 5);
    }
  });
});
