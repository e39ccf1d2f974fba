import { describe, expect, it } from 'vitest';
import { describeHouse } from '../../lib/index.js';
import { meetingsOf } from '../../lib/masonry/bands.js';
import { columnLeft, revolvedBox } from '../../lib/masonry/column.js';
import { cuttersOf } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';

const SHARES = Array.from({ length: 13 }, (_, k) => k / 12);

/** A later dome that abuts an earlier one under a round crown opening, a door, a window, a passage between them. */
const setout = setOutHouse(
  describeHouse({ units: 'm', blocks: { 'course-height': 0.3, length: 0.5 } })
    .dome('hall', { radius: 2.6, profile: 'hemisphere', 'stem-wall': 0.5, oculus: { radius: 0.35, curb: 0.15 } })
    .dome('room', { at: [4.4, 0.6], radius: 2.2, profile: { shape: 'pointed', rise: 2.9 }, 'stem-wall': 0.3 })
    .door('entrance', 'hall', { bearing: 180, width: 0.9, height: 2.1 })
    .window('view', 'room', { bearing: 60, width: 1, height: 0.9, sill: 0.9 })
    .passage('link', ['hall', 'room'], { width: 0.9, height: 2 })
    .house(),
);

describe('what cutters are told to do to a part of a ring', () => {
  for (const dome of setout.domes)
    it(`holds at every sampled column of dome ${dome.id}`, () => {
      const cutters = cuttersOf(setout, dome);
      const seen = { gone: 0, untouched: 0, parted: 0 };
      for (const course of dome.courses) {
        const span = dome[course.part];
        const s = [course.bed, course.to] as const;
        const met = meetingsOf(cutters, span, s, dome.thickness);
        for (let k = 0; k < 40; k++) {
          const bearing = [(k * Math.PI) / 20, (k * Math.PI) / 20 + 0.1] as const;
          const { near, gone } = met(bearing);
          const body = revolvedBox(span, s, [0, dome.thickness], bearing);
          const columns = SHARES.flatMap((i) => SHARES.map((j) => body(i, j)));
          const left = (of: typeof cutters) => columns.map((column) => columnLeft(column, of));
          if (gone) expect(Math.max(...left(cutters))).toBeLessThan(1e-12);
          const far = cutters.filter((c) => !near.includes(c));
          if (far.length > 0) expect(Math.min(...left(far))).toBeCloseTo(0.1, 12);
          if (gone) seen.gone++;
          else if (near.length === 0) seen.untouched++;
          else seen.parted++;
        }
      }
      expect(Math.min(seen.gone, seen.untouched, seen.parted)).toBeGreaterThan(0);
      // Most that is called near is parted: a block of a course has few cuts.
      expect(seen.parted).toBeLessThan(seen.untouched);
    });
});
