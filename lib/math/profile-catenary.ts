import { NOISE, SAME_ANGLE_RAD } from '../base/tolerances.js';
import { atan2, square } from './elementary.js';
import { acosh, asinh, cosh, sinh, tanh } from './hyperbolic.js';
import type { Profile } from './profile.js';
import { monotoneRoot, steepRoot } from './roots.js';

/** Parameter a of the hanging chain h = f − a (cosh(r/a) − 1) through the springing. */
export function catenaryParameter(radius: number, rise: number): number {
  // With x = r/a the rise is r (cosh x − 1)/x, which grows with x.
  const x = monotoneRoot((v) => (radius * (cosh(v) - 1)) / v - rise, SAME_ANGLE_RAD, 50, NOISE);
  return radius / x;
}

export function catenaryProfile(radius: number, rise: number): Profile {
  const a = catenaryParameter(radius, rise);
  const length = a * sinh(radius / a);
  const heightOf = (x: number) => rise - a * (cosh(x / a) - 1);
  return {
    shape: 'catenary',
    radius,
    rise,
    length,
    arc: null,
    at(s) {
      // The slope sinh(r/a) is the arc length from the crown over a.
      const slope = (length - s) / a;
      const steep = Math.sqrt(1 + slope * slope);
      return {
        r: a * asinh(slope),
        h: rise - a * (steep - 1),
        normalRad: atan2(1, slope),
        normal: [slope / steep, 1 / steep],
        curvature: 1 / (a * steep * steep),
      };
    },
    radiusAt(h, offset = 0) {
      if (h > rise + offset) return Number.NaN;
      if (offset === 0) return a * acosh(1 + (rise - h) / a);
      // With c = cosh(x/a) the height f − a (c − 1) + d/c is a quadratic in c.
      const down = rise + a - h;
      const c = Math.max(1, (down + Math.sqrt(square(down) + 4 * a * offset)) / (2 * a));
      return a * acosh(c) + (offset * Math.sqrt((c - 1) * (c + 1))) / c;
    },
    heightAt(r, offset = 0) {
      if (offset === 0) return heightOf(r);
      const x = steepRoot(
        (v) => v + offset * tanh(v / a) - r,
        (v) => 1 + offset / (a * square(cosh(v / a))),
        0,
        r + Math.abs(offset),
        r - offset * tanh(r / a),
      );
      return heightOf(x) + offset / cosh(x / a);
    },
  };
}
