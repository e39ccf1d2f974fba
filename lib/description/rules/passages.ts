import { formatLength, type LengthUnit } from '../../base/units.js';
import type { ProblemList } from '../problem-list.js';
import type { DomeBody } from './body.js';
import { type Neighbours, standoffOf } from './neighbours.js';
import { chordAt, nearest } from './runs.js';
import { type Passed, passageRun } from './ways.js';
import { atLeast, levelOf } from './words.js';

/** Passages come out in the rooms of both their domes, and meet no other dome on their way. */
export function checkPassages(neighbours: Neighbours, passed: readonly Passed[], problems: ProblemList): void {
  const { bodies, blocks, units } = neighbours;
  const least = standoffOf(blocks);
  for (const passage of passed) {
    const { ends } = passage;
    if (neighbours.standing(...ends) === 'within' || tellBehindAxis(passage, least, units, problems)) continue;
    for (const body of bodies)
      if (!ends.includes(body) && ends.every((end) => neighbours.standing(end, body) === 'sound'))
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
  const message = `The passage "${passage.id}" doesn't come out in the room of "${later.dome.id}": "${earlier.dome.id}" fills it up to ${formatLength(Math.max(0, distance - earlier.footRadius), units)} from its axis.`;
  const mend = `Set the two axes ${atLeast(earlier.footRadius + least, units)} or more apart.`;
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
      ? `comes within ${formatLength(gap, units)} of the dome "${body.dome.id}" ${where}; at least ${formatLength(least, units)} must stay between them`
      : `runs into the dome "${body.dome.id}" ${where}`;
  const mend = `Move "${body.dome.id}" ${atLeast(least - gap, units)} or more away from the passage, make the passage narrower, or join each dome to "${body.dome.id}" instead.`;
  problems.add('passage-crosses-dome', [...path, 'between'], `The passage "${passage.id}" ${how}.`, mend);
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
    const message = `The passage "${passage.id}" doesn't come out freely in the room of "${end.dome.id}": the dome "${body.dome.id}" stands in front of its end.`;
    const mend = `Move "${body.dome.id}" ${atLeast(least - gap, units)} or more away from the passage, or make the passage narrower.`;
    problems.add('passage-not-through', [...path, 'between'], message, mend);
    return true;
  }
  return false;
}
