import { SAME_POINT } from '../base/tolerances.js';
import { hypot } from '../math/elementary.js';
import { cross2, type Vec2 } from '../math/vec.js';

/**
 * A closed polygon, counter-clockwise, each edge named after the face that it sweeps.
 * `names[i]` belongs to the edge from `points[i]` to the next point.
 */
export interface Outline {
  readonly points: readonly Vec2[];
  readonly names: readonly string[];
}

/** A run of points whose outgoing edges share one name. */
export type Stretch = readonly [name: string, points: readonly Vec2[]];

/** A point of an outline with the name of the edge that leaves it. */
export interface Corner {
  readonly name: string;
  readonly point: Vec2;
}

export const cornersOf = (stretches: readonly Stretch[]): Corner[] =>
  stretches.flatMap(([name, points]) => points.map((point) => ({ name, point })));

/** Joins stretches into one outline; points nearer than one point are one. Throws when it isn't counter-clockwise. */
export function outlineOf(...stretches: readonly Stretch[]): Outline {
  const all = cornersOf(stretches);
  const kept = all.filter(({ point }, i) => {
    const next = (all[(i + 1) % all.length] as Corner).point;
    return hypot(next[0] - point[0], next[1] - point[1]) > SAME_POINT;
  });
  const outline = { points: kept.map((k) => k.point), names: kept.map((k) => k.name) };
  if (!(areaOf(outline.points) > 0))
    throw new Error(`an outline of ${kept.length} points isn't finite and counter-clockwise`);
  return outline;
}

export function areaOf(points: readonly Vec2[]): number {
  let twice = 0;
  for (let i = 0; i < points.length; i++) {
    twice += cross2(points[i] as Vec2, points[(i + 1) % points.length] as Vec2);
  }
  return twice / 2;
}

/** Rectangle from (left, bottom) to (right, top), every edge of one name unless told apart. */
export function rectangle(
  [left, bottom]: Vec2,
  [right, top]: Vec2,
  names: { readonly bottom: string; readonly side: string; readonly top: string },
): Outline {
  return {
    points: [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
    names: [names.bottom, names.side, names.top, names.side],
  };
}
