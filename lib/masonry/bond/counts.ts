import type { House } from '../../description/house.js';
import { type Course, LEAST_BLOCKS } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { revolvedBox } from '../column.js';
import { wetDensity } from '../mass.js';
import { wholeVolume } from '../measure.js';

/** Shortest and longest block with its joint, as shares of the nominal length; common practice, no source. */
export const LENGTH_SHARES = [0.6, 1.25] as const;

/**
 * Numbers of equal blocks that a course may have, ascending: no block is shorter or longer than its share of the
 * nominal length, heavier freshly demoulded than the heaviest, or narrower at the upper inner edge than the shortest
 * piece. Where these leave none, the number whose blocks come nearest to the nominal length.
 */
export function countsOf({ blocks, material }: House, dome: DomeSetout, course: Course): readonly number[] {
  const span = dome[course.part];
  const around = 2 * Math.PI * course.midRadius;
  const ring = wholeVolume(revolvedBox(span, [course.bed, course.to], [0, dome.thickness], [0, 2 * Math.PI]));
  const limit = (blocks.heaviestKg / wetDensity(material)) * 1e9;
  const [shortest, longest] = LENGTH_SHARES;
  const fewest = Math.max(LEAST_BLOCKS, Math.ceil(around / (longest * blocks.length)), Math.ceil(ring / limit));
  const most = Math.min(
    Math.floor(around / (shortest * blocks.length)),
    Math.floor((2 * Math.PI * span.at(course.to).r) / (blocks.shortestPiece + blocks.joint)),
  );
  if (most < fewest) return [Math.max(LEAST_BLOCKS, Math.round(around / blocks.length))];
  return Array.from({ length: most - fewest + 1 }, (_, k) => fewest + k);
}
