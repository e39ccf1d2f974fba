import { NEGLIGIBLE_RAD, SAME_ANGLE_RAD } from '../base/tolerances.js';
import { atan2, cos, hypot, sin, square } from './elementary.js';
import type { Profile } from './profile.js';
import { integrate } from './quadrature.js';
import { steepRoot } from './roots.js';

/** Panels of the arc length table. */
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

  /** Derivatives of the parameter by the arc length: 1/v, and −v'/v³. */
  const slopes = lengths.map((_, i) => 1 / speed(i * step));
  const bends = slopes.map((slope, i) => {
    const u = i * step;
    return -(square(radius) - square(rise)) * sin(u) * cos(u) * square(square(slope));
  });

  /** The panel that an arc length lies in. */
  function panelOf(s: number): number {
    let low = 0;
    let high = PANELS;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((lengths[middle] as number) <= s) low = middle;
      else high = middle;
    }
    return low;
  }

  /** Hermite's quintic within a panel, from values and two derivatives at its ends. */
  function quintic(s: number, panel: number): number {
    const from = lengths[panel] as number;
    const span = (lengths[panel + 1] as number) - from;
    const t = (s - from) / span;
    const [a, b] = [(slopes[panel] as number) * span, (slopes[panel + 1] as number) * span];
    const [c, d] = [((bends[panel] as number) * span * span) / 2, ((bends[panel + 1] as number) * span * span) / 2];
    // What the ends' parabola from the left lacks at the right: value, slope, bend.
    const [e, f, g] = [step - a - c, b - a - 2 * c, d - c];
    return (
      panel * step +
      t * (a + t * (c + t * (10 * e - 4 * f + g + t * (7 * f - 15 * e - 2 * g + t * (6 * e - 3 * f + g)))))
    );
  }

  /** By how much Newton's step would move a parameter. */
  function miss(s: number, panel: number, u: number): number {
    return (integrate(speed, panel * step, u, ORDER) - (s - (lengths[panel] as number))) / speed(u);
  }

  /** Whether the quintic alone is as good as float64: flat ellipses bend too sharply for it at the springing. */
  const exact = slopes.slice(1).every((_, panel) => {
    const s = ((lengths[panel] as number) + (lengths[panel + 1] as number)) / 2;
    return Math.abs(miss(s, panel, quintic(s, panel))) < NEGLIGIBLE_RAD;
  });

  /** Parameter at arc length `s`. */
  function parameterAt(s: number): number {
    const panel = panelOf(s);
    let u = quintic(s, panel);
    // Beyond the ends it is prolonged.
    const sure = exact && s >= 0 && s <= length;
    for (let i = 0; !sure && i < 8; i++) {
      const change = miss(s, panel, u);
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
