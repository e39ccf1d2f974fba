import { describe, expect, it } from 'vitest';
import { members } from '../../lib/masonry/moulds/bits.js';
import { leastCover } from '../../lib/masonry/moulds/cover.js';
import { type Reach, stabLine } from '../../lib/masonry/moulds/stab.js';

// Found by an independent exact search: a sphere of 3.125 m mid radius, oculus 0.35 m, 15 courses of equal arc. With
// the lower edge's radius r, n is at least 3 and 2πr/n within 0.6 to 1.25 of 0.60 m. A mould is a pair of widths at
// the lower and upper edge of the mid surface; each joint is 2πr/n less that width. Laps, bed curves, tolerance,
// shrinkage and face steps don't count here.
const RADIUS = 3125;
const COURSES = 15;
const ARC = (RADIUS * Math.acos(350 / RADIUS)) / COURSES;

interface Box {
  readonly item: number;
  readonly lower: readonly [number, number];
  readonly upper: readonly [number, number];
}

function boxes([thin, thick]: readonly [number, number]): Box[] {
  const r = (k: number) => RADIUS * Math.cos((k * ARC) / RADIUS);
  return Array.from({ length: COURSES }, (_, item) =>
    Array.from({ length: 80 }, (_unused, k) => k + 3)
      .map((n) => [(2 * Math.PI * r(item)) / n, (2 * Math.PI * r(item + 1)) / n] as const)
      .filter(([lower]) => lower >= 0.6 * 600 && lower <= 1.25 * 600)
      .map(
        ([lower, upper]): Box => ({ item, lower: [lower - thick, lower - thin], upper: [upper - thick, upper - thin] }),
      ),
  ).flat();
}

/** Common points of boxes may be moved to the greatest of their left sides, so lines through those are enough. */
function fewestMoulds(range: readonly [number, number]) {
  const all = boxes(range);
  const sets: number[][] = [];
  for (const {
    lower: [at],
  } of all) {
    const reaches = all
      .filter((b) => b.lower[0] <= at && b.lower[1] >= at)
      .map((b): Reach => ({ item: b.item, low: b.upper[0], high: b.upper[1] }));
    stabLine(reaches, COURSES, (_at, items) => sets.push(members(items)));
  }
  return leastCover(sets, COURSES);
}

describe('the fewest moulds of a sphere', () => {
  it('has courses of the arc stated', () => {
    expect(ARC / 1000).toBeCloseTo(0.30387, 5);
  });

  it.each([
    [10, 10, 15],
    [8, 12, 12],
    [6, 14, 8],
    [5, 20, 5],
    [5, 30, 4],
  ])('joints of %d to %d mm: %d moulds', (thin, thick, count) => {
    const cover = fewestMoulds([thin, thick]);
    expect(cover).toMatchObject({ proven: true, atLeast: count, unmet: [] });
    expect(cover.chosen).toHaveLength(count);
  });
});
