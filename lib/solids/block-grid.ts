import { SAME_ANGLE_RAD, SAME_FACING, SAME_POINT } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { Block } from '../masonry/block.js';
import { atan2, cos, hypot, sin } from '../math/elementary.js';
import { alongBearing, dot2, sub2, turnPositive, type Vec2, type Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';
import { edgeFinder, type FaceNamer } from './faces.js';
import { type Outline, outlineOf } from './outline.js';
import { arcSteps, meridianStations, steps } from './sections.js';

/** The corners of an uncut block: its profile in (r, z) at each of its bearings (radians), start to end. */
export interface BlockGrid {
  readonly at: Vec2;
  /** Upper edges last; index 0 the bed. */
  readonly intrados: readonly Vec2[];
  readonly extrados: readonly Vec2[];
  readonly stations: readonly number[];
}

export interface BlockFacets {
  readonly faces: 'curved' | 'flat';
  readonly surface: number;
}

/** Corners of a block; flat faces have eight. */
export function blockGrid(dome: DomeSetout, block: Block, { faces, surface }: BlockFacets): BlockGrid {
  const { bed, top, startRad, endRad } = block;
  const span = dome[block.part];
  const profile = (stations: readonly number[], stretch: readonly number[]): BlockGrid => ({
    at: dome.at,
    intrados: stations.map((s) => spanPoint(span, s, 0)),
    extrados: stations.map((s) => spanPoint(span, s, dome.thickness)),
    stations: stretch,
  });
  if (faces === 'flat') return profile([bed, top], [startRad, endRad]);
  // In a facet's middle the distances of both its directions add up.
  const sagitta = surface / 2;
  const widest = Math.max(spanPoint(span, bed, dome.thickness)[0], spanPoint(span, top, dome.thickness)[0]);
  const turns = steps(startRad, endRad, arcSteps(widest, endRad - startRad, sagitta));
  return profile(meridianStations(span, bed, top, dome.thickness, sagitta), turns);
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

/** Where a point of the profile stands at station `k`. */
export function placeAt({ at, stations }: BlockGrid, r: number, z: number, k: number): Vec3 {
  const rad = stations[k] as number;
  return [at[0] + r * sin(rad), at[1] + r * cos(rad), z];
}

/** Names the faces of a block's solid; a perpend is told by its plane through the axis. */
export function gridFaces(grid: BlockGrid): FaceNamer {
  const { at, stations } = grid;
  const find = edgeFinder(gridOutline(grid));
  const start = stations[0] as number;
  const end = stations.at(-1) as number;
  const facets = stations.slice(1).map((b, i) => chordOf(stations[i] as number, b));
  const turnOf = (rad: number) => turnPositive(rad - start + SAME_ANGLE_RAD) / (end - start);
  return (x, y, z, nx, ny, nz) => {
    const dx = x - at[0];
    const dy = y - at[1];
    const onPlane = (rad: number) =>
      Math.abs(nx * cos(rad) - ny * sin(rad)) > 1 - SAME_FACING && Math.abs(dx * cos(rad) - dy * sin(rad)) < SAME_POINT;
    if (onPlane(start)) return 'perpend-start';
    if (onPlane(end)) return 'perpend-end';
    const k = Math.min(facets.length - 1, Math.floor(turnOf(atan2(dx, dy)) * facets.length));
    const { out, distance } = facets[k] as Chord;
    return find((dx * out[0] + dy * out[1]) / distance, z, nx * out[0] + ny * out[1], nz);
  };
}

/** One flat facet in plan: its outward direction, and its distance from the axis as a share of the radius. */
interface Chord {
  readonly out: Vec2;
  readonly distance: number;
}

function chordOf(a: number, b: number): Chord {
  const [ex, ey] = sub2(alongBearing(b), alongBearing(a));
  const length = hypot(ex, ey);
  const out: Vec2 = [-ey / length, ex / length];
  return { out, distance: dot2(alongBearing(a), out) };
}

const FACES = ['intrados', 'extrados', 'bed-lower', 'bed-upper', 'perpend-start', 'perpend-end'] as const;

/** An uncut block as a closed mesh, straight from its corners. */
export function gridMesh(name: string, grid: BlockGrid): Mesh {
  const high = grid.intrados.length;
  const wide = grid.stations.length;
  const positions = new Float64Array(2 * high * wide * 3);
  const corner = (depth: 0 | 1, i: number, k: number) => (depth * high + i) * wide + k;
  for (const [depth, face] of [grid.intrados, grid.extrados].entries()) {
    for (const [i, [r, z]] of face.entries()) {
      for (let k = 0; k < wide; k++) positions.set(placeAt(grid, r, z, k), 3 * corner(depth as 0 | 1, i, k));
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
