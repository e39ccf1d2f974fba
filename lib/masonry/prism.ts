import { type Edge, edgeAt, edgeLength } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { square } from '../math/elementary.js';
import { integrate, integrateSoftEnds } from '../math/quadrature.js';
import type { Section } from '../math/section.js';
import type { DomeSetout } from '../setout/dome.js';
import type { PassageSetout } from '../setout/passage.js';

/** Half width of an outline at height z. */
export type HalfWidth = (z: number) => number;
/** A length along the bearing at (u, z). */
export type Depth = (u: number, z: number) => number;

/** Half chord of the lines at height z along which a depth changes its law; NaN where it has none. */
export type KinkLine = (z: number) => number;

/** Order of the rules across, and along heights or an outline. */
const ACROSS = 16;
const UP = 24;
/** Steps of the scans for where kinks come in, and how near that is found, as a share of the range. */
const SCAN = 12;
const FOUND = 1e-9;

/** Places strictly within (from, to) at which a condition starts or stops to hold. */
function changesIn(holds: (t: number) => boolean, from: number, to: number): number[] {
  const near = (a: number, b: number) => Math.abs(b - a) < FOUND * (to - from);
  return rangesWhere(holds, from, to, SCAN, near)
    .flat()
    .filter((t) => t > from && t < to);
}

const inOrder = (places: readonly number[]): number[] => [...new Set(places)].sort((a, b) => a - b);

/**
 * ∫∫ of a depth over |u| between two half widths, z over [from, to]; `breaks` are heights where a law changes, `kinks`
 * the lines across which the depth does.
 */
export function prismVolume(
  [from, to]: readonly [number, number],
  [inside, outside]: readonly [HalfWidth, HalfWidth],
  depth: Depth,
  breaks: readonly number[],
  kinks: readonly KinkLine[] = [],
): number {
  const levels = inOrder([from, to, ...breaks].filter((z) => z >= from && z <= to));
  const across = (z: number): number => {
    const [low, high] = [inside(z), outside(z)];
    if (high <= low) return 0;
    const ends = inOrder([low, ...kinks.map((kink) => kink(z)).filter((u) => u > low && u < high), high]);
    let sum = 0;
    for (let k = 0; k + 1 < ends.length; k++)
      sum += integrate((u) => depth(u, z), ends[k] as number, ends[k + 1] as number, ACROSS);
    return 2 * sum;
  };
  let sum = 0;
  for (let k = 0; k + 1 < levels.length; k++) {
    const [low, high] = [levels[k] as number, levels[k + 1] as number];
    // Kinks come in at either side of the prism, or begin in its middle.
    const turns = kinks.flatMap((kink) =>
      [inside, outside].flatMap((half) => changesIn((z) => kink(z) > half(z), low, high)),
    );
    const ends = inOrder([low, ...turns, high]);
    for (let n = 0; n + 1 < ends.length; n++)
      sum += integrateSoftEnds(across, ends[n] as number, ends[n + 1] as number, UP);
  }
  return sum;
}

/**
 * ∫ of a depth along both sides and the top of a section's outline; where it is negative nothing counts.
 * @param breaks heights at which the depth changes its law
 */
export function outlineArea(
  outline: readonly Edge[],
  depth: Depth,
  breaks: readonly number[],
  kinks: readonly KinkLine[],
): number {
  let sum = 0;
  for (const edge of outline) {
    const at = (t: number): number => depth(...edgeAt(edge, t));
    const turns = [
      // A round head goes up and down again.
      0.5,
      ...breaks.flatMap((level) => changesIn((t) => edgeAt(edge, t)[1] > level, 0, 1)),
      ...kinks.flatMap((kink) =>
        changesIn(
          (t) => {
            const [u, z] = edgeAt(edge, t);
            return kink(z) > Math.abs(u);
          },
          0,
          1,
        ),
      ),
      ...changesIn((t) => at(t) > 0, 0, 1),
    ];
    const ends = inOrder([0, ...turns, 1]);
    let along = 0;
    for (let k = 0; k + 1 < ends.length; k++)
      along += integrate((t) => Math.max(0, at(t)), ends[k] as number, ends[k + 1] as number, ACROSS);
    sum += edgeLength(edge) * along;
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

/** Where a dome's surface at an offset crosses an upright plane square to the bearing, `v` from the axis. */
export const planeKink =
  (dome: DomeSetout, offset: number, v: number): KinkLine =>
  (z) =>
    Math.sqrt(square(dome.radiusAt(z, offset)) - square(v));

/** Where a passage's two domes cut into each other: its depth changes its law across each such line. */
export function passageKinks({ domes: [first, second], distance }: PassageSetout): KinkLine[] {
  const crossing =
    (one: number, other: number): KinkLine =>
    (z) => {
      const [a, b] = [square(first.radiusAt(z, one)), square(second.radiusAt(z, other))];
      return Math.sqrt(a - square((square(distance) + a - b) / (2 * distance)));
    };
  const [t1, t2] = [first.thickness, second.thickness];
  // Nowhere are domes wider than at their foot.
  if (first.springingRadius + t1 + second.springingRadius + t2 <= distance) return [];
  return [crossing(t1, 0), crossing(0, t2), crossing(t1, t2)];
}
