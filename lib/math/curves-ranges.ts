import { END_INSET } from '../base/tolerances.js';
/**
 * Stretches of [from, to] on which a condition holds: sampled at the ends and at `samples` places between, each change
 * then halved until its two sides are `near` enough. A stretch shorter than the samples' spacing may be missed.
 * @param holds is told the number of the sample too, from 0 to `samples` + 1, where it is one
 */
export function rangesWhere(
  holds: (t: number, sample?: number) => boolean,
  from: number,
  to: number,
  samples: number,
  near: (a: number, b: number) => boolean,
): [number, number][] {
  const step = (to - from) / samples;
  const ranges: [number, number][] = [];
  let open = from;
  let before = from + step * END_INSET;
  let held = holds(before, 0);
  for (let i = 0; i <= samples; i++) {
    const t = i < samples ? from + (i + 0.5) * step : to - step * END_INSET;
    const now = holds(t, i + 1);
    if (now !== held) {
      const change = changeBetween(holds, before, t, held, near);
      if (held) ranges.push([open, change]);
      open = change;
      held = now;
    }
    before = t;
  }
  if (held) ranges.push([open, to]);
  return ranges;
}

function changeBetween(
  holds: (t: number) => boolean,
  a: number,
  b: number,
  atA: boolean,
  near: (a: number, b: number) => boolean,
): number {
  let [low, high] = [a, b];
  for (let i = 0; i < 60 && !near(low, high); i++) {
    const middle = (low + high) / 2;
    if (holds(middle) === atA) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
