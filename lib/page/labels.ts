import type { PagePayload } from '../documents/page-payload.js';
import { dot3, type Vec3 } from '../math/vec.js';
import type { Solids } from './solids.js';
import type { CutPlane, View } from './view.js';

type Point = readonly [number, number];

/** About how wide a letter is with its halo, and how high a line, in pixels; DejaVu Sans at 14 px, bold. */
const LETTER = 11;
const LINE = 17;
/** Names keep so far below the upper edge, in pixels. */
const TOP = 18;
/** Lines further up that a label may move where it finds no room beside its thing. */
const MOST_UP = 12;

/** Where a room's name stands in what a cut leaves of the room; `null` where it leaves nothing. */
export function nameInside({ inside, over, reach }: PagePayload['rooms'][number], cut: CutPlane | null): Vec3 | null {
  if (!cut) return inside;
  const [x, y, z] = inside;
  const { normal, distance } = cut;
  if (normal[2] > 0) return [x, y, Math.min(z, distance)];
  if (normal[2] < 0) return -distance < over[2] ? [x, y, Math.max(z, -distance)] : null;
  const past = dot3(normal, inside) - distance;
  if (past >= reach) return null;
  const by = Math.max(0, reach + past) / 2;
  return [x - by * normal[0], y - by * normal[1], z];
}

/** Whether anything of a piece that was moved so far is shown. */
export function isShown(
  piece: number,
  move: Vec3,
  { step }: View,
  cut: CutPlane | null,
  payload: PagePayload,
  { boxes }: Solids,
): boolean {
  if ((payload.step[piece] ?? 0) > step) return false;
  const box = boxes[piece];
  if (!cut || !box) return true;
  const [low, high] = box;
  const nearest = ([0, 1, 2] as const).map((i) => (cut.normal[i] > 0 ? low[i] : high[i])) as unknown as Vec3;
  return dot3(cut.normal, nearest) + dot3(cut.normal, move) <= cut.distance;
}

export const isCutAway = (point: Vec3, cut: CutPlane | null): boolean =>
  cut !== null && dot3(cut.normal, point) > cut.distance;

/** Finds places on the screen where labels don't lie on one another. */
export class LabelPlaces {
  readonly #taken: (readonly [left: number, top: number, right: number, bottom: number])[] = [];

  /** Of places for the middle of a text's base line, the first that is free, or the first moved up until it is. */
  take(words: string, places: readonly Point[]): Point {
    const half = (LETTER * words.length) / 2;
    const boxAt = ([x, y]: Point) => [x - half, y - LINE + 4, x + half, y + 4] as const;
    const isFree = (p: Point) => {
      const box = boxAt(p);
      return this.#taken.every((o) => box[0] >= o[2] || o[0] >= box[2] || box[1] >= o[3] || o[1] >= box[3]);
    };
    const [first] = places as readonly [Point];
    const higher = Array.from({ length: MOST_UP }, (_, k): Point => [first[0], first[1] - (k + 1) * LINE]);
    const found = [...places, ...higher].find(isFree) ?? first;
    this.#taken.push(boxAt(found));
    return found;
  }
}

/** Places for the text of a dimension line: over, under and beside it; first where it is usually written. */
export function placesAlong(a: Point, b: Point, words: string): Point[] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const half = (LETTER * words.length) / 2;
  const on = (t: number): Point => [a[0] + t * dx, a[1] + t * dy];
  const moved = ([x, y]: Point, by: Point): Point => [x + by[0], y + by[1]];
  const aside: readonly Point[] = [
    [8 + half, 4],
    [-8 - half, 4],
  ];
  if (Math.abs(dx) <= Math.abs(dy)) return [0.5, 0.25, 0.75].flatMap((t) => aside.map((by) => moved(on(t), by)));
  const [left, right] = dx > 0 ? [a, b] : [b, a];
  return [
    moved(on(0.5), [0, -7]),
    moved(on(0.5), [0, LINE + 2]),
    moved(right, [8 + half, 4]),
    moved(left, [-8 - half, 4]),
  ];
}

/** A name over a roof isn't cut off by the upper edge that it just reaches. */
export const belowTop = ([x, y]: Point): Point => [x, y > 0 && y < TOP ? TOP : y];
