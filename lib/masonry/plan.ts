import type { Bond } from '../description/house.js';
import type { BlockSeat, Course, CourseCast } from '../setout/courses.js';
import type { HouseSetout } from '../setout/house.js';
import { bondHouse } from './bond/bond.js';
import type { CourseBond } from './bond/dome.js';
import { type FitLimits, fitLimits } from './moulds/limits.js';
import { placeBlock } from './moulds/place.js';
import { type LaidMould, type MouldSchedule, scheduleMoulds } from './moulds/schedule.js';
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
export function planMasonry(setout: HouseSetout, bond: Bond = setout.house.blocks.bond): MasonryPlan {
  const bonded = bondHouse(setout, bond);
  const schedule = scheduleMoulds(bonded.setout, fitLimits(setout.house.blocks));
  const limits = fitLimits(setout.house.blocks);
  const found = new Map(schedule.courses.map((c) => [`${c.domeId} ${c.course}`, c.laid]));
  return {
    setout: withCourses(bonded.setout, (dome, course) => {
      const laid = found.get(`${dome.id} ${course.index}`);
      return laid ? { ...course, perpend: laid.perpend, cast: castOf(course, laid, limits) } : course;
    }),
    bond,
    courses: bonded.courses,
    // What was proven over all numbers of blocks holds for those chosen among them.
    moulds: bonded.proof ? { ...schedule, ...bonded.proof } : schedule,
  };
}

/** How a course's blocks come out of their mould and lie, longer ones in the place of several too. */
function castOf(course: Course, { mould, placement }: LaidMould, limits: FitLimits): CourseCast {
  const { parent, slope, lean } = mould;
  const { site, up, out } = placement;
  // A course equal to the parent but for its height lays as the parent does.
  if (kindOf(parent) === kindOf(site))
    return { parent: { domeId: site.domeId, course: course.index }, slope, lean, seats: [{ up: 0, out: 0 }] };
  const seats: (BlockSeat | null)[] = [{ up, out }];
  for (let modules = 2; modules <= longestOf(course); modules++) {
    const seat = placeBlock(parent, site, course.count / modules, limits);
    seats.push(seat && { up: seat.up, out: seat.out });
  }
  return { parent: { domeId: parent.domeId, course: parent.course.index }, slope, lean, seats };
}

/** How many equal blocks the longest of a course takes the place of. */
function longestOf({ count, leftOut }: Course): number {
  let most = 1;
  for (const k of leftOut) {
    let modules = 2;
    while (leftOut.includes((k + modules - 1) % count)) modules++;
    most = Math.max(most, modules);
  }
  return most;
}

/** Name of the mould that each course is cast in; `null` where none of the family fits. */
export function mouldNames({
  moulds,
}: Pick<MasonryPlan, 'moulds'>): (at: { domeId: string; course: number }) => string | null {
  const names = new Map(moulds.courses.map((c) => [`${c.domeId} ${c.course}`, c.laid?.id]));
  return ({ domeId, course }) => names.get(`${domeId} ${course}`) ?? null;
}
