import type { Mesh } from '../../lib/documents/mesh.js';

type Point = readonly [number, number, number];

/** A box with named faces; its lowest corner at `at`. */
export function boxOf(name: string, size: Point, at: Point = [0, 0, 0]): Mesh {
  const positions: number[] = [];
  for (const z of [0, 1])
    for (const [x, y] of [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const)
      positions.push(at[0] + x * size[0], at[1] + y * size[1], at[2] + z * size[2]);
  const quads = [
    [0, 3, 2, 1],
    [4, 5, 6, 7],
    [0, 1, 5, 4],
    [1, 2, 6, 5],
    [2, 3, 7, 6],
    [3, 0, 4, 7],
  ] as const;
  const triangles = quads.flatMap(([a, b, c, d]) => [a, b, c, a, c, d]);
  return {
    name,
    positions: Float64Array.from(positions),
    triangles: Uint32Array.from(triangles),
    faceNames: ['bottom', 'top', 'south', 'east', 'north', 'west'],
    faceOf: Uint16Array.from(quads.flatMap((_, i) => [i, i])),
  };
}

/** A ring of `n` segments round a square section: one hole. */
export function torusOf(name: string, n: number, radius: number, size: number): Mesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  for (let i = 0; i < n; i++) {
    const a = (2 * Math.PI * i) / n;
    for (const [r, z] of [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const)
      positions.push((radius + r * size) * Math.cos(a), (radius + r * size) * Math.sin(a), z * size);
    for (let k = 0; k < 4; k++) {
      const [p, q] = [4 * i + k, 4 * i + ((k + 1) % 4)];
      const [r, s] = [4 * ((i + 1) % n) + k, 4 * ((i + 1) % n) + ((k + 1) % 4)];
      triangles.push(p, r, q, q, r, s);
    }
  }
  return solid(name, positions, triangles);
}

/** A globe of `around` × `up` facets. */
export function globeOf(name: string, radius: number, around: number, up: number): Mesh {
  const positions: number[] = [0, 0, radius];
  for (let j = 1; j < up; j++)
    for (let i = 0; i < around; i++) {
      const [a, b] = [(2 * Math.PI * i) / around, (Math.PI * j) / up];
      positions.push(radius * Math.sin(b) * Math.cos(a), radius * Math.sin(b) * Math.sin(a), radius * Math.cos(b));
    }
  const last = positions.length / 3;
  positions.push(0, 0, -radius);
  const id = (j: number, i: number): number => (j === 0 ? 0 : j === up ? last : 1 + (j - 1) * around + (i % around));
  const triangles: number[] = [];
  for (let j = 0; j < up; j++)
    for (let i = 0; i < around; i++) {
      if (j < up - 1) triangles.push(id(j, i), id(j + 1, i), id(j + 1, i + 1));
      if (j > 0) triangles.push(id(j, i), id(j + 1, i + 1), id(j, i + 1));
    }
  return solid(name, positions, triangles);
}

const solid = (name: string, positions: readonly number[], triangles: readonly number[]): Mesh => ({
  name,
  positions: Float64Array.from(positions),
  triangles: Uint32Array.from(triangles),
  faceNames: ['surface'],
  faceOf: new Uint16Array(triangles.length / 3),
});

/** One mesh of several, side by side: nothing is joined. Face names become `part/face`. */
export function sideBySide(name: string, meshes: readonly Mesh[]): Mesh {
  const positions = new Float64Array(meshes.reduce((n, m) => n + m.positions.length, 0));
  const triangles = new Uint32Array(meshes.reduce((n, m) => n + m.triangles.length, 0));
  const faceOf = new Uint16Array(triangles.length / 3);
  const faceNames: string[] = [];
  let [p, t] = [0, 0];
  for (const mesh of meshes) {
    positions.set(mesh.positions, p);
    for (let i = 0; i < mesh.triangles.length; i++) triangles[t + i] = (mesh.triangles[i] as number) + p / 3;
    for (let i = 0; i < mesh.faceOf.length; i++) faceOf[t / 3 + i] = (mesh.faceOf[i] as number) + faceNames.length;
    for (const face of mesh.faceNames) faceNames.push(`${mesh.name}/${face}`);
    p += mesh.positions.length;
    t += mesh.triangles.length;
  }
  return { name, positions, triangles, faceNames, faceOf };
}
