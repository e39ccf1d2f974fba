import type { Bond } from '../description/house.js';
import { type BlockSeat, blockPlaces, type Course, type CourseCast, isSecond, placesFrom } from '../setout/courses.js';
import type { HouseSetout } from '../setout/house.js';
import { bondHouse, countHouse, placeOf } from './bond/bond.js';
import type { CourseBond } from './bond/dome.js';
import { type FitLimits, fitLimits } from './moulds/limits.js';
import { type Effort, FULL_EFFORT, type MixPlan, searchMixed, wholeCourses } from './moulds/mix-search.js';
import { placeBlock } from './moulds/place.js';
import {
  type CourseMould,
  type LaidMould,
  type MouldSchedule,
  type SecondMould,
  scheduleMoulds,
} from './moulds/schedule.js';
import { kindOf } from './moulds/site.js';
import { withCourses } from './with-courses.js';

/** The house in bond, and the moulds that its blocks are cast in. */
export interface MasonryPlan {
  /** Courses with their numbers of blocks, starts, merged pieces, and the perpends that their moulds leave. */
  readonly setout: HouseSetout;
  readonly bond: Bond;
  /** In the order of domes and courses, as `moulds.courses`. */
  readonly courses: readonly CourseBond[];
  readonly moulds: MouldSchedule;
}

/** Bonds a house and finds the fewest moulds for it. Blocks, joints and tables all follow from what comes out. */
export function planMasonry(
  setout: HouseSetout,
  bond: Bond = setout.house.blocks.bond,
  effort = FULL_EFFORT,
): MasonryPlan {
  const limits = fitLimits(setout.house.blocks);
  const counts = countHouse(setout, bond, effort);
  const counted = new Map(setout.domes.map((dome, d) => [dome.id, counts.counts[d] as readonly number[]]));
  const numbered = withCourses(setout, (dome, course) => ({
    ...course,
    count: counted.get(dome.id)?.[course.index - 1] ?? course.count,
  }));
  const schedule = scheduleMoulds(numbered, limits, mouldsFor(numbered, limits, counts.found, effort));
  const found = new Map(schedule.courses.map((c) => [`${c.domeId} ${c.course}`, c]));
  const bonded = bondHouse(setout, bond, counts, (domeId, course) => {
    const second = found.get(`${domeId} ${course}`)?.second;
    return second ? { seconds: second.blocks, angles: second.angles, cast: null } : null;
  });
  return {
    setout: withCourses(bonded.setout, (dome, course) => {
      const own = found.get(`${dome.id} ${course.index}`);
      if (!own?.laid) return course;
      const { laid, second } = own;
      const cast = castOf(course, laid, limits);
      const mix = second && course.mix && { ...course.mix, cast: castOf(course, second, limits) };
      return { ...course, perpend: laid.perpend, cast, mix };
    }),
    bond,
    courses: bonded.courses,
    // What was proven over all numbers of blocks holds for those chosen among them.
    moulds: bonded.proof ? { ...schedule, ...bonded.proof } : schedule,
  };
}

/** The fewest moulds for courses that have their numbers of blocks. */
function mouldsFor({ house, domes }: HouseSetout, limits: FitLimits, found: MixPlan | null, effort: Effort): MixPlan {
  const mixed = house.blocks.mouldsInCourse > 1;
  // Where courses are mixed, what was found for any number of blocks holds for those chosen among them.
  if (found?.mixes.some((ways) => ways.length > 0)) return found;
  const places = domes.flatMap((dome) =>
    dome.courses.map((course) => {
      const place = placeOf(house, dome, course, [course.count]);
      return mixed ? place : { ...place, ideal: course.count };
    }),
  );
  return mixed && !found ? searchMixed(places, limits, effort) : wholeCourses(places, limits, effort);
}

/** How a course's blocks come out of their mould and lie, longer ones in the place of several too. */
function castOf(
  course: Course,
  { mould, placement }: Pick<LaidMould, 'mould' | 'placement'>,
  limits: FitLimits,
): CourseCast {
  const { parent, slope, lean } = mould;
  const { site, up, out } = placement;
  // A course equal to the parent but for its height lays as the parent does.
  if (kindOf(parent) === kindOf(site))
    return { parent: { domeId: site.domeId, course: course.index }, slope, lean, seats: [{ up: 0, out: 0 }] };
  const seats: (BlockSeat | null)[] = [{ up, out }];
  // Longer blocks among those of two moulds are of several lengths: each has its course's own beds.
  for (let modules = 2; !course.mix && modules <= longestOf(course); modules++) {
    const seat = placeBlock(parent, site, course.count / modules, limits);
    seats.push(seat && { up: seat.up, out: seat.out });
  }
  return { parent: { domeId: parent.domeId, course: parent.course.index }, slope, lean, seats };
}

/** How many places the longest block of a course takes. */
const longestOf = (course: Course): number => Math.max(...blockPlaces(course).map((k) => placesFrom(course, k)), 1);

/** Name of the mould that a block of one place is cast in; `null` where none of the family fits its course. */
export function mouldNames({
  moulds,
}: Pick<MasonryPlan, 'moulds'>): (at: { domeId: string; course: number; number: number }) => string | null {
  const found = new Map(moulds.courses.map((c) => [`${c.domeId} ${c.course}`, c]));
  return ({ domeId, course, number }) => {
    const own = found.get(`${domeId} ${course}`);
    if (!own?.laid) return null;
    return own.second && isSecond(ringOf(own, own.second), number - 1) ? own.second.id : own.laid.id;
  };
}

const ringOf = ({ count }: CourseMould, { blocks, angles }: SecondMould) => ({
  count,
  mix: { seconds: blocks, angles },
});
