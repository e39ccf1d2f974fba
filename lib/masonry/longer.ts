import { type Course, placesFrom } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { Block, LaidBlock, LaidHouse } from './block.js';
import { formIn, type PlacedBlock, placedBlock } from './placed.js';
import { type MasonryPlan, mouldNames } from './plan.js';
import { type Stop, stopsOf } from './stops.js';

/** What blocks are cast in that take the place of several: their course's mould with its heads moved apart. */
export interface LongerForm {
  readonly id: string;
  readonly domeId: string;
  readonly course: number;
  /** Equal blocks that one of them takes the place of. */
  readonly modules: number;
  /** Mould whose beds and faces it has; `null` where those would leave the bed joints: it has its course's own. */
  readonly mould: string | null;
  readonly placed: PlacedBlock;
  /** The same as long as it is built: as the longest of its blocks is cast. */
  readonly form: PlacedBlock;
  /** Stop boards for its blocks that lose a head. */
  readonly stops: readonly Stop[];
  readonly whole: number;
  readonly cut: number;
}

/** Name of the form of a longer block; `null` for one of a single place. */
export function longerFormId({ courses }: DomeSetout, block: Block): string | null {
  const course = courses[block.course - 1] as Course;
  const { places, angle } = formIn(course, block.number);
  if (places < 2) return null;
  const name = `${block.domeId}-${block.course}-long${places > 2 ? places : ''}`;
  if (!course.mix) return name;
  // Of two moulds, so many places differ in length by how many of them are of the second.
  const seconds = Math.round((angle - places * course.mix.angles[0]) / (course.mix.angles[1] - course.mix.angles[0]));
  return seconds > 0 ? `${name}-${seconds}` : name;
}

/** What a block is cast in: its course's mould, or the form of longer blocks; `null` where no mould fits its course. */
export function formNames(plan: Pick<MasonryPlan, 'setout' | 'moulds'>): (block: Block) => string | null {
  const domes = new Map(plan.setout.domes.map((dome) => [dome.id, dome]));
  const mouldOf = mouldNames(plan);
  return (block) => longerFormId(domes.get(block.domeId) as DomeSetout, block) ?? mouldOf(block);
}

/** Forms of all longer blocks, in laying order. */
export function longerForms(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): LongerForm[] {
  const domes = new Map(plan.setout.domes.map((dome) => [dome.id, dome]));
  const mouldOf = mouldNames(plan);
  const found = new Map<string, LaidBlock[]>();
  const allStops = stopsOf(plan.setout, laid);
  for (const block of laid.blocks) {
    const id = longerFormId(domes.get(block.domeId) as DomeSetout, block);
    if (id !== null) found.set(id, [...(found.get(id) ?? []), block]);
  }
  return [...found].map(([id, blocks]) => {
    const [first] = blocks as [LaidBlock];
    const dome = domes.get(first.domeId) as DomeSetout;
    const course = dome.courses[first.course - 1] as Course;
    const placed = placedBlock(plan.setout, dome, first);
    const numbers = (list: readonly LaidBlock[]) => new Set(list.map((b) => b.number)).size;
    const cut = numbers(blocks.filter((b) => b.cutBy.length > 0));
    const modules = placesFrom(course, first.number - 1);
    const stops = blocks.flatMap(({ mark }) => allStops.get(mark) ?? []);
    // A block without a board fills the whole length.
    const longest = blocks.map(({ mark }) => allStops.get(mark)?.placed ?? placed);
    const own = placed.atHome && !isParent(course, dome.id);
    return {
      id,
      domeId: dome.id,
      course: course.index,
      modules,
      mould: own ? null : mouldOf(first),
      placed,
      form: longest.reduce((a, b) => (b.head.turnRad > a.head.turnRad ? b : a), longest[0] ?? placed),
      stops,
      whole: numbers(blocks) - cut,
      cut,
    };
  });
}

const isParent = ({ cast, index }: Course, domeId: string): boolean =>
  cast !== null && cast.parent.domeId === domeId && cast.parent.course === index;
