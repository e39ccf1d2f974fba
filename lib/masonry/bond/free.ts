import type { Course } from '../../setout/courses.js';
import { lapBound } from '../laps.js';

/**
 * Of the numbers of blocks that a course's moulds allow, one for each course, so that the fewest perpends can come to
 * lie nearer than the least lap to one below; between equals those nearest to the nominal length.
 */
export function freeCounts(
  courses: readonly Course[],
  options: readonly (readonly number[])[],
  ideals: readonly number[],
  leastLap: number,
): number[] {
  let states: { count: number; cost: number; counts: readonly number[] }[] = [];
  for (const [k, counts] of options.entries()) {
    const { midRadius } = courses[k] as Course;
    states = counts.map((count) => {
      const off = Math.abs(count / (ideals[k] as number) - 1);
      if (k === 0) return { count, cost: off, counts: [count] };
      const [best] = states
        .map((s) => ({ ...s, cost: s.cost + off + shortLaps(s.count, count, midRadius, leastLap) }))
        .sort((a, b) => a.cost - b.cost || a.count - b.count);
      if (!best) throw new Error('a course has no number of blocks to choose from');
      return { count, cost: best.cost, counts: [...best.counts, count] };
    });
  }
  const [first, ...others] = states;
  if (!first) return [];
  return [...others.reduce((a, b) => (b.cost < a.cost ? b : a), first).counts];
}

/** Perpends that lap too little: none where the bound allows the least lap everywhere, else the share of the ring that is too near. */
function shortLaps(lower: number, upper: number, radius: number, leastLap: number): number {
  if (lapBound(lower, upper, radius) >= leastLap) return 0;
  return Math.min(lower, (lower * upper * 2 * leastLap) / (2 * Math.PI * radius));
}
