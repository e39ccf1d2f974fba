import * as texts from '../base/texts/document-faults.js';
import { SAME_FACING } from '../base/tolerances.js';
import { dot3, type Vec3 } from '../math/vec.js';
import { DocumentError } from './document-error.js';
import { auditMesh } from './mesh-audit.js';
import type { Placement, Scene, SceneNode } from './scene.js';

/**
 * Holds a scene to what its writers rely on: closed meshes, known meshes and materials, rigid motions that mirror
 * nothing, and something to show.
 * @throws DocumentError with every fault
 */
export function auditScene(scene: Scene): void {
  const faults: string[] = scene.meshes.flatMap((mesh) => auditMesh(mesh).map((f) => `${f.part}: ${f.message}`));
  if (scene.nodes.length === 0) faults.push(texts.thereIsNothing);
  for (const { name, colour } of scene.materials)
    if (!colour.every((c) => Number.isInteger(c) && c >= 0 && c <= 255)) faults.push(texts.materialColourIsThree(name));
  const walk = (node: SceneNode): void => {
    if (!isRigid(node.place)) faults.push(texts.placeIsNoMotion(node.name));
    if (node.kind === 'group') {
      if (node.nodes.length === 0) faults.push(texts.groupIsEmpty(node.name));
      node.nodes.forEach(walk);
      return;
    }
    if (!scene.meshes[node.mesh]) faults.push(texts.thereIsNoMesh(node.name, node.mesh));
    if (!scene.materials[node.material]) faults.push(texts.thereIsNoMaterial(node.name, node.material));
  };
  scene.nodes.forEach(walk);
  if (faults.length > 0) throw new DocumentError('bad-scene', scene.title, faults.join(' '));
}

function isRigid({ x, y, z, move }: Placement): boolean {
  const cross: Vec3 = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]];
  const near = (a: number, b: number) => Math.abs(a - b) < SAME_FACING;
  return move.every(Number.isFinite) && near(dot3(x, x), 1) && near(dot3(y, y), 1) && near(dot3(cross, z), 1);
}
