import { THIN_MASONRY } from '../base/tolerances.js';
import { dot2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { originOf, type Prism } from './arch-places.js';

/**
 * `hidden`: masonry stands in the way. `face`: the place lies on a face that looks at the viewer. `void`: in the open.
 * `free`: nothing stands in the way, and whether the place lies on a face isn't known.
 */
export type QuickLook = 'hidden' | 'face' | 'void' | 'free' | 'unknown';

export interface QuickWall {
  readonly dome: DomeSetout;
  /** Domes that it gives way to. */
  readonly earlier: readonly DomeSetout[];
}

/** Along a prism from its origin to `end`. */
export interface QuickPrism {
  readonly prism: Prism;
  readonly end: number;
}

/** A barrel or passage: masonry outside the rooms that it opens into. */
export interface QuickVault extends QuickPrism {
  readonly rooms: readonly DomeSetout[];
  /** Domes that it gives way to. */
  readonly earlier: readonly DomeSetout[];
}

export interface QuickWay {
  readonly walls: readonly QuickWall[];
  /** Clear spaces that may open a wall. */
  readonly clears: readonly QuickPrism[];
  readonly vaults: readonly QuickVault[];
}

/**
 * What a level ray towards a viewer shows where whole walls tell it: from the circles and boxes of a level, with
 * nothing put together. Where openings, abutments or thin pieces have a say, it is unknown, and the ray must be
 * followed. The viewer's plane stands at the distance `reach`.
 */
export function quickLook(way: QuickWay, z: number, at: Vec2, direction: Vec2, reach: number): QuickLook {
  if (z < 0) return 'unknown';
  if (!(reach > THIN_MASONRY)) return 'hidden';
  let free = true;
  let near = false;
  let touched = false;
  for (const { dome, earlier } of way.walls) {
    const { middle, aside } = along(dome, at, direction);
    const half = halfChord(dome.outerRadiusAt(z), aside);
    if (!(half > 0)) continue;
    const room = halfRoom(dome, z, aside);
    for (let side = 1; side >= -1; side -= 2) {
      // Without a room in its way the wall is one piece, told once.
      if (room === 0 && side < 0) break;
      const from = side > 0 ? (room === 0 ? middle - half : middle + room) : middle - half;
      const to = side > 0 ? middle + half : middle - room;
      if (to > THIN_MASONRY && from < reach) {
        free = false;
        const stands = whole(way, earlier, z, at, direction, Math.max(from, THIN_MASONRY), Math.min(to, reach));
        if (stands) return 'hidden';
      } else if (to > -THIN_MASONRY && from < THIN_MASONRY) {
        touched = true;
        near ||= whole(way, earlier, z, at, direction, Math.max(from, -THIN_MASONRY), Math.min(to, THIN_MASONRY));
      }
    }
  }
  for (const { prism, end, rooms, earlier } of way.vaults) {
    const [from, to] = boxAlong(prism, prism.outerHalfAt(z), end, at, direction);
    const inWay = to > THIN_MASONRY && from < reach;
    if (!(to > from) || (!inWay && !(to > -THIN_MASONRY && from < THIN_MASONRY))) continue;
    const [a, b] = outsideRooms(rooms, z, at, direction, from, to);
    const [low, high] = inWay
      ? [Math.max(a, THIN_MASONRY), Math.min(b, reach)]
      : [Math.max(a, -THIN_MASONRY), Math.min(b, THIN_MASONRY)];
    const stands = high > low && whole(way, earlier, z, at, direction, low, high);
    if (inWay && stands) return 'hidden';
    if (inWay) free = false;
    else [near, touched] = [near || stands, true];
  }
  if (!free) return 'unknown';
  return near ? 'face' : touched ? 'free' : 'void';
}

/** One stretch of those that rooms leave of a vault's. */
function outsideRooms(
  rooms: readonly DomeSetout[],
  z: number,
  at: Vec2,
  direction: Vec2,
  from: number,
  to: number,
): Vec2 {
  let [low, high] = [from, to];
  for (const dome of rooms) {
    const { middle, aside } = along(dome, at, direction);
    const room = halfRoom(dome, z, aside);
    if (middle - room >= high || middle + room <= low) continue;
    if (middle - room <= low) low = middle + room;
    else high = middle - room;
  }
  return [low, high];
}

/** Half of a ray's chord of a dome's room, the bore of its oculus included. */
function halfRoom(dome: DomeSetout, z: number, aside: number): number {
  const bore = dome.curb && z > dome.springingZ ? dome.curb.clearRadius : 0;
  return Math.max(halfChord(dome.radiusAt(z), aside), halfChord(bore, aside));
}

/** Whether nothing takes from a wall between two places on the ray. */
function whole(
  way: QuickWay,
  earlier: readonly DomeSetout[],
  z: number,
  at: Vec2,
  direction: Vec2,
  from: number,
  to: number,
): boolean {
  for (const dome of earlier) {
    const { middle, aside } = along(dome, at, direction);
    const half = halfChord(dome.outerRadiusAt(z), aside);
    if (middle - half < to && middle + half > from) return false;
  }
  for (const { prism, end } of way.clears) {
    const taken = boxAlong(prism, prism.clearHalfAt(z), end, at, direction);
    if (taken[1] > taken[0] && taken[0] < to && taken[1] > from) return false;
  }
  return true;
}

/** Where a ray passes a dome's axis, and how far beside it. */
function along(dome: DomeSetout, at: Vec2, way: Vec2): { middle: number; aside: number } {
  const x = dome.at[0] - at[0];
  const y = dome.at[1] - at[1];
  return { middle: x * way[0] + y * way[1], aside: way[0] * y - way[1] * x };
}

/** Half of what a circle cuts off a line at a distance from its centre; 0 where they don't meet. */
function halfChord(radius: number, aside: number): number {
  const rest = radius * radius - aside * aside;
  return rest > 0 ? Math.sqrt(rest) : 0;
}

const NOWHERE: Vec2 = [0, 0];

/** From where to where a ray runs in a prism's box; an empty stretch where it doesn't. */
function boxAlong(prism: Prism, half: number, end: number, at: Vec2, direction: Vec2): Vec2 {
  if (!(half > 0)) return NOWHERE;
  const origin = originOf(prism);
  const x = at[0] - origin[0];
  const y = at[1] - origin[1];
  const { across, along: out } = prism;
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  const u = x * across[0] + y * across[1];
  const du = dot2(direction, across);
  if (du === 0) {
    if (Math.abs(u) >= half) return NOWHERE;
  } else {
    const a = (-half - u) / du;
    const b = (half - u) / du;
    low = Math.min(a, b);
    high = Math.max(a, b);
  }
  const v = x * out[0] + y * out[1];
  const dv = dot2(direction, out);
  if (dv === 0) return v > 0 && v < end ? [low, high] : NOWHERE;
  const a = -v / dv;
  const b = (end - v) / dv;
  return [Math.max(low, Math.min(a, b)), Math.min(high, Math.max(a, b))];
}
