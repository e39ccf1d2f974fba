import type { DomeSetout } from '../../setout/dome.js';
import { type DomeFacets, filledTo } from '../../solids/dome-outlines.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { socketDepth } from './peg-places.js';
import type { PrintSizes } from './sizes.js';

/** All inside the middle of a wall near a level: pads and corbels grow out of it and don't come through. */
export function wallInside(
  scope: SolidScope,
  dome: DomeSetout,
  facets: DomeFacets,
  level: number,
  sizes: PrintSizes,
): Solid {
  const bottom = level - socketDepth(sizes) - dome.thickness;
  const outline = filledTo(facets, dome.thickness / 2, Math.min(0, bottom), 'pad');
  return scope.revolve(`${dome.id}: pads`, outline, facets.segments, dome.at);
}
