import type { Course } from '../setout/courses.js';
import type { LaidHouse } from './block.js';

/** Blocks of one course to cast. A block that a cut parts in two is cast once. */
export interface CastCount {
  readonly whole: number;
  readonly cut: number;
  /** Longer than the mould: a short piece is one with its neighbour. */
  readonly longer: number;
}

/** What a course needs of its mould. */
export function castCount(laid: LaidHouse, domeId: string, course: Course): CastCount {
  const own = laid.blocks.filter((b) => b.domeId === domeId && b.course === course.index);
  const block = (2 * Math.PI) / course.count;
  const long = own.filter((b) => b.endRad - b.startRad > block);
  const ordinary = own.filter((b) => b.endRad - b.startRad <= block);
  const numbers = (list: typeof own) => new Set(list.map((b) => b.number)).size;
  const cut = numbers(ordinary.filter((b) => b.cutBy.length > 0));
  return { whole: numbers(ordinary) - cut, cut, longer: numbers(long) };
}
