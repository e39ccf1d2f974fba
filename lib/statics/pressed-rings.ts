import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';

/** A closed ring that may press itself: height of its middle, mm, and its area across the hoop force, mm2. */
export interface PressedRing {
  readonly z: number;
  readonly area: number;
}

/** Two rings from the top down, a third of the closed courses from either end of them; fewer where there are few. */
export function pressedRings({ courses, shell, thickness }: DomeSetout, cutZ: number): PressedRing[] {
  const closed = courses.filter(({ part, from }) => part === 'shell' && shell.at(from).z >= cutZ);
  const places = new Set([(2 * closed.length) / 3, closed.length / 3].map(Math.floor));
  return closed
    .filter((_, i) => places.has(i))
    .map(({ from, to }) => ({
      z: spanPoint(shell, (from + to) / 2, thickness / 2)[1],
      area: thickness * (to - from),
    }))
    .reverse();
}
