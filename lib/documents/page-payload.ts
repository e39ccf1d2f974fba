import type { ModelPage, PageOpening, PlaceName } from './model-page.js';

/** One unit of a packed coordinate, mm. */
export const PACKED_STEP = 0.1;

/**
 * What a model page's script reads: this as JSON, and after it bytes for the meshes. Texts that many pieces share
 * stand once. The bytes are, after a compression that the file format names: length of the JSON (4 bytes, low first),
 * the JSON, then variable-length signed differences: for each mesh its x, its y, its z in `PACKED_STEP`, its triangles.
 */
export interface PagePayload {
  readonly title: string;
  /** Corners and triangles of each mesh. */
  readonly meshes: readonly (readonly [corners: number, triangles: number])[];
  /** Of each piece. */
  readonly names: readonly string[];
  readonly mesh: readonly number[];
  /** Index of `places`. */
  readonly place: readonly number[];
  readonly step: readonly number[];
  /** Index of `lifts`. */
  readonly lift: readonly number[];
  readonly opening: readonly (number | null)[];
  /** Indices of `facts`. */
  readonly told: readonly (readonly number[])[];
  /** Twelve numbers each: where x, y and z point afterwards, and the move. */
  readonly places: readonly (readonly number[])[];
  readonly lifts: readonly (readonly number[])[];
  readonly facts: readonly (readonly [name: string, value: string])[];
  readonly steps: readonly string[];
  readonly colourings: ModelPage['colourings'];
  readonly rooms: readonly PlaceName[];
  readonly openings: readonly PageOpening[];
  readonly northRad: number;
}
