import { atan2, cos, hypot, sin } from './elementary.js';
/** Plane and space vectors as plain tuples; bearings are clockwise from +y. */
export type Vec2 = readonly [number, number];
export type Vec3 = readonly [number, number, number];

export const DEG = Math.PI / 180;

export const add2 = (a: Vec2, b: Vec2): Vec2 => [a[0] + b[0], a[1] + b[1]];
export const sub2 = (a: Vec2, b: Vec2): Vec2 => [a[0] - b[0], a[1] - b[1]];
export const scale2 = (a: Vec2, k: number): Vec2 => [a[0] * k, a[1] * k];
export const dot2 = (a: Vec2, b: Vec2): number => a[0] * b[0] + a[1] * b[1];
export const cross2 = (a: Vec2, b: Vec2): number => a[0] * b[1] - a[1] * b[0];
export const dot3 = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const length2 = (a: Vec2): number => hypot(a[0], a[1]);
export const lerp2 = (a: Vec2, b: Vec2, t: number): Vec2 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
/** Quarter turn counter-clockwise. */
export const perp2 = (a: Vec2): Vec2 => [-a[1], a[0]];

/** Unit plan vector of a bearing in radians, clockwise from project north (+y). */
export const alongBearing = (bearingRad: number): Vec2 => [sin(bearingRad), cos(bearingRad)];

/** Bearing in radians, in [0, 2π), of a plan vector. */
export function bearingOf(v: Vec2): number {
  const a = atan2(v[0], v[1]);
  return a < 0 ? a + 2 * Math.PI : a;
}

/** Angle reduced to [0, 2π). */
export function turnPositive(angleRad: number): number {
  const full = 2 * Math.PI;
  // A remainder takes longer than all else here, and most angles are within a turn already.
  const a = angleRad > -full && angleRad < full ? angleRad : angleRad % full;
  return a < 0 ? a + full : a;
}

/** Angle reduced to (−π, π]. */
export function turnSigned(angleRad: number): number {
  const a = turnPositive(angleRad);
  return a > Math.PI ? a - 2 * Math.PI : a;
}
