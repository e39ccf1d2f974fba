import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import { IN_PLACE, type Placement } from '../documents/scene.js';
import type { Block } from '../masonry/block.js';
import { cos, sin } from '../math/elementary.js';
import type { HouseSetout } from '../setout/house.js';
import { blockGrid, gridMesh } from './block-grid.js';
import type { SolidOptions } from './house-solids.js';

/** Blocks as few meshes in many places. */
export interface BlockShapes {
  readonly meshes: readonly Mesh[];
  /** For each block its mesh and place. */
  readonly uses: readonly { readonly mesh: number; readonly place: Placement }[];
}

/** Widths of one course that differ by less are one, radians. */
const SAME_WIDTH_DIGITS = 9;

/**
 * Whole blocks of one course and width share one mesh, which stands at bearing 0 about the origin's axis; a cut block
 * keeps its own of `solids`, which come in the blocks' order.
 */
export function blockShapes(
  setout: HouseSetout,
  blocks: readonly Block[],
  solids: readonly Mesh[],
  options: SolidOptions = {},
): BlockShapes {
  const { surface = DEFAULT_SURFACE } = options;
  const { faces } = setout.house.blocks;
  const domes = new Map(setout.domes.map((dome) => [dome.id, dome]));
  const meshes: Mesh[] = [];
  const known = new Map<string, number>();
  const uses = blocks.map((block, k) => {
    const dome = domes.get(block.domeId);
    if (!dome || block.cutBy.length > 0) return { mesh: meshes.push(solids[k] as Mesh) - 1, place: IN_PLACE };
    const { startRad, endRad, course } = block;
    const name = `${block.domeId}-${course}-${(endRad - startRad).toFixed(SAME_WIDTH_DIGITS)}`;
    let mesh = known.get(name);
    if (mesh === undefined) {
      const grid = blockGrid(setout, dome, { ...block, startRad: 0, endRad: endRad - startRad }, { faces, surface });
      mesh = meshes.push(gridMesh(name, { ...grid, at: [0, 0] })) - 1;
      known.set(name, mesh);
    }
    return { mesh, place: turned(startRad, [dome.at[0], dome.at[1], 0]) };
  });
  return { meshes, uses };
}

/** Turned clockwise about the upright axis through the origin, and then moved. */
const turned = (rad: number, move: Placement['move']): Placement => ({
  x: [cos(rad), -sin(rad), 0],
  y: [sin(rad), cos(rad), 0],
  z: [0, 0, 1],
  move,
});
