import { hypot } from '../../math/elementary.js';
import { segmentsApart } from '../../math/segments.js';
import { cross2, dot2, perp2, sub2, type Vec2 } from '../../math/vec.js';
import type { DomeBody } from './body.js';

const SAMPLES = 96;
const ACROSS = 8;
/** The last of the steps in which a nearest place is sought, as a share of the samples' own. */
const NEAREST = 1e-3;

/** A straight stretch of masonry or clear space as it runs out from a dome's axis; u across it, v along. */
export interface Run {
  readonly at: Vec2;
  readonly along: Vec2;
  readonly lowZ: number;
  readonly highZ: number;
  /** Heights at which its outline turns. */
  readonly turns: readonly number[];
  halfAt(z: number): number;
  /** From where to where it runs at (u, z); nowhere when the first exceeds the second. */
  stretchAt(u: number, z: number): readonly [number, number];
}

export interface Nearness {
  /** Plan distance from the run to the body's outside, negative inside; Infinity when they share no height. */
  readonly gap: number;
  readonly z: number;
}

/** Heights between two levels: evenly, and where something turns. */
export function heightsBetween(from: number, to: number, turns: readonly number[]): number[] {
  const even = Array.from({ length: SAMPLES + 1 }, (_, i) => from + ((to - from) * i) / SAMPLES);
  return [...even, ...turns.filter((z) => z > from && z < to)];
}

/** Half chord of a circle at distance u from its centre; 0 where it doesn't reach, or there is none. */
export function chordAt(radius: number, u: number): number {
  const square = radius * radius - u * u;
  return square > 0 ? Math.sqrt(square) : 0;
}

/** How near a run comes to a body, and at what height. */
export function nearest(run: Run, body: DomeBody): Nearness {
  const away = sub2(body.at, run.at);
  const u0 = -cross2(run.along, away);
  const v0 = dot2(run.along, away);
  let best: Nearness = { gap: Number.POSITIVE_INFINITY, z: run.lowZ };
  // Where across, as a share of the half width.
  let place = 0;
  const look = (share: number, z: number): boolean => {
    const radius = body.outerRadiusAt(z);
    const half = run.halfAt(z);
    if (!(radius >= 0) || !(half > 0)) return false;
    const u = half * share;
    const [from, to] = run.stretchAt(u, z);
    const gap = hypot(u - u0, Math.min(to, Math.max(from, v0)) - v0) - radius;
    if (!(from <= to && gap < best.gap)) return false;
    [best, place] = [{ gap, z }, share];
    return true;
  };
  for (const z of heightsBetween(run.lowZ, run.highZ, [...run.turns, ...body.turns])) {
    for (let i = 0; i <= ACROSS; i++) look((2 * i) / ACROSS - 1, z);
    look(Math.min(1, Math.max(-1, u0 / run.halfAt(z))), z);
  }
  // On from the nearest of these, in steps that become smaller.
  for (let step = 1; step > NEAREST; ) {
    const { z } = best;
    const aside = (2 * step) / ACROSS;
    const up = (step * (run.highZ - run.lowZ)) / SAMPLES;
    let nearer = false;
    for (const share of [Math.max(-1, place - aside), place, Math.min(1, place + aside)])
      for (const height of [Math.max(run.lowZ, z - up), z, Math.min(run.highZ, z + up)])
        nearer = look(share, height) || nearer;
    if (!nearer) step /= 2;
  }
  return best;
}

/** A rectangle in plan. */
export interface Strip {
  readonly at: Vec2;
  readonly along: Vec2;
  readonly from: number;
  readonly to: number;
  readonly half: number;
}

export function cornersOf({ at, along, from, to, half }: Strip): Vec2[] {
  const corner = (u: number, v: number): Vec2 => [
    at[0] + along[0] * v + along[1] * u,
    at[1] + along[1] * v - along[0] * u,
  ];
  return [corner(-half, from), corner(half, from), corner(half, to), corner(-half, to)];
}

/**
 * Plan distance between a strip and a body's foot, negative inside: whatever lies over the strip comes no nearer to the
 * body at any height, for nowhere is a body wider than at its foot.
 */
export function footApart({ at, along, from, to, half }: Strip, body: DomeBody): number {
  const away = sub2(body.at, at);
  const v = dot2(along, away);
  const across = Math.max(0, Math.abs(cross2(along, away)) - half);
  return hypot(across, v - Math.min(to, Math.max(from, v))) - body.footRadius;
}

/** Distance between two strips; 0 where they overlap. */
export function stripsApart(one: Strip, other: Strip): number {
  const [a, b] = [cornersOf(one), cornersOf(other)];
  const within = (p: Vec2, { at, along, from, to, half }: Strip) => {
    const away = sub2(p, at);
    const v = dot2(along, away);
    return Math.abs(cross2(along, away)) <= half && v >= from && v <= to;
  };
  if (a.some((p) => within(p, other)) || b.some((p) => within(p, one))) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [i, p] of a.entries())
    for (const [j, q] of b.entries())
      least = Math.min(least, segmentsApart(p, a[(i + 1) % 4] as Vec2, q, b[(j + 1) % 4] as Vec2));
  return least;
}

/** How far two strips reach into each other, at least along one of their sides; 0 or less where they only touch or lie apart. */
export function stripsInto(one: Strip, other: Strip): number {
  const corners = [cornersOf(one), cornersOf(other)] as const;
  const sides = [one.along, perp2(one.along), other.along, perp2(other.along)];
  return Math.min(
    ...sides.map((side) => {
      const [a, b] = corners.map((each) => each.map((p) => dot2(p, side))) as [number[], number[]];
      return Math.min(Math.max(...a), Math.max(...b)) - Math.max(Math.min(...a), Math.min(...b));
    }),
  );
}
