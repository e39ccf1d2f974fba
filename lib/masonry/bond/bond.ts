import type { Bond } from '../../description/house.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import type { Place } from '../moulds/family.js';
import { fitLimits } from '../moulds/limits.js';
import { type MouldPlan, searchMoulds } from '../moulds/search.js';
import { siteOf } from '../moulds/site.js';
import { withCourses } from '../with-courses.js';
import { bandedCounts } from './banded.js';
import { countList, countsOf } from './counts.js';
import { bondDome, type CourseBond } from './dome.js';
import { freeCounts } from './free.js';

/** What the search for numbers of blocks proved of the number of moulds. */
export type Proof = Pick<MouldPlan, 'atLeast' | 'proven' | 'nodes' | 'candidates'>;

export interface BondedHouse {
  /** The house with its courses in bond. */
  readonly setout: HouseSetout;
  readonly bond: Bond;
  /** In the order of domes and courses. */
  readonly courses: readonly CourseBond[];
  /** Of the `free` bond: over all numbers of blocks that the courses may have. */
  readonly proof: Proof | null;
}

/** Chooses numbers of blocks, start bearings and merged pieces of every course. */
export function bondHouse(setout: HouseSetout, bond: Bond = setout.house.blocks.bond): BondedHouse {
  const { counts, proof } = bond === 'banded' ? { counts: bandedHouse(setout), proof: null } : freeHouse(setout);
  const courses = setout.domes.flatMap((dome, d) => bondDome(setout, dome, counts[d] as readonly number[]));
  const bonded = new Map(courses.map(({ domeId, course }) => [`${domeId} ${course.index}`, course]));
  return {
    setout: withCourses(setout, (dome, course) => bonded.get(`${dome.id} ${course.index}`) ?? course),
    bond,
    courses,
    proof,
  };
}

const bandedHouse = ({ house, domes }: HouseSetout): number[][] =>
  domes.map((dome) => {
    const ranges = dome.courses.map((course) => countsOf(house, dome, course, 'piece'));
    return bandedCounts(dome.courses, ranges, house.blocks.leastLap);
  });

function freeHouse({ house, domes }: HouseSetout): { counts: number[][]; proof: Proof } {
  const places = domes.map((dome) =>
    dome.courses.map((course): Place => {
      const range = countsOf(house, dome, course);
      return { site: siteOf(dome, course), counts: countList(range), ideal: range.ideal };
    }),
  );
  const { fits, atLeast, proven, nodes, candidates } = searchMoulds(places.flat(), fitLimits(house.blocks));
  let next = 0;
  const counts = places.map((own, d) => {
    const options = own.map(({ counts: all }) => {
      const allowed = [...new Set((fits[next++] ?? []).map((fit) => fit.count))];
      return allowed.length > 0 ? allowed : all;
    });
    const ideals = own.map(({ ideal }) => ideal);
    return freeCounts((domes[d] as DomeSetout).courses, options, ideals, house.blocks.leastLap);
  });
  return { counts, proof: { atLeast, proven, nodes, candidates } };
}
