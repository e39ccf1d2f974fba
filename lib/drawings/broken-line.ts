import { type LineEdge, lineEdge } from '../math/curves.js';
import { subtractIntervals } from '../math/intervals.js';
import { cross2, length2, lerp2, sub2, type Vec2 } from '../math/vec.js';

/**
 * What is left of a line that is broken where texts stand on it.
 * @param texts corners of each text's box, in order
 * @param gap left free before and after each, mm
 */
export function brokenLine({ from, to }: LineEdge, texts: readonly (readonly Vec2[])[], gap = 0): LineEdge[] {
  const more = gap / length2(sub2(to, from));
  const taken = texts.flatMap((corners): [number, number][] => {
    const [a, b] = within(from, to, corners);
    return b > a ? [[a - more, b + more]] : [];
  });
  return subtractIntervals([[0, 1]], taken).map(([a, b]) => lineEdge(lerp2(from, to, a), lerp2(from, to, b)));
}

/** Between which shares the line through two points lies in a convex figure; the second isn't larger where it nowhere does. */
function within(from: Vec2, to: Vec2, corners: readonly Vec2[]): [number, number] {
  const along = sub2(to, from);
  const [first, second, third] = corners as readonly [Vec2, Vec2, Vec2];
  const turn = cross2(sub2(second, first), sub2(third, second)) > 0 ? 1 : -1;
  let [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  corners.forEach((a, i) => {
    const side = sub2(corners[(i + 1) % corners.length] as Vec2, a);
    // Inside is where at + slope t is positive.
    const at = turn * cross2(side, sub2(from, a));
    const slope = turn * cross2(side, along);
    if (slope > 0) low = Math.max(low, -at / slope);
    else if (slope < 0) high = Math.min(high, -at / slope);
    else if (at <= 0) high = Number.NEGATIVE_INFINITY;
  });
  return [low, high];
}
