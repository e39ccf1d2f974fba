import type { House } from '../../description/house.js';
import { type Course, LEAST_BLOCKS } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import { freshKg } from '../mass.js';
import { volumePerRadian } from './ring.js';

/** Shortest and longest block with its joint, as shares of the nominal length; common practice, no source. */
const LENGTH_SHARES = [0.6, 1.25] as const;

/** Numbers of equal blocks that one course may have. */
export interface CountRange {
  readonly fewest: number;
  readonly most: number;
  /** Blocks of just the nominal length, no whole number. */
  readonly ideal: number;
}

/**
 * No block is longer than its share of the nominal length, heavier freshly demoulded than the heaviest, or narrower at
 * the upper inner edge than the shortest piece; of blocks from `share` on also none is shorter than that share of it.
 * Where these leave none, the number whose blocks come nearest to the nominal length.
 */
export function countsOf(
  house: House,
  dome: DomeSetout,
  course: Course,
  shortest: 'share' | 'piece' = 'share',
): CountRange {
  const { blocks } = house;
  const around = 2 * Math.PI * course.midRadius;
  const ideal = around / blocks.length;
  const ring = freshKg(2 * Math.PI * volumePerRadian(dome, course), house);
  const fewest = Math.max(LEAST_BLOCKS, Math.ceil(ideal / LENGTH_SHARES[1]), Math.ceil(ring / blocks.heaviestKg));
  const narrowest = (2 * Math.PI * dome[course.part].at(course.to).r) / (blocks.shortestPiece + blocks.joint);
  const most = Math.floor(shortest === 'share' ? Math.min(narrowest, ideal / LENGTH_SHARES[0]) : narrowest);
  if (most >= fewest) return { fewest, most, ideal };
  const nearest = Math.max(LEAST_BLOCKS, Math.round(ideal));
  return { fewest: nearest, most: nearest, ideal };
}

export const countList = ({ fewest, most }: CountRange): number[] =>
  Array.from({ length: most - fewest + 1 }, (_, k) => fewest + k);
