import { integrate } from '../math/quadrature.js';
import type { MeridianSpan } from '../setout/span.js';

/** Orders of the rule across the wall, where the integrands are polynomials, and along the meridian. */
const ACROSS = 6;
const ALONG = 16;

/** Masonry of a figure of revolution between two beds and two faces, per radian of bearing; mm. */
export interface Wedge {
  /** mm³ for each radian. */
  readonly perRadian: number;
  /** Middle of its volume: from the axis along a meridian, and height. */
  readonly meanRadius: number;
  readonly meanZ: number;
}

export function wedgeOf(span: MeridianSpan, [bed, top]: readonly [number, number], thickness: number): Wedge {
  const over = (f: (r: number, z: number) => number) =>
    integrate(
      (s) => {
        const p = span.at(s);
        return integrate(
          (d) => {
            const r = p.r + d * p.normal[0];
            return r * (1 + p.curvature * d) * f(r, p.z + d * p.normal[1]);
          },
          0,
          thickness,
          ACROSS,
        );
      },
      bed,
      top,
      ALONG,
    );
  const perRadian = over(() => 1);
  return { perRadian, meanRadius: over((r) => r) / perRadian, meanZ: over((_, z) => z) / perRadian };
}
