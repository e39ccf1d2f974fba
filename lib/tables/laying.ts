import { CAUTION } from '../base/cautions.js';
import { figureText } from '../base/reader-units.js';
import type { Table } from '../documents/table.js';
import { DEG } from '../math/vec.js';
import { secondNumbers } from '../setout/courses.js';
import type { HouseSetout } from '../setout/house.js';
import { HANGING_FACTOR, ROPE_FRICTION } from '../statics/laying.js';
import type { CourseLaying } from '../statics/laying-courses.js';
import { HIGH_RISK_KG, LAYING_LIFT, recommendedLiftKg } from '../statics/lifting.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const HOLD: Readonly<Record<CourseLaying['hold'], string>> = {
  nothing: 'stays by itself',
  weight: 'hang a weight on each block',
  prop: 'PROP each block, or a form',
  centering: 'CENTERING under the course',
};

/** One row a course, to pin up where the laying is done: how its bed leans and what holds each block till when. */
export function layingTable(house: HouseSetout, courses: readonly CourseLaying[]): Table {
  const secondsOf = (c: CourseLaying): string | null => {
    const course = house.domes.find(({ id }) => id === c.domeId)?.courses[c.course - 1];
    return course?.mix ? secondNumbers(course).join(' ') : null;
  };
  const mixed = courses.some((c) => secondsOf(c) !== null);
  const units = tableUnits(house.house.units);
  const lift = (kg: number) => figureText(kg, 'kg', house.house.units);
  const mass = { ...units.mass, decimals: 1 };
  return {
    id: 'laying',
    title: 'Laying the courses',
    columns: [
      textColumn('dome', 'dome'),
      countColumn('course', 'course'),
      countColumn('blocks', 'blocks'),
      ...(mixed ? [textColumn('seconds', 'of them from the second mould, by number')] : []),
      { ...degreesColumn('tilt', 'bed leans inward'), decimals: 1 },
      textColumn('fresh', 'a fresh block'),
      textColumn('hold', 'hold it'),
      numberColumn('hang', 'weight to hang on each', mass),
      countColumn('weights', 'weights at once'),
      textColumn('until', 'until'),
      numberColumn('dry', 'heaviest block, dry', mass),
      numberColumn('wet', 'heaviest block, freshly demoulded, before it is cut', mass),
      textColumn('lift', 'lift'),
    ],
    rows: courses.map((c) => ({
      dome: c.domeId,
      course: c.course,
      blocks: c.blocks,
      seconds: secondsOf(c),
      tilt: c.bedRad / DEG,
      fresh: freshText(c),
      hold: HOLD[c.hold],
      hang: c.hangKg === null ? null : units.mass.of(roundedUp(c.hangKg)),
      weights: c.weights > 0 ? c.weights : null,
      until: untilText(c),
      dry: units.mass.of(c.dryKg),
      wet: units.mass.of(c.wetKg),
      lift: liftText(c.dryKg),
    })),
    notes: [
      CAUTION.rings,
      'Nothing is taken away before what stands under "until" has happened. Lay a ring from one side round without a break, close it the same day, wedge the last block.',
      `Weights: rope from the block's upper outer edge over the finished courses, the weight hanging free beside the wall, hung before the block is let go. Friction of the bed ${house.house.material.friction}, ${HANGING_FACTOR} times what statics asks, friction of the rope ${ROPE_FRICTION} lost; air-dry blocks: moist ones are heavier, and so must the weight be.`,
      "A closed ring carries itself. Courses that openings break can't close: their centering stays until the first closed ring above is closed and the arches are struck.",
      `Lift: ${lift(recommendedLiftKg(LAYING_LIFT))} is what NIOSH 94-110 recommends for one person who sets two blocks a minute at chest height for two hours; over ${lift(HIGH_RISK_KG)} is high risk (HSE CIS 37). Dry blocks; on the day of demoulding they are as heavy as the column says.`,
      CAUTION.lifting,
      CAUTION.cement,
      CAUTION.cubes,
      CAUTION.authority,
    ],
  };
}

/** To the next half kilogram: weights are filled with a bucket. */
const roundedUp = (kg: number): number => Math.ceil(kg * 2) / 2;

function freshText({ slides, tips, stackTips }: CourseLaying): string {
  const does = [slides ? 'slides' : '', tips ? 'tips' : ''].filter((t) => t !== '').join(' and ');
  if (does !== '') return does;
  return stackTips ? 'stays; its pier tips' : 'stays';
}

function untilText({ hold, closedAbove, brokenBy }: CourseLaying): string {
  if (hold === 'nothing') return '';
  if (hold !== 'centering') return 'its ring is closed';
  const above = closedAbove === null ? 'the crown or curb is set' : `course ${closedAbove} is closed`;
  return `${above}, and struck: ${brokenBy.join(', ')}`;
}

function liftText(kg: number): string {
  if (kg > HIGH_RISK_KG) return 'hoist, or smaller blocks';
  return kg > recommendedLiftKg(LAYING_LIFT) ? 'two people, or few at a time' : 'one person';
}
