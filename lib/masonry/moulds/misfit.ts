import { type FitLimits, thinnestDry } from './limits.js';
import { placeBlock } from './place.js';
import type { Site } from './site.js';
import { windowOf } from './window.js';

/** Why not even a course's own mould keeps the joints; mm. */
export type Misfit =
  /** The bed joint as drawn can't be kept with tolerance and shrinkage taken off the range. */
  | { readonly kind: 'bed'; readonly thinnest: number; readonly thickest: number }
  /** Perpends differ too much between corners: so much thicker must the thickest joint be. */
  | { readonly kind: 'perpend'; readonly lacking: number };

/** What the course's own mould lacks; `null` when it fits. */
export function misfitOf(site: Site, limits: FitLimits): Misfit | null {
  const { bed, to, count } = site.course;
  const placement = placeBlock(site, site, count, limits);
  if (!placement) {
    return { kind: 'bed', thinnest: thinnestDry(limits, to - bed), thickest: limits.thick };
  }
  const fits = (more: number) => {
    const { leans } = windowOf(placement, { ...limits, thick: limits.thick + more });
    return leans[0] <= leans[1];
  };
  if (fits(0)) return null;
  // Wide enough for any block: joints of a whole length.
  let high = 2 * site.at.lower.r;
  let low = 0;
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return { kind: 'perpend', lacking: high };
}
