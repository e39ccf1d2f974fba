import type { LaidHouse } from './block.js';
import { longerForms } from './longer.js';
import { blockAtHome, type PlacedBlock } from './placed.js';
import type { MasonryPlan } from './plan.js';
import type { Stop } from './stops.js';

/** Something to build and to cast blocks in: a mould, or what longer blocks are cast in. */
export interface CastForm {
  readonly id: string;
  /** Its block, dry. */
  readonly block: PlacedBlock;
  /** Courses laid with it, and what it has the beds and faces of. */
  readonly courses: readonly string[];
  readonly shapedFor: string;
  /** Equal blocks that one of its blocks takes the place of. */
  readonly places: number;
  /** Stop boards for blocks that will be cut. */
  readonly stops: readonly Stop[];
}

/** Every form of a house: the moulds, then those of longer blocks in laying order. */
export function castForms(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): CastForm[] {
  return [
    ...plan.moulds.moulds.map(({ id, mould, courses }) => ({
      id,
      block: blockAtHome(mould),
      courses: courses.map((c) => `${c.domeId}-${c.course}`),
      shapedFor: `${mould.parent.domeId}-${mould.parent.course.index}`,
      places: 1,
      stops: [],
    })),
    ...longerForms(plan, laid).map(({ id, domeId, course, modules, mould, form, stops }) => ({
      id,
      block: form,
      courses: [`${domeId}-${course}`],
      shapedFor: mould ?? `${domeId}-${course}`,
      places: modules,
      stops,
    })),
  ];
}
