import { SAME_ANGLE_RAD, SAME_POINT } from '../../base/tolerances.js';
import { type Course, type CourseMix, perpendBearings } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { lapBound, lapsBetween } from '../laps.js';
import { cuttersOf } from '../lay.js';
import { massKg, wetDensity } from '../mass.js';
import { fitLimits } from '../moulds/limits.js';
import { type Merges, mergeShort } from './merge.js';
import { volumePerRadian } from './ring.js';
import { laidSpans } from './spans.js';
import { bestStart, perpendsInLine } from './starts.js';

/** How one course came to be bonded; lengths mm. */
export interface CourseBond {
  readonly domeId: string;
  readonly course: Course;
  /** Least lap on the course below, over the whole ring; `null` for the lowest. */
  readonly lap: number | null;
  /** No start gives a longer least lap: π r / lcm(n, m); `null` beside blocks of two moulds too. */
  readonly lapBound: number | null;
  /** Perpends below that lap less than the least lap. */
  readonly shortLaps: number;
  /** Perpends that go on in one line through the two courses below. */
  readonly lines: number;
  /** Pieces beside cuts, by their longest runs at mid-thickness. */
  readonly pieces: Merges;
}

/** Where blocks of two moulds lie in a course. */
export type MixOf = (domeId: string, course: number) => CourseMix | null;

/** Start bearings and merged pieces of a dome's courses from the floor up, with the numbers of blocks given. */
export function bondDome(
  house: HouseSetout,
  dome: DomeSetout,
  counts: readonly number[],
  mixOf: MixOf = () => null,
): CourseBond[] {
  const rows: CourseBond[] = [];
  const cutters = cuttersOf(house, dome);
  let home = 0;
  for (const [k, set] of dome.courses.entries()) {
    const course = { ...set, count: counts[k] as number, mix: mixOf(dome.id, set.index) };
    home = homeStart(home, counts[k - 1], course.count);
    const below = rows[k - 1]?.course;
    rows.push(bondCourse(house, dome, { course, home, cutters, below, twoBelow: rows[k - 2]?.course }));
  }
  return rows;
}

/** Where a ring starts that nothing cuts: half a block on, or as far as its lattice with the ring below allows. */
function homeStart(below: number, lower: number | undefined, upper: number): number {
  if (lower === undefined) return 0;
  return (below + lapBound(lower, upper, 1)) % ((2 * Math.PI) / upper);
}

/** Part of the heaviest mass that a merged piece may have by its run: cuts run aslant, and leave more outside. */
const KEPT = 0.97;

interface CourseProblem {
  readonly course: Course;
  readonly home: number;
  readonly cutters: ReturnType<typeof cuttersOf>;
  readonly below: Course | undefined;
  readonly twoBelow: Course | undefined;
}

function bondCourse(house: HouseSetout, dome: DomeSetout, problem: CourseProblem): CourseBond {
  const { home, cutters, below, twoBelow } = problem;
  const { shortestPiece, leastLap, heaviestKg } = house.house.blocks;
  // What pieces lose to their perpends is known when moulds are; thinner ones only make them longer.
  const joint = fitLimits(house.house.blocks).thick;
  const { count, mix, midRadius: radius } = problem.course;
  const spans = laidSpans(dome, problem.course, cutters) ?? [];
  const under = below ? perpendBearings(below) : [];
  const within = joint / radius;
  const lines = twoBelow ? perpendsInLine(under, perpendBearings(twoBelow), within) : [];
  // A piece made one with its neighbour is cut when it is dry: its size then, and moist.
  const kgPerRadian = massKg(volumePerRadian(dome, problem.course), wetDensity(house.house.material));
  const rules = {
    ring: { count, mix },
    radius,
    joint,
    shortestPiece,
    heaviestKg: heaviestKg * KEPT,
    kgPerRadian,
  };
  const start = bestStart({ ...rules, leastLap, spans, below: under, lines, home });
  const merges = mergeShort(rules, start, spans);
  const course: Course = { ...problem.course, startRad: start, leftOut: merges.leftOut };
  const laps = below ? lapsBetween(below, course) : [];
  return {
    domeId: dome.id,
    course,
    lap: below ? Math.min(...laps) : null,
    lapBound: below && !mix && !below.mix ? lapBound(below.count, count, radius) : null,
    shortLaps: laps.filter((lap) => lap < leastLap - SAME_POINT).length,
    lines: perpendsInLine(perpendBearings(course), lines, within - SAME_ANGLE_RAD).length,
    pieces: merges,
  };
}
