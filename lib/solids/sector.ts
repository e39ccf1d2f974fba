import { cos, sin } from '../math/elementary.js';
import { bearingOf, lerp2, type Vec2, type Vec3 } from '../math/vec.js';
import type { DomeFacets } from './dome-outlines.js';
import { revolvedFaces } from './faces.js';
import type { Solid, SolidScope } from './kernel.js';
import { type Corner, type Outline, outlineOf, type Stretch } from './outline.js';

/** Which part of a figure of revolution is wanted. */
export interface SectorExtent {
  readonly heights: readonly [from: number, to: number];
  /** Nothing is wanted nearer to the axis; 0 for a full turn. */
  readonly inner: number;
  /** Plan direction of its middle. */
  readonly along: Vec2;
  /** Half the angle wanted about that direction, rad. */
  readonly half: number;
}

/** Facets by which a sector is wider to each side than what it must cover. */
const MARGIN = 0.5;

/**
 * A part of what lies inside a curve turned about a dome's axis, in the dome's own facets: booleans that need no more
 * than it take a fraction of the time. The curve runs up from its foot and leans inward all the way.
 */
export function sector(
  scope: SolidScope,
  part: string,
  { dome, segments }: DomeFacets,
  curve: readonly Corner[],
  { heights, inner, along, half }: SectorExtent,
): Solid {
  const outline = between(curve, heights, inner);
  if (inner === 0) return scope.revolve(part, outline, segments, dome.at);
  // Facets turn corners due east, and so due north, from where bearings count.
  const step = (2 * Math.PI) / segments;
  const middle = bearingOf(along) / step;
  const spread = half / step + MARGIN;
  const first = Math.floor(middle - spread);
  const place = (r: number, z: number, k: number): Vec3 => {
    const bearing = (first + k) * step;
    return [dome.at[0] + r * sin(bearing), dome.at[1] + r * cos(bearing), z];
  };
  const faces = revolvedFaces(outline, segments, dome.at);
  return scope.bend(part, outline, Math.ceil(middle + spread) - first, place, faces);
}

/** What lies inside a curve between two heights, from the radius `inner` out. */
function between(curve: readonly Corner[], [from, to]: readonly [number, number], inner: number): Outline {
  const face = rising(curve, from, to, inner);
  const top = (face.at(-1) as Corner).point[1];
  return outlineOf(['base', [[inner, from]]], ...face.map((corner): Stretch => [corner.name, [corner.point]]), [
    'axis',
    [[inner, top]],
  ]);
}

/** The part of a curve that leans inward as it rises, between two heights and outside the radius `inner`. */
function rising(curve: readonly Corner[], from: number, to: number, inner: number): Corner[] {
  const kept: Corner[] = [];
  for (const [i, b] of curve.entries()) {
    const a = curve[i - 1];
    if (!a || b.point[1] <= from) continue;
    const [ra, za] = a.point;
    const [rb, zb] = b.point;
    const enter = za >= from ? 0 : (from - za) / (zb - za);
    const leave = Math.min(zb <= to ? 1 : (to - za) / (zb - za), rb >= inner ? 1 : (ra - inner) / (ra - rb));
    if (kept.length === 0) kept.push({ name: a.name, point: lerp2(a.point, b.point, enter) });
    if (leave <= enter) break;
    kept.push({ name: b.name, point: leave < 1 ? lerp2(a.point, b.point, leave) : b.point });
    if (leave < 1) break;
  }
  return kept;
}
