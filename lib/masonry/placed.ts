import { remembered } from '../base/remembered.js';
import { acos, asin, atan2, cos, hypot, sin } from '../math/elementary.js';
import { integrate } from '../math/quadrature.js';
import type { Vec2 } from '../math/vec.js';
import { type BlockSeat, type Course, type CourseCast, isSecond, placesFrom, turnTo } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { type MeridianSpan, spanPoint } from '../setout/span.js';
import type { Block } from './block.js';

/**
 * Right head of a block, a plane: on the circle of radius r about the axis at height z it stands at the angle
 * `turnRad` + asin((off + rise · z) / r) from the block's middle plane. An upright plane through the axis has no `off`
 * and no `rise`; a head that is moved along the ring changes its `turnRad` alone.
 */
export interface Head {
  readonly turnRad: number;
  readonly off: number;
  readonly rise: number;
}

export function headAngle({ turnRad, off, rise }: Head, r: number, z: number): number {
  if (off === 0 && rise === 0) return turnRad;
  const x = (off + rise * z) / r;
  return turnRad + (Math.abs(x) < SMALL_SINE ? smallAsin(x) : asin(x));
}

/** Where the arc's series below is exact to float64; measuring cuts asks for some million of them. */
const SMALL_SINE = 0.05;

function smallAsin(x: number): number {
  const q = x * x;
  return x * (1 + q * (1 / 6 + q * (3 / 40 + q * (15 / 336 + q * (105 / 3456 + (q * 945) / 42240)))));
}

/** A motion in a block's upright middle plane, (distance from the axis, height): turned by `rad`, then moved. */
export interface Motion {
  readonly rad: number;
  readonly cos: number;
  readonly sin: number;
  readonly out: number;
  readonly up: number;
}

export const STILL: Motion = { rad: 0, cos: 1, sin: 0, out: 0, up: 0 };

export const moved = (m: Motion, distance: number, z: number): readonly [distance: number, z: number] => [
  m.cos * distance - m.sin * z + m.out,
  m.sin * distance + m.cos * z + m.up,
];

export const movedBack = (m: Motion, distance: number, z: number): readonly [distance: number, z: number] => [
  m.cos * (distance - m.out) + m.sin * (z - m.up),
  m.cos * (z - m.up) - m.sin * (distance - m.out),
];

/**
 * A block as its mould makes it, in its place: a box of its parent course's figure of revolution between two beds and
 * two faces, brought to the place by `motion`, between two heads. Right and left are mirror images.
 */
export interface PlacedBlock {
  /** Of the parent, with its beds at `bed` and `top` and its faces at 0 and `thickness`. */
  readonly span: MeridianSpan;
  readonly bed: number;
  readonly top: number;
  readonly thickness: number;
  readonly motion: Motion;
  /** Its beds and faces are those of the course that it lies in. */
  readonly atHome: boolean;
  /** The right head about the dome's axis, and the same about the parent's. */
  readonly head: Head;
  readonly parentHead: Head;
}

/** What a course's blocks differ in: of which of its moulds they have the heads, and how much of the ring they take. */
export interface BlockForm {
  readonly second: boolean;
  readonly places: number;
  /** Of the ring, with the joint; radians. */
  readonly angle: number;
}

/** What a block of one place is, of a course's first mould or of its second. */
export function singleForm(course: Course, second = false): BlockForm {
  const angle = course.mix ? course.mix.angles[second ? 1 : 0] : (2 * Math.PI) / course.count;
  return { second, places: 1, angle };
}

/** What the block of a course is that has a number. A longer one has heads of the first mould, if any of its places has. */
export function formIn(course: Course, number: number): BlockForm {
  const forms = formsOf(course);
  const found = forms.get(number) ?? makeForm(course, number - 1);
  forms.set(number, found);
  return found;
}

/** Forms of a course's blocks by number, each made when it is first asked for. */
const formsOf = remembered((_: Course) => new Map<number, BlockForm>());

function makeForm(course: Course, k: number): BlockForm {
  const places = placesFrom(course, k);
  let second = true;
  for (let i = 0; i < places; i++) second &&= isSecond(course, k + i);
  return { second, places, angle: turnTo(course, k + places) - turnTo(course, k) };
}

/** The same for blocks of one course that differ in nothing but their place. */
export const formKey = remembered(
  ({ second, places, angle }: BlockForm): string => `${second} ${places} ${angle.toFixed(9)}`,
);

/** Blocks of a course by their form. */
const known = new WeakMap<Course, Map<string, PlacedBlock>>();

/**
 * The block uncut, in its place.
 * @throws RangeError when the house has no parent of its mould
 */
export function placedBlock(house: HouseSetout, dome: DomeSetout, block: Block): PlacedBlock {
  const course = dome.courses[block.course - 1];
  // A block that no course has set out fills its own place.
  return course?.cast && course.bed === block.bed && course.to === block.top
    ? placedInCourse(house, dome, course, formIn(course, block.number))
    : wedge(dome, block, (block.endRad - block.startRad) / 2);
}

/** What a mould's block is told by. */
interface HomeMould extends Pick<CourseCast, 'slope' | 'lean'> {
  readonly parent: {
    readonly span: MeridianSpan;
    readonly course: Pick<Course, 'bed' | 'to'>;
    readonly thickness: number;
  };
}

/** A mould's block in the parent's own place. */
export function blockAtHome({ parent: { span, course, thickness }, ...heads }: HomeMould): PlacedBlock {
  const { bed, to } = course;
  const head = headOf(heads, span.at((bed + to) / 2), STILL);
  return { span, bed, top: to, thickness, motion: STILL, atHome: true, head, parentHead: head };
}

/** The block of a course that has some form. */
export function placedInCourse(
  house: HouseSetout,
  dome: DomeSetout,
  course: Course,
  form: BlockForm = singleForm(course),
): PlacedBlock {
  const made = known.get(course) ?? new Map<string, PlacedBlock>();
  known.set(course, made);
  const key = formKey(form);
  const cast = form.second && course.mix ? course.mix.cast : course.cast;
  const half = form.angle / 2 - course.perpend / 2 / course.midRadius;
  const found =
    made.get(key) ??
    (cast
      ? placed(house, dome, course, cast, form)
      : wedge(dome, { part: course.part, bed: course.bed, top: course.to }, half));
  made.set(key, found);
  return found;
}

/** Half the angle that a course's perpend takes at a point (r, z) beside a block of its first or second mould, radians. */
export function perpendHalf(
  house: HouseSetout,
  dome: DomeSetout,
  course: Course,
  second = false,
): (r: number, z: number) => number {
  const form = singleForm(course, second);
  const { head } = placedInCourse(house, dome, course, form);
  return (r, z) => form.angle / 2 - headAngle(head, r, z);
}

function wedge(dome: DomeSetout, { part, bed, top }: Pick<Block, 'part' | 'bed' | 'top'>, half: number): PlacedBlock {
  const head: Head = { turnRad: half, off: 0, rise: 0 };
  return {
    span: dome[part],
    bed,
    top,
    thickness: dome.thickness,
    motion: STILL,
    atHome: true,
    head,
    parentHead: head,
  };
}

function placed(
  house: HouseSetout,
  dome: DomeSetout,
  course: Course,
  cast: CourseCast,
  { second, places, angle }: BlockForm,
): PlacedBlock {
  const parentDome = house.domes.find((d) => d.id === cast.parent.domeId);
  const parent = parentDome?.courses[cast.parent.course - 1];
  if (!parentDome || !parent) throw new RangeError(`course ${dome.id}-${course.index} has a mould of no course`);
  const single = motionOf(parentDome, parent, dome, course, cast.seats[0] ?? { up: 0, out: 0 });
  const own = single.rad === 0 && single.out === 0 && single.up === 0;
  const one = headOf(cast, middleOf(parentDome, parent), single);
  // The heads of a longer block are those that its two outermost would have.
  const head = { ...one, turnRad: one.turnRad + (angle - singleForm(course, second).angle) / 2 };
  const seat = cast.seats[places - 1] ?? null;
  const home = own || !seat;
  const from = home ? { dome, course } : { dome: parentDome, course: parent };
  const motion = home ? STILL : places === 1 ? single : motionOf(parentDome, parent, dome, course, seat);
  return {
    span: from.dome[from.course.part],
    bed: from.course.bed,
    top: from.course.to,
    thickness: from.dome.thickness,
    motion,
    atHome: home,
    head,
    parentHead: home ? head : seenBack(head, motion),
  };
}

/** The same block with one of its heads turned towards the other, and then laid in the middle again. */
export function shortened(block: PlacedBlock, rad: number): PlacedBlock {
  const head = { ...block.head, turnRad: block.head.turnRad - rad / 2 };
  return { ...block, head, parentHead: block.atHome ? head : seenBack(head, block.motion) };
}

const middleOf = (dome: DomeSetout, course: Course) => dome[course.part].at((course.bed + course.to) / 2);

/** Brings the middle of the parent's intrados to the course's, square to the surface, moved by the seat. */
function motionOf(parentDome: DomeSetout, parent: Course, dome: DomeSetout, course: Course, seat: BlockSeat): Motion {
  if (parentDome.id === dome.id && parent.index === course.index) return STILL;
  const [from, to] = [middleOf(parentDome, parent), middleOf(dome, course)];
  const rad = to.normalRad - from.normalRad;
  const [c, s] = [cos(rad), sin(rad)];
  return {
    rad,
    cos: c,
    sin: s,
    out: to.r - (c * from.r - s * from.z) + seat.out * to.normal[0] - seat.up * to.normal[1],
    up: to.z - (s * from.r + c * from.z) + seat.out * to.normal[1] + seat.up * to.normal[0],
  };
}

/** The head of a mould as a plane in the place that `motion` brings it to. */
function headOf(
  { slope, lean }: Pick<CourseCast, 'slope' | 'lean'>,
  middle: ReturnType<typeof middleOf>,
  motion: Motion,
): Head {
  const [c, s] = middle.normal;
  // In the parent's place: x = across · distance + lift · z + rest.
  const across = slope - lean * s;
  const lift = lean * c;
  const rest = lean * (s * middle.r - c * middle.z);
  const out = across * motion.cos - lift * motion.sin;
  const up = across * motion.sin + lift * motion.cos;
  const left = rest - out * motion.out - up * motion.up;
  const scale = hypot(1, out);
  return { turnRad: atan2(out, 1), off: left / scale, rise: up / scale };
}

/** A head of the place as it is seen from the parent. */
function seenBack({ turnRad, off, rise }: Head, m: Motion): Head {
  const [c, s] = [cos(turnRad), sin(turnRad)];
  const out = m.cos * s + m.sin * rise;
  const scale = hypot(c, out);
  return {
    turnRad: atan2(out, c),
    off: (off + rise * m.up + s * m.out) / scale,
    rise: (rise * m.cos - s * m.sin) / scale,
  };
}

/** Half angle of the block about its parent's axis, at a point of its middle plane there. */
export const halfAngleAt = ({ parentHead }: PlacedBlock, r: number, z: number): number => headAngle(parentHead, r, z);

/** Angle between the two heads, radians. */
export const headsAngle = ({ head }: PlacedBlock): number => 2 * acos(cos(head.turnRad) / hypot(1, head.rise));

const volumes = new WeakMap<PlacedBlock, number>();

/** Volume uncut with curved faces, mm³: in the parent's place, out to the heads. */
export function placedVolume(block: PlacedBlock): number {
  const found = volumes.get(block) ?? volumeOf(block);
  volumes.set(block, found);
  return found;
}

function volumeOf(block: PlacedBlock): number {
  const { span, bed, top, thickness } = block;
  return integrate(
    (s) => {
      const p = span.at(s);
      return integrate(
        (d) => {
          const r = p.r + d * p.normal[0];
          return 2 * halfAngleAt(block, r, p.z + d * p.normal[1]) * r * (1 + p.curvature * d);
        },
        0,
        thickness,
        6,
      );
    },
    bed,
    top,
    12,
  );
}

/** Half width across the middle plane at a point of it. */
export const halfWidthAt = ({ head }: PlacedBlock, distance: number, z: number): number =>
  (head.off + head.rise * z + distance * sin(head.turnRad)) / cos(head.turnRad);

/** Corners of a block with flat faces in its middle plane: lower inner, lower outer, upper outer, upper inner. */
export function flatCorners(block: PlacedBlock): readonly [Vec2, Vec2, Vec2, Vec2] {
  const { span, bed, top, thickness, motion } = block;
  const corner = (s: number, depth: number): Vec2 => {
    const [r, z] = spanPoint(span, s, depth);
    return moved(motion, r * cos(halfAngleAt(block, r, z)), z);
  };
  return [corner(bed, 0), corner(bed, thickness), corner(top, thickness), corner(top, 0)];
}
