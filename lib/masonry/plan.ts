import type { Bond } from '../description/house.js';
import type { HouseSetout } from '../setout/house.js';
import { bondHouse } from './bond/bond.js';
import type { CourseBond } from './bond/dome.js';
import { fitLimits } from './moulds/limits.js';
import { type MouldSchedule, scheduleMoulds } from './moulds/schedule.js';
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
  const joints = new Map(schedule.courses.map((c) => [`${c.domeId} ${c.course}`, c.laid?.perpend]));
  return {
    setout: withCourses(bonded.setout, (dome, course) => ({
      ...course,
      perpend: joints.get(`${dome.id} ${course.index}`) ?? course.perpend,
    })),
    bond,
    courses: bonded.courses,
    // What was proven over all numbers of blocks holds for those chosen among them.
    moulds: bonded.proof ? { ...schedule, ...bonded.proof } : schedule,
  };
}

/** Name of the mould that each course is cast in; `null` where none of the family fits. */
export function mouldNames({ moulds }: MasonryPlan): (at: { domeId: string; course: number }) => string | null {
  const names = new Map(moulds.courses.map((c) => [`${c.domeId} ${c.course}`, c.laid?.id]));
  return ({ domeId, course }) => names.get(`${domeId} ${course}`) ?? null;
}
