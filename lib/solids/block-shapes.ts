import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import { IN_PLACE, inTurn, moved, type Placement } from '../documents/scene.js';
import type { Block } from '../masonry/block.js';
import { type Motion, STILL } from '../masonry/placed.js';
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

/**
 * Whole blocks that one form makes share one mesh, named by the form, in the place of the course that the form is made
 * after: its middle at bearing 0 of an axis through the origin, level with the origin, so that equal courses of a stem
 * wall share theirs. A cut block keeps its own of `solids`, which come in
 * the blocks' order, and so does one of no form.
 * @param formOf name of what a block is cast in: a mould, or the form of a longer block; `null` where no mould fits
 */
export function blockShapes<B extends Block>(
  setout: HouseSetout,
  blocks: readonly B[],
  solids: readonly Mesh[],
  formOf: (block: B) => string | null,
  options: SolidOptions = {},
): BlockShapes {
  const { surface = DEFAULT_SURFACE } = options;
  const { faces } = setout.house.blocks;
  const domes = new Map(setout.domes.map((dome) => [dome.id, dome]));
  const meshes: Mesh[] = [];
  const known = new Map<string, number>();
  const uses = blocks.map((block, k) => {
    const dome = domes.get(block.domeId);
    const form = dome && block.cutBy.length === 0 ? formOf(block) : null;
    if (!dome || form === null) return { mesh: meshes.push(solids[k] as Mesh) - 1, place: IN_PLACE };
    const grid = blockGrid(setout, dome, block, { faces, surface });
    const { placed, middleRad } = grid;
    const level = placed.span.at((placed.bed + placed.top) / 2).z;
    let mesh = known.get(form);
    if (mesh === undefined) {
      const atHome = { ...placed, motion: STILL, head: placed.parentHead };
      const made = gridMesh(form, { ...grid, placed: atHome, middleRad: 0, at: [0, 0] });
      mesh = meshes.push({ ...made, positions: made.positions.map((p, i) => (i % 3 === 2 ? p - level : p)) }) - 1;
      known.set(form, mesh);
    }
    const home = inTurn(moved([0, 0, level]), brought(placed.motion));
    const place = inTurn(home, turned(middleRad, [dome.at[0], dome.at[1], 0]));
    return { mesh, place };
  });
  return { meshes, uses };
}

/** A motion in the middle plane of a block at bearing 0. */
const brought = (m: Motion): Placement => ({
  x: [1, 0, 0],
  y: [0, m.cos, m.sin],
  z: [0, -m.sin, m.cos],
  move: [0, m.out, m.up],
});

/** Turned clockwise about the upright axis through the origin, and then moved. */
const turned = (rad: number, move: Placement['move']): Placement => ({
  x: [cos(rad), -sin(rad), 0],
  y: [sin(rad), cos(rad), 0],
  z: [0, 0, 1],
  move,
});
