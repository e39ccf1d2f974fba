import * as texts from '../../base/texts/problems-domes.js';
import { SAME_POINT } from '../../base/tolerances.js';
import { formatApart, formatLength, type LengthUnit } from '../../base/units.js';
import { acos, square } from '../../math/elementary.js';
import { intervalsLength, uniteIntervals } from '../../math/intervals.js';
import { monotoneRoot } from '../../math/roots.js';
import { bearingOf, length2, sub2, turnPositive, type Vec2 } from '../../math/vec.js';
import type { BlockRules } from '../house.js';
import type { ProblemList } from '../problem-list.js';
import { between, type DomeBody } from './body.js';
import { atLeast, atMost, levelOf } from './words.js';

/** Part of its wall that an abutting dome keeps on the ground. */
const LEAST_WALL = 1 / 4;
const SAMPLES = 64;

/** Least length of wall between two things that cut it: a piece of block and the joint beside it. */
export const standoffOf = ({ shortestPiece, joint }: BlockRules): number => shortestPiece + joint;

/** Two domes in the order of the list, with how near their axes may come. */
interface Pair {
  readonly earlier: DomeBody;
  readonly later: DomeBody;
  readonly distance: number;
  /** From here on they stand apart, with a gap that can be pointed and rendered. */
  readonly apart: number;
  /** From here down the walls cut through one another, and not merely graze. */
  readonly abutting: number;
  /** Down to here either's axis and crown stay outside the other. */
  readonly deepest: number;
  /** Least wall between a crown and the other dome. */
  readonly standoff: number;
}

/** How two domes stand to one another: soundly, overlapping too deeply, or one where the other is. */
type Standing = 'sound' | 'too deep' | 'within';

/** Domes stand apart or abut soundly; what follows from it when they don't is not told again. */
export class Neighbours {
  readonly #standing = new Map<string, Standing>();

  constructor(
    readonly bodies: readonly DomeBody[],
    readonly blocks: BlockRules,
    readonly units: LengthUnit,
  ) {}

  standing(one: DomeBody, other: DomeBody): Standing {
    return this.#standing.get(keyOf(one, other)) ?? 'sound';
  }

  check(problems: ProblemList): void {
    const { bodies, units } = this;
    const { joint } = this.blocks;
    for (const [i, earlier] of bodies.entries())
      for (const later of bodies.slice(i + 1)) {
        const pair = pairOf(earlier, later, this.blocks);
        const standing =
          tellSamePlace(pair, units, problems) || tellNested(pair, units, problems)
            ? 'within'
            : tellTooDeep(pair, joint, units, problems)
              ? 'too deep'
              : 'sound';
        this.#standing.set(keyOf(earlier, later), standing);
        if (standing === 'sound') tellGrazing(pair, units, problems);
      }
    for (const later of bodies) {
      const cut = bodies.filter((b) => b.order < later.order && abuts(b, later) && this.standing(b, later) === 'sound');
      tellCutAway(later, cut, joint, problems);
      for (const [i, one] of cut.entries())
        for (const other of cut.slice(i + 1)) tellSplit(later, one, other, joint, units, problems);
    }
  }
}

const keyOf = (one: DomeBody, other: DomeBody): string =>
  one.order < other.order ? `${one.order} ${other.order}` : `${other.order} ${one.order}`;

const abuts = (one: DomeBody, other: DomeBody): boolean => between(one, other) < one.footRadius + other.footRadius;

function pairOf(earlier: DomeBody, later: DomeBody, blocks: BlockRules): Pair {
  const { joint, shortestPiece } = blocks;
  const standoff = standoffOf(blocks);
  const sum = earlier.footRadius + later.footRadius;
  const thickness = later.footRadius - later.dome.radius;
  return {
    earlier,
    later,
    distance: between(earlier, later),
    standoff,
    apart: sum + shortestPiece + 2 * joint,
    abutting: sum - thickness - shortestPiece,
    deepest: Math.max(
      earlier.footRadius + joint,
      later.footRadius + joint,
      besideCrown(later, earlier, standoff),
      besideCrown(earlier, later, standoff),
    ),
  };
}

/** How near to a dome's axis another's may come before its wall stands at the crown; 0 where it ends below. */
const besideCrown = ({ crown }: DomeBody, other: DomeBody, standoff: number): number =>
  other.outerRadiusAt(crown.fromZ) + crown.radius + standoff || 0;

/** Where a builder may set the axes. */
function advice({ apart, abutting, deepest }: Pair, units: LengthUnit): string {
  const gap = texts.setTheirAxes(atLeast(apart, units));
  if (deepest > abutting) return `${gap}.`;
  return texts.orApartToAbut(gap, atLeast(deepest, units), atMost(abutting, units));
}

function tellSamePlace(pair: Pair, units: LengthUnit, problems: ProblemList): boolean {
  const { earlier, later, distance } = pair;
  if (distance > later.footRadius - later.dome.radius) return false;
  const where = distance === 0 ? texts.inSamePlace : texts.onlyApart(formatLength(distance, units));
  problems.add(
    'domes-same-place',
    [...later.path, 'at'],
    texts.axesInOnePlace(earlier.dome.id, later.dome.id, where),
    texts.giveEachDomeItsPlace(advice(pair, units)),
  );
  return true;
}

function tellNested(pair: Pair, units: LengthUnit, problems: ProblemList): boolean {
  const { earlier, later, distance } = pair;
  const [small, large] = earlier.footRadius < later.footRadius ? [earlier, later] : [later, earlier];
  if (distance + small.footRadius > large.footRadius) return false;
  const message = texts.domeWithinDome(
    small.dome.id,
    large.dome.id,
    formatLength(distance, units),
    formatLength(large.footRadius, units),
  );
  problems.add('domes-nested', [...later.path, 'at'], message, advice(pair, units));
  return true;
}

function tellTooDeep(pair: Pair, joint: number, units: LengthUnit, problems: ProblemList): boolean {
  const { earlier, later, distance, deepest, standoff } = pair;
  if (distance >= deepest) return false;
  const covers = (over: DomeBody, under: DomeBody) =>
    texts.coversAxis(
      over.dome.id,
      formatLength(over.footRadius, units),
      under.dome.id,
      formatApart(distance, over.footRadius, units)[0],
    );
  const crowds = (other: DomeBody, body: DomeBody) =>
    texts.comesTooNear(other.dome.id, body.dome.oculus !== null, body.dome.id, levelOf(body.crown.fromZ, units));
  const why =
    earlier.footRadius + joint > distance
      ? covers(earlier, later)
      : later.footRadius + joint > distance
        ? covers(later, earlier)
        : besideCrown(later, earlier, standoff) > distance
          ? crowds(earlier, later)
          : crowds(later, earlier);
  const message = texts.domesOverlapTooDeeply(earlier.dome.id, later.dome.id, why);
  problems.add('overlap-too-deep', [...later.path, 'at'], message, advice(pair, units));
  return true;
}

function tellGrazing(pair: Pair, units: LengthUnit, problems: ProblemList): void {
  const { earlier, later, distance, apart, abutting } = pair;
  if (distance >= apart || distance <= abutting) return;
  const gap = distance - earlier.footRadius - later.footRadius;
  const how = gap >= 0 ? texts.gapTooNarrow(formatLength(gap, units)) : texts.overlapTooThin(formatLength(-gap, units));
  const message = texts.wallsNearlyTouch(earlier.dome.id, later.dome.id, how);
  problems.add('domes-nearly-touch', [...later.path, 'at'], message, advice(pair, units));
}

/** Wall at the floor, by bearing at mid-thickness, that the earlier domes leave. */
function tellCutAway(later: DomeBody, cut: readonly DomeBody[], joint: number, problems: ProblemList): void {
  const full = 2 * Math.PI;
  const middle = (later.dome.radius + later.footRadius) / 2;
  const lost = cut.flatMap((earlier): (readonly [number, number])[] => {
    const distance = between(earlier, later);
    const cosine = (square(middle) + square(distance) - square(earlier.footRadius + joint)) / (2 * middle * distance);
    if (cosine >= 1) return [];
    const half = acos(Math.max(-1, cosine));
    const from = turnPositive(bearingOf(sub2(earlier.at, later.at)) - half);
    const to = from + 2 * half;
    return to > full
      ? [
          [from, full],
          [0, to - full],
        ]
      : [[from, to]];
  });
  const left = 1 - intervalsLength(uniteIntervals(lost)) / full;
  if (left >= LEAST_WALL) return;
  const names = cut.map((b) => `"${b.dome.id}"`).join(', ');
  const message = texts.tooLittleWallStands(later.dome.id, Math.floor(left * 100), names);
  const mend = texts.moveFurtherFromThem(later.dome.id);
  problems.add('dome-cut-away', [...later.path, 'at'], message, mend);
}

/** Two earlier domes that meet inside a later one's room part it, or leave a pocket that nobody can reach. */
function tellSplit(
  later: DomeBody,
  one: DomeBody,
  other: DomeBody,
  joint: number,
  units: LengthUnit,
  problems: ProblemList,
): void {
  const top = Math.min(...[later, one, other].map((b) => b.turns.at(-1) as number));
  const even = Array.from({ length: SAMPLES }, (_, k) => (top * k) / SAMPLES);
  for (const z of [...even, partingLevel(one, other, joint, top) - SAME_POINT]) {
    const corners = circlesMeet(one.at, one.outerRadiusAt(z) + joint, other.at, other.outerRadiusAt(z) + joint);
    const radius = later.shape.radiusAt(z);
    if (corners.length === 0 || !corners.every((p) => length2(sub2(p, later.at)) < radius)) continue;
    const message = texts.meetInsideAndPart(one.dome.id, other.dome.id, later.dome.id, levelOf(z, units));
    const mend = texts.moveAwayFromLine(later.dome.id);
    problems.add('room-parted', [...later.path, 'at'], message, mend);
    return;
  }
}

/**
 * Height at which two walls with their joints come apart, at most `top`: the corners between them run together there,
 * and may lie in a room for less than a step below it.
 */
function partingLevel(one: DomeBody, other: DomeBody, joint: number, top: number): number {
  const distance = between(one, other);
  return monotoneRoot((z) => one.outerRadiusAt(z) + other.outerRadiusAt(z) + 2 * joint - distance || -distance, 0, top);
}

/** The two points in which circles cross; none where they don't. */
function circlesMeet(a: Vec2, ra: number, b: Vec2, rb: number): Vec2[] {
  const away = sub2(b, a);
  const distance = length2(away);
  const along = (square(distance) + square(ra) - square(rb)) / (2 * distance);
  const rest = square(ra) - square(along);
  if (!(rest > 0)) return [];
  const across = Math.sqrt(rest);
  return [1, -1].map((side) => [
    a[0] + (away[0] * along - side * away[1] * across) / distance,
    a[1] + (away[1] * along + side * away[0] * across) / distance,
  ]);
}
