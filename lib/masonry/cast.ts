import type { Course } from '../setout/courses.js';
import { blocksIn, type LaidHouse } from './block.js';
import { formIn } from './placed.js';

/** Blocks of one course to cast. A block that a cut parts in two is cast once. */
export interface CastCount {
  readonly whole: number;
  readonly cut: number;
  /** Longer than the mould: a short piece is one with its neighbour. */
  readonly longer: number;
}

/** What a course needs of its moulds, or of one of them. */
export function castCount(laid: LaidHouse, domeId: string, course: Course, second?: boolean): CastCount {
  const own = blocksIn(laid, domeId, course.index)
    .map((block) => ({ block, form: formIn(course, block.number) }))
    .filter(({ form }) => second === undefined || form.second === second);
  const long = own.filter(({ form }) => form.places > 1);
  const ordinary = own.filter(({ form }) => form.places === 1);
  const numbers = (list: typeof own) => new Set(list.map(({ block }) => block.number)).size;
  const cut = numbers(ordinary.filter(({ block }) => block.cutBy.length > 0));
  return { whole: numbers(ordinary) - cut, cut, longer: numbers(long) };
}
