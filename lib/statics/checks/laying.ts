import { type Check, givenFigure } from '../../base/figures.js';
import { tan } from '../../math/elementary.js';
import { DEG } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { HANGING_FACTOR, ROPE_FRICTION } from '../laying.js';
import type { CourseLaying } from '../laying-courses.js';
import { HIGH_RISK_KG, LAYING_LIFT, recommendedLiftKg } from '../lifting.js';
import type { Strength } from '../strength.js';
import { computed, missing, ratioOf } from './judge.js';

const FRICTION = 'statics of a block on a leaning bed; fresh mortar holds by friction alone';

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
  return runs.map(([a, b]) => (a === b ? `${a}` : `${a} to ${b}`)).join(', ');
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
    statement: loose
      ? `Fresh blocks of dome ${domeId} don't stay by themselves in every course: hold them as the laying table says.`
      : `Fresh blocks of dome ${domeId} stay by themselves in every course.`,
    state: loose ? 'attention' : 'ok',
    demand: computed(
      `${id}.slope`,
      'steepest bed, slope',
      slope,
      '1',
      'tangent of the bed dip; a block slides where it is over the friction, tips where its weight passes inside the chord of its lower inner corners',
      FRICTION,
      {
        'bed dip (deg)': tilt / DEG,
        'steepest course': steepest?.course ?? 'none',
        'courses in which a block slides': listed(courses.filter((c) => c.slides)) || 'none',
        'courses in which a block tips': listed(tipping) || 'none',
      },
    ),
    capacity: givenFigure(`${id}.friction`, 'friction of a bed joint', friction, '1', {
      limit: 'fresh mortar: 0.4, never above 0.5; common practice, no source',
    }),
    ratio: ratioOf(slope, friction),
    source: FRICTION,
    advice: [
      weight.length > 0 ? `Courses ${listed(weight)}: a weight on a rope for each block.` : '',
      prop.length > 0 ? `Courses ${listed(prop)}: a prop or a form under each block.` : '',
      centering.length > 0 ? `Courses ${listed(centering)}: centering, because their rings can't close.` : '',
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
  const count = Math.max(...courses.map((c) => c.weights));
  const source = 'statics: rope over the finished courses, e^(μ angle) for its friction';
  return [
    {
      id,
      statement: `Weights on ropes hold the blocks of dome ${domeId} in courses ${listed(courses.filter((c) => c.hold === 'weight'))} until each ring closes; ${count} are in use at once.`,
      state: 'attention',
      demand: computed(
        `${id}.weight`,
        `weight to hang for each block, course ${worst.course}`,
        worst.hangKg ?? 0,
        'kg',
        `${HANGING_FACTOR} × block × max(overhang / arm, (sin λ − μ cos λ) / μ) × e^(μ rope × λ)`,
        'derived: block and rope together feel the pull normal to the bed, at the lower outer edge; the factor is common practice, no source',
        { 'bed dip λ (deg)': worst.bedRad / DEG, 'μ rope': ROPE_FRICTION, 'weights at once': count },
      ),
      capacity: computed(
        `${id}.block`,
        'weight of the block itself',
        worst.dryKg,
        'kg',
        'volume × dry density; a prop takes over from there',
        'derived',
      ),
      ratio: ratioOf(worst.hangKg ?? 0, worst.dryKg),
      source,
      advice:
        'Fasten each rope to the upper outer edge, hang the weight before the block is let go, take it off when the ring is closed and wedged.',
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
        ? `Every ring of dome ${domeId} closes and then carries itself.`
        : held.length === 0
          ? `Openings keep the rings of courses ${listed(broken)} of dome ${domeId} from closing; their piers stand by themselves.`
          : `Openings keep the rings of courses ${listed(broken)} of dome ${domeId} from closing; courses ${listed(held)} would fall inward without centering.`,
    state: held.length > 0 ? 'attention' : 'ok',
    demand: computed(
      `${id}.courses`,
      'courses that need centering',
      held.length,
      'courses',
      'courses of an open ring whose fresh block slides or tips, or whose pier down to the last closed ring has its weight inside an edge',
      'statics; a thin pier, mortar without strength',
      {
        'courses of open rings': broken.length,
        'broken by': [...new Set(broken.flatMap((c) => c.brokenBy))].join(', ') || 'none',
      },
    ),
    source: 'statics; OSHA 29 CFR 1926.706 for unsupported masonry',
    advice:
      held.length > 0
        ? `Keep the centering under courses ${listed(held)} until ${above === null ? 'the crown or curb is set' : `course ${above}, the first closed ring over them, is closed`} and the arches' own centering is struck after its days.`
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
  const statement = `A freshly closed ring of dome ${domeId} bears the push between its blocks.`;
  const demand = computed(
    `${id}.stress`,
    `greatest push, course ${worst.course}`,
    worst.ringMpa ?? 0,
    'MPa',
    'w tan λ / (thickness × block height); w weight of the ring a radian',
    'statics of a ring on a cone, without friction',
    { 'bed dip λ (deg)': worst.bedRad / DEG },
  );
  const source = 'statics of a ring on a cone';
  if (!strength) return [missing(id, statement, 'material.compressive-strength', source, { demand })];
  const holds = (worst.ringMpa ?? 0) <= strength.designMpa;
  return [
    {
      id,
      statement,
      state: holds ? (strength.from === 'table' ? 'attention' : 'ok') : 'fails',
      demand,
      capacity: givenFigure(`${id}.strength`, 'design strength of the masonry', strength.designMpa, 'MPa', {
        formula: '0.55 fb^0.7 fm^0.3 / partial factor',
        source: 'EN 1996-1-1:2005, 3.6.1.2 and Table 3.3, by analogy (from memory)',
        inputs: { 'block strength fb (MPa)': strength.blockMpa },
      }),
      ratio: ratioOf(worst.ringMpa ?? 0, strength.designMpa),
      source,
      advice: holds
        ? 'The strength is a table value: give `material.compressive-strength` from test cubes.'
        : 'Stronger blocks; keep the ring held until the next is closed.',
    },
  ];
}

const NIOSH =
  'NIOSH 94-110, rev. 2021, RWL = 23 (25/H)(1 − 0.003|V − 75|)(0.82 + 4.5/D)(1 − 0.0032 A) FM CM (twist, frequency and coupling from memory)';

function liftingChecks(courses: readonly CourseLaying[]): Check[] {
  const laid = most(courses, (c) => c.dryKg);
  const fresh = most(courses, (c) => c.wetKg);
  if (!laid || !fresh) return [];
  return [
    liftingCheck('lifting-dry', 'laid', 'dry', laid.dryKg),
    liftingCheck('lifting-wet', 'freshly demoulded', 'wet', fresh.wetKg),
  ];
}

function liftingCheck(id: string, when: string, how: string, kg: number): Check {
  const limit = recommendedLiftKg(LAYING_LIFT);
  const { horizontal, vertical, travel, twistDeg, frequency, coupling } = LAYING_LIFT;
  const advice =
    kg > HIGH_RISK_KG
      ? `Over ${HIGH_RISK_KG} kg lifted again and again by one person is high risk (HSE CIS 37): a hoist, or smaller blocks; two people laying such blocks is no longer advised.`
      : kg > limit
        ? 'Smaller blocks, fewer lifts an hour, no twist, blocks at waist height close to the body; or two people or a hoist.'
        : '';
  return {
    id,
    statement: `The heaviest block, ${when}, is one person's lift.`,
    state: kg <= limit ? 'ok' : 'attention',
    demand: computed(
      `${id}.mass`,
      `${how} mass of the heaviest block`,
      kg,
      'kg',
      how === 'wet' ? 'volume before cutting / (1 − shrinkage)³ × wet density' : 'volume × dry density',
      'derived',
    ),
    capacity: computed(
      `${id}.limit`,
      'recommended for one person, lift after lift',
      limit,
      'kg',
      '23 (25/H)(1 − 0.003|V − 75|)(0.82 + 4.5/D)(1 − 0.0032 A) FM CM',
      NIOSH,
      {
        'hands from the ankles H (cm)': horizontal,
        'hands above the ground V (cm)': vertical,
        'travel D (cm)': travel,
        'twist A (deg)': twistDeg,
        'frequency FM (2 a minute, 2 hours)': frequency,
        'grip CM (fair)': coupling,
      },
    ),
    ratio: kg / limit,
    source: `${NIOSH}; HSE CIS 37: more than ${HIGH_RISK_KG} kg again and again is high risk`,
    advice,
  };
}
