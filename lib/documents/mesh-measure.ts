import type { Vec3 } from '../math/vec.js';
import type { Mesh } from './mesh.js';

export interface Bounds3 {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** Least box round a mesh, mm. An empty mesh gives an inverted infinite box. */
export function meshBounds(mesh: Mesh): Bounds3 {
  const min: [number, number, number] = [0, 0, 0];
  const max: [number, number, number] = [0, 0, 0];
  const { positions } = mesh;
  for (const axis of [0, 1, 2] as const) {
    let [low, high] = [Infinity, -Infinity];
    for (let i = axis; i < positions.length; i += 3) {
      const x = positions[i] as number;
      if (x < low) low = x;
      if (x > high) high = x;
    }
    min[axis] = low;
    max[axis] = high;
  }
  return { min, max };
}

/** Enclosed volume, mm³, by the divergence theorem; positive when the triangles face outward. */
export function meshVolume(mesh: Mesh): number {
  // Tetrahedra from a corner of the mesh itself: a block far from the origin loses no digits.
  const [ox, oy, oz] = [mesh.positions[0] ?? 0, mesh.positions[1] ?? 0, mesh.positions[2] ?? 0];
  let six = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const a = 3 * (mesh.triangles[t] as number);
    const b = 3 * (mesh.triangles[t + 1] as number);
    const c = 3 * (mesh.triangles[t + 2] as number);
    const ax = (mesh.positions[a] as number) - ox;
    const ay = (mesh.positions[a + 1] as number) - oy;
    const az = (mesh.positions[a + 2] as number) - oz;
    const bx = (mesh.positions[b] as number) - ox;
    const by = (mesh.positions[b + 1] as number) - oy;
    const bz = (mesh.positions[b + 2] as number) - oz;
    const cx = (mesh.positions[c] as number) - ox;
    const cy = (mesh.positions[c + 1] as number) - oy;
    const cz = (mesh.positions[c + 2] as number) - oz;
    six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return six / 6;
}

/** Normal of the triangle whose corners begin at `t`, outward and as long as twice its area, mm². */
export function triangleNormal({ positions, triangles }: Mesh, t: number): Vec3 {
  const [a, b, c] = [triangles[t] as number, triangles[t + 1] as number, triangles[t + 2] as number];
  const from = (v: number, axis: number) => (positions[3 * v + axis] as number) - (positions[3 * a + axis] as number);
  const [ux, uy, uz] = [from(b, 0), from(b, 1), from(b, 2)];
  const [vx, vy, vz] = [from(c, 0), from(c, 1), from(c, 2)];
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
}

/** Counts of one connected piece of a mesh; `euler` is V − E + F, 2 − 2·genus for a closed piece. */
export interface EulerCount {
  readonly vertices: number;
  readonly edges: number;
  readonly triangles: number;
  readonly euler: number;
}

/** Euler counts of each piece that hangs together by vertices, in the order of their first triangles. */
export function meshEuler(mesh: Mesh): EulerCount[] {
  const vertexCount = mesh.positions.length / 3;
  const leader = Uint32Array.from({ length: vertexCount }, (_, v) => v);
  const find = (v: number): number => {
    let root = v;
    while (leader[root] !== root) {
      leader[root] = leader[leader[root] as number] as number;
      root = leader[root] as number;
    }
    return root;
  };
  const edges = new Float64Array(mesh.triangles.length);
  for (let e = 0; e < mesh.triangles.length; e++) {
    const from = mesh.triangles[e] as number;
    const to = mesh.triangles[e % 3 === 2 ? e - 2 : e + 1] as number;
    edges[e] = Math.min(from, to) * vertexCount + Math.max(from, to);
    leader[find(from)] = find(to);
  }
  edges.sort();
  const pieces = new Map<number, { vertices: number; edges: number; triangles: number }>();
  const pieceOf = (v: number) => {
    const root = find(v);
    const piece = pieces.get(root) ?? { vertices: 0, edges: 0, triangles: 0 };
    pieces.set(root, piece);
    return piece;
  };
  const seen = new Uint8Array(vertexCount);
  for (let i = 0; i < mesh.triangles.length; i++) {
    const v = mesh.triangles[i] as number;
    const piece = pieceOf(v);
    if (i % 3 === 0) piece.triangles++;
    if (seen[v] === 0) piece.vertices++;
    seen[v] = 1;
  }
  for (let e = 0; e < edges.length; e++) {
    const key = edges[e] as number;
    if (e === 0 || key !== edges[e - 1]) pieceOf(Math.floor(key / vertexCount)).edges++;
  }
  return [...pieces.values()].map((p) => ({ ...p, euler: p.vertices - p.edges + p.triangles }));
}

/** The mesh scaled about the origin, then moved; `scale` must be positive and finite. */
export function transformMesh(mesh: Mesh, options: { readonly scale?: number; readonly move?: Vec3 }): Mesh {
  const { scale = 1, move = [0, 0, 0] } = options;
  if (!(scale > 0 && Number.isFinite(scale)))
    throw new RangeError(`${mesh.name}: a scale of ${scale} isn't positive and finite.`);
  return { ...mesh, positions: mesh.positions.map((x, i) => x * scale + (move[i % 3] as number)) };
}
