import type { Mesh } from '../../documents/mesh.js';
import { triangleNormal } from '../../documents/mesh-measure.js';
import { hypot } from '../../math/elementary.js';

/** Common practice of extruding printers, no source: layers may lean out by 45 degrees, and bridge 10 mm in the air. */
const OVERHANG_COSINE = Math.SQRT1_2;
export const BRIDGE = 10;
/** What lies nearer to the bed is on it, mm. */
const ON_BED = 0.05;
/** A face of just 45 degrees may be a hair flatter in facets. */
const FACETED = 0.03;

/** Faces of a part, as it lies, that hang over too flat. */
export interface Overhang {
  /** mm², as seen from below. */
  readonly area: number;
  /** Of the widest connected face four times its area over its rim, mm: a disc's diameter, twice a strip's width. */
  readonly span: number;
}

/** Overhangs of a mesh that lies on z = 0, mm of the model. */
export function overhangOf(mesh: Mesh): Overhang {
  const { positions, triangles } = mesh;
  const at = (v: number, axis: number) => positions[3 * v + axis] as number;
  const faces: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t] as number, triangles[t + 1] as number, triangles[t + 2] as number];
    // Most look up or aside, as their area in plan tells.
    const [x, y] = [at(a, 0), at(a, 1)];
    if ((at(b, 0) - x) * (at(c, 1) - y) - (at(b, 1) - y) * (at(c, 0) - x) >= 0) continue;
    const [nx, ny, nz] = triangleNormal(mesh, t);
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (-nz <= (OVERHANG_COSINE + FACETED) * length || Math.max(at(a, 2), at(b, 2), at(c, 2)) < ON_BED) continue;
    faces.push(t);
  }
  const patches = patchesOf(faces, triangles);
  const sizes = patches.map((patch) => {
    let area = 0;
    let rim = 0;
    for (const t of patch.faces) {
      area -= triangleNormal(mesh, t)[2] / 2;
    }
    for (const [a, b] of patch.rim) rim += hypot(at(b, 0) - at(a, 0), at(b, 1) - at(a, 1));
    return { area, span: rim > 0 ? (4 * area) / rim : 0 };
  });
  return {
    area: sizes.reduce((sum, patch) => sum + patch.area, 0),
    span: Math.max(0, ...sizes.map((patch) => patch.span)),
  };
}

interface Patch {
  /** Where its triangles begin. */
  readonly faces: number[];
  /** Edges that one of its triangles alone has. */
  readonly rim: readonly (readonly [number, number])[];
}

/** Triangles that hang together by their edges. */
function patchesOf(faces: readonly number[], triangles: Uint32Array): Patch[] {
  const count = triangles.length;
  const leader = new Map<number, number>(faces.map((t) => [t, t]));
  const find = (t: number): number => {
    let root = t;
    while (leader.get(root) !== root) root = leader.get(root) as number;
    leader.set(t, root);
    return root;
  };
  const open = new Map<number, readonly [number, number, number]>();
  for (const t of faces) {
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[t + k] as number, triangles[t + ((k + 1) % 3)] as number];
      const key = Math.min(a, b) * count + Math.max(a, b);
      const other = open.get(key);
      if (other) {
        open.delete(key);
        leader.set(find(t), find(other[2]));
      } else open.set(key, [a, b, t]);
    }
  }
  const patches = new Map<number, { faces: number[]; rim: (readonly [number, number])[] }>();
  const of = (t: number) => {
    const patch = patches.get(find(t)) ?? { faces: [], rim: [] };
    patches.set(find(t), patch);
    return patch;
  };
  for (const t of faces) of(t).faces.push(t);
  for (const [a, b, t] of open.values()) of(t).rim.push([a, b]);
  return [...patches.values()];
}
