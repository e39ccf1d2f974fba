import { monotoneRoot } from '../../math/roots.js';
import type { FitLimits } from './limits.js';
import { keepsRooms, type Placement, settleBlock } from './place.js';
import type { Site } from './site.js';
import type { Seatings } from './spread.js';
import { jointsAtSeats, type Mould, middleJoint, slopesOf, windowOf } from './window.js';

/**
 * A ring of blocks of two moulds, one perpend thick throughout in the middle of the heads. Each block keeps its half of
 * either joint in half the range, so that any two may stand side by side.
 */
export interface RingOfTwo {
  /** How the blocks of each mould lie in their places. */
  readonly placements: readonly [Placement, Placement];
  /** Angle of the ring that a block of each takes with its joint, radians. */
  readonly angles: readonly [number, number];
  /** Perpend in the middle of the heads, mm. */
  readonly perpend: number;
  /** Thinnest and thickest perpend of dry blocks, mm, between neighbours that occur when the fewer are spread evenly. */
  readonly joints: readonly [number, number];
}

export type Pair<T> = readonly [T, T];

/** Numbers of blocks of two moulds that may make a ring, the first not fewer, and what they leave; as they are interpolated. */
export interface Shares {
  readonly numbers: Pair<number>;
  readonly perpend: number;
  /** By how much the places of the two differ, radians. */
  readonly apart: number;
}

/** Every way to share a ring of so many blocks between two moulds, by the places that they fit. */
export function* sharesOf(count: number, [one, other]: Pair<Seatings>): Generator<Shares> {
  const [low, high] = [Math.max(one.perpends[0], other.perpends[0]), Math.min(one.perpends[1], other.perpends[1])];
  if (low > high) return;
  const [ownLow, ownHigh, nextLow, nextHigh] = [
    angleAt(one, low),
    angleAt(one, high),
    angleAt(other, low),
    angleAt(other, high),
  ];
  for (let seconds = 1; 2 * seconds <= count; seconds++) {
    const least = (count - seconds) * ownLow + seconds * nextLow;
    const most = (count - seconds) * ownHigh + seconds * nextHigh;
    if (least > 2 * Math.PI || most < 2 * Math.PI) continue;
    const perpend = low + ((2 * Math.PI - least) / (most - least)) * (high - low);
    yield {
      numbers: [count - seconds, seconds],
      perpend,
      apart: Math.abs(angleAt(one, perpend) - angleAt(other, perpend)),
    };
  }
}

/** Whether there is any such way with one of these numbers of blocks. */
export function canShare(counts: readonly number[], [one, other]: Pair<Seatings>): boolean {
  // Most pairs leave no perpend in common.
  if (Math.max(one.perpends[0], other.perpends[0]) > Math.min(one.perpends[1], other.perpends[1])) return false;
  return counts.some((count) => !sharesOf(count, [one, other]).next().done);
}

/** Angle of the place in which a mould leaves a perpend. */
function angleAt({ angles, perpends }: Seatings, perpend: number): number {
  const share = (perpend - perpends[0]) / (perpends[1] - perpends[0]);
  return angles[0] + share * (angles[1] - angles[0]);
}

/** The ring of so many blocks of either mould; `null` where some joint, bed or face would leave its range. */
export function ringOfTwo(
  moulds: Pair<Mould>,
  site: Site,
  [firsts, seconds]: Pair<number>,
  limits: FitLimits,
  seatings: Pair<Seatings>,
): RingOfTwo | null {
  const placed = (k: 0 | 1, angle: number) =>
    settleBlock(moulds[k].parent, site, (2 * Math.PI) / angle, limits) as Placement;
  const second = (angle: number) => (2 * Math.PI - firsts * angle) / seconds;
  /** By how much the first mould's joints are thicker than the second's. */
  const thicker = (angle: number): number =>
    middleJoint(moulds[0], placed(0, angle)) - middleJoint(moulds[1], placed(1, second(angle)));
  const [own, next] = seatings.map((s) => s.angles) as unknown as Pair<Pair<number>>;
  const narrow = Math.max(own[0], (2 * Math.PI - seconds * next[1]) / firsts);
  const wide = Math.min(own[1], (2 * Math.PI - seconds * next[0]) / firsts);
  if (narrow >= wide || thicker(narrow) > 0 || thicker(wide) < 0) return null;
  const angle = monotoneRoot(thicker, narrow, wide);
  const angles: Pair<number> = [angle, second(angle)];
  const [one, other] = [placed(0, angle), placed(1, angles[1])];
  if (!fits(moulds[0], one, limits) || !fits(moulds[1], other, limits)) return null;
  const [alike, unlike] = [jointsAtSeats(moulds[0], one, limits), jointsAtSeats(moulds[1], other, limits)];
  // Spread evenly, the fewer have no neighbour of their own mould.
  const joints = [...alike.map((j, k) => (j + (unlike[k] as number)) / 2), ...(firsts > seconds ? alike : [])];
  return {
    placements: [one, other],
    angles,
    perpend: middleJoint(moulds[0], one),
    joints: [Math.min(...joints), Math.max(...joints)],
  };
}

function fits(mould: Mould, placement: Placement, limits: FitLimits): boolean {
  if (!keepsRooms(placement, limits)) return false;
  const [low, high] = slopesOf(windowOf(placement, limits), mould.lean);
  return low <= mould.slope && mould.slope <= high;
}
