import { type Check, givenFigure } from '../base/figures.js';
import { figureText } from '../base/reader-units.js';
import * as texts from '../base/texts/masonry-checks.js';
import { WHOLE } from '../base/tolerances.js';
import { formatLength, type LengthUnit } from '../base/units.js';
import { setOutHouse } from '../setout/house.js';
import type { CourseBond } from './bond/dome.js';
import { lengthCheck } from './length-check.js';
import { fitLimits } from './moulds/limits.js';
import type { CourseMould } from './moulds/schedule.js';
import { type MasonryPlan, planMasonry } from './plan.js';

/** Checks of bond and moulds: courses that no mould fits, how many moulds, lengths, lines of perpends, pieces that stay short, joints. */
export function planChecks(plan: MasonryPlan): Check[] {
  return [
    fitCheck(plan),
    countCheck(plan),
    ...lengthCheck(plan),
    lineCheck(plan),
    ...shortCheck(plan),
    jointCheck(plan),
  ];
}

const markOf = (domeId: string, course: number): string => `${domeId}-${course}`;

function fitCheck({ setout, moulds }: MasonryPlan): Check {
  const unmet = moulds.courses.filter((c) => c.laid === null);
  return {
    id: 'mould-fit',
    statement: texts.everyCourseHasMould,
    state: unmet.length === 0 ? 'ok' : 'fails',
    demand: givenFigure('mould-fit.unmet', texts.coursesThatNoMould, unmet.length, '1', {
      formula: texts.jointsAtCorners,
      source: texts.derived,
      inputs: { courses: unmet.map((c) => markOf(c.domeId, c.course)).join(' ') },
      limit: texts.mouldsOfOneCourse,
    }),
    capacity: givenFigure('mould-fit.limit', texts.coursesThatMay, 0, '1', { formula: texts.everyBlockIsCast }),
    ratio: unmet.length,
    source: texts.theDescription,
    advice: unmet.length === 0 ? texts.nothingToChangeAtAll : mendsOf(setout, unmet),
  };
}

/** The nearest values that work for all of the courses. */
function mendsOf({ house, domes }: MasonryPlan['setout'], unmet: readonly CourseMould[]): string {
  const { blocks, units } = house;
  const step = units === 'ft' || units === 'in' ? 25.4 / 16 : 0.1;
  const up = (mm: number) => formatLength(Math.ceil(mm / step - WHOLE) * step, units);
  const down = (mm: number) => formatLength(Math.max(0, Math.floor(mm / step + WHOLE) * step), units);
  const beds = unmet.flatMap((c) => (c.misfit?.kind === 'bed' ? [c.misfit] : []));
  const thinnest = Math.max(...beds.map((b) => b.thinnest));
  const thickest = Math.min(...beds.map((b) => b.thickest));
  if (thinnest > thickest)
    return texts.rangeUsedUp(up(thinnest + blocks.tolerance), down(blocks.tolerance - (thinnest - thickest) / 2));
  const mends: string[] = [];
  let left = unmet;
  let differ = texts.perpendsDiffer;
  if (beds.length > 0) {
    const joint = Math.round((thinnest + thickest) / 2 / step) * step;
    // With another joint the courses come out otherwise: what they lack then is found by laying them so.
    differ = texts.withJointPerpendsDiffer(formatLength(joint, units));
    left = planMasonry(setOutHouse({ ...house, blocks: { ...blocks, joint } })).moulds.courses.filter((c) => !c.laid);
    mends.push(texts.bedJointsLeaveRange(formatLength(blocks.joint, units), up(thinnest), down(thickest)));
  }
  const all = domes.reduce((sum, dome) => sum + dome.courses.length, 0);
  const named = (list: readonly CourseMould[]) =>
    list.length === all ? texts.everyCourse : list.map((c) => markOf(c.domeId, c.course)).join(', ');
  const perpends = left.flatMap((c) => (c.misfit?.kind === 'perpend' ? [{ ...c, lacking: c.misfit.lacking }] : []));
  if (perpends.length > 0) {
    const lacking = Math.max(...perpends.map((c) => c.lacking));
    mends.push(texts.tooMuchBetweenCorners(differ, named(perpends), up(blocks.jointRange[1] + lacking)));
  }
  const others = left.filter((c) => c.misfit === null);
  if (others.length > 0) mends.push(texts.changeNumbersIn(named(others)));
  return mends.join(' ');
}

function countCheck({ bond, moulds, setout }: MasonryPlan): Check {
  const mixed = setout.house.blocks.mouldsInCourse > 1;
  const { atLeast, proven, nodes, candidates } = moulds;
  const number = moulds.moulds.length;
  return {
    id: 'mould-count',
    statement: texts.noSmallerNumber,
    state: proven ? 'ok' : 'attention',
    demand: givenFigure('mould-count.moulds', texts.moulds, number, '1', {
      formula: texts.leastCoverOfAll,
      source: texts.derivedExactSearchEvery,
      inputs: { bond, candidates, nodes },
      limit: texts.mouldsACourseTapers(mixed),
    }),
    capacity: givenFigure('mould-count.least', texts.mouldsNeededAtLeast, atLeast, '1', {
      formula: texts.coursesOf,
      source: texts.derived,
    }),
    ratio: atLeast > 0 ? number / atLeast : 1,
    source: texts.derived,
    advice: proven ? texts.tableOfBondsTells : mixed ? texts.boundOfMixedCourses : texts.searchWasCutShort,
  };
}

function lineCheck({ courses, setout }: MasonryPlan): Check {
  const lines = courses.reduce((sum, c) => sum + c.lines, 0);
  const where = courses.filter((c) => c.lines > 0).map((c) => `${markOf(c.domeId, c.course.index)} (${c.lines})`);
  return {
    id: 'perpend-lines',
    statement: texts.noLineOfPerpends,
    state: lines === 0 ? 'ok' : 'attention',
    demand: givenFigure('perpend-lines.count', texts.perpendsInLine, lines, '1', {
      formula: texts.perpendsNearerThanThickest,
      source: texts.derived,
      inputs: {
        'thickest dry joint (mm)': fitLimits(setout.house.blocks).thick,
        courses: where.slice(0, 20).join(' '),
      },
    }),
    capacity: givenFigure('perpend-lines.limit', texts.linesAllowed, 0, '1', {
      formula: texts.noneAllowed,
      source: texts.commonPracticeNoSource,
    }),
    ratio: lines,
    source: texts.commonPracticeNoSource,
    advice: texts.useBlocksBondBanded,
  };
}

/** Where rules can't all be met: which course, by how much, why. */
function shortCheck({ setout, courses }: MasonryPlan): Check[] {
  const { shortestPiece, heaviestKg } = setout.house.blocks;
  const short = courses.filter((c) => c.pieces.short.length > 0);
  if (short.length === 0) return [];
  const lacking = Math.max(...short.flatMap((c) => c.pieces.short.map(({ length }) => shortestPiece - length)));
  return [
    {
      id: 'short-pieces-kept',
      statement: texts.piecesBesideOpenings,
      state: 'attention',
      demand: givenFigure('short-pieces-kept.lacking', texts.whatShortestLacks, lacking, 'mm', {
        formula: texts.shortestPieceLongestRun,
        source: texts.derived,
        inputs: { pieces: short.reduce((sum, c) => sum + c.pieces.short.length, 0) },
      }),
      capacity: givenFigure('short-pieces-kept.limit', texts.whatPieceMayLack, 0, 'mm'),
      ratio: lacking / shortestPiece,
      source: texts.theDescription,
      advice: short
        .slice(0, 6)
        .map((c) => shortReason(c, heaviestKg, setout.house.units))
        .join(' '),
    },
  ];
}

function shortReason({ domeId, course, pieces }: CourseBond, heaviestKg: number, units: LengthUnit): string {
  const reasons = pieces.short.map(({ length, togetherKg }) =>
    togetherKg === null
      ? texts.pierHasNoNeighbour(formatLength(Math.floor(length), units))
      : texts.wouldWeighTooMuch(
          formatLength(Math.floor(length), units),
          figureText(togetherKg, 'kg', units),
          figureText(heaviestKg, 'kg', units),
        ),
  );
  return texts.courseBecause(markOf(domeId, course.index), reasons.join('; '));
}

/** Head joint tolerance about the thickness specified: −1/4 in, +3/8 in (TMS 602, from memory). */
const HEAD_JOINT = [6.35, 9.525] as const;

/** Joints that the moulds leave, with tolerance and shrinkage, against published limits of head joints. */
function jointCheck({ setout, moulds }: MasonryPlan): Check {
  const { joint, tolerance, shrinkage, length } = setout.house.blocks;
  const laid = moulds.courses.flatMap((c) => (c.laid ? [c.laid] : []));
  const thin = Math.min(joint, ...laid.map((l) => l.joints[0])) - tolerance - shrinkage * length;
  const thick = Math.max(joint, ...laid.map((l) => l.joints[1])) + tolerance;
  const ratio = Math.max((joint - thin) / HEAD_JOINT[0], (thick - joint) / HEAD_JOINT[1]);
  return {
    id: 'head-joints',
    statement: texts.perpendsStayNearJoint,
    state: ratio <= 1 ? 'ok' : 'attention',
    demand: givenFigure('head-joints.thickest', texts.thickestPerpendWithBlock, thick, 'mm', {
      formula: texts.thickestPerpendOfDry,
      source: texts.derived,
      inputs: { 'thinnest (mm)': thin, 'joint (mm)': joint },
    }),
    capacity: givenFigure('head-joints.limit', texts.thickestHeadJoint, joint + HEAD_JOINT[1], 'mm', {
      formula: texts.headJointFormula,
      source: texts.tms602SiteTolerances,
      limit: texts.forWallsOfManufactured,
    }),
    ratio,
    source: texts.tms602FromMemory,
    advice: texts.narrowBlocksJointRange,
  };
}
