import type { Profile } from '../math/profile.js';
import type { Vec2 } from '../math/vec.js';

/** A point of the intrados in the half plane (r from the axis, z above the floor). */
export interface SpanPoint {
  readonly r: number;
  readonly z: number;
  /** Elevation of the outward normal, radians. */
  readonly normalRad: number;
  /** The outward normal itself: cosine and sine of `normalRad`. */
  readonly normal: Vec2;
  readonly curvature: number;
}

/** A stretch of a dome's intrados by arc length: the stem wall from the floor, or the shell from the springing. */
export interface MeridianSpan {
  readonly part: 'stem' | 'shell';
  readonly length: number;
  at(s: number): SpanPoint;
}

const LEVEL: Vec2 = [1, 0];

export function stemSpan(radius: number, height: number): MeridianSpan {
  return { part: 'stem', length: height, at: (s) => ({ r: radius, z: s, normalRad: 0, normal: LEVEL, curvature: 0 }) };
}

export function domeSpan(profile: Profile, springingZ: number): MeridianSpan {
  return {
    part: 'shell',
    length: profile.length,
    at(s) {
      const { r, h, normalRad, normal, curvature } = profile.at(s);
      return { r, z: springingZ + h, normalRad, normal, curvature };
    },
  };
}

/** The point `depth` outside a point of the intrados, on its normal: (r, z). */
export const outsideOf = ({ r, z, normal }: SpanPoint, depth: number): Vec2 => [
  r + depth * normal[0],
  z + depth * normal[1],
];

/** The point `depth` outside the intrados on the normal at arc length `s`: (r, z). */
export const spanPoint = (span: MeridianSpan, s: number, depth: number): Vec2 => outsideOf(span.at(s), depth);
