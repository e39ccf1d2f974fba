import { SAME_POINT } from '../base/tolerances.js';
import type { BlockRules } from '../description/house.js';
import { monotoneRoot } from '../math/roots.js';
import { type MeridianSpan, spanPoint } from './span.js';

/**
 * One ring of blocks. `from` and `to` are arc lengths along the intrados of its span; the bed joint fills
 * `from` to `bed`, the blocks `bed` to `to`. All beds are normal to the meridian.
 */
export interface Course {
  /** 1 for the lowest course of the dome, stem wall included. */
  readonly index: number;
  readonly part: 'stem' | 'shell';
  readonly from: number;
  readonly bed: number;
  readonly to: number;
  /** Equal blocks round the whole ring. */
  readonly count: number;
  /** Bearing of the first perpend's middle, radians. */
  readonly startRad: number;
  /** Perpends left out, counted from 0 at the first, where a short piece is one with its neighbour. */
  readonly leftOut: readonly number[];
  /** Thickness of the perpends in the middle of the blocks' heads. */
  readonly perpend: number;
  /** Radius at mid-thickness, mid-height of the blocks. */
  readonly midRadius: number;
  /** What mould its blocks come out of and how they lie; `null`: each fills its place between upright planes. */
  readonly cast: CourseCast | null;
  /** Of a course with blocks of two moulds, that of `cast` and another; `null`: all are of one and in equal places. */
  readonly mix: CourseMix | null;
}

/** A second mould in a course, its blocks spread evenly among the first mould's; plain numbers. */
export interface CourseMix {
  /** How many blocks are of it, fewer than half or half of all. */
  readonly seconds: number;
  /** Angle of the ring that a block of the first mould takes with its joint, and one of the second; radians. */
  readonly angles: readonly [number, number];
  readonly cast: CourseCast | null;
}

/** What tells where the places of a ring are. */
export type Ring = Pick<Course, 'count'> & { readonly mix: Pick<CourseMix, 'seconds' | 'angles'> | null };

/** How many of a ring's places before place `k`, counted from 0, have blocks of the second mould; on through all turns. */
const secondsBefore = ({ count, mix }: Ring, k: number): number => (mix ? Math.floor((k * mix.seconds) / count) : 0);

/** Whether place `k` of a ring, counted from 0, has a block of the second mould. */
export const isSecond = (ring: Ring, k: number): boolean => secondsBefore(ring, k + 1) > secondsBefore(ring, k);

/** Angle from the first perpend of a ring to that before place `k`, radians; on through all turns, and back. */
export function turnTo(ring: Ring, k: number): number {
  if (!ring.mix) return (2 * Math.PI * k) / ring.count;
  const seconds = secondsBefore(ring, k);
  return (k - seconds) * ring.mix.angles[0] + seconds * ring.mix.angles[1];
}

/** Angle of place `k`, radians. */
export const placeAngle = (ring: Ring, k: number): number =>
  ring.mix ? ring.mix.angles[isSecond(ring, k) ? 1 : 0] : (2 * Math.PI) / ring.count;

/** The blocks of a course as one mould makes them; plain numbers, lengths mm. */
export interface CourseCast {
  /** Course whose beds and faces the mould has. */
  readonly parent: { readonly domeId: string; readonly course: number };
  /** The mould's heads: in the parent's place at slope · distance from the axis + lean · way up from the middle. */
  readonly slope: number;
  readonly lean: number;
  /** Seats of blocks that take the place of 1, 2 … ; `null` for one too long for the mould's beds: it has its course's own. */
  readonly seats: readonly (BlockSeat | null)[];
}

/** How far a block is moved from where its middle is the course's, along the meridian and along the normal. */
export interface BlockSeat {
  readonly up: number;
  readonly out: number;
}

interface CourseInput {
  readonly stem: MeridianSpan;
  readonly shell: MeridianSpan;
  readonly thickness: number;
  readonly curbBedS: number | null;
  readonly blocks: BlockRules;
}

/** Bearings of the middles of a course's perpends, less those left out; radians, clockwise. */
export const perpendBearings = (course: Course): number[] =>
  blockPlaces(course).map((k) => course.startRad + turnTo(course, k));

/** The place, counted from 0, that each block of a ring begins with. */
export const blockPlaces = ({ count, leftOut }: Pick<Course, 'count' | 'leftOut'>): number[] =>
  Array.from({ length: count }, (_, k) => k).filter((k) => !leftOut.includes(k));

/** Numbers of a course's blocks from its second mould, a longer one by its first place. */
export const secondNumbers = (course: Course): number[] =>
  blockPlaces(course)
    .filter((k) => placesFrom(course, k) === 1 && isSecond(course, k))
    .map((k) => k + 1);

/** How many places the block takes that begins with place `k`. */
export function placesFrom({ count, leftOut }: Pick<Course, 'count' | 'leftOut'>, k: number): number {
  let places = 1;
  while (leftOut.includes((k + places) % count)) places++;
  return places;
}

/** Least number of blocks that can make a ring. */
export const LEAST_BLOCKS = 3;

/**
 * Courses of equal arc at mid-thickness, nearest to the asked height: on the stem wall from the floor, on the
 * shell from the springing to the curb or crown. Without a curb they stop where a block's upper edge on the
 * intrados would be narrower than the shortest piece; the crown plug takes over from there.
 */
export function setOutCourses(input: CourseInput): { courses: Course[]; plugBedS: number | null } {
  const { stem, shell, thickness, curbBedS, blocks } = input;
  const courses: Course[] = [];
  addCourses(courses, stem, stem.length, thickness, blocks);
  const end = curbBedS ?? shell.length;
  addCourses(courses, shell, end, thickness, blocks);
  if (curbBedS !== null) return { courses, plugBedS: null };

  const first = courses.findIndex(
    (c) => c.part === 'shell' && (2 * Math.PI * shell.at(c.to).r) / c.count - blocks.joint < blocks.shortestPiece,
  );
  const plugBedS = first < 0 ? shell.length : (courses[first] as Course).from;
  if (first >= 0) courses.splice(first);
  return { courses, plugBedS };
}

/** Courses whose height comes nearest to the asked one; of two as near, the lower ones, since they're lighter. */
function courseCount(total: number, height: number): number {
  const few = Math.max(1, Math.floor(total / height));
  const miss = (count: number) => Math.abs(total / count - height);
  return miss(few) < miss(few + 1) - SAME_POINT ? few : few + 1;
}

function addCourses(courses: Course[], span: MeridianSpan, end: number, thickness: number, blocks: BlockRules): void {
  if (end <= 0) return;
  const middle = (s: number) => s + (thickness / 2) * (span.at(s).normalRad - span.at(0).normalRad);
  const total = middle(end);
  const number = courseCount(total, blocks.courseHeight);
  const at = (arc: number) => (arc >= total ? end : monotoneRoot((s) => middle(s) - arc, 0, end));
  for (let i = 0; i < number; i++) {
    const low = (total * i) / number;
    const from = at(low);
    const to = at((total * (i + 1)) / number);
    const bed = at(low + blocks.joint);
    const midRadius = spanPoint(span, (bed + to) / 2, thickness / 2)[0];
    const count = Math.max(LEAST_BLOCKS, Math.round((2 * Math.PI * midRadius) / blocks.length));
    const index = courses.length + 1;
    // Running bond: every other course starts half a block on.
    const startRad = index % 2 === 0 ? Math.PI / count : 0;
    courses.push({
      index,
      part: span.part,
      from,
      bed,
      to,
      count,
      startRad,
      leftOut: [],
      perpend: blocks.joint,
      midRadius,
      cast: null,
      mix: null,
    });
  }
}
