import { SAME_ANGLE_RAD, SAME_POINT } from '../../base/tolerances.js';
import { placeAngle, type Ring, turnTo } from '../../setout/courses.js';
import type { LaidSpan } from './spans.js';

/** A piece beside a cut that stays shorter than the shortest piece. */
export interface ShortPiece {
  readonly length: number;
  /** Mass of one block with its neighbour, kg; `null` where it has none. */
  readonly togetherKg: number | null;
}

export interface Merges {
  /** Blocks to cast for the ring: whole ones, those to be cut, and those that take in a neighbour. */
  readonly blocks: number;
  readonly cut: number;
  /** What is cut off, in blocks. */
  readonly waste: number;
  /** Perpends left out, by number. */
  readonly leftOut: readonly number[];
  readonly short: readonly ShortPiece[];
  /** Shortest piece beside a cut after all, mm; `null` where nothing is cut. */
  readonly shortest: number | null;
}

/** A ring of blocks and what its pieces must keep. Angles in radians. */
export interface RingRules {
  readonly ring: Ring;
  readonly radius: number;
  readonly joint: number;
  readonly shortestPiece: number;
  readonly heaviestKg: number;
  /** Moist, of its dry size, for each radian of the ring. */
  readonly kgPerRadian: number;
}

/** Makes short pieces beside cuts one with their neighbours, unless the two together are too heavy. */
export function mergeShort(rules: RingRules, start: number, spans: readonly LaidSpan[]): Merges {
  const ends = spans.map((span) => mergeSpan(rules, start, span));
  const shortest = Math.min(...ends.map((e) => e.shortest));
  const sum = (pick: (end: (typeof ends)[number]) => number) => ends.reduce((all, e) => all + pick(e), 0);
  return {
    blocks: spans.length === 0 ? rules.ring.count : sum((e) => e.blocks),
    cut: sum((e) => e.cut),
    waste: sum((e) => e.waste),
    leftOut: ends.flatMap((e) => e.leftOut).sort((a, b) => a - b),
    short: ends.flatMap((e) => e.short),
    shortest: spans.length === 0 ? null : shortest,
  };
}

function mergeSpan(rules: RingRules, start: number, span: LaidSpan) {
  const { ring, radius, joint } = rules;
  const { from, to } = span;
  const half = joint / 2 / radius;
  const { first, last, leftOut, short, shortest } = spanEnds(rules, start, span);
  const at = (k: number) => start + turnTo(ring, k);
  // A piece from cut to cut is one; those longer than a block take in their neighbours.
  const pieces: readonly (readonly [angle: number, place: number])[] =
    last < first
      ? [[to - from, last]]
      : [
          [at(first) - half - from, first - 1],
          [to - half - at(last), last],
        ];
  const rests = pieces
    .map(([angle, place]) => 1 - angle / (placeAngle(ring, place) - 2 * half))
    .filter((rest) => rest > SAME_ANGLE_RAD);
  return {
    leftOut,
    short,
    shortest,
    blocks: Math.max(0, last - first + 1) + 1,
    cut: rests.length,
    waste: rests.reduce((all, rest) => all + rest, 0),
  };
}

/** What becomes of the pieces at both ends of a stretch that is laid. */
interface SpanEnds {
  /** Numbers of the perpends that stay, round the ring from its first; none where the first is larger. */
  readonly first: number;
  readonly last: number;
  readonly leftOut: readonly number[];
  readonly short: readonly ShortPiece[];
  readonly shortest: number;
}

const ENDS = [true, false] as const;

/** Makes short pieces at the ends of one stretch one with their neighbours. */
export function spanEnds(
  { ring, radius, joint, shortestPiece, heaviestKg, kgPerRadian }: RingRules,
  start: number,
  { from, to, fromRadius, toRadius }: LaidSpan,
): SpanEnds {
  const { count } = ring;
  const half = joint / 2 / radius;
  const isShort = (length: number) => length < shortestPiece - SAME_POINT;
  // A perpend nearer to a cut than half a joint is one with the cut's joint.
  const slack = half + SAME_POINT / radius;
  let first = firstPast(ring, from + slack - start);
  let last = -firstPast(ring, start - (to - slack), -1);
  const at = (k: number) => start + turnTo(ring, k);
  const leftOut: number[] = [];
  const short: ShortPiece[] = [];
  let shortest = Number.POSITIVE_INFINITY;
  for (const ahead of ENDS) {
    const end = ahead ? from : to;
    const own = ahead ? fromRadius : toRadius;
    const near = ahead ? first : last;
    const parted = last >= first;
    const length = own * (parted ? Math.abs(at(near) - end) - half : to - from);
    if (!parted || !isShort(length)) {
      shortest = Math.min(shortest, length);
      // Without a perpend both ends are the same piece.
      if (isShort(length) && ahead) short.push({ length, togetherKg: null });
      continue;
    }
    const next = ahead ? at(near + 1) - half : at(near - 1) + half;
    const together = Math.abs((first === last ? from + to - end : next) - end);
    if ((together - heaviestKg / kgPerRadian) * radius > SAME_POINT) {
      short.push({ length, togetherKg: kgPerRadian * together });
      shortest = Math.min(shortest, length);
      continue;
    }
    if (ahead) first++;
    else last--;
    leftOut.push(((near % count) + count) % count);
    shortest = Math.min(shortest, own * together);
  }
  return { first, last, leftOut, short, shortest };
}

/** The first perpend, by number, that lies no nearer than so far round the ring from its first; the other way round with -1. */
function firstPast(ring: Ring, turn: number, way: 1 | -1 = 1): number {
  const at = (k: number) => way * turnTo(ring, way * k);
  let k = Math.ceil((turn * ring.count) / (2 * Math.PI));
  // Unequal places shift perpends by less than one of them.
  while (at(k) < turn) k++;
  while (at(k - 1) >= turn) k--;
  return k;
}
