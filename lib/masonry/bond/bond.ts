import type { Bond, House } from '../../description/house.js';
import type { Course } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { fitLimits } from '../moulds/limits.js';
import { type Effort, FULL_EFFORT, type MixPlan, searchMixed, wholeCourses } from '../moulds/mix-search.js';
import { siteOf } from '../moulds/site.js';
import type { MixPlace } from '../moulds/spread.js';
import { withCourses } from '../with-courses.js';
import { bandedCounts } from './banded.js';
import { countList, countsOf } from './counts.js';
import { bondDome, type CourseBond, type MixOf } from './dome.js';
import { freeCounts } from './free.js';

/** What the search for numbers of blocks proved of the number of moulds. */
export type Proof = Pick<MixPlan, 'atLeast' | 'proven' | 'nodes' | 'candidates'>;

export interface BondedHouse {
  /** The house with its courses in bond. */
  readonly setout: HouseSetout;
  readonly bond: Bond;
  /** In the order of domes and courses. */
  readonly courses: readonly CourseBond[];
  /** Of the `free` bond: over all numbers of blocks that the courses may have. */
  readonly proof: Proof | null;
}

/** Numbers of blocks, dome by dome. */
export interface HouseCounts {
  readonly counts: readonly (readonly number[])[];
  /** Of the `free` bond: the moulds found over all numbers of blocks that the courses may have. */
  readonly found: MixPlan | null;
}

const proofOf = ({ atLeast, proven, nodes, candidates }: Proof): Proof => ({ atLeast, proven, nodes, candidates });

/** Chooses the numbers of blocks that a bond gives every course. */
export const countHouse = (setout: HouseSetout, bond: Bond, effort = FULL_EFFORT): HouseCounts =>
  bond === 'banded' ? { counts: bandedHouse(setout), found: null } : freeHouse(setout, effort);

/** Chooses numbers of blocks, start bearings and merged pieces of every course. */
export function bondHouse(
  setout: HouseSetout,
  bond: Bond = setout.house.blocks.bond,
  { counts, found }: HouseCounts = countHouse(setout, bond),
  mixOf?: MixOf,
): BondedHouse {
  const courses = setout.domes.flatMap((dome, d) => bondDome(setout, dome, counts[d] as readonly number[], mixOf));
  const bonded = new Map(courses.map(({ domeId, course }) => [`${domeId} ${course.index}`, course]));
  return {
    setout: withCourses(setout, (dome, course) => bonded.get(`${dome.id} ${course.index}`) ?? course),
    bond,
    courses,
    proof: found && proofOf(found),
  };
}

const bandedHouse = ({ house, domes }: HouseSetout): number[][] =>
  domes.map((dome) => {
    const ranges = dome.courses.map((course) => countsOf(house, dome, course, 'piece'));
    return bandedCounts(dome.courses, ranges, house.blocks.leastLap);
  });

function freeHouse({ house, domes }: HouseSetout, effort: Effort): HouseCounts {
  const places = domes.map((dome) =>
    dome.courses.map((course) => placeOf(house, dome, course, countList(countsOf(house, dome, course)))),
  );
  const limits = fitLimits(house.blocks);
  const found =
    house.blocks.mouldsInCourse > 1
      ? searchMixed(places.flat(), limits, effort)
      : wholeCourses(places.flat(), limits, effort);
  let next = 0;
  const counts = places.map((own, d) => {
    const options = own.map(({ counts: all }) => {
      const ways = [...(found.fits[next] ?? []), ...(found.mixes[next++] ?? [])];
      const allowed = [...new Set(ways.map(({ count }) => count))];
      return allowed.length > 0 ? allowed : all;
    });
    const ideals = own.map(({ ideal }) => ideal);
    return freeCounts((domes[d] as DomeSetout).courses, options, ideals, house.blocks.leastLap);
  });
  return { counts, found };
}

/** A course as a place for blocks of one mould or of two, in any of these numbers; none of two wider or narrower than blocks may be at all. */
export function placeOf(house: House, dome: DomeSetout, course: Course, counts: readonly number[]): MixPlace {
  const { fewest, most, ideal } = countsOf(house, dome, course);
  const spread = countList({ fewest: Math.min(fewest, ...counts), most: Math.max(most, ...counts), ideal });
  return { site: siteOf(dome, course), counts, ideal, spread };
}
