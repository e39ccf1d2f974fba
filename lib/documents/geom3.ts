import modeling, { type geometries } from '@jscad/modeling';
import * as texts from '../base/texts/document-faults.js';
import { SAME_POINT } from '../base/tolerances.js';
import { hypot } from '../math/elementary.js';
import { DocumentError } from './document-error.js';
import type { Mesh } from './mesh.js';
import { auditMesh } from './mesh-audit.js';

/** Solid of the JSCAD tool set, through which other geometry tools take and give solids. */
export type Geom3 = geometries.geom3.Geom3;

/** The mesh as a geom3 of triangles, mm. Face names don't survive; corners shared by index become equal points. */
export function toGeom3(mesh: Mesh): Geom3 {
  const points: [number, number, number][] = [];
  for (let i = 0; i < mesh.positions.length; i += 3)
    points.push([mesh.positions[i] as number, mesh.positions[i + 1] as number, mesh.positions[i + 2] as number]);
  const corner = (i: number): [number, number, number] => {
    const point = points[mesh.triangles[i] as number];
    if (!point) throw new DocumentError('bad-index', mesh.name, texts.triangleNamesVertex);
    return point;
  };
  const polygons = Array.from({ length: mesh.triangles.length / 3 }, (_, t) =>
    modeling.geometries.poly3.create([corner(3 * t), corner(3 * t + 1), corner(3 * t + 2)]),
  );
  return modeling.geometries.geom3.create(polygons);
}

/**
 * A geom3 as an indexed mesh: corners within `tolerance` (mm) become one vertex, polygons are fanned into triangles.
 * @throws DocumentError when the result isn't a closed outward solid; it tells where the edges leak.
 */
export function fromGeom3(geom: Geom3, name: string, tolerance = SAME_POINT): Mesh {
  const weld = welder(tolerance);
  const triangles: number[] = [];
  for (const polygon of modeling.geometries.geom3.toPolygons(geom)) {
    const loop = polygon.vertices
      .map((v) => weld.add(v[0], v[1], v[2]))
      .filter((v, i, all) => v !== all[(i + 1) % all.length]);
    const [first] = loop;
    if (first === undefined) continue;
    for (let i = 1; i + 1 < loop.length; i++) triangles.push(first, loop[i] as number, loop[i + 1] as number);
  }
  const mesh: Mesh = {
    name,
    positions: Float64Array.from(weld.positions),
    triangles: Uint32Array.from(triangles),
    faceNames: ['surface'],
    faceOf: new Uint16Array(triangles.length / 3),
  };
  const faults = auditMesh(mesh);
  if (faults.length > 0)
    throw new DocumentError(
      faults[0]?.code ?? 'open-edge',
      name,
      texts.mendSolidOrWeld(faults.map((f) => f.message).join(' '), tolerance),
    );
  return mesh;
}

/** Gives one index to all points within `tolerance` of the first of them, by a grid of cells that size. */
function welder(tolerance: number): { positions: number[]; add(x: number, y: number, z: number): number } {
  const positions: number[] = [];
  const cells = new Map<string, number[]>();
  const cell = (x: number): number => Math.floor(x / tolerance);
  const near = (x: number, y: number, z: number): number | undefined => {
    for (let i = -1; i <= 1; i++)
      for (let j = -1; j <= 1; j++)
        for (let k = -1; k <= 1; k++)
          for (const v of cells.get(`${cell(x) + i},${cell(y) + j},${cell(z) + k}`) ?? []) {
            const [dx, dy, dz] = [
              x - (positions[3 * v] as number),
              y - (positions[3 * v + 1] as number),
              z - (positions[3 * v + 2] as number),
            ];
            if (hypot(dx, dy, dz) <= tolerance) return v;
          }
    return undefined;
  };
  return {
    positions,
    add(x, y, z) {
      const known = near(x, y, z);
      if (known !== undefined) return known;
      const v = positions.length / 3;
      positions.push(x, y, z);
      const key = `${cell(x)},${cell(y)},${cell(z)}`;
      const list = cells.get(key);
      if (list) list.push(v);
      else cells.set(key, [v]);
      return v;
    },
  };
}
