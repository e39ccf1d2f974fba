import { remembered } from '../base/remembered.js';
import * as texts from '../base/texts/document-faults.js';
import type { Vec3 } from '../math/vec.js';
import type { Mesh } from './mesh.js';
import { meshVolume } from './mesh-measure.js';

export type MeshFaultCode =
  | 'empty'
  | 'bad-index'
  | 'non-finite'
  | 'degenerate'
  | 'open-edge'
  | 'crowded-edge'
  | 'opposed-edge'
  | 'inverted';

/** One kind of fault in one part: how often it occurs, and where it occurs first. */
export interface MeshFault {
  readonly code: MeshFaultCode;
  readonly part: string;
  readonly count: number;
  /** A corner of the first place, mm; missing when the fault is of the whole part. */
  readonly at?: Vec3;
  /** Names of the faces at the first place. */
  readonly faces: readonly string[];
  readonly message: string;
}

/**
 * Holds a mesh to a closed, outward, oriented 2-manifold: every directed edge used once, and its opposite once.
 * Vertices are told apart by index, not by place; `stl.ts` repeats the edge test on what is written.
 * An empty list means a sound solid. Coordinates in mm; volume must be positive.
 */
export const auditMesh = remembered((mesh: Mesh): readonly MeshFault[] => {
  const fault = reporter(mesh);
  if (mesh.triangles.length === 0) return [fault('empty', 1, [], texts.hasNoTriangles)];

  const { positions } = mesh;
  const vertices = positions.length / 3;
  const stray = triangleWhere(mesh, (a, b, c) => a >= vertices || b >= vertices || c >= vertices);
  if (stray.length > 0) return [fault('bad-index', stray.length, stray, texts.namesVertices)];

  const faults: MeshFault[] = [];
  if (!positions.every(Number.isFinite)) {
    const finite = (v: number): boolean => positions.subarray(3 * v, 3 * v + 3).every(Number.isFinite);
    const unbounded = triangleWhere(mesh, (a, b, c) => !(finite(a) && finite(b) && finite(c)));
    if (unbounded.length > 0) faults.push(fault('non-finite', unbounded.length, unbounded, texts.hasCorners));
  }

  const same = (a: number, b: number): boolean =>
    a === b ||
    (mesh.positions[3 * a] === mesh.positions[3 * b] &&
      mesh.positions[3 * a + 1] === mesh.positions[3 * b + 1] &&
      mesh.positions[3 * a + 2] === mesh.positions[3 * b + 2]);
  const flat = triangleWhere(mesh, (a, b, c) => same(a, b) || same(b, c) || same(c, a));
  if (flat.length > 0) faults.push(fault('degenerate', flat.length, flat, texts.hasTrianglesWithTwo));

  const edges = auditEdges(mesh.triangles, vertices);
  if (edges.open.length > 0)
    faults.push(fault('open-edge', edges.open.length, edges.open.flat(), texts.leaksAtOpenEdges));
  if (edges.crowded.length > 0)
    faults.push(fault('crowded-edge', edges.crowded.length, edges.crowded.flat(), texts.hasEdgesShared));
  if (edges.opposed.length > 0)
    faults.push(fault('opposed-edge', edges.opposed.length, edges.opposed.flat(), texts.hasNeighbouringTrianglesWound));

  if (faults.length === 0 && !(meshVolume(mesh) > 0))
    faults.push(fault('inverted', 1, [], texts.enclosesNoPositiveVolume));
  return faults;
});

/** Edges at fault, each told by the triangles that use it. */
export interface EdgeFaults {
  /** Used by one triangle only. */
  readonly open: readonly (readonly number[])[];
  /** Used by more than two. */
  readonly crowded: readonly (readonly number[])[];
  /** Used by two, both in the same direction. */
  readonly opposed: readonly (readonly number[])[];
}

/** Strict edge test over triangles given as vertex indices under `vertexCount`. */
export function auditEdges(triangles: ArrayLike<number>, vertexCount: number): EdgeFaults {
  // A sound mesh is settled by lists of neighbours; only a faulty one pays for the bookkeeping below.
  return isClosed(triangles, vertexCount) ? { open: [], crowded: [], opposed: [] } : sortFaults(triangles, vertexCount);
}

/** Whether each directed edge occurs once and its opposite once. */
function isClosed(triangles: ArrayLike<number>, vertexCount: number): boolean {
  const count = triangles.length;
  // The edges of each vertex to higher ones and to itself, one vertex's after the other's: twice the other end, and one
  // more where they run down to it.
  const first = new Uint32Array(vertexCount + 1);
  for (let e = 0; e < count; e++) {
    const from = triangles[e] as number;
    const to = triangles[e % 3 === 2 ? e - 2 : e + 1] as number;
    const after = Math.min(from, to) + 1;
    first[after] = (first[after] as number) + 1;
  }
  for (let v = 0; v < vertexCount; v++) first[v + 1] = (first[v + 1] as number) + (first[v] as number);
  const next = first.slice();
  const ends = new Uint32Array(count);
  for (let e = 0; e < count; e++) {
    const from = triangles[e] as number;
    const to = triangles[e % 3 === 2 ? e - 2 : e + 1] as number;
    const low = Math.min(from, to);
    const place = next[low] as number;
    ends[place] = from < to ? 2 * to : 2 * from + 1;
    next[low] = place + 1;
  }
  for (let v = 0; v < vertexCount; v++) {
    const last = first[v + 1] as number;
    for (let k = first[v] as number; k < last; k++) {
      const end = ends[k] as number;
      const opposite = end % 2 === 0 ? end + 1 : end - 1;
      let [same, against] = [0, 0];
      for (let j = first[v] as number; j < last; j++) {
        if (ends[j] === end) same++;
        else if (ends[j] === opposite) against++;
      }
      // An edge from a vertex to itself is its own opposite.
      if (same !== 1 || (against !== 1 && end !== 2 * v + 1)) return false;
    }
  }
  return true;
}

function sortFaults(triangles: ArrayLike<number>, vertexCount: number): EdgeFaults {
  const uses = new Map<number, { up: number; down: number; triangles: number[] }>();
  for (let e = 0; e < triangles.length; e++) {
    const from = triangles[e] as number;
    const to = triangles[e % 3 === 2 ? e - 2 : e + 1] as number;
    const key = Math.min(from, to) * vertexCount + Math.max(from, to);
    const use = uses.get(key) ?? { up: 0, down: 0, triangles: [] };
    if (from < to) use.up++;
    else use.down++;
    use.triangles.push(Math.floor(e / 3));
    uses.set(key, use);
  }
  const open: number[][] = [];
  const crowded: number[][] = [];
  const opposed: number[][] = [];
  for (const use of uses.values()) {
    const total = use.up + use.down;
    if (total === 1) open.push(use.triangles);
    else if (total > 2) crowded.push(use.triangles);
    else if (use.up !== 1) opposed.push(use.triangles);
  }
  return { open, crowded, opposed };
}

function triangleWhere(mesh: Mesh, test: (a: number, b: number, c: number) => boolean): number[] {
  const found: number[] = [];
  for (let i = 0; i < mesh.triangles.length; i += 3)
    if (test(mesh.triangles[i] as number, mesh.triangles[i + 1] as number, mesh.triangles[i + 2] as number))
      found.push(i / 3);
  return found;
}

function reporter(mesh: Mesh) {
  return (code: MeshFaultCode, count: number, triangles: readonly number[], what: string): MeshFault => {
    const first = triangles[0];
    const names = triangles.slice(0, 4).map((t) => mesh.faceNames[mesh.faceOf[t] ?? -1] ?? 'unnamed');
    const faces = [...new Set(names)];
    const at = first === undefined ? undefined : cornerOf(mesh, mesh.triangles[3 * first] as number);
    const place = at ? texts.firstNear(at.map((x) => x.toFixed(2)).join(', '), faces.join(', ')) : '';
    const message = texts.solidFault(what, count > 1 ? texts.countOfThem(count) : '', place);
    return { code, part: mesh.name, count, faces, message, ...(at ? { at } : {}) };
  };
}

const cornerOf = (mesh: Mesh, v: number): Vec3 => [
  mesh.positions[3 * v] ?? Number.NaN,
  mesh.positions[3 * v + 1] ?? Number.NaN,
  mesh.positions[3 * v + 2] ?? Number.NaN,
];
