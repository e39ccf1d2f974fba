import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import manifold from 'manifold-3d';
import type { Mesh } from '../../lib/documents/mesh.js';

type Point = [number, number, number];

/** Cosine of 40 degrees: faces that turn from each other by less have a wall between them, others meet in an edge. */
const OPPOSED = 0.766;

export interface Thickness {
  readonly rays: number;
  readonly least: number;
  /** Where it is least. */
  readonly at: Point;
}

/**
 * The least thickness that rays find which run into a part from the middles of its triangles, square to them, up to the
 * first face on the other side, where that face is turned from the first by less than 40 degrees. At most so many rays.
 */
export async function thicknessOf(mesh: Mesh, most: number): Promise<Thickness> {
  const wasmBinary = readFileSync(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm'));
  const kernel = await manifold({ locateFile: () => 'manifold.wasm', wasmBinary } as Parameters<typeof manifold>[0]);
  kernel.setup();
  const { positions, triangles } = mesh;
  const solid = new kernel.Manifold(
    new kernel.Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles }),
  );
  const corner = (v: number): Point => [positions[3 * v], positions[3 * v + 1], positions[3 * v + 2]] as Point;
  const count = triangles.length / 3;
  let rays = 0;
  let least = Infinity;
  let at: Point = [0, 0, 0];
  for (let t = 0; t < count; t += Math.max(1, Math.floor(count / most))) {
    const [a, b, c] = [0, 1, 2].map((k) => corner(triangles[3 * t + k] as number)) as [Point, Point, Point];
    const [u, v] = [minus(b, a), minus(c, a)];
    const normal: Point = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const length = Math.hypot(...normal);
    if (length < 1e-3) continue;
    const into = normal.map((x) => -x / length) as Point;
    const from = [0, 1, 2].map((k) => ((a[k] as number) + (b[k] as number) + (c[k] as number)) / 3) as Point;
    rays++;
    const [hit] = solid.rayCast(along(from, into, 1e-3), along(from, into, 50));
    if (!hit || dot(hit.normal as Point, into) < OPPOSED) continue;
    const thickness = Math.hypot(...minus(hit.position as Point, from));
    if (thickness < least) [least, at] = [thickness, from];
  }
  solid.delete();
  return { rays, least, at };
}

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const along = (from: Point, way: Point, far: number): Point => [
  from[0] + far * way[0],
  from[1] + far * way[1],
  from[2] + far * way[2],
];
