import validator from 'gltf-validator';

export interface GltfReading {
  readonly issues: { readonly numErrors: number; readonly numWarnings: number; readonly messages: readonly unknown[] };
  readonly info: {
    readonly drawCallCount: number;
    readonly materialCount: number;
    readonly totalTriangleCount: number;
  };
  readonly json: {
    readonly nodes: readonly {
      readonly name: string;
      readonly scale?: readonly number[];
      readonly rotation?: readonly number[];
      readonly extras?: unknown;
    }[];
    readonly materials: readonly {
      readonly name: string;
      readonly pbrMetallicRoughness: { readonly baseColorFactor: readonly number[] };
    }[];
    readonly accessors: readonly { readonly type: string }[];
  };
}

/** What the Khronos validator says of a GLB, and its JSON chunk (glTF 2.0, 4.4.3: after 20 bytes, its length at 12). */
export async function readByGltfValidator(glb: Uint8Array): Promise<GltfReading> {
  const { issues, info } = (await validator.validateBytes(glb)) as Omit<GltfReading, 'json'>;
  const length = new DataView(glb.buffer, glb.byteOffset).getUint32(12, true);
  const json = JSON.parse(new TextDecoder().decode(glb.subarray(20, 20 + length))) as GltfReading['json'];
  return { issues, info, json };
}
