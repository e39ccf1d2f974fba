import { type Check, givenFigure } from '../base/figures.js';
import { figureText } from '../base/reader-units.js';
import { WHOLE } from '../base/tolerances.js';
import { formatLength, type LengthUnit } from '../base/units.js';
import { setOutHouse } from '../setout/house.js';
import type { CourseBond } from './bond/dome.js';
import { fitLimits } from './moulds/limits.js';
import type { CourseMould } from './moulds/schedule.js';
import { type MasonryPlan, planMasonry } from './plan.js';

/** Checks of bond and moulds: courses that no mould fits, how many moulds, lines of perpends, pieces that stay short, joints. */
export function planChecks(plan: MasonryPlan): Check[] {
  return [fitCheck(plan), countCheck(plan), lineCheck(plan), ...shortCheck(plan), jointCheck(plan)];
}

const markOf = (domeId: string, course: number): string => `${domeId}-${course}`;

function fitCheck({ setout, moulds }: MasonryPlan): Check {
  const unmet = moulds.courses.filter((c) => c.laid === null);
  return {
    id: 'mould-fit',
    statement: 'Every course has a mould whose blocks keep joints, beds and face steps.',
    state: unmet.length === 0 ? 'ok' : 'fails',
    demand: givenFigure('mould-fit.unmet', 'courses that no mould fits', unmet.length, '1', {
      formula:
        'joints at corners and middles of edges of both faces within the range, tolerance and shrinkage taken off',
      source: 'derived',
      inputs: { courses: unmet.map((c) => markOf(c.domeId, c.course)).join(' ') },
      limit:
        'moulds of one course laid in another, square to the surface; half of each miss is given to either neighbour',
    }),
    capacity: givenFigure('mould-fit.limit', 'courses that may have none', 0, '1', { formula: 'every block is cast' }),
    ratio: unmet.length,
    source: 'the description',
    advice: unmet.length === 0 ? 'Nothing to change.' : mendsOf(setout, unmet),
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
    return `Tolerance and shrinkage use up the joint range: make its thicker end at least ${up(thinnest + blocks.tolerance)}, or \`blocks.tolerance\` at most ${down(blocks.tolerance - (thinnest - thickest) / 2)}.`;
  const mends: string[] = [];
  let left = unmet;
  let differ = 'Perpends differ';
  if (beds.length > 0) {
    const joint = Math.round((thinnest + thickest) / 2 / step) * step;
    // With another joint the courses come out otherwise: what they lack then is found by laying them so.
    differ = `With ${formatLength(joint, units)} perpends differ`;
    left = planMasonry(setOutHouse({ ...house, blocks: { ...blocks, joint } })).moulds.courses.filter((c) => !c.laid);
    mends.push(
      `Bed joints of ${formatLength(blocks.joint, units)} leave the range when tolerance and shrinkage come off it: give \`blocks.joint\` at least ${up(thinnest)} and at most ${down(thickest)}.`,
    );
  }
  const all = domes.reduce((sum, dome) => sum + dome.courses.length, 0);
  const named = (list: readonly CourseMould[]) =>
    list.length === all ? 'every course' : list.map((c) => markOf(c.domeId, c.course)).join(', ');
  const perpends = left.flatMap((c) => (c.misfit?.kind === 'perpend' ? [{ ...c, lacking: c.misfit.lacking }] : []));
  if (perpends.length > 0) {
    const lacking = Math.max(...perpends.map((c) => c.lacking));
    mends.push(
      `${differ} too much between corners in ${named(perpends)}: make the thicker end of \`blocks.joint-range\` at least ${up(blocks.jointRange[1] + lacking)}.`,
    );
  }
  const others = left.filter((c) => c.misfit === null);
  if (others.length > 0) mends.push(`In ${named(others)}: change the numbers of blocks by \`blocks.length\`.`);
  return mends.join(' ');
}

function countCheck({ bond, moulds, setout }: MasonryPlan): Check {
  const mixed = setout.house.blocks.mouldsInCourse > 1;
  const { atLeast, proven, nodes, candidates } = moulds;
  const number = moulds.moulds.length;
  return {
    id: 'mould-count',
    statement: 'No smaller number of moulds serves the house in this bond.',
    state: proven ? 'ok' : 'attention',
    demand: givenFigure('mould-count.moulds', 'moulds', number, '1', {
      formula: 'least cover of all courses by moulds of the family',
      source: 'derived; exact search, every smaller number refuted',
      inputs: { bond, candidates, nodes },
      limit: `${mixed ? 'one or two moulds' : 'one mould'} a course; tapers in steps of half a millimetre`,
    }),
    capacity: givenFigure('mould-count.least', 'moulds needed at least', atLeast, '1', {
      formula: 'courses of which no two share a mould, or numbers of moulds refuted',
      source: 'derived',
    }),
    ratio: atLeast > 0 ? number / atLeast : 1,
    source: 'derived',
    advice: proven
      ? 'The table of bonds tells what fewer moulds would cost.'
      : mixed
        ? 'The true number lies between the two: the bound asks of each mixed course only that each of its moulds fits some of its places.'
        : 'The search was cut short: the true number lies between the two. A narrower choice of lengths ends it sooner.',
  };
}

function lineCheck({ courses, setout }: MasonryPlan): Check {
  const lines = courses.reduce((sum, c) => sum + c.lines, 0);
  const where = courses.filter((c) => c.lines > 0).map((c) => `${markOf(c.domeId, c.course.index)} (${c.lines})`);
  return {
    id: 'perpend-lines',
    statement: 'No line of perpends passes three courses.',
    state: lines === 0 ? 'ok' : 'attention',
    demand: givenFigure('perpend-lines.count', 'perpends in line with two courses below', lines, '1', {
      formula: 'perpends nearer than the thickest dry joint to one below that is itself so near to one below it',
      source: 'derived',
      inputs: {
        'thickest dry joint (mm)': fitLimits(setout.house.blocks).thick,
        courses: where.slice(0, 20).join(' '),
      },
    }),
    capacity: givenFigure('perpend-lines.limit', 'lines allowed', 0, '1', {
      formula: 'none',
      source: 'common practice, no source',
    }),
    ratio: lines,
    source: 'common practice, no source',
    advice: 'Use `blocks.bond: banded`, or another `blocks.length`.',
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
      statement: 'Pieces beside openings that are too short are laid as one with their neighbours.',
      state: 'attention',
      demand: givenFigure('short-pieces-kept.lacking', 'what the shortest lacks', lacking, 'mm', {
        formula: 'shortest piece − longest run at mid-thickness, with the thickest perpend',
        source: 'derived',
        inputs: { pieces: short.reduce((sum, c) => sum + c.pieces.short.length, 0) },
      }),
      capacity: givenFigure('short-pieces-kept.limit', 'what a piece may lack', 0, 'mm'),
      ratio: lacking / shortestPiece,
      source: 'the description',
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
      ? `a pier of ${formatLength(Math.floor(length), units)} between two cuts has no neighbour`
      : `${formatLength(Math.floor(length), units)} would weigh ${figureText(togetherKg, 'kg', units)} with its neighbour, more than ${figureText(heaviestKg, 'kg', units)}`,
  );
  return `Course ${markOf(domeId, course.index)}: ${reasons.join('; ')}.`;
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
    statement: 'Perpends stay near the joint drawn, as masonry specifications ask.',
    state: ratio <= 1 ? 'ok' : 'attention',
    demand: givenFigure('head-joints.thickest', 'thickest perpend, with block tolerance', thick, 'mm', {
      formula: 'thickest perpend of dry blocks + tolerance; thinnest − tolerance − shrinkage × length',
      source: 'derived',
      inputs: { 'thinnest (mm)': thin, 'joint (mm)': joint },
    }),
    capacity: givenFigure('head-joints.limit', 'thickest head joint', joint + HEAD_JOINT[1], 'mm', {
      formula: 'joint + 3/8 in; thinnest: joint − 1/4 in',
      source: 'TMS 602, site tolerances of head joints, from memory',
      limit: 'for walls of manufactured units; the local code governs',
    }),
    ratio,
    source: 'TMS 602, from memory',
    advice: 'Narrow `blocks.joint-range` or cast to a closer tolerance; more moulds are needed then.',
  };
}
