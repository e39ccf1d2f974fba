import { describe, expect, it } from 'vitest';
import { reachesAxis, sectionPartWay, standsClear } from '../../lib/statics/clear.js';

// Sections of a wall 600 mm across, 100 and 250 mm from the axis: cut to half, they reach from −50 and from 100 mm.
const above = { middle: [100, 900], half: [300, 40], weight: 6, moment: 30 } as const;
const below = { middle: [250, 600], half: [300, 10], weight: 9, moment: 60 } as const;

describe('sections that reach beyond the axis', () => {
  it('are told by their inner end; one that ends on the axis stands clear', () => {
    expect([standsClear(above, 0.5), standsClear(below, 0.5)]).toEqual([false, true]);
    expect(standsClear(above, 1 / 3)).toBe(true);
  });

  it('end on the axis a third of the way from one to the next, in proportion', () => {
    const part = reachesAxis(above, below, 0.5);
    expect(part).toBeCloseTo(1 / 3, 12);
    const between = sectionPartWay(above, below, part ?? 0);
    expect(between.middle).toEqual([expect.closeTo(150, 9), expect.closeTo(800, 9)]);
    expect(between.half).toEqual([expect.closeTo(300, 9), expect.closeTo(30, 9)]);
    expect([between.weight, between.moment]).toEqual([expect.closeTo(7, 9), expect.closeTo(40, 9)]);
    expect(between.middle[0] - 0.5 * between.half[0]).toBeCloseTo(0, 9);
  });

  it('do so nowhere between two that both stand clear, or neither', () => {
    expect(reachesAxis(above, below, 0.2)).toBeNull();
    expect(reachesAxis(above, below, 1)).toBeNull();
    expect(reachesAxis(below, above, 0.5)).toBeNull();
  });
});
