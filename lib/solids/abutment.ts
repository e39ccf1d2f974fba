import { acos, asin, hypot, square } from '../math/elementary.js';
import { sub2, type Vec2 } from '../math/vec.js';
import { OVERRUN } from './arch-bodies.js';
import { type DomeFacets, outside } from './dome-outlines.js';
import type { Solid, SolidScope } from './kernel.js';
import { type Corner, cornersOf } from './outline.js';
import { sector } from './sector.js';

export interface AbutmentOptions {
  /** Heights between which it is wanted; below the floor the wall's foot goes straight down. */
  readonly heights: readonly [from: number, to: number];
  /** Radius of what it stands on below the floor; the wall's own when missing. */
  readonly footRadius?: number;
  /** How far its radii grow: a joint. */
  readonly grow?: number;
  /** Name of its faces; those of the dome's outside when missing. */
  readonly name?: string;
}

/**
 * What a later dome gives way to: an earlier one's outside, filled, in that one's own facets. Only the sector is made
 * that the later dome reaches, which lies within `radius` of `axis` at all the heights wanted.
 */
export function abutment(
  scope: SolidScope,
  facets: DomeFacets,
  later: { readonly axis: Vec2; readonly radius: number },
  { heights, footRadius, grow = 0, name }: AbutmentOptions,
): Solid {
  const { dome } = facets;
  const [from] = heights;
  const foot: Corner[] = footRadius
    ? [
        { name: 'footing-side', point: [footRadius, from] },
        { name: 'footing-top', point: [footRadius, 0] },
      ]
    : [];
  const curve = [...foot, ...cornersOf(outside(facets, footRadius ? 0 : Math.min(0, from)))].map(
    (corner): Corner => ({ name: name ?? corner.name, point: [corner.point[0] + grow, corner.point[1]] }),
  );
  const along = sub2(later.axis, dome.at);
  const distance = hypot(along[0], along[1]);
  // A later dome over this one's axis leaves no sector: all of the outside is made then.
  const inner = Math.max(0, distance - later.radius - OVERRUN);
  const widest = grow + Math.max(footRadius ?? 0, dome.outerRadiusAt(Math.max(0, from)));
  const half = inner === 0 ? Math.PI : sightOf(widest, later.radius, distance);
  return sector(scope, `outside of ${dome.id}`, facets, curve, { heights, inner, along, half });
}

/** Half angle under which the part common to two discs is seen from the centre of the first. */
function sightOf(radius: number, other: number, distance: number): number {
  const tangent = square(distance) - square(other);
  if (tangent < square(radius)) return asin(other / distance);
  return acos(Math.min(1, (square(radius) + tangent) / (2 * radius * distance)));
}
