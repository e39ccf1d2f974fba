import { describe, expect, test } from 'vitest';
import { IN_PLACE, moved, type Scene } from '../../lib/documents/scene.js';
import { writeGlb } from '../../lib/writers/glb.js';
import { boxOf } from '../documents/solids.js';
import { readByGltfValidator } from '../readers/gltf.js';

/** Of a quarter turn's quaternion, to six decimals. */
const HALF = Number(Math.SQRT1_2.toFixed(6));

const scene = (part: Partial<Scene> = {}): Scene => ({
  title: 'Two <boxes> & one',
  facts: { scale: '1:50' },
  materials: [
    { name: 'wall', colour: [222, 206, 178] },
    { name: 'roof', colour: [0, 255, 10] },
  ],
  meshes: [box()],
  nodes: [
    {
      kind: 'group',
      name: 'walls',
      place: moved([1000, 0, 0]),
      nodes: [
        { kind: 'instance', name: 'a', place: IN_PLACE, mesh: 0, material: 0, facts: { mark: 'a-1', mass: 3.5 } },
        {
          kind: 'instance',
          name: 'b',
          place: { x: [0, 1, 0], y: [-1, 0, 0], z: [0, 0, 1], move: [0, 0, 2000] },
          mesh: 0,
          material: 0,
        },
      ],
    },
    { kind: 'instance', name: 'c', place: IN_PLACE, mesh: 0, material: 1 },
  ],
  ...part,
});

const box = () => boxOf('box', [200, 300, 100]);

describe('writeGlb', () => {
  test('a validator finds nothing to say; what is shared is written once, in metres with y up', async () => {
    const { issues, info, json } = await readByGltfValidator(await writeGlb(scene()));
    expect(issues).toMatchObject({ numErrors: 0, numWarnings: 0 });
    expect(info).toMatchObject({ drawCallCount: 2, materialCount: 2, totalTriangleCount: 24 });
    const names = json.nodes.map((node) => node.name).sort();
    expect(names).toEqual(['Two <boxes> & one', 'a', 'b', 'c', 'walls']);
    expect(json.materials.map((m) => m.name)).toEqual(['wall', 'roof']);
    const root = json.nodes.find((node) => node.name === 'Two <boxes> & one');
    expect(root).toMatchObject({ scale: [0.001, 0.001, 0.001], extras: { scale: '1:50' } });
    expect(root?.rotation?.map((x) => Number(x.toFixed(6)))).toEqual([-HALF, 0, 0, HALF]);
    expect(json.nodes.find((node) => node.name === 'a')?.extras).toEqual({ mark: 'a-1', mass: 3.5 });
    expect(json.accessors.filter((a) => a.type === 'VEC3')).toHaveLength(1);
  });

  test('sRGB becomes linear light, as IEC 61966-2-1 has it', async () => {
    const { json } = await readByGltfValidator(await writeGlb(scene()));
    const [wall, roof] = json.materials.map((m) => m.pbrMetallicRoughness.baseColorFactor);
    // 222/255 is 0.7305 and 10/255 is 0.0030 of full light.
    expect(wall?.[0]).toBeCloseTo(0.7305, 4);
    expect(roof?.slice(0, 3).map((x) => Number(x.toFixed(4)))).toEqual([0, 1, 0.003]);
  });

  test('the same bytes again', async () => {
    expect(Buffer.compare(await writeGlb(scene()), await writeGlb(scene()))).toBe(0);
  });

  test('refuses a mirrored place, an unknown mesh and an open mesh, all at once', async () => {
    const open = { ...box(), triangles: box().triangles.slice(3), faceOf: box().faceOf.slice(1) };
    const mirrored = { ...IN_PLACE, x: [-1, 0, 0] as const };
    const bad = scene({
      meshes: [open],
      nodes: [{ kind: 'instance', name: 'd', place: mirrored, mesh: 4, material: 0 }],
    });
    await expect(writeGlb(bad)).rejects.toThrow(/open edges.*d: its place is no rigid motion.*d: there is no mesh 4/);
  });
});
