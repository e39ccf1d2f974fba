import { acos, asin, cos, hypot, sin, square } from '../math/elementary.js';
import { bearingOf, lerp2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import { OVERRUN } from './arch-bodies.js';
import { type DomeFacets, outside } from './dome-outlines.js';
import { revolvedFaces } from './faces.js';
import type { Solid, SolidScope } from './kernel.js';
import { type Outline, outlineOf, type Stretch } from './outline.js';

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
  options: AbutmentOptions,
): Solid {
  const { dome, segments } = facets;
  const part = `outside of ${dome.id}`;
  const towards = sub2(later.axis, dome.at);
  const distance = hypot(towards[0], towards[1]);
  // A later dome over this one's axis leaves no sector: all of the outside is made then.
  const inner = Math.max(0, distance - later.radius - OVERRUN);
  const outline = bodyOutline(facets, inner, options);
  if (inner === 0) return scope.revolve(part, outline, segments, dome.at);

  const widest = Math.max(...outline.points.map(([r]) => r));
  const step = (2 * Math.PI) / segments;
  const half = sectorOf(widest, later.radius, distance) / step + MARGIN;
  const middle = bearingOf(towards) / step;
  const first = Math.floor(middle - half);
  const place = (r: number, z: number, k: number): Vec3 => {
    const bearing = (first + k) * step;
    return [dome.at[0] + r * sin(bearing), dome.at[1] + r * cos(bearing), z];
  };
  const faces = revolvedFaces(outline, segments, dome.at);
  return scope.bend(part, outline, Math.ceil(middle + half) - first, place, faces);
}

/** Facets by which a sector is wider to each side than what it must cover. */
const MARGIN = 0.5;

/** Half angle under which the part common to two discs is seen from the centre of the first. */
function sectorOf(radius: number, other: number, distance: number): number {
  const tangent = square(distance) - square(other);
  if (tangent < square(radius)) return asin(other / distance);
  return acos(Math.min(1, (square(radius) + tangent) / (2 * radius * distance)));
}

/** The outside between two heights, from the radius `inner` out. */
function bodyOutline(facets: DomeFacets, inner: number, options: AbutmentOptions): Outline {
  const { heights, footRadius, grow = 0, name } = options;
  const [from, to] = heights;
  const foot: Stretch[] = footRadius
    ? [
        ['footing-side', [[footRadius, from]]],
        ['footing-top', [[footRadius, 0]]],
      ]
    : [];
  const curve = [...foot, ...outside(facets, footRadius ? 0 : Math.min(0, from))].flatMap(([face, points]) =>
    points.map(([r, z]): Corner => ({ name: name ?? face, point: [r + grow, z] })),
  );
  const face = rising(curve, from, to, inner);
  const top = (face.at(-1) as Corner).point[1];
  return outlineOf(['base', [[inner, from]]], ...face.map((corner): Stretch => [corner.name, [corner.point]]), [
    'axis',
    [[inner, top]],
  ]);
}

interface Corner {
  readonly name: string;
  readonly point: Vec2;
}

/** The part of a curve that leans inward as it rises between two heights and outside the radius `inner`. */
function rising(curve: readonly Corner[], from: number, to: number, inner: number): Corner[] {
  const kept: Corner[] = [];
  for (const [i, b] of curve.entries()) {
    const a = curve[i - 1];
    if (!a || b.point[1] < from) continue;
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
