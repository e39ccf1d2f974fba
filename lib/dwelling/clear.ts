import { integrate, integrateSoftEnds } from '../math/quadrature.js';
import { monotoneRoot } from '../math/roots.js';
import type { Section } from '../math/section.js';

/** Leaf of a door or sash that stays in the way when it stands open at a right angle, mm; common practice, no source. */
export const LEAF = 45;

/** Rectangle that a leaf leaves clear inside an arch, mm. */
export interface ClearSize {
  readonly width: number;
  readonly height: number;
  /** Lower edge above the floor. */
  readonly sill: number;
}

export const areaOf = ({ width, height }: ClearSize): number => (width * height) / 1e6;

/** What frame and leaf leave of an opening; a frame runs round it but for a sill that lies on the floor. */
export interface Clear {
  readonly section: Section;
  readonly frame: number;
}

const bottomOf = ({ section, frame }: Clear): number => section.sill + (section.sill > 0 ? frame : 0);

/** Top of the clear shape; the bottom where the frame leaves nothing. */
function topOf(clear: Clear): number {
  const { section, frame } = clear;
  const bottom = bottomOf(clear);
  if (section.width / 2 <= frame) return bottom;
  const top = section.topZ(-frame);
  return Math.max(top, bottom);
}

/** Clear width beside the open leaf for whatever is as high as z above the floor; 0 above the frame. */
export function clearWidthAt(clear: Clear, z: number): number {
  if (z > topOf(clear) || shut(clear)) return 0;
  return Math.max(0, 2 * clear.section.halfWidthAt(Math.max(z, clear.section.sill), -clear.frame) - LEAF);
}

const shut = ({ section, frame }: Clear): boolean => section.width / 2 <= frame;

const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** The search ends 1e-9 of the height apart. */
const STEPS = 44;

/**
 * Greatest clear rectangle, no narrower than `least` where one that wide fits. Its area has one greatest value, since
 * the width is a concave function of the height.
 */
export function clearRectangle(clear: Clear, least = 0): ClearSize {
  const bottom = bottomOf(clear);
  const top = topOf(clear);
  const width = (z: number) => clearWidthAt(clear, z);
  const size = (z: number): ClearSize => ({ width: width(z), height: Math.max(0, z - bottom), sill: bottom });
  if (!(top > bottom)) return size(bottom);
  let low = Math.min(top, Math.max(bottom, clear.section.springingZ - clear.frame));
  let high = top;
  if (width(low) >= least && width(top) < least) high = monotoneRoot((z) => least - width(z), low, top);
  for (let i = 0; i < STEPS; i++) {
    const one = high - GOLDEN * (high - low);
    const other = low + GOLDEN * (high - low);
    if (areaOf(size(one)) < areaOf(size(other))) low = one;
    else high = other;
  }
  // The higher end, so that a flat head gives its whole height.
  return areaOf(size(high)) >= areaOf(size(low)) ? size(high) : size(low);
}

/** Area of the whole shape inside the frame, arch included, m2. */
export function glazedArea(clear: Clear): number {
  const { section, frame } = clear;
  const bottom = bottomOf(clear);
  const top = topOf(clear);
  if (!(top > bottom) || shut(clear)) return 0;
  const half = (z: number) => section.halfWidthAt(z, -frame);
  const shoulder = Math.min(top, Math.max(bottom, section.shoulderZ(-frame)));
  const straight = integrate(half, bottom, shoulder, 2);
  return (2 * (straight + integrateSoftEnds(half, shoulder, top, 32))) / 1e6;
}
