import { SAME_FACING, SAME_POINT } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { Block } from '../masonry/block.js';
import { halfAngleAt, moved, movedBack, type PlacedBlock, placedBlock } from '../masonry/placed.js';
import { atan2, cos, hypot, sin } from '../math/elementary.js';
import type { Vec2, Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import { edgeFinder, type FaceNamer } from './faces.js';
import { type Outline, outlineOf } from './outline.js';
import { arcSteps, meridianStations } from './sections.js';

/** The corners of an uncut block: the profile of its parent course in (r, z), in equal steps from head to head. */
export interface BlockGrid {
  readonly placed: PlacedBlock;
  readonly at: Vec2;
  /** Bearing of its middle plane. */
  readonly middleRad: number;
  /** Upper edges last; index 0 the bed. */
  readonly intrados: readonly Vec2[];
  readonly extrados: readonly Vec2[];
  /** Facets from head to head. */
  readonly facets: number;
}

export interface BlockFacets {
  readonly faces: 'curved' | 'flat';
  readonly surface: number;
}

/** Corners of a block; flat faces have eight. */
export function blockGrid(
  setout: HouseSetout,
  dome: DomeSetout,
  block: Block,
  { faces, surface }: BlockFacets,
): BlockGrid {
  const placed = placedBlock(setout, dome, block);
  const { span, bed, top, thickness } = placed;
  const grid = (stations: readonly number[], facets: number): BlockGrid => ({
    placed,
    at: dome.at,
    middleRad: (block.startRad + block.endRad) / 2,
    intrados: stations.map((s) => spanPoint(span, s, 0)),
    extrados: stations.map((s) => spanPoint(span, s, thickness)),
    facets,
  });
  if (faces === 'flat') return grid([bed, top], 1);
  // In a facet's middle the distances of both its directions add up.
  const sagitta = surface / 2;
  const wide = [bed, top].map((s) => {
    const [r, z] = spanPoint(span, s, thickness);
    return arcSteps(r, 2 * halfAngleAt(placed, r, z), sagitta);
  });
  return grid(meridianStations(span, bed, top, thickness, sagitta), Math.max(...wide));
}

/** The block's profile, counter-clockwise in (r, z). */
export function gridOutline({ intrados, extrados }: BlockGrid): Outline {
  return outlineOf(
    ['bed-lower', intrados.slice(0, 1)],
    ['extrados', extrados.slice(0, -1)],
    ['bed-upper', extrados.slice(-1)],
    ['intrados', intrados.slice(1).reverse()],
  );
}

/** Puts points of the profile in their places: on the circle through (r, z), `share` of the half angle to the right. */
function placer({ placed, at, middleRad }: BlockGrid): (r: number, z: number, half: number, share: number) => Vec3 {
  const { motion } = placed;
  const [s, c] = [sin(middleRad), cos(middleRad)];
  return (r, z, half, share) => {
    const angle = half * share;
    const across = r * sin(angle);
    const [distance, height] = moved(motion, r * cos(angle), z);
    return [at[0] + across * c + distance * s, at[1] - across * s + distance * c, height];
  };
}

/** Where station `k` of so many lies between the heads, −1 to 1. */
const shareOf = (k: number, facets: number): number => (2 * k) / facets - 1;

/** Where a point of the profile stands at station `k`. */
export function stationPlacer(grid: BlockGrid): (r: number, z: number, k: number) => Vec3 {
  const place = placer(grid);
  return (r, z, k) => place(r, z, halfAngleAt(grid.placed, r, z), shareOf(k, grid.facets));
}

/** Names the faces of a block's solid; a perpend is told by the plane of its head. */
export function gridFaces(grid: BlockGrid): FaceNamer {
  const { at, middleRad, placed, facets } = grid;
  const { motion, head } = placed;
  const find = edgeFinder(gridOutline(grid));
  const [s, c] = [sin(middleRad), cos(middleRad)];
  const [st, ct] = [sin(head.turnRad), cos(head.turnRad)];
  const length = hypot(1, head.rise);
  return (x, y, z, nx, ny, nz) => {
    const [dx, dy] = [x - at[0], y - at[1]];
    const across = dx * c - dy * s;
    const distance = dx * s + dy * c;
    const [na, nd] = [nx * c - ny * s, nx * s + ny * c];
    // The right head is the plane across · cos − distance · sin = off + rise · z; the left is its mirror image.
    const onHead = (side: 1 | -1) =>
      Math.abs(side * na * ct - nd * st - nz * head.rise) > length * (1 - SAME_FACING) &&
      Math.abs(side * across * ct - distance * st - head.off - head.rise * z) < length * SAME_POINT;
    if (onHead(-1)) return 'perpend-start';
    if (onHead(1)) return 'perpend-end';
    const [own, height] = movedBack(motion, distance, z);
    const ownNormal = motion.cos * nd + motion.sin * nz;
    const ownUp = motion.cos * nz - motion.sin * nd;
    const half = halfAngleAt(placed, hypot(across, own), height);
    const angle = atan2(across, own);
    const k = Math.min(facets - 1, Math.max(0, Math.floor(((angle / half + 1) * facets) / 2)));
    // A chord lies nearer to the axis than its circle.
    const middle = half * shareOf(k + 0.5, facets);
    const [sm, cm] = [sin(middle), cos(middle)];
    const r = (across * sm + own * cm) / cos(half / facets);
    return find(r, height, na * sm + ownNormal * cm, ownUp);
  };
}

const FACES = ['intrados', 'extrados', 'bed-lower', 'bed-upper', 'perpend-start', 'perpend-end'] as const;

/** An uncut block as a closed mesh, straight from its corners. */
export function gridMesh(name: string, grid: BlockGrid): Mesh {
  const high = grid.intrados.length;
  const wide = grid.facets + 1;
  const place = placer(grid);
  const positions = new Float64Array(2 * high * wide * 3);
  const corner = (depth: 0 | 1, i: number, k: number) => (depth * high + i) * wide + k;
  for (const [depth, face] of [grid.intrados, grid.extrados].entries()) {
    for (const [i, [r, z]] of face.entries()) {
      const half = halfAngleAt(grid.placed, r, z);
      for (let k = 0; k < wide; k++)
        positions.set(place(r, z, half, shareOf(k, grid.facets)), 3 * corner(depth as 0 | 1, i, k));
    }
  }
  const triangles: number[] = [];
  const faceOf: number[] = [];
  const quad = (face: (typeof FACES)[number], a: number, b: number, c: number, d: number) => {
    triangles.push(a, b, c, a, c, d);
    faceOf.push(FACES.indexOf(face), FACES.indexOf(face));
  };
  // Bearings run clockwise: seen from outside, to the left.
  for (let k = 0; k + 1 < wide; k++) {
    for (let i = 0; i + 1 < high; i++) {
      quad('extrados', corner(1, i, k + 1), corner(1, i, k), corner(1, i + 1, k), corner(1, i + 1, k + 1));
      quad('intrados', corner(0, i, k), corner(0, i, k + 1), corner(0, i + 1, k + 1), corner(0, i + 1, k));
    }
    const t = high - 1;
    quad('bed-lower', corner(0, 0, k), corner(1, 0, k), corner(1, 0, k + 1), corner(0, 0, k + 1));
    quad('bed-upper', corner(0, t, k + 1), corner(1, t, k + 1), corner(1, t, k), corner(0, t, k));
  }
  const e = wide - 1;
  for (let i = 0; i + 1 < high; i++) {
    quad('perpend-start', corner(0, i, 0), corner(0, i + 1, 0), corner(1, i + 1, 0), corner(1, i, 0));
    quad('perpend-end', corner(1, i, e), corner(1, i + 1, e), corner(0, i + 1, e), corner(0, i, e));
  }
  return {
    name,
    positions,
    triangles: Uint32Array.from(triangles),
    faceNames: FACES,
    faceOf: Uint16Array.from(faceOf),
  };
}
