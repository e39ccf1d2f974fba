import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import { atan2, cos, hypot, sin, square } from './elementary.js';
import type { Profile } from './profile.js';
import { integrate } from './quadrature.js';
import { steepRoot } from './roots.js';

/** Panels of the arc length table: with cubic start values in each, one Newton step reaches float64's precision. */
const PANELS = 128;
const ORDER = 6;

/** Half ellipse with half axes `radius` (level) and `rise` (upright), as r = a cos u, h = b sin u. */
export function ellipticalProfile(radius: number, rise: number): Profile {
  const speed = (u: number) => hypot(radius * sin(u), rise * cos(u));
  const step = Math.PI / 2 / PANELS;
  const lengths = [0];
  for (let i = 0; i < PANELS; i++)
    lengths.push((lengths[i] as number) + integrate(speed, i * step, (i + 1) * step, ORDER));
  const length = lengths[PANELS] as number;

  /** Parameter at arc length `s`: Hermite's cubic in the panel it lies in, then Newton's steps. */
  function parameterAt(s: number): number {
    let low = 0;
    let high = PANELS;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((lengths[middle] as number) <= s) low = middle;
      else high = middle;
    }
    const from = low * step;
    const span = (lengths[low + 1] as number) - (lengths[low] as number);
    const rest = s - (lengths[low] as number);
    const t = rest / span;
    const slope0 = span / speed(from);
    const slope1 = span / speed(from + step);
    let u = from + slope0 * t * square(1 - t) + step * t * t * (3 - 2 * t) + slope1 * t * t * (t - 1);
    for (let i = 0; i < 8; i++) {
      const change = (integrate(speed, from, u, ORDER) - rest) / speed(u);
      u -= change;
      if (Math.abs(change) < SAME_ANGLE_RAD) break;
    }
    return u;
  }
  // With t = sin u the normal (b cos u, a sin u) is as long as √(a² t² + b² (1 − t²)).
  const stretch = (sine: number) => Math.sqrt(square(radius * sine) + square(rise) * (1 - sine * sine));
  const cosineOf = (sine: number) => Math.sqrt((1 - sine) * (1 + sine));

  return {
    shape: 'elliptical',
    radius,
    rise,
    length,
    arc: null,
    at(s) {
      const u = parameterAt(s);
      const [c, t] = [cos(u), sin(u)];
      const v = stretch(t);
      return {
        r: radius * c,
        h: rise * t,
        normalRad: atan2(radius * t, rise * c),
        normal: [(rise * c) / v, (radius * t) / v],
        curvature: (radius * rise) / (v * v * v),
      };
    },
    radiusAt(h, offset = 0) {
      if (h > rise + offset) return Number.NaN;
      if (offset === 0) return radius * Math.sqrt(Math.max(0, 1 - square(h / rise)));
      const sine = offsetRoot(rise, radius, offset, h, stretch);
      return cosineOf(sine) * (radius + (offset * rise) / stretch(sine));
    },
    heightAt(r, offset = 0) {
      if (r > radius + offset) return Number.NaN;
      if (offset === 0) return rise * Math.sqrt(Math.max(0, 1 - square(r / radius)));
      const cosine = offsetRoot(radius, rise, offset, r, (c) => stretch(cosineOf(c)));
      return cosineOf(cosine) * (rise + (offset * radius) / stretch(cosineOf(cosine)));
    },
  };
}

/** The share t of half axis `own` at which the offset curve, own · t + offset · other · t / stretch, is `at`. */
function offsetRoot(own: number, other: number, offset: number, at: number, stretch: (t: number) => number): number {
  return steepRoot(
    (t) => t * (own + (offset * other) / stretch(t)) - at,
    (t) => own + (offset * other * square(own)) / (square(stretch(t)) * stretch(t)),
    0,
    1,
    at / (own + offset),
  );
}
