import { SAME_POINT, TURNED_NORMAL } from '../base/tolerances.js';
import { atan2, cos, sin } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import type { Outline } from './outline.js';

/** Names the face that a triangle lies on, from its centroid and its unit normal (of either sign). */
export type FaceNamer = (x: number, y: number, z: number, nx: number, ny: number, nz: number) => string;

/** Name of the edge that a point of a swept surface projects to, with the normal in the outline's plane. */
type EdgeFinder = (x: number, y: number, nx: number, ny: number) => string;

/** The one name that all edges at a height have; `null` where they have several. */
type OnlyName = (y: number) => string | null;

const BANDS = 64;

/** Finds edges by bands of height, since a house asks for some hundred thousand triangles. */
export function edgeFinder({ points, names }: Outline): EdgeFinder & { readonly only: OnlyName } {
  const count = points.length;
  const ends = points.map((p, i) => [p, points[(i + 1) % count] as Vec2] as const);
  const low = Math.min(...points.map((p) => p[1]));
  const high = Math.max(...points.map((p) => p[1]));
  const bandOf = (y: number) => Math.min(BANDS - 1, Math.max(0, Math.floor(((y - low) / (high - low)) * BANDS)));
  const bands: number[][] = Array.from({ length: BANDS }, () => []);
  for (const [i, [a, b]] of ends.entries()) {
    const top = bandOf(Math.max(a[1], b[1]) + SAME_POINT);
    for (let band = bandOf(Math.min(a[1], b[1]) - SAME_POINT); band <= top; band++) (bands[band] as number[]).push(i);
  }
  const score = (i: number, x: number, y: number, nx: number, ny: number): number => {
    const [a, b] = ends[i] as readonly [Vec2, Vec2];
    const ex = b[0] - a[0];
    const ey = b[1] - a[1];
    const length = Math.sqrt(ex * ex + ey * ey);
    const t = Math.min(1, Math.max(0, ((x - a[0]) * ex + (y - a[1]) * ey) / (length * length)));
    const dx = a[0] + t * ex - x;
    const dy = a[1] + t * ey - y;
    return Math.sqrt(dx * dx + dy * dy) + TURNED_NORMAL * Math.max(0, 1 - Math.abs(nx * ey - ny * ex) / length);
  };
  const onlyNames = bands.map((band) => {
    const [first, ...others] = new Set(band.map((i) => names[i] as string));
    return others.length === 0 ? (first ?? null) : null;
  });
  const find: EdgeFinder = (x, y, nx, ny) => {
    let best = Infinity;
    let found = 0;
    for (const i of bands[bandOf(y)] as number[]) {
      const of = score(i, x, y, nx, ny);
      if (of < best) {
        best = of;
        found = i;
      }
    }
    return names[found] as string;
  };
  return Object.assign(find, { only: (y: number) => onlyNames[bandOf(y)] as string | null });
}

/**
 * Faces of an outline revolved in equal flat facets: a facet's distance from the axis, measured square to
 * its own middle, is that of the outline times the cosine of half its angle.
 */
export function revolvedFaces(outline: Outline, segments: number, at: Vec2): FaceNamer {
  const half = Math.PI / segments;
  const find = edgeFinder(outline);
  return (x, y, z, nx, ny, nz) => {
    const only = find.only(z);
    if (only !== null) return only;
    const facet = Math.floor(atan2(y - at[1], x - at[0]) / (2 * half));
    const middle = (2 * facet + 1) * half;
    const c = cos(middle);
    const s = sin(middle);
    const r = ((x - at[0]) * c + (y - at[1]) * s) / cos(half);
    return find(r, z, nx * c + ny * s, nz);
  };
}

/** Upright plan frame of a prism: u across, z up, v along; `at` is its origin. */
export interface PlanFrame {
  readonly at: Vec2;
  readonly along: Vec2;
  readonly across: Vec2;
}

/** Faces of an outline in (u, z) pushed along v between its two ends. */
export function prismFaces(
  outline: Outline,
  frame: PlanFrame,
  v: readonly [number, number],
  ends: readonly [string, string],
): FaceNamer {
  const { at, along, across } = frame;
  const find = edgeFinder(outline);
  return (x, y, z, nx, ny, nz) => {
    const dx = x - at[0];
    const dy = y - at[1];
    if (Math.abs(nx * along[0] + ny * along[1]) > 0.5) {
      const out = dx * along[0] + dy * along[1];
      return out - v[0] < v[1] - out ? ends[0] : ends[1];
    }
    return find(dx * across[0] + dy * across[1], z, nx * across[0] + ny * across[1], nz);
  };
}
