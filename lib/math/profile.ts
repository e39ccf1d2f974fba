import { arcProfile } from './profile-arc.js';
import { catenaryProfile } from './profile-catenary.js';
import { ellipticalProfile } from './profile-elliptical.js';
import type { Vec2 } from './vec.js';

/** A point of a dome's intrados in the half plane (r from the axis, h above the springing). */
export interface ProfilePoint {
  readonly r: number;
  readonly h: number;
  /** Elevation of the outward normal above level, radians: 0 on an upright surface, π/2 at a level crown. */
  readonly normalRad: number;
  /** The outward normal itself: cosine and sine of `normalRad`. */
  readonly normal: Vec2;
  /** 1/mm, positive where the surface bends towards the axis. */
  readonly curvature: number;
}

export type ProfileShape = 'hemisphere' | 'segmental' | 'pointed' | 'catenary' | 'elliptical';

export interface ProfileSpec {
  readonly shape: ProfileShape;
  /** Inside radius at the springing. */
  readonly radius: number;
  /** Inside, springing to crown. */
  readonly rise: number;
}

/**
 * A dome's meridian on the intrados as an analytic curve, and its normal offsets. Lengths in mm.
 * Every offset follows its own curve past the springing and, when pointed, on to the axis, so that
 * an extrados has no hole at the crown.
 */
export interface Profile extends ProfileSpec {
  /** Arc length from springing to crown. */
  readonly length: number;
  /** Centre and radius where the meridian is one circular arc. */
  readonly arc: { readonly centre: Vec2; readonly radius: number } | null;
  /** Point at arc length `s` from the springing. */
  at(s: number): ProfilePoint;
  /** Radius of the surface `offset` outside the intrados at height `h`; NaN above its top. */
  radiusAt(h: number, offset?: number): number;
  /** Height of the surface `offset` outside the intrados at radius `r`; NaN where it doesn't reach. */
  heightAt(r: number, offset?: number): number;
}

export function profileOf(spec: ProfileSpec): Profile {
  switch (spec.shape) {
    case 'catenary':
      return catenaryProfile(spec.radius, spec.rise);
    case 'elliptical':
      return ellipticalProfile(spec.radius, spec.rise);
    default:
      return arcProfile(spec.shape, spec.radius, spec.rise);
  }
}
