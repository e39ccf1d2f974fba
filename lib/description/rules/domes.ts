import * as texts from '../../base/texts/problems-domes.js';
import { SAME_POINT } from '../../base/tolerances.js';
import { formatApart, formatLength, type LengthUnit } from '../../base/units.js';
import { cos } from '../../math/elementary.js';
import type { Draft, Placed } from '../draft.js';
import type { BlockRules, Dome } from '../house.js';
import type { Path, ProblemList } from '../problem-list.js';
import { shapeOf } from './shape.js';

/** Limits of the rise as multiples of the radius; beyond them a meridian is a lid or a chimney. */
const LOWEST_RISE = 0.1;
const HIGHEST_RISE = 4;
/** Oculus and curb together, as part of the radius. */
const WIDEST_OCULUS = 0.8;
const LEAST_BLOCKS = 3;
const MOST_BLOCKS = 20_000;
const LEAST_COURSES = 2;

/**
 * Rules within one dome and between it and the wall and blocks.
 * @returns the domes whose sizes hold, so that openings can be held against them; one whose oculus doesn't, without it
 */
export function checkDomes(draft: Draft, problems: ProblemList): Placed<Dome>[] {
  const { units, wall, blocks } = draft;
  const sound = draft.domes.flatMap((placed) => {
    const { path, value: dome } = placed;
    const rise = riseHolds(dome, path, units, problems);
    const oculus = oculusHolds(dome, path, units, problems);
    if (!rise) return [];
    return [oculus ? placed : { ...placed, value: { ...dome, oculus: null } }];
  });
  if (wall)
    for (const { path, value } of draft.domes)
      if (wall.thickness >= value.radius) {
        const [thick, radius] = formatApart(wall.thickness, value.radius, units);
        const message = texts.wallNotThinnerThanRadius(thick, value.id, radius);
        problems.add('wall-too-thick', [...path, 'radius'], message, texts.makeWallThinner);
      }
  if (wall && blocks) {
    const counts = sound.map(({ path, value }) => coursesHold(value, path, blocks, wall.thickness, units, problems));
    const total = counts.reduce((sum, n) => sum + n, 0);
    if (total > MOST_BLOCKS) {
      const message = texts.tooManyBlocks(
        formatLength(blocks.courseHeight, units),
        formatLength(blocks.length, units),
        Math.round(total),
        MOST_BLOCKS,
      );
      problems.add('blocks-too-many', ['blocks', 'course-height'], message, texts.makeCoursesHigher);
    }
  }
  return sound;
}

function riseHolds(dome: Dome, path: Path, units: LengthUnit, problems: ProblemList): boolean {
  const { radius } = dome;
  const { shape, rise } = dome.profile;
  const lowest = shape === 'pointed' ? radius : radius * LOWEST_RISE;
  const highest = shape === 'segmental' ? radius : radius * HIGHEST_RISE;
  const tooHigh = shape === 'segmental' ? rise >= highest : rise > highest;
  const tooLow = shape === 'pointed' ? rise <= lowest : rise < lowest;
  const at = [...path, 'profile', 'rise'];
  if (shape === 'hemisphere' && Math.abs(rise - radius) > SAME_POINT) {
    const [given, needed] = formatApart(rise, radius, units);
    const message = texts.hemisphereRise(dome.id, given, needed);
    problems.add('rise-hemisphere', at, message, texts.removeRiseOrChoose);
    return false;
  }
  if (tooHigh) {
    const [given, limit] = formatApart(rise, highest, units);
    const less = shape === 'segmental' ? texts.mustBeLess : texts.mayBeAtMost;
    const message = texts.riseTooHigh(shape, dome.id, given, less, limit);
    problems.add('rise-too-high', at, message, texts.lowerRiseOrChoose);
  }
  if (tooLow) {
    const [given, limit] = formatApart(rise, lowest, units);
    const more = shape === 'pointed' ? texts.mustBeMore : texts.mustBeAtLeast;
    const message = texts.riseTooHigh(shape, dome.id, given, more, limit);
    problems.add('rise-too-low', at, message, texts.raiseRiseOrChoose);
  }
  return !tooHigh && !tooLow;
}

function oculusHolds(dome: Dome, path: Path, units: LengthUnit, problems: ProblemList): boolean {
  if (!dome.oculus) return true;
  const outer = dome.oculus.radius + dome.oculus.curb;
  const limit = WIDEST_OCULUS * dome.radius;
  if (outer <= limit) return true;
  const [given, most] = formatApart(outer, limit, units);
  const message = texts.oculusAndCurb(dome.id, given, most);
  problems.add('oculus-too-large', [...path, 'oculus', 'radius'], message, texts.makeOculusOrCurb);
  return false;
}

/** Tells what doesn't fit and returns about how many blocks the dome has. */
function coursesHold(
  dome: Dome,
  path: Path,
  blocks: BlockRules,
  thickness: number,
  units: LengthUnit,
  problems: ProblemList,
): number {
  const { courseHeight, length } = blocks;
  const shape = shapeOf(dome);
  const middle = (s: number) => {
    const { r, normalRad } = shape.profile.at(s);
    return { r: r + (thickness / 2) * cos(normalRad), normalRad };
  };
  const around = 2 * Math.PI * middle(0).r;
  if (around / length < LEAST_BLOCKS) {
    const message = texts.tooFewBlocksRound(
      LEAST_BLOCKS,
      formatLength(length, units),
      dome.id,
      formatLength(around, units),
    );
    problems.add('blocks-too-few', ['blocks', 'length'], message, texts.makeBlocksShorter);
  }
  const { stemWall } = dome;
  if (stemWall > 0 && stemWall < courseHeight / 2) {
    const [given, half] = formatApart(stemWall, courseHeight / 2, units);
    const message = texts.stemWallTooLow(dome.id, given, half);
    problems.add('stem-wall-low', [...path, 'stem-wall'], message, texts.giveNoneOrAtLeast(half));
  }
  const { shellLength } = shape;
  const arc = shellLength + (thickness / 2) * (middle(shellLength).normalRad - middle(0).normalRad);
  if (arc < LEAST_COURSES * courseHeight) {
    const [given, needed] = formatApart(arc, LEAST_COURSES * courseHeight, units);
    const message = texts.meridianTooShort(dome.id, given, dome.oculus !== null, needed);
    problems.add('courses-too-few', ['blocks', 'course-height'], message, texts.makeCoursesLower);
  }
  const steps = 64;
  let meanRadius = 0;
  for (let i = 0; i < steps; i++) meanRadius += middle(((i + 0.5) / steps) * shellLength).r / steps;
  const inCourse = (r: number) => Math.max(LEAST_BLOCKS, (2 * Math.PI * r) / length);
  return (stemWall / courseHeight) * inCourse(middle(0).r) + (arc / courseHeight) * inCourse(meanRadius);
}
