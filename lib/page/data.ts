import { inflateSync } from 'fflate';
import { PACKED_STEP, type PagePayload } from '../documents/page-payload.js';

/** One mesh as the page carries it, in its own coordinates (mm). */
export interface PageMesh {
  /** x, y, z of corner i at 3i. */
  readonly corners: Float32Array;
  readonly triangles: Uint32Array;
}

export interface PageData {
  readonly payload: PagePayload;
  readonly meshes: readonly PageMesh[];
}

/** Reads what `packPage` wrote. */
export function unpackPage(text: string): PageData {
  const bytes = inflateSync(Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0)));
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true);
  const payload = JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + length))) as PagePayload;
  const next = reader(bytes, 4 + length);
  const meshes = payload.meshes.map(([corners, triangles]) => {
    const at = new Float32Array(3 * corners);
    for (let axis = 0; axis < 3; axis++) {
      let value = 0;
      for (let i = axis; i < at.length; i += 3) {
        value += next();
        at[i] = value * PACKED_STEP;
      }
    }
    const indices = new Uint32Array(3 * triangles);
    let index = 0;
    for (let i = 0; i < indices.length; i++) {
      index += next();
      indices[i] = index;
    }
    return { corners: at, triangles: indices };
  });
  return { payload, meshes };
}

/** Signed numbers of seven bits a byte, one at each call. */
function reader(bytes: Uint8Array, from: number): () => number {
  let at = from;
  return () => {
    let value = 0;
    for (let by = 1; ; by *= 128) {
      const byte = bytes[at++];
      if (byte === undefined) throw new Error('the data of this page end too early');
      value += (byte % 128) * by;
      if (byte < 128) return value % 2 === 1 ? -(value + 1) / 2 : value / 2;
    }
  };
}
