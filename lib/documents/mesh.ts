/**
 * A closed solid as an indexed mesh. Coordinates are float64 millimetres, x east, y project north, z up;
 * triangles wind counter-clockwise seen from outside. `faceOf[t]` indexes `faceNames`.
 */
export interface Mesh {
  readonly name: string;
  /** x, y, z of vertex i at 3i. */
  readonly positions: Float64Array;
  /** Three vertex indices per triangle. */
  readonly triangles: Uint32Array;
  readonly faceNames: readonly string[];
  /** Face index of each triangle. */
  readonly faceOf: Uint16Array;
}
