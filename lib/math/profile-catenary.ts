import { atan2 } from './elementary.js';
import { acosh, asinh, cosh, sinh, tanh } from './hyperbolic.js';
import type { Profile } from './profile.js';
import { monotoneRoot } from './roots.js';

/** Parameter a of the hanging chain h = f − a (cosh(r/a) − 1) through the springing. */
export function catenaryParameter(radius: number, rise: number): number {
  // With x = r/a the rise is r (cosh x − 1)/x, which grows with x.
  const x = monotoneRoot((v) => (radius * (cosh(v) - 1)) / v - rise, 1e-9, 50, 1e-15);
  return radius / x;
}

export function catenaryProfile(radius: number, rise: number): Profile {
  const a = catenaryParameter(radius, rise);
  const length = a * sinh(radius / a);
  const heightOf = (x: number) => rise - a * (cosh(x / a) - 1);
  // A normal offset prolonged below the springing reaches at most a little past its own distance.
  const reach = (offset: number) => 2 * radius + 4 * Math.abs(offset);
  return {
    shape: 'catenary',
    radius,
    rise,
    length,
    arc: null,
    at(s) {
      const x = a * asinh((length - s) / a);
      const c = cosh(x / a);
      return { r: x, h: heightOf(x), normalRad: atan2(1, sinh(x / a)), curvature: 1 / (a * c * c) };
    },
    radiusAt(h, offset = 0) {
      if (h > rise + offset) return Number.NaN;
      if (offset === 0) return a * acosh(1 + (rise - h) / a);
      const x = monotoneRoot((v) => heightOf(v) + offset / cosh(v / a) - h, 0, reach(offset));
      return x + offset * tanh(x / a);
    },
    heightAt(r, offset = 0) {
      if (offset === 0) return heightOf(r);
      const x = monotoneRoot((v) => v + offset * tanh(v / a) - r, 0, reach(offset));
      return heightOf(x) + offset / cosh(x / a);
    },
  };
}
