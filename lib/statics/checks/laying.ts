import { type Check, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-laying.js';
import { tan } from '../../math/elementary.js';
import { DEG } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { HANGING_FACTOR, ROPE_FRICTION } from '../laying.js';
import type { CourseLaying } from '../laying-courses.js';
import { HIGH_RISK_KG, LAYING_LIFT, recommendedLiftKg } from '../lifting.js';
import type { Strength } from '../strength.js';
import { computed, missing, ratioOf } from './judge.js';

const FRICTION = texts.staticsOfBlock;

/** Checks of courses while they are laid: never `ok` where anything must be held. */
export function layingChecks(
  setout: HouseSetout,
  courses: readonly CourseLaying[],
  strength: Strength | null,
): Check[] {
  return [
    ...setout.domes.flatMap(({ id }) => {
      const own = courses.filter((c) => c.domeId === id);
      return [
        freshCheck(setout, id, own),
        ...hangingCheck(id, own),
        ringsCheck(id, own),
        ...pushCheck(id, own, strength),
      ];
    }),
    ...liftingChecks(courses),
  ];
}

const most = <T>(list: readonly T[], by: (one: T) => number): T | undefined =>
  list.reduce<T | undefined>((best, one) => (best === undefined || by(one) > by(best) ? one : best), undefined);

/** `3, 5 to 9`, of ascending numbers. */
export function runsOf(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const n of numbers) {
    const last = runs[runs.length - 1];
    if (last && n === last[1] + 1) last[1] = n;
    else runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : texts.fromTo(a, b))).join(', ');
}

const listed = (courses: readonly CourseLaying[]): string => runsOf(courses.map((c) => c.course));

function freshCheck(setout: HouseSetout, domeId: string, courses: readonly CourseLaying[]): Check {
  const { friction } = setout.house.material;
  const id = `laying.${domeId}`;
  const steepest = most(courses, (c) => c.bedRad);
  const tilt = steepest?.bedRad ?? 0;
  const held = (hold: CourseLaying['hold']) => courses.filter((c) => c.hold === hold);
  const [weight, prop, centering] = [held('weight'), held('prop'), held('centering')];
  const slope = tilt < 89.9 * DEG ? tan(tilt) : tan(89.9 * DEG);
  const tipping = courses.filter((c) => c.tips);
  const loose = weight.length + prop.length + centering.length > 0;
  return {
    id,
    statement: loose ? texts.freshBlocksMustBeHeld(domeId) : texts.freshBlocksStay(domeId),
    state: loose ? 'attention' : 'ok',
    demand: computed(`${id}.slope`, texts.steepestBedSlope, slope, '1', texts.bedSlopeFormula, FRICTION, {
      'bed dip (deg)': tilt / DEG,
      'steepest course': steepest?.course ?? 'none',
      'courses in which a block slides': listed(courses.filter((c) => c.slides)) || 'none',
      'courses in which a block tips': listed(tipping) || 'none',
    }),
    capacity: givenFigure(`${id}.friction`, texts.frictionOfBedJoint, friction, '1', {
      limit: texts.freshMortarSource,
    }),
    ratio: ratioOf(slope, friction),
    source: FRICTION,
    advice: [
      weight.length > 0 ? texts.coursesWithWeights(listed(weight)) : '',
      prop.length > 0 ? texts.coursesWithProps(listed(prop)) : '',
      centering.length > 0 ? texts.coursesWithCentering(listed(centering)) : '',
    ]
      .filter((part) => part !== '')
      .join(' '),
  };
}

function hangingCheck(domeId: string, courses: readonly CourseLaying[]): Check[] {
  const worst = most(
    courses.filter((c) => c.hangKg !== null),
    (c) => c.hangKg ?? 0,
  );
  if (!worst) return [];
  const id = `hung-weight.${domeId}`;
  const hung = courses.filter((c) => c.hold === 'weight');
  const count = Math.max(...courses.map((c) => c.weights));
  const source = texts.staticsRopeOverFinished;
  return [
    {
      id,
      statement: texts.weightsOnRopesHold(domeId, listed(hung), hung.length, count),
      state: 'attention',
      demand: computed(
        `${id}.weight`,
        texts.weightToHang(worst.course),
        worst.hangKg ?? 0,
        'kg',
        texts.hangingWeightFormula(HANGING_FACTOR),
        texts.hangingWeightSource,
        { 'bed dip λ (deg)': worst.bedRad / DEG, 'μ rope': ROPE_FRICTION, 'weights at once': count },
      ),
      capacity: computed(
        `${id}.block`,
        texts.weightOfBlockItself,
        worst.dryKg,
        'kg',
        texts.volumeDryDensityProp,
        'derived',
      ),
      ratio: ratioOf(worst.hangKg ?? 0, worst.dryKg),
      source,
      advice: texts.fastenEachRope,
    },
  ];
}

function ringsCheck(domeId: string, courses: readonly CourseLaying[]): Check {
  const id = `open-rings.${domeId}`;
  const broken = courses.filter((c) => c.brokenBy.length > 0);
  const held = broken.filter((c) => c.hold === 'centering');
  const worst = most(broken, (c) => c.bedRad);
  const above = worst?.closedAbove ?? null;
  return {
    id,
    statement:
      broken.length === 0
        ? texts.everyRingOfDome(domeId)
        : held.length === 0
          ? texts.openRingsStand(listed(broken), domeId)
          : texts.openRingsFall(listed(broken), domeId, listed(held)),
    state: held.length > 0 ? 'attention' : 'ok',
    demand: computed(
      `${id}.courses`,
      texts.coursesThatNeedCentering,
      held.length,
      'courses',
      texts.coursesOfOpenRing,
      texts.staticsThinPierMortar,
      {
        'courses of open rings': broken.length,
        'broken by': [...new Set(broken.flatMap((c) => c.brokenBy))].join(', ') || 'none',
      },
    ),
    source: texts.openRingSource,
    advice:
      held.length > 0
        ? texts.keepCenteringUnderCourses(
            listed(held),
            above === null ? texts.crownOrCurb : texts.courseFirstClosedRing(above),
          )
        : '',
  };
}

function pushCheck(domeId: string, courses: readonly CourseLaying[], strength: Strength | null): Check[] {
  const worst = most(
    courses.filter((c) => c.ringMpa !== null),
    (c) => c.ringMpa ?? 0,
  );
  if (!worst) return [];
  const id = `ring-push.${domeId}`;
  const statement = texts.freshlyClosedRing(domeId);
  const demand = computed(
    `${id}.stress`,
    texts.greatestPushCourse(worst.course),
    worst.ringMpa ?? 0,
    'MPa',
    texts.ringPushFormula,
    texts.staticsOfRingWithoutFriction,
    { 'bed dip λ (deg)': worst.bedRad / DEG },
  );
  const source = texts.staticsOfRing;
  if (!strength) return [missing(id, statement, 'material.compressive-strength', source, { demand })];
  const holds = (worst.ringMpa ?? 0) <= strength.designMpa;
  return [
    {
      id,
      statement,
      state: holds ? (strength.from === 'table' ? 'attention' : 'ok') : 'fails',
      demand,
      capacity: givenFigure(`${id}.strength`, texts.designStrengthOfMasonry, strength.designMpa, 'MPa', {
        formula: texts.masonryStrengthFormula,
        source: texts.masonryStrengthSource,
        inputs: { 'block strength fb (MPa)': strength.blockMpa },
      }),
      ratio: ratioOf(worst.ringMpa ?? 0, strength.designMpa),
      source,
      advice: holds ? texts.strengthIsTableValue : texts.strongerBlocksKeepRing,
    },
  ];
}

const NIOSH = texts.nioshSource;

function liftingChecks(courses: readonly CourseLaying[]): Check[] {
  const laid = most(courses, (c) => c.dryKg);
  const fresh = most(courses, (c) => c.wetKg);
  if (!laid || !fresh) return [];
  return [
    liftingCheck('lifting-dry', 'laid', 'dry', laid.dryKg),
    liftingCheck('lifting-wet', texts.freshlyDemoulded, 'wet', fresh.wetKg),
  ];
}

function liftingCheck(id: string, when: string, how: string, kg: number): Check {
  const limit = recommendedLiftKg(LAYING_LIFT);
  const { horizontal, vertical, travel, twistDeg, frequency, coupling } = LAYING_LIFT;
  const advice =
    kg > HIGH_RISK_KG ? texts.liftIsHighRisk(HIGH_RISK_KG) : kg > limit ? texts.smallerBlocksFewerLifts : '';
  return {
    id,
    statement: texts.heaviestBlockIsOne(when),
    state: kg <= limit ? 'ok' : 'attention',
    demand: computed(
      `${id}.mass`,
      texts.massOfHeaviestBlock(how),
      kg,
      'kg',
      how === 'wet' ? texts.wetLiftFormula : texts.dryLiftFormula,
      'derived',
    ),
    capacity: computed(`${id}.limit`, texts.recommendedForOnePerson, limit, 'kg', texts.nioshFormula, NIOSH, {
      'hands from the ankles H (cm)': horizontal,
      'hands above the ground V (cm)': vertical,
      'travel D (cm)': travel,
      'twist A (deg)': twistDeg,
      'frequency FM (2 a minute, 2 hours)': frequency,
      'grip CM (fair)': coupling,
    }),
    ratio: kg / limit,
    source: texts.nioshAndHse(NIOSH, HIGH_RISK_KG),
    advice,
  };
}
