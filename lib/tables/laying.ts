import { figureText } from '../base/reader-units.js';
import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-courses.js';
import type { Table } from '../documents/table.js';
import { DEG } from '../math/vec.js';
import { secondNumbers } from '../setout/courses.js';
import type { HouseSetout } from '../setout/house.js';
import { HANGING_FACTOR, ROPE_FRICTION } from '../statics/laying.js';
import type { CourseLaying } from '../statics/laying-courses.js';
import { HIGH_RISK_KG, LAYING_LIFT, recommendedLiftKg } from '../statics/lifting.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const HOLD: Readonly<Record<CourseLaying['hold'], string>> = {
  nothing: texts.staysByItself,
  weight: texts.hangWeightOnEach,
  prop: texts.propEachBlock,
  centering: texts.centeringUnderCourse,
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
    title: texts.layingCourses,
    columns: [
      textColumn('dome', texts.dome),
      countColumn('course', texts.course),
      countColumn('blocks', texts.blocks),
      ...(mixed ? [textColumn('seconds', texts.ofThemSecondMould)] : []),
      { ...degreesColumn('tilt', texts.bedLeansInward), decimals: 1 },
      textColumn('fresh', texts.freshBlock),
      textColumn('hold', texts.holdIt),
      numberColumn('hang', texts.weightToHang, mass),
      countColumn('weights', texts.weightsAtOnce),
      textColumn('until', texts.until),
      numberColumn('dry', texts.heaviestBlockDry, mass),
      numberColumn('wet', texts.heaviestBlockFreshlyDemoulded, mass),
      textColumn('lift', texts.lift),
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
      lift: liftText(c),
    })),
    notes: [
      CAUTION.rings,
      texts.nothingIsTakenAway,
      texts.weightsRopeFromBlocks(house.house.material.friction, HANGING_FACTOR, ROPE_FRICTION),
      texts.closedRingCarriesItself,
      texts.liftRecommended(lift(recommendedLiftKg(LAYING_LIFT)), lift(HIGH_RISK_KG)),
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
  const does = [slides ? texts.slides : '', tips ? texts.tips : ''].filter((t) => t !== '').join(texts.andBetween);
  if (does !== '') return does;
  return stackTips ? texts.staysItsPierTips : texts.stays;
}

function untilText({ hold, closedAbove, brokenBy }: CourseLaying): string {
  if (hold === 'nothing') return '';
  if (hold !== 'centering') return texts.itsRingIsClosed;
  const above = closedAbove === null ? texts.crownOrCurb : texts.courseIsClosed(closedAbove);
  return texts.andStruck(above, brokenBy.join(', '));
}

/** A moist block may need a hoist where the same one doesn't once it is dry. */
function liftText({ dryKg, wetKg }: CourseLaying): string {
  if (dryKg > HIGH_RISK_KG) return texts.hoistOrSmallerBlocks;
  const dry = dryKg > recommendedLiftKg(LAYING_LIFT) ? texts.twoPeopleOrFew : texts.onePerson;
  return wetKg > HIGH_RISK_KG ? texts.hoistWhileMoist(dry) : dry;
}
