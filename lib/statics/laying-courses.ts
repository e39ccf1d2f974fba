import type { LaidBlock, LaidHouse } from '../masonry/block.js';
import { massKg, wetDensity } from '../masonry/mass.js';
import { pourOf } from '../masonry/stops.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { type FreshBlock, freshBlock, hangingShare, overhang, ringPush, slidingShare } from './laying.js';
import { weightOf } from './loads.js';

/** What holds a block from when it is set until its course carries itself. */
const HOLDS = ['nothing', 'weight', 'prop', 'centering'] as const;
export type Hold = (typeof HOLDS)[number];

/** One course while it is laid; plain data. Weights of air-dry blocks. */
export interface CourseLaying {
  readonly domeId: string;
  readonly course: number;
  readonly blocks: number;
  /** Dip of its bed, inward. */
  readonly bedRad: number;
  readonly slides: boolean;
  readonly tips: boolean;
  /** Weight of the heaviest block inside its tipping edge, mm; outside where negative. */
  readonly overhang: number;
  /** Ids of openings, passages and earlier domes that keep its ring from closing. */
  readonly brokenBy: readonly string[];
  /** Whether the pier of unclosed courses that ends with it would tip inward. */
  readonly stackTips: boolean;
  readonly hold: Hold;
  /** Force along the bed that keeps the heaviest block from sliding, kN. */
  readonly holdKn: number;
  /** To hang on each block's rope, kg; `null` where nothing is hung. */
  readonly hangKg: number | null;
  /** Weights in use at once. */
  readonly weights: number;
  /** First closed course above, for a broken one; `null` for none: the crown or curb. */
  readonly closedAbove: number | null;
  /** Heaviest block as it is laid, dry. */
  readonly dryKg: number;
  /** Heaviest block as it leaves its mould: fresh, and before it is cut. */
  readonly wetKg: number;
  /** Push in its ring once it has closed, MPa, without friction; `null` of a ring that doesn't close by itself. */
  readonly ringMpa: number | null;
}

/** How every course of the house is laid, dome by dome from the floor up. */
export function layingOf(setout: HouseSetout, laid: LaidHouse): CourseLaying[] {
  const pour = pourOf(setout, laid);
  return setout.domes.flatMap((dome) => domeLaying(setout, dome, laid.blocks, pour));
}

function domeLaying(
  setout: HouseSetout,
  dome: DomeSetout,
  laid: readonly LaidBlock[],
  pour: (block: LaidBlock) => number,
): CourseLaying[] {
  const rings = dome.courses.map((course) => {
    const blocks = laid.filter((b) => b.domeId === dome.id && b.course === course.index);
    const brokenBy = [...new Set(blocks.flatMap((b) => b.cutBy))].sort();
    const closed = brokenBy.length === 0 && blocks.length >= course.count;
    const widest = Math.max(...(course.mix?.angles ?? [(2 * Math.PI) / course.count]));
    const width = widest - setout.house.blocks.joint / course.midRadius;
    return { course, blocks, brokenBy, closed, fresh: freshOf(dome, course, width) };
  });
  return rings.map((ring, k): CourseLaying => {
    const { course, blocks, fresh, closed } = ring;
    const { material } = setout.house;
    const largest = blocks.reduce((most, b) => Math.max(most, b.volume), 0);
    const share = slidingShare(fresh, material.friction);
    const tips = overhang(fresh) > 0;
    const base = rings.slice(0, k + 1).findLastIndex((r) => r.closed) + 1;
    const stackTips = !closed && stacks(rings.slice(base, k + 1).map((r) => r.fresh));
    const hung = closed && (share > 0 || tips) ? hangingShare(fresh, material.friction) : 0;
    const hold = holdOf(closed, share > 0 || tips, stackTips, hung);
    const above = rings.findIndex((r, i) => i > k && r.closed);
    const dryKg = massKg(largest, material.dryDensity);
    // Without friction, which only lessens what the ring must carry.
    const push = ringPush(fresh.perRadian * weightOf(material.dryDensity), fresh.bedRad, 0).least;
    return {
      domeId: dome.id,
      course: course.index,
      blocks: blocks.length,
      bedRad: fresh.bedRad,
      slides: share > 0,
      tips,
      overhang: overhang(fresh),
      brokenBy: ring.brokenBy,
      stackTips,
      hold,
      holdKn: share * largest * weightOf(material.dryDensity),
      hangKg: hold === 'weight' ? hung * dryKg : null,
      weights: hold === 'weight' ? blocks.length : 0,
      closedAbove: above < 0 ? null : (rings[above]?.course.index ?? null),
      dryKg,
      wetKg: massKg(Math.max(0, ...blocks.map(pour)), wetDensity(material)),
      ringMpa: closed ? ringStress(push, dome, course) : null,
    };
  });
}

const freshOf = (dome: DomeSetout, course: Course, widthRad: number): FreshBlock =>
  freshBlock(dome[course.part], [course.bed, course.to], dome.thickness, widthRad);

function holdOf(closed: boolean, loose: boolean, stackTips: boolean, hung: number): Hold {
  if (!closed) return loose || stackTips ? 'centering' : 'nothing';
  if (!loose) return 'nothing';
  return hung <= 1 ? 'weight' : 'prop';
}

/** Whether a thin pier of these courses, the lowest first, has its weight inside the edge of any of its beds. */
function stacks(courses: readonly FreshBlock[]): boolean {
  let weight = 0;
  let moment = 0;
  for (let i = courses.length - 1; i >= 0; i--) {
    const { perRadian, meanRadius, lowerInner } = courses[i] as FreshBlock;
    weight += perRadian;
    moment += perRadian * meanRadius;
    if (moment < weight * lowerInner) return true;
  }
  return false;
}

/** Push over the section of the ring, kN/mm² as MPa. */
const ringStress = (push: number, dome: DomeSetout, { bed, to }: Course): number =>
  (push * 1000) / (dome.thickness * (to - bed));
