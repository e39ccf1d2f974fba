import { describe, expect, it } from 'vitest';
import { familiesOf, HATCHES, hatchLines, placeFamily } from '../../lib/documents/hatches.js';
import { dashesOf, LAYERS } from '../../lib/documents/layers.js';

const patterns = Object.keys(HATCHES) as (keyof typeof HATCHES)[];

describe('hatchLines', () => {
  it('puts as much line into a large area as its families say', () => {
    const side = 100_000;
    for (const pattern of patterns) {
      const area = side * side;
      const lines = hatchLines(pattern, { min: [0, 0], max: [side, side] }, 50);
      // Length of the parts of the slanting lines inside the square, by the cut with its four sides.
      let length = 0;
      for (const { from, to } of lines) {
        const d = [to[0] - from[0], to[1] - from[1]] as const;
        let [low, high] = [0, 1];
        for (const axis of [0, 1] as const) {
          const [a, b] = [-from[axis] / d[axis], (side - from[axis]) / d[axis]];
          low = Math.max(low, Math.min(a, b));
          high = Math.min(high, Math.max(a, b));
        }
        length += Math.max(0, high - low) * Math.hypot(...d);
      }
      const expected = familiesOf(pattern).reduce((sum, f) => sum + area / (f.spacing * 50), 0);
      expect(length / expected).toBeCloseTo(1, 2);
    }
  });

  it('lies the same in two boxes that overlap: lines and dashes run on', () => {
    const line = (box: { min: [number, number]; max: [number, number] }) =>
      hatchLines('earth', box, 50)
        .filter((l) => l.dashes.length > 0 && (l.to[0] - l.from[0]) * (l.to[1] - l.from[1]) > 0)
        .map((l) => {
          const along = (l.from[0] + l.from[1]) * Math.SQRT1_2 - l.phase;
          const left = (l.from[1] - l.from[0]) * Math.SQRT1_2;
          const period = l.dashes.reduce((sum, d) => sum + Math.abs(d), 0);
          // A hair before the next mark is the next mark.
          const phase = Math.round((((along % period) + period) % period) * 1000) % Math.round(period * 1000);
          return `${left.toFixed(3)} ${phase}`;
        });
    const inner = line({ min: [333, 444], max: [900, 800] });
    const outer = new Set(line({ min: [-1000, -1000], max: [2000, 2000] }));
    expect(inner.length).toBeGreaterThan(3);
    for (const key of inner) expect(outer).toContain(key);
  });
});

describe('placeFamily', () => {
  it('turns base and step and enlarges all by the scale', () => {
    const placed = placeFamily({ angleDeg: 90, base: [1, 2], spacing: 3, shift: 4, dashes: [5, -6] }, 10);
    expect(placed.base.map(Math.round)).toEqual([-20, 10]);
    expect(placed.step.map(Math.round)).toEqual([-30, 40]);
    expect(placed.dashes).toEqual([50, -60]);
  });
});

describe('layers', () => {
  it('use weights of the ISO 128-20 series (from memory), the cut twice as wide as what is visible', () => {
    for (const layer of LAYERS) expect([0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1]).toContain(layer.weightMm);
    const weight = (name: string) => LAYERS.find((l) => l.name === name)?.weightMm ?? Number.NaN;
    expect(weight('cut') / weight('visible')).toBe(2);
    expect(new Set(LAYERS.map((l) => l.name)).size).toBe(LAYERS.length);
  });

  it('give each type of line one weight, so that a file needs one length of dash for it', () => {
    const broken = LAYERS.filter((l) => l.line !== 'continuous');
    for (const { line, weightMm } of broken)
      for (const other of broken) if (other.line === line) expect(other.weightMm).toBe(weightMm);
  });

  it('dash by line widths: 12 d and 3 d for hidden lines, 24 d for the long dash of an axis', () => {
    expect(dashesOf('dashed', 0.25)).toEqual([3, -0.75]);
    expect(dashesOf('chain', 0.25)).toEqual([6, -0.75, 0.125, -0.75]);
    expect(dashesOf('continuous', 0.5)).toEqual([]);
  });
});
