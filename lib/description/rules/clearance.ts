import * as texts from '../../base/texts/problems-domes.js';
import { SAME_POINT, TURN_SEARCH_RAD } from '../../base/tolerances.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import { alongBearing, bearingOf, DEG, sub2, turnSigned } from '../../math/vec.js';
import type { BlockRules, OpeningUse } from '../house.js';
import type { ProblemList } from '../problem-list.js';
import type { DomeBody } from './body.js';
import { type Neighbours, standoffOf } from './neighbours.js';
import { footApart, nearest, type Run, type Strip, stripsApart } from './runs.js';
import { archRun, barrelStrip, faceOf, type Opened, type Passed, passageStrip, wayRun } from './ways.js';
import { atLeast, levelOf, turnOf } from './words.js';

/**
 * Clear space in front of an opening, outside: a step and a door's swing, or air and light.
 * Common practice, no source.
 */
const WAY_OUT: Readonly<Record<OpeningUse, number>> = {
  door: 900,
  'egress window': 900,
  window: 300,
  vent: 300,
  niche: 0,
};

/** Openings keep away from the other domes, and from the barrels and passages that don't start from their own. */
export function checkClearance(
  neighbours: Neighbours,
  opened: readonly Opened[],
  passed: readonly Passed[],
  problems: ProblemList,
): void {
  const { bodies, blocks, units } = neighbours;
  for (const opening of opened) {
    const met = bodies.filter(
      (body) =>
        body !== opening.body &&
        (neighbours.standing(body, opening.body) !== 'sound' || tellMeetsDome(opening, body, blocks, units, problems)),
    );
    const free = bodies.filter((body) => body !== opening.body && !met.includes(body));
    tellBlocked(opening, free, opened, passed, units, problems);
  }
  checkStrips(opened, passed, blocks, units, problems);
}

/** Turns a run about its dome's axis until it keeps the distance from a body; `null` when no turn helps. */
function turnAway(run: Run, body: DomeBody, least: number): { readonly deg: number; readonly way: string } | null {
  const towards = bearingOf(sub2(body.at, run.at));
  const off = turnSigned(bearingOf(run.along) - towards);
  const side = off < 0 ? -1 : 1;
  const keeps = (turn: number) => nearest({ ...run, along: alongBearing(towards + side * turn) }, body).gap >= least;
  let [low, high] = [Math.abs(off), Math.PI];
  if (!keeps(high)) return null;
  while (high - low > TURN_SEARCH_RAD) {
    const middle = (low + high) / 2;
    if (keeps(middle)) high = middle;
    else low = middle;
  }
  return { deg: (high - Math.abs(off)) / DEG, way: side > 0 ? 'clockwise' : 'counter-clockwise' };
}

function turnMend(opened: Opened, run: Run, body: DomeBody, least: number): string {
  const turn = turnAway(run, body, least);
  const ids = [opened.body.dome.id, body.dome.id] as const;
  return turn ? texts.turnNarrowOrMoveApart(turnOf(turn.deg), turn.way, ...ids) : texts.narrowItOrMoveApart(...ids);
}

function tellMeetsDome(
  opened: Opened,
  body: DomeBody,
  blocks: BlockRules,
  units: LengthUnit,
  problems: ProblemList,
): boolean {
  const least = standoffOf(blocks);
  if (!withinReach(opened, body, 0, least)) return false;
  const run = archRun(opened);
  const { gap, z } = nearest(run, body);
  if (gap >= least) return false;
  const { id } = opened.opening;
  const where = levelOf(z, units);
  const what = faceOf(opened) === null ? 'arch' : 'barrel';
  const message =
    gap > 0
      ? texts.archTooNearDome(what, id, formatLength(gap, units), body.dome.id, where, formatLength(least, units))
      : texts.archRunsIntoDome(what, id, body.dome.id, where);
  problems.add('opening-meets-dome', [...opened.path, 'bearing'], message, turnMend(opened, run, body, least));
  return true;
}

/** Quick test whether an opening, prolonged beyond its outside, can come nearer to a body than `least`. */
function withinReach(opened: Opened, body: DomeBody, beyond: number, least: number): boolean {
  const { arch } = opened;
  const half = arch.section.width / 2 + arch.ring;
  const to = (faceOf(opened) ?? opened.body.footRadius) + beyond;
  return footApart({ at: opened.body.at, along: arch.along, from: 0, to, half }, body) < least + SAME_POINT;
}

/** What stands in the way in front of a door, window or vent. */
function tellBlocked(
  opened: Opened,
  bodies: readonly DomeBody[],
  all: readonly Opened[],
  passed: readonly Passed[],
  units: LengthUnit,
  problems: ProblemList,
): void {
  const { id, use } = opened.opening;
  const reach = WAY_OUT[use];
  if (reach === 0) return;
  const tell = (what: string, mend: string) =>
    problems.add(
      'opening-blocked',
      [...opened.path, 'bearing'],
      texts.standsInWay(what, use, id, formatLength(reach, units)),
      mend,
    );
  const run = wayRun(opened, reach);
  for (const body of bodies)
    if (withinReach(opened, body, reach, 0) && nearest(run, body).gap < 0) {
      tell(texts.domeNamed(body.dome.id), turnMend(opened, run, body, 0));
      return;
    }
  const { section, along } = opened.arch;
  const from = faceOf(opened) ?? opened.body.footRadius;
  const way: Strip = { at: opened.body.at, along, half: section.width / 2, from, to: from + reach };
  const crosses = (strip: Strip | null, topZ: number) =>
    strip !== null && topZ > section.sill && stripsApart(way, strip) <= 0;
  const barrel = all.find((other) => other.body !== opened.body && crosses(barrelStrip(other), other.arch.topZ));
  if (barrel) tell(texts.barrelNamed(barrel.opening.id), texts.turnOneOfThem);
  const passage = passed.find(
    (other) => !other.ends.includes(opened.body) && crosses(passageStrip(other), other.arch.topZ),
  );
  if (passage) tell(texts.passageNamed(passage.passage.id), texts.turnOpeningOrMove);
}

/** Barrels and passages of different domes stay apart; those of one dome run outward and are held apart at its wall. */
function checkStrips(
  opened: readonly Opened[],
  passed: readonly Passed[],
  blocks: BlockRules,
  units: LengthUnit,
  problems: ProblemList,
): void {
  const least = blocks.shortestPiece;
  const close = (a: Strip | null, b: Strip | null) => a !== null && b !== null && stripsApart(a, b) < least;
  const room = texts.atLeast(atLeast(least, units));
  for (const [i, a] of opened.entries())
    for (const b of opened.slice(i + 1))
      if (a.body !== b.body && close(barrelStrip(a), barrelStrip(b)))
        problems.add(
          'barrels-meet',
          [...b.path, 'bearing'],
          texts.barrelsMeet(a.opening.id, b.opening.id, formatLength(least, units)),
          texts.turnOneUntilFree(room),
        );
  for (const a of opened)
    for (const b of passed)
      if (!b.ends.includes(a.body) && close(barrelStrip(a), passageStrip(b)))
        problems.add(
          'barrels-meet',
          [...a.path, 'bearing'],
          texts.barrelMeetsPassage(a.opening.id, b.passage.id, formatLength(least, units)),
          texts.turnItUntilFree(room),
        );
  for (const [i, a] of passed.entries())
    for (const b of passed.slice(i + 1))
      if (!a.ends.some((end) => b.ends.includes(end)) && close(passageStrip(a), passageStrip(b)))
        problems.add(
          'passages-meet',
          [...b.path, 'between'],
          texts.passagesCross(a.passage.id, b.passage.id, formatLength(least, units)),
          texts.joinOtherDomes,
        );
}
