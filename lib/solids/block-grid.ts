import { SAME_ANGLE_RAD, SAME_POINT } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { Block } from '../masonry/block.js';
import { dot2, sub2, turnPositive, type Vec2, type Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';
import { edgeFinder, type FaceNamer } from './faces.js';
import { type Outline, outlineOf } from './outline.js';
import { arcSteps, meridianStations, steps } from './sections.js';

/** A level direction at which the block has corners; a flat block's chord shortens radii by `scale`. */
interface Station {
  readonly rad: number;
  readonly scale: number;
}

/** The corners of an uncut block: its profile in (r, z) at each bearing station, start to end. */
export interface BlockGrid {
  readonly at: Vec2;
  /** Upper edges last; index 0 the bed. */
  readonly intrados: readonly Vec2[];
  readonly extrados: readonly Vec2[];
  readonly stations: readonly Station[];
}

export interface BlockFacets {
  readonly faces: 'curved' | 'flat';
  readonly surface: number;
}

/** Corners of a block. Flat faces have the eight corners of the block as it was cast, in its own window. */
export function blockGrid(dome: DomeSetout, block: Block, { faces, surface }: BlockFacets): BlockGrid {
  const { bed, top, startRad, endRad } = block;
  const span = dome[block.part];
  const profile = (stations: readonly number[], stretch: readonly Station[]): BlockGrid => ({
    at: dome.at,
    intrados: stations.map((s) => spanPoint(span, s, 0)),
    extrados: stations.map((s) => spanPoint(span, s, dome.thickness)),
    stations: stretch,
  });
  if (faces === 'flat') {
    const [from, to] = block.castAs;
    const chord = (rad: number): Station => ({
      rad,
      scale: Math.cos((to - from) / 2) / Math.cos(rad - (from + to) / 2),
    });
    return profile([bed, top], [chord(startRad), chord(endRad)]);
  }
  // In a facet's middle the distances of both its directions add up.
  const sagitta = surface / 2;
  const widest = Math.max(spanPoint(span, bed, dome.thickness)[0], spanPoint(span, top, dome.thickness)[0]);
  const turns = steps(startRad, endRad, arcSteps(widest, endRad - startRad, sagitta));
  return profile(
    meridianStations(span, bed, top, dome.thickness, sagitta),
    turns.map((rad) => ({ rad, scale: 1 })),
  );
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
  const { rad, scale } = stations[k] as Station;
  return [at[0] + r * scale * Math.sin(rad), at[1] + r * scale * Math.cos(rad), z];
}

/** Names the faces of a block's solid; a perpend is told by its plane through the axis. */
export function gridFaces(grid: BlockGrid): FaceNamer {
  const { at, stations } = grid;
  const find = edgeFinder(gridOutline(grid));
  const start = stations[0] as Station;
  const end = stations.at(-1) as Station;
  const facets = stations.slice(1).map((b, i) => chordOf(stations[i] as Station, b));
  const turnOf = (rad: number) => turnPositive(rad - start.rad + SAME_ANGLE_RAD) / (end.rad - start.rad);
  return (x, y, z, nx, ny, nz) => {
    const dx = x - at[0];
    const dy = y - at[1];
    const onPlane = ({ rad }: Station) =>
      Math.abs(nx * Math.cos(rad) - ny * Math.sin(rad)) > 1 - SQUARE &&
      Math.abs(dx * Math.cos(rad) - dy * Math.sin(rad)) < SAME_POINT;
    if (onPlane(start)) return 'perpend-start';
    if (onPlane(end)) return 'perpend-end';
    const k = Math.min(facets.length - 1, Math.floor(turnOf(Math.atan2(dx, dy)) * facets.length));
    const { out, distance } = facets[k] as Chord;
    return find((dx * out[0] + dy * out[1]) / distance, z, nx * out[0] + ny * out[1], nz);
  };
}

/** One flat facet in plan: its outward direction, and its distance from the axis as a share of the radius. */
interface Chord {
  readonly out: Vec2;
  readonly distance: number;
}

function chordOf(a: Station, b: Station): Chord {
  const end = ({ rad, scale }: Station): Vec2 => [scale * Math.sin(rad), scale * Math.cos(rad)];
  const [ex, ey] = sub2(end(b), end(a));
  const length = Math.hypot(ex, ey);
  const out: Vec2 = [-ey / length, ex / length];
  return { out, distance: dot2(end(a), out) };
}

/** Least share by which a perpend's normal may miss its plane's. */
const SQUARE = 1e-6;

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
