import { Document, type mat4, type Node, WebIO } from '@gltf-transform/core';
import type { Mesh } from '../documents/mesh.js';
import { oneLine } from '../documents/plain-text.js';
import type { Placement, Scene, SceneNode } from '../documents/scene.js';
import { auditScene } from '../documents/scene-audit.js';
import { exp, log } from '../math/hyperbolic.js';
import { roundApart } from './float-rounding.js';

/** Cast concrete, plaster and mortar are dull and no metal. */
const ROUGHNESS = 0.9;
const HALF_TURN = Math.SQRT1_2;

/**
 * A scene as binary glTF 2.0 (ISO/IEC 12113): one mesh for each that instances share, nodes with their names and facts,
 * under a root that turns z up into y up and millimetres into metres. Faces are flat: corners carry no normals.
 * @throws DocumentError with every fault of the scene
 */
export async function writeGlb(scene: Scene): Promise<Uint8Array> {
  auditScene(scene);
  const document = new Document();
  document.getRoot().getAsset().generator = 'ringcourse';
  const buffer = document.createBuffer();
  const materials = scene.materials.map(({ name, colour }) =>
    document
      .createMaterial(oneLine(name))
      .setBaseColorFactor([linear(colour[0]), linear(colour[1]), linear(colour[2]), 1])
      .setMetallicFactor(0)
      .setRoughnessFactor(ROUGHNESS),
  );
  const shapes = scene.meshes.map((mesh) => ({
    at: document.createAccessor().setType('VEC3').setArray(roundApart(mesh.positions)).setBuffer(buffer),
    corners: document.createAccessor().setType('SCALAR').setArray(smallest(mesh)).setBuffer(buffer),
  }));
  const known = new Map<string, ReturnType<Document['createMesh']>>();
  const meshOf = (mesh: number, material: number) => {
    const key = `${mesh} ${material}`;
    const found = known.get(key);
    if (found) return found;
    const { at, corners } = shapes[mesh] as (typeof shapes)[number];
    const primitive = document
      .createPrimitive()
      .setAttribute('POSITION', at)
      .setIndices(corners)
      .setMaterial(materials[material] as (typeof materials)[number]);
    const made = document.createMesh(oneLine((scene.meshes[mesh] as Mesh).name)).addPrimitive(primitive);
    known.set(key, made);
    return made;
  };
  const nodeOf = (node: SceneNode): Node => {
    const made = document.createNode(oneLine(node.name)).setMatrix(matrixOf(node.place));
    if (node.facts) made.setExtras({ ...node.facts });
    if (node.kind === 'instance') return made.setMesh(meshOf(node.mesh, node.material));
    for (const child of node.nodes) made.addChild(nodeOf(child));
    return made;
  };
  const root = document
    .createNode(oneLine(scene.title))
    .setRotation([-HALF_TURN, 0, 0, HALF_TURN])
    .setScale([0.001, 0.001, 0.001])
    .setExtras({ ...scene.facts });
  for (const node of scene.nodes) root.addChild(nodeOf(node));
  document.getRoot().setDefaultScene(document.createScene(oneLine(scene.title)).addChild(root));
  return new WebIO().writeBinary(document);
}

/** sRGB to linear light (IEC 61966-2-1). */
function linear(byte: number): number {
  const c = byte / 255;
  return c <= 0.04045 ? c / 12.92 : exp(2.4 * log((c + 0.055) / 1.055));
}

const smallest = ({ positions, triangles }: Mesh): Uint16Array | Uint32Array =>
  positions.length / 3 < 65535 ? Uint16Array.from(triangles) : triangles;

const matrixOf = ({ x, y, z, move }: Placement): mat4 => [...x, 0, ...y, 0, ...z, 0, ...move, 1];
