import manifold from 'manifold-3d';
import type { Head, Opening } from '../../lib/description/house.js';
import type { Mesh } from '../../lib/documents/mesh.js';
import { meshEuler } from '../../lib/documents/mesh-measure.js';
import type { Vec3 } from '../../lib/math/vec.js';
import { openingOf } from '../tools/house.js';

/** mm³ and mm² to m³ and m². */
export const M3 = 1e-9;
export const M2 = 1e-6;

type Corners = readonly [Vec3, Vec3, Vec3];

export function* trianglesOf(mesh: Mesh): Generator<{ corners: Corners; face: string }> {
  const corner = (i: number): Vec3 => {
    const v = 3 * (mesh.triangles[i] as number);
    return [mesh.positions[v] as number, mesh.positions[v + 1] as number, mesh.positions[v + 2] as number];
  };
  for (let t = 0; t < mesh.faceOf.length; t++) {
    const face = mesh.faceNames[mesh.faceOf[t] as number] as string;
    yield { corners: [corner(3 * t), corner(3 * t + 1), corner(3 * t + 2)], face };
  }
}

const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Area of the faces of one name, mm². */
export function faceArea(mesh: Mesh, name: string): number {
  let area = 0;
  for (const { corners, face } of trianglesOf(mesh)) {
    if (face === name) area += Math.hypot(...cross(sub(corners[1], corners[0]), sub(corners[2], corners[0]))) / 2;
  }
  return area;
}

/** Centroid of the enclosed volume. */
export function centroid(mesh: Mesh): Vec3 {
  const sum: [number, number, number] = [0, 0, 0];
  let six = 0;
  for (const { corners } of trianglesOf(mesh)) {
    const [a, b, c] = corners;
    const v = dot(a, cross(b, c));
    six += v;
    for (const k of [0, 1, 2] as const) sum[k] += (v * (a[k] + b[k] + c[k])) / 4;
  }
  return [sum[0] / six, sum[1] / six, sum[2] / six];
}

/** Volume of the union of closed meshes, by the kernel's public interface: less than their sum where they overlap. */
export async function unionVolume(meshes: readonly Mesh[]): Promise<number> {
  const kernel = await manifold();
  kernel.setup();
  const solids = meshes.map(
    (mesh) =>
      new kernel.Manifold(
        new kernel.Mesh({
          numProp: 3,
          vertProperties: Float32Array.from(mesh.positions),
          triVerts: mesh.triangles,
        }),
      ),
  );
  return kernel.Manifold.union(solids).volume();
}

/** Handles of a closed mesh, all its pieces together. */
export const handles = (mesh: Mesh): number => meshEuler(mesh).reduce((sum, piece) => sum + 1 - piece.euler / 2, 0);

export const HEADS: readonly Head[] = [
  { shape: 'semicircular', rise: 450 },
  { shape: 'segmental', rise: 200 },
  { shape: 'pointed', rise: 700 },
  { shape: 'flat', rise: 0 },
];

export const KINDS = ['barrel', 'flush', 'flush niche', 'barrel niche'] as const;

/** An opening 900 mm wide of the given kind. */
export function openingLike(kind: (typeof KINDS)[number], head: Head, part: Partial<Opening> = {}): Opening {
  const niche = kind.endsWith('niche');
  const flush = kind.startsWith('flush');
  return openingOf({
    id: 'way',
    use: niche ? 'niche' : 'window',
    bearingDeg: 70,
    width: 900,
    height: 1100,
    sill: 300,
    head,
    arch: { ring: 150, face: flush ? 'flush' : 350, madeAs: 'cast', voussoirs: null },
    depth: niche ? (flush ? 140 : 380) : null,
    ...part,
  });
}
