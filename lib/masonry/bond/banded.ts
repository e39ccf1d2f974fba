import { log } from '../../math/hyperbolic.js';
import type { Course } from '../../setout/courses.js';
import { lapBound } from '../laps.js';
import type { CountRange } from './counts.js';

/** What a change of the number of blocks costs, in squares of the logarithm of length over nominal length. */
const CHANGE = 0.2;
/** What a change that is no drop by a half or a third costs: laps are lost over the whole ring. */
const BREAK = 100;

interface State {
  readonly cost: number;
  readonly counts: readonly number[];
}

/**
 * Numbers of blocks for courses from the floor up: constant over bands, with drops by a half or a third between, so
 * that laps stay regular. Of all such rows the one whose blocks come nearest to the nominal length, with few drops;
 * a drop whose best lap is under the least lap counts for as much as it lacks.
 */
export function bandedCounts(courses: readonly Course[], ranges: readonly CountRange[], leastLap: number): number[] {
  let states = new Map<number, State>([[0, { cost: 0, counts: [] }]]);
  for (const [k, range] of ranges.entries()) {
    const course = courses[k] as Course;
    const next = new Map<number, State>();
    const reach = (from: number, count: number, change: number) => {
      const before = states.get(from);
      if (!before) return;
      const off = log(range.ideal / count);
      const cost = before.cost + off * off + change;
      if (cost < (next.get(count)?.cost ?? Number.POSITIVE_INFINITY))
        next.set(count, { cost, counts: [...before.counts, count] });
    };
    const [cheapest] = [...states.entries()].reduce((a, b) => (b[1].cost < a[1].cost ? b : a));
    const lacking = (from: number, to: number) =>
      Math.max(0, 1 - lapBound(from, to, course.midRadius) / Math.max(leastLap, Number.MIN_VALUE));
    for (let count = range.fewest; count <= range.most; count++) {
      reach(count, count, 0);
      reach(2 * count, count, CHANGE + lacking(2 * count, count));
      if (count % 2 === 0) reach((3 * count) / 2, count, CHANGE + lacking((3 * count) / 2, count));
      reach(cheapest, count, k === 0 ? 0 : BREAK);
    }
    states = next;
  }
  return [...[...states.values()].reduce((a, b) => (b.cost < a.cost ? b : a)).counts];
}
