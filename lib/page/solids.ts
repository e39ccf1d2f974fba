import type { Vec3 } from '../math/vec.js';
import type { PageData, PageMesh } from './data.js';

/** All pieces in their places, as the graphics card takes them. */
export interface Solids {
  /** x, y, z (mm) and the piece's index of each corner. */
  readonly corners: Float32Array;
  /** Triangles of all pieces, then of the panes of openings. */
  readonly triangles: Uint32Array;
  /** Two corners each: edges where a surface turns sharply. */
  readonly edges: Uint32Array;
  /** From where to where each piece's indices lie in `edges`. */
  readonly edgeOf: readonly (readonly [from: number, to: number])[];
  /** How many indices of `triangles` are pieces. */
  readonly solid: number;
  /** The box round each piece, where it stands. */
  readonly boxes: readonly (readonly [low: Vec3, high: Vec3])[];
}

/** Surfaces that turn by less than this run on into one another to the eye: cosine of 25 degrees. */
const SHARP = 0.906;

/** Where a piece's middle stands. */
export function middleOf({ boxes }: Pick<Solids, 'boxes'>, piece: number): Vec3 {
  const [low, high] = boxes[piece] as (typeof boxes)[number];
  return [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
}

export function placeSolids({ payload, meshes }: PageData): Solids {
  const edges = meshes.map(sharpEdges);
  const sum = (of: (k: number) => number) => payload.mesh.reduce((all, k) => all + of(k), 0);
  const panes = payload.openings.map((o) => o.pane);
  const paneCorners = panes.reduce((all, p) => all + p.length, 0);
  const paneTriangles = panes.reduce((all, p) => all + 3 * Math.max(0, p.length - 2), 0);
  const corners = new Float32Array(4 * (sum((k) => mesh(k).corners.length / 3) + paneCorners));
  const solid = sum((k) => mesh(k).triangles.length);
  const triangles = new Uint32Array(solid + paneTriangles);
  const lines = new Uint32Array(sum((k) => (edges[k] as Uint32Array).length));
  const edgeOf: [number, number][] = [];
  const boxes: [Vec3, Vec3][] = [];
  let [corner, index, line] = [0, 0, 0];

  function mesh(k: number): PageMesh {
    return meshes[k] as PageMesh;
  }
  for (const [piece, k] of payload.mesh.entries()) {
    const own = mesh(k);
    const first = corner;
    const place = payload.places[payload.place[piece] as number] as readonly number[];
    const low: [number, number, number] = [Infinity, Infinity, Infinity];
    const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
    for (let i = 0; i < own.corners.length; i += 3, corner++) {
      for (let axis = 0; axis < 3; axis++) {
        const value =
          (own.corners[i] as number) * (place[axis] as number) +
          (own.corners[i + 1] as number) * (place[3 + axis] as number) +
          (own.corners[i + 2] as number) * (place[6 + axis] as number) +
          (place[9 + axis] as number);
        corners[4 * corner + axis] = value;
        low[axis] = Math.min(low[axis] as number, value);
        high[axis] = Math.max(high[axis] as number, value);
      }
      corners[4 * corner + 3] = piece;
    }
    for (const i of own.triangles) triangles[index++] = first + i;
    const from = line;
    for (const i of edges[k] as Uint32Array) lines[line++] = first + i;
    edgeOf.push([from, line]);
    boxes.push([low, high]);
  }
  // A pane belongs to the piece round its opening, and moves with it.
  for (const [opening, pane] of panes.entries()) {
    const first = corner;
    const piece = payload.opening.indexOf(opening);
    for (const at of pane) corners.set([...at, piece], 4 * corner++);
    for (let i = 1; i + 1 < pane.length; i++, index += 3) triangles.set([first, first + i, first + i + 1], index);
  }
  return { corners, triangles, edges: lines, edgeOf, solid, boxes };
}

/** Corner pairs of the edges at which a closed mesh turns sharply. */
export function sharpEdges({ corners, triangles }: PageMesh): Uint32Array {
  const count = corners.length / 3;
  const first = new Map<number, number>();
  const normals = triangleNormals(corners, triangles);
  const found: number[] = [];
  for (let i = 0; i < triangles.length; i++) {
    const t = (i / 3) | 0;
    const a = triangles[i] as number;
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1] as number;
    const other = first.get(b * count + a);
    if (other === undefined) {
      first.set(a * count + b, t);
      continue;
    }
    let cosine = 0;
    for (let k = 0; k < 3; k++) cosine += (normals[3 * t + k] as number) * (normals[3 * other + k] as number);
    if (cosine < SHARP) found.push(a, b);
  }
  return Uint32Array.from(found);
}

function triangleNormals(corners: Float32Array, triangles: Uint32Array): Float32Array {
  const normals = new Float32Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const at = (k: number, axis: number) => corners[3 * (triangles[t + k] as number) + axis] as number;
    const u = [0, 1, 2].map((axis) => at(1, axis) - at(0, axis)) as [number, number, number];
    const v = [0, 1, 2].map((axis) => at(2, axis) - at(0, axis)) as [number, number, number];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]] as const;
    const length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) || 1;
    normals.set([n[0] / length, n[1] / length, n[2] / length], t);
  }
  return normals;
}
