declare module '@jscad/stl-serializer/CSGToStlb.js' {
  import type { geometries } from '@jscad/modeling';

  /** Header (80 bytes), count (4 bytes), triangles (50 bytes each). */
  export function serializeBinary(
    objects: readonly geometries.geom3.Geom3[],
    options: { statusCallback?: (status: { progress: number }) => void },
  ): [ArrayBuffer, ArrayBuffer, ArrayBuffer];
}
