/** Wording of the checks of the states of building. */

export const staticsOfBlock = 'statics of a block on a leaning bed; fresh mortar holds by friction alone';
export const fromTo = (a: number, b: number): string => `${a} to ${b}`;
export const freshBlocksMustBeHeld = (domeId: string): string =>
  `Fresh blocks of dome ${domeId} don't stay by themselves in every course: hold them as the laying table says.`;
export const freshBlocksStay = (domeId: string): string =>
  `Fresh blocks of dome ${domeId} stay by themselves in every course.`;
export const steepestBedSlope = 'steepest bed, slope';
export const bedSlopeFormula =
  'tangent of the bed dip; a block slides where it is over the friction, tips where its weight passes inside the chord of its lower inner corners';
export const frictionOfBedJoint = 'friction of a bed joint';
export const freshMortarSource = 'fresh mortar: 0.4, never above 0.5; common practice, no source';
export const coursesWithWeights = (weight: string): string => `Courses ${weight}: a weight on a rope for each block.`;
export const coursesWithProps = (prop: string): string => `Courses ${prop}: a prop or a form under each block.`;
export const coursesWithCentering = (centering: string): string =>
  `Courses ${centering}: centering, because their rings can't close.`;
export const staticsRopeOverFinished = 'statics: rope over the finished courses, e^(μ angle) for its friction';
/** `courses` lists as many courses as `many`. */
export const weightsOnRopesHold = (domeId: string, courses: string, many: number, count: number): string =>
  `Weights on ropes hold the blocks of dome ${domeId} in ${many === 1 ? 'course' : 'courses'} ${courses} until each ring closes; ${count} are in use at once.`;
export const weightToHang = (course: number): string => `weight to hang for each block, course ${course}`;
export const hangingWeightFormula = (hangingFactor: number): string =>
  `${hangingFactor} × block × max(overhang / arm, (sin λ − μ cos λ) / μ) × e^(μ rope × λ)`;
export const hangingWeightSource =
  'derived: block and rope together feel the pull normal to the bed, at the lower outer edge; the factor is common practice, no source';
export const weightOfBlockItself = 'weight of the block itself';
export const volumeDryDensityProp = 'volume × dry density; a prop takes over from there';
export const fastenEachRope =
  'Fasten each rope to the upper outer edge, hang the weight before the block is let go, take it off when the ring is closed and wedged.';
export const everyRingOfDome = (domeId: string): string =>
  `Every ring of dome ${domeId} closes and then carries itself.`;
export const openRingsStand = (broken: string, domeId: string): string =>
  `Openings keep the rings of courses ${broken} of dome ${domeId} from closing; their piers stand by themselves.`;
export const openRingsFall = (broken: string, domeId: string, held: string): string =>
  `Openings keep the rings of courses ${broken} of dome ${domeId} from closing; courses ${held} would fall inward without centering.`;
export const coursesThatNeedCentering = 'courses that need centering';
export const coursesOfOpenRing =
  'courses of an open ring whose fresh block slides or tips, or whose pier down to the last closed ring has its weight inside an edge';
export const staticsThinPierMortar = 'statics; a thin pier, mortar without strength';
export const openRingSource = 'statics; OSHA 29 CFR 1926.706 for unsupported masonry';
export const crownOrCurb = 'the crown or curb is set';
export const courseFirstClosedRing = (above: number): string =>
  `course ${above}, the first closed ring over them, is closed`;
export const keepCenteringUnderCourses = (held: string, above: string): string =>
  `Keep the centering under courses ${held} until ${above} and the arches' own centering is struck after its days.`;
export const freshlyClosedRing = (domeId: string): string =>
  `A freshly closed ring of dome ${domeId} bears the push between its blocks.`;
export const greatestPushCourse = (course: number): string => `greatest push, course ${course}`;
export const ringPushFormula = 'w tan λ / (thickness × block height); w weight of the ring a radian';
export const staticsOfRingWithoutFriction = 'statics of a ring on a cone, without friction';
export const staticsOfRing = 'statics of a ring on a cone';
export const designStrengthOfMasonry = 'design strength of the masonry';
export const masonryStrengthFormula = '0.55 fb^0.7 fm^0.3 / partial factor';
export const masonryStrengthSource = 'EN 1996-1-1:2005, 3.6.1.2 and Table 3.3, by analogy (from memory)';
export const strengthIsTableValue =
  'The strength is a table value: give `material.compressive-strength` from test cubes.';
export const strongerBlocksKeepRing = 'Stronger blocks; keep the ring held until the next is closed.';
export const nioshSource =
  'NIOSH 94-110, rev. 2021, RWL = 23 (25/H)(1 − 0.003|V − 75|)(0.82 + 4.5/D)(1 − 0.0032 A) FM CM (twist, frequency and coupling from memory)';
export const freshlyDemoulded = 'freshly demoulded';
export const liftIsHighRisk = (highRiskKg: number): string =>
  `Over ${highRiskKg} kg lifted again and again by one person is high risk (HSE CIS 37): a hoist, or smaller blocks; two people laying such blocks is no longer advised.`;
export const smallerBlocksFewerLifts =
  'Smaller blocks, fewer lifts an hour, no twist, blocks at waist height close to the body; or two people or a hoist.';
export const heaviestBlockIsOne = (when: string): string => `The heaviest block, ${when}, is one person's lift.`;
export const massOfHeaviestBlock = (how: string): string => `${how} mass of the heaviest block`;
export const wetLiftFormula = 'volume before cutting / (1 − shrinkage)³ × wet density';
export const dryLiftFormula = 'volume × dry density';
export const recommendedForOnePerson = 'recommended for one person, lift after lift';
export const nioshFormula = '23 (25/H)(1 − 0.003|V − 75|)(0.82 + 4.5/D)(1 − 0.0032 A) FM CM';
export const nioshAndHse = (niosh: string, highRiskKg: number): string =>
  `${niosh}; HSE CIS 37: more than ${highRiskKg} kg again and again is high risk`;
