import modeling, { type geometries } from '@jscad/modeling';

type Visit = (polygon: geometries.poly3.Poly3, index: number) => void;

/**
 * The triangles of a mesh as the STL serializer walks over them: one polygon that is filled anew at each step. A polygon
 * of its own for each triangle takes many times as long to make and to clear away as to write.
 * @param corners x, y, z of vertex i at 3i
 * @param triangles three vertex indices each
 */
export function walkedTriangles(corners: Float32Array, triangles: Uint32Array): geometries.geom3.Geom3 {
  const [a, b, c] = [[0, 0, 0] as Corner, [0, 0, 0] as Corner, [0, 0, 0] as Corner];
  const plane: Plane = [0, 0, 0, 0];
  const polygon = { vertices: [a, b, c], plane };
  const read = (corner: Corner, i: number) => {
    const v = 3 * (triangles[i] as number);
    corner[0] = corners[v] as number;
    corner[1] = corners[v + 1] as number;
    corner[2] = corners[v + 2] as number;
  };
  const forEach = (visit: Visit) => {
    for (let i = 0; i < triangles.length; i += 3) {
      read(a, i);
      read(b, i + 1);
      read(c, i + 2);
      setPlane(plane, a, b, c);
      visit(polygon, i / 3);
    }
  };
  const polygons = { forEach } as unknown as geometries.poly3.Poly3[];
  return modeling.geometries.geom3.create(polygons);
}

type Corner = [number, number, number];
type Plane = [number, number, number, number];

/** The plane through three corners: unit normal, and its distance from the origin along it. */
function setPlane(plane: Plane, a: Corner, b: Corner, c: Corner): void {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const nx = uy * vz - uz * vy;
  const ny = uz * vx - ux * vz;
  const nz = ux * vy - uy * vx;
  const square = nx * nx + ny * ny + nz * nz;
  const share = square > 0 ? 1 / Math.sqrt(square) : 0;
  plane[0] = nx * share;
  plane[1] = ny * share;
  plane[2] = nz * share;
  plane[3] = plane[0] * a[0] + plane[1] * a[1] + plane[2] * a[2];
}
