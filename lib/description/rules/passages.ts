import * as texts from '../../base/texts/problems-openings.js';
import { SAME_POINT } from '../../base/tolerances.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import type { ProblemList } from '../problem-list.js';
import type { DomeBody } from './body.js';
import { type Neighbours, standoffOf } from './neighbours.js';
import { chordAt, footApart, nearest } from './runs.js';
import { type Passed, passageRun } from './ways.js';
import { atLeast, levelOf } from './words.js';

/** Passages come out in the rooms of both their domes, and meet no other dome on their way. */
export function checkPassages(neighbours: Neighbours, passed: readonly Passed[], problems: ProblemList): void {
  const { bodies, blocks, units } = neighbours;
  const least = standoffOf(blocks);
  for (const passage of passed) {
    const { ends, arch, distance } = passage;
    const half = arch.section.width / 2 + arch.ring;
    const strip = { at: ends[0].at, along: arch.along, from: 0, to: distance, half };
    if (neighbours.standing(...ends) === 'within' || tellBehindAxis(passage, least, units, problems)) continue;
    for (const body of bodies)
      if (
        !ends.includes(body) &&
        footApart(strip, body) < least + SAME_POINT &&
        ends.every((end) => neighbours.standing(end, body) === 'sound')
      )
        tellCrosses(passage, body, least, units, problems) || tellHidden(passage, body, least, units, problems);
  }
}

const orderOf = ([first, second]: Passed['ends']): readonly [earlier: DomeBody, later: DomeBody] =>
  first.order < second.order ? [first, second] : [second, first];

/** The earlier dome fills the later one's room up to where the passage should come out. */
function tellBehindAxis(
  { path, passage, ends, distance }: Passed,
  least: number,
  units: LengthUnit,
  problems: ProblemList,
): boolean {
  const [earlier, later] = orderOf(ends);
  if (earlier.footRadius <= distance - least) return false;
  const message = texts.passageFilledByDome(
    passage.id,
    later.dome.id,
    earlier.dome.id,
    formatLength(Math.max(0, distance - earlier.footRadius), units),
  );
  const mend = texts.setAxesApart(atLeast(earlier.footRadius + least, units));
  problems.add('passage-not-through', [...path, 'between'], message, mend);
  return true;
}

/** A third dome stands in the passage's way between the two rooms. */
function tellCrosses(passed: Passed, body: DomeBody, least: number, units: LengthUnit, problems: ProblemList): boolean {
  const { path, passage, ends, distance } = passed;
  // A dome listed after one of the two has given way to it.
  const start = (end: DomeBody, u: number, z: number) =>
    chordAt(end.order < body.order ? end.outerRadiusAt(z) : end.shape.radiusAt(z), u);
  const run = passageRun(passed, (u, z) => [start(ends[0], u, z), distance - start(ends[1], u, z)]);
  const { gap, z } = nearest(run, body);
  if (gap >= least) return false;
  const where = levelOf(z, units);
  const how =
    gap > 0
      ? texts.passageTooNearDome(formatLength(gap, units), body.dome.id, where, formatLength(least, units))
      : texts.passageRunsIntoDome(body.dome.id, where);
  const mend = texts.moveDomeNarrowOrJoin(body.dome.id, atLeast(least - gap, units));
  problems.add('passage-crosses-dome', [...path, 'between'], texts.passageSentence(passage.id, how), mend);
  return true;
}

/** An earlier third dome bulges into one of the two rooms, in front of the passage's end. */
function tellHidden(passed: Passed, body: DomeBody, least: number, units: LengthUnit, problems: ProblemList): boolean {
  const { path, passage, ends, distance } = passed;
  for (const [k, end] of ends.entries()) {
    if (end.order < body.order) continue;
    const inRoom = (u: number, z: number): readonly [number, number] => {
      const chord = chordAt(end.shape.radiusAt(z), u);
      return k === 0 ? [0, chord] : [distance - chord, distance];
    };
    const { gap } = nearest(passageRun(passed, inRoom), body);
    if (gap >= least) continue;
    const message = texts.passageEndBlocked(passage.id, end.dome.id, body.dome.id);
    const mend = texts.moveDomeAwayFromPassage(body.dome.id, atLeast(least - gap, units));
    problems.add('passage-not-through', [...path, 'between'], message, mend);
    return true;
  }
  return false;
}
