import { wedgeOf } from '../masonry/wedge.js';
import { cos, sin } from '../math/elementary.js';
import { exp } from '../math/hyperbolic.js';
import type { Vec2 } from '../math/vec.js';
import { type MeridianSpan, spanPoint } from '../setout/span.js';

/**
 * A fresh block on its bed, before its ring is closed: the bed dips inward by the elevation of the wall's normal,
 * fresh mortar is counted on for friction alone. Lengths mm, weights kN, angles radians.
 */
export interface FreshBlock {
  readonly volume: number;
  /** Of its ring, mm³ a radian. */
  readonly perRadian: number;
  /** Of a thin slice's centre of gravity from the axis. */
  readonly meanRadius: number;
  /** Of the bed's inner edge from the axis. */
  readonly lowerInner: number;
  /** Centre of gravity: (distance from the axis, height). */
  readonly centroid: Vec2;
  /** Dip of the bed below, and of the one that it will carry. */
  readonly bedRad: number;
  readonly topRad: number;
  /** Middle of the chord between the two lower inner corners, over which it tips. */
  readonly edge: Vec2;
  readonly outerBottom: Vec2;
  readonly outerTop: Vec2;
}

/** The block between two beds, two faces `thickness` apart and two upright planes through the axis. */
export function freshBlock(
  span: MeridianSpan,
  [bed, top]: readonly [number, number],
  thickness: number,
  widthRad: number,
): FreshBlock {
  const { perRadian, meanRadius, meanZ } = wedgeOf(span, [bed, top], thickness);
  const half = widthRad / 2;
  const inner = spanPoint(span, bed, 0);
  return {
    volume: perRadian * widthRad,
    perRadian,
    meanRadius,
    lowerInner: inner[0],
    centroid: [(meanRadius * sin(half)) / half, meanZ],
    bedRad: span.at(bed).normalRad,
    topRad: span.at(top).normalRad,
    edge: [inner[0] * cos(half), inner[1]],
    outerBottom: spanPoint(span, bed, thickness),
    outerTop: spanPoint(span, top, thickness),
  };
}

/** Horizontal distance by which the weight passes inside the tipping edge; it tips inward where that is over 0. */
export const overhang = ({ edge, centroid }: FreshBlock): number => edge[0] - centroid[0];

/** Part of the weight that pulls it down its bed beyond what friction holds; 0 where it stays. */
export const slidingShare = ({ bedRad }: FreshBlock, friction: number): number =>
  Math.max(0, sin(bedRad) - friction * cos(bedRad));

/**
 * How a rope from the block's upper outer edge leaves it. `clear`: straight along the tangent at that edge, to an
 * anchor that keeps it off the wall. `lying`: over the block's own outer face and the finished courses to a weight
 * that hangs beside the wall; then the rope presses on the block too, and block and rope together feel only the pull
 * along the tangent at the lower outer edge, which is normal to the bed: it holds against sliding by friction alone.
 */
export type RopeWay = 'clear' | 'lying';

/** Least pulls of the rope, as parts of the block's weight; infinite where it can't hold. */
export function ropePulls(
  block: FreshBlock,
  friction: number,
  way: RopeWay,
): { readonly tipping: number; readonly sliding: number } {
  const angle = way === 'clear' ? block.topRad : block.bedRad;
  const [r, z] = way === 'clear' ? block.outerTop : block.outerBottom;
  const arm = (r - block.edge[0]) * cos(angle) + (z - block.edge[1]) * sin(angle);
  const over = Math.max(0, overhang(block));
  const slides = slidingShare(block, friction);
  const turn = angle - block.bedRad;
  const grip = sin(turn) + friction * cos(turn);
  return {
    tipping: over > 0 ? (arm > 0 ? over / arm : Number.POSITIVE_INFINITY) : 0,
    sliding: slides > 0 ? (grip > 0 ? slides / grip : Number.POSITIVE_INFINITY) : 0,
  };
}

/** On top of what statics asks; common practice, no source. */
export const HANGING_FACTOR = 1.5;
/** Of rope on the finished courses: the upper end of what is usual; common practice, no source. More asks for more. */
export const ROPE_FRICTION = 0.5;

/**
 * Weight to hang on the lying rope, as a part of the block's. The rope turns through the dip of the bed before it
 * hangs; its friction may keep a part of the weight from the block (rope round a post, e^(μ angle)).
 */
export function hangingShare(block: FreshBlock, friction: number): number {
  const { tipping, sliding } = ropePulls(block, friction, 'lying');
  return HANGING_FACTOR * Math.max(tipping, sliding) * exp(ROPE_FRICTION * block.bedRad);
}

/**
 * Horizontal push between neighbours of a closed ring that carries itself on its leaning bed, kN, for a ring that
 * weighs `perRadian` kN a radian; least and greatest by which way friction acts.
 */
export function ringPush(
  perRadian: number,
  bedRad: number,
  friction: number,
): { readonly least: number; readonly greatest: number } {
  const [c, s] = [cos(bedRad), sin(bedRad)];
  const steep = c - friction * s;
  return {
    least: Math.max(0, (perRadian * (s - friction * c)) / (c + friction * s)),
    greatest: steep > 0 ? (perRadian * (s + friction * c)) / steep : Number.POSITIVE_INFINITY,
  };
}
