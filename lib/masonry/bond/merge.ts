import { SAME_ANGLE_RAD, SAME_POINT } from '../../base/tolerances.js';
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

/** A ring of equal blocks and what its pieces must keep. Angles in radians. */
export interface RingRules {
  readonly module: number;
  readonly radius: number;
  readonly joint: number;
  readonly shortestPiece: number;
  readonly heaviestKg: number;
  /** Freshly demoulded, for each radian of the ring. */
  readonly kgPerRadian: number;
}

/** Makes short pieces beside cuts one with their neighbours, unless the two together are too heavy. */
export function mergeShort(rules: RingRules, start: number, spans: readonly LaidSpan[]): Merges {
  const ends = spans.map((span) => mergeSpan(rules, start, span));
  const shortest = Math.min(...ends.map((e) => e.shortest));
  const sum = (pick: (end: (typeof ends)[number]) => number) => ends.reduce((all, e) => all + pick(e), 0);
  const ring = Math.round((2 * Math.PI) / rules.module);
  return {
    blocks: spans.length === 0 ? ring : sum((e) => e.blocks),
    cut: sum((e) => e.cut),
    waste: sum((e) => e.waste),
    leftOut: ends.flatMap((e) => e.leftOut).sort((a, b) => a - b),
    short: ends.flatMap((e) => e.short),
    shortest: spans.length === 0 ? null : shortest,
  };
}

function mergeSpan(rules: RingRules, start: number, { from, to, fromRadius, toRadius }: LaidSpan) {
  const { module, radius, joint, shortestPiece, heaviestKg, kgPerRadian } = rules;
  const count = Math.round((2 * Math.PI) / module);
  const half = joint / 2 / radius;
  const isShort = (length: number) => length < shortestPiece - SAME_POINT;
  // A perpend nearer to a cut than half a joint is one with the cut's joint.
  const slack = half + SAME_POINT / radius;
  const first = Math.ceil((from + slack - start) / module);
  const last = Math.floor((to - slack - start) / module);
  const perpends = Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => first + k);
  const at = (k: number) => start + k * module;
  const leftOut: number[] = [];
  const short: ShortPiece[] = [];
  let shortest = Number.POSITIVE_INFINITY;
  for (const end of [from, to]) {
    const ahead = end === from;
    const near = perpends.at(ahead ? 0 : -1);
    const own = ahead ? fromRadius : toRadius;
    const length = own * (near === undefined ? to - from : Math.abs(at(near) - end) - half);
    if (near === undefined || !isShort(length)) {
      shortest = Math.min(shortest, length);
      // Without a perpend both ends are the same piece.
      if (isShort(length) && ahead) short.push({ length, togetherKg: null });
      continue;
    }
    const next = perpends.at(ahead ? 1 : -2);
    const far = next === undefined || perpends.length === 1 ? (ahead ? to : from) : at(next) + (ahead ? -half : half);
    const together = Math.abs(far - end);
    if (together * radius - (heaviestKg / kgPerRadian) * radius > SAME_POINT) {
      short.push({ length, togetherKg: kgPerRadian * together });
      shortest = Math.min(shortest, length);
      continue;
    }
    perpends.splice(perpends.indexOf(near), 1);
    leftOut.push(((near % count) + count) % count);
    shortest = Math.min(shortest, own * together);
  }
  // A piece from cut to cut is one; those longer than a block take in their neighbours.
  const pieces =
    perpends.length === 0
      ? [to - from]
      : [at(perpends[0] as number) - half - from, to - half - at(perpends.at(-1) as number)];
  const rests = pieces.map((angle) => 1 - angle / (module - 2 * half)).filter((rest) => rest > SAME_ANGLE_RAD);
  return {
    leftOut,
    short,
    shortest,
    blocks: perpends.length + 1,
    cut: rests.length,
    waste: rests.reduce((all, rest) => all + rest, 0),
  };
}
