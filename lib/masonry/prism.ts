import { square } from '../math/elementary.js';
import { integrate, integrateSoftEnds } from '../math/quadrature.js';
import type { Section } from '../math/section.js';
import type { DomeSetout } from '../setout/dome.js';

/** Half width of an outline at height z. */
export type HalfWidth = (z: number) => number;
/** A length along the bearing at (u, z). */
export type Depth = (u: number, z: number) => number;

const PANELS = 3;

/** ∫∫ of a depth over |u| between two half widths, z over [from, to]; `breaks` are heights where a law changes. */
export function prismVolume(
  [from, to]: readonly [number, number],
  [inside, outside]: readonly [HalfWidth, HalfWidth],
  depth: Depth,
  breaks: readonly number[],
): number {
  const levels = [...new Set([from, to, ...breaks].filter((z) => z >= from && z <= to))].sort((a, b) => a - b);
  const across = (z: number): number => {
    const low = inside(z);
    const span = outside(z) - low;
    if (span <= 0) return 0;
    let sum = 0;
    for (let k = 0; k < PANELS; k++) {
      const at = (share: number) => low + (span * share) / PANELS;
      sum += integrate((u) => depth(u, z), at(k), at(k + 1), 8);
    }
    return 2 * sum;
  };
  let sum = 0;
  for (let k = 0; k + 1 < levels.length; k++) {
    sum += integrateSoftEnds(across, levels[k] as number, levels[k + 1] as number, 24);
  }
  return sum;
}

/** Heights at which a section grown by any of `grows` changes its law. */
export const sectionBreaks = (section: Section, grows: readonly number[]): number[] => [
  section.sill,
  section.springingZ,
  ...grows.flatMap((grow) => [section.shoulderZ(grow), section.topZ(grow)]),
];

/** Heights at which a dome's outlines change their law. */
export const domeBreaks = (dome: DomeSetout): number[] => [
  dome.springingZ,
  ...(dome.skewback ? [dome.skewback.shoulderZ] : []),
];

/** Distance from the dome's axis at which the surface `offset` outside its intrados lies at (u, z). */
export const onSurface = (dome: DomeSetout, offset: number): Depth => {
  // Asked across at one level after the other.
  let level = Number.NaN;
  let reach = 0;
  return (u, z) => {
    if (z !== level) {
      level = z;
      reach = square(dome.radiusAt(z, offset));
    }
    const rest = reach - u * u;
    return rest > 0 ? Math.sqrt(rest) : 0;
  };
};
