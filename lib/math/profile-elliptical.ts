import { atan2, cos, hypot, sin, square } from './elementary.js';
import type { Profile } from './profile.js';
import { integrate } from './quadrature.js';
import { monotoneRoot } from './roots.js';

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
      if (Math.abs(change) < 1e-12) break;
    }
    return u;
  }
  // The unnormalised normal (b cos u, a sin u) is as long as the tangent.
  const offsetR = (u: number, d: number) => radius * cos(u) + (d * rise * cos(u)) / speed(u);
  const offsetH = (u: number, d: number) => rise * sin(u) + (d * radius * sin(u)) / speed(u);

  return {
    shape: 'elliptical',
    radius,
    rise,
    length,
    arc: null,
    at(s) {
      const u = parameterAt(s);
      const v = speed(u);
      return {
        r: radius * cos(u),
        h: rise * sin(u),
        normalRad: atan2(radius * sin(u), rise * cos(u)),
        curvature: (radius * rise) / (v * v * v),
      };
    },
    radiusAt(h, offset = 0) {
      if (h > rise + offset) return Number.NaN;
      if (offset === 0) return radius * Math.sqrt(Math.max(0, 1 - square(h / rise)));
      return offsetR(
        monotoneRoot((u) => offsetH(u, offset) - h, 0, Math.PI / 2, 1e-15),
        offset,
      );
    },
    heightAt(r, offset = 0) {
      if (r > radius + offset) return Number.NaN;
      if (offset === 0) return rise * Math.sqrt(Math.max(0, 1 - square(r / radius)));
      return offsetH(
        monotoneRoot((u) => offsetR(u, offset) - r, 0, Math.PI / 2, 1e-15),
        offset,
      );
    },
  };
}
