import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import { meshEuler } from '../documents/mesh-measure.js';
import type { Block } from '../masonry/block.js';
import type { HouseSetout } from '../setout/house.js';
import { archCutter } from './arch-bodies.js';
import { type BlockGrid, blockGrid, gridFaces, gridMesh, gridOutline, placeAt } from './block-grid.js';
import type { SolidOptions } from './house-solids.js';
import type { Kernel, Solid, SolidScope } from './kernel.js';

export interface BlockSolids {
  /** One mesh for each block, in the blocks' order, named by its mark. */
  readonly meshes: readonly Mesh[];
  /** Blocks whose cuts left more than one piece. */
  readonly divided: readonly { readonly mark: string; readonly pieces: number }[];
}

/**
 * Every block as its own closed solid, in its place. Faces: `intrados`, `extrados`, `bed-lower`, `bed-upper`,
 * `perpend-start`, `perpend-end` (clockwise), and `cut:<arch>`. Uncut blocks need no kernel; cut ones lose
 * the arch's outer section grown by the joint. Throws an `Error` naming the block when a cut leaves nothing.
 */
export function blockSolids(
  kernel: Kernel,
  setout: HouseSetout,
  blocks: readonly Block[],
  options: SolidOptions = {},
): BlockSolids {
  const { surface = DEFAULT_SURFACE } = options;
  const { faces, joint } = setout.house.blocks;
  const domes = new Map(setout.domes.map((dome) => [dome.id, dome]));
  return kernel.scope((scope) => {
    const cutters = new Map<string, Solid>();
    const cutterOf = (id: string): Solid => {
      const known = cutters.get(id);
      if (known) return known;
      const arch = setout.arches.find((a) => a.id === id);
      if (!arch) throw new Error(`no arch ${id} to cut blocks with`);
      const cutter = archCutter(scope, arch, { grow: joint, sagitta: surface / 2, name: `cut:${id}` });
      cutters.set(id, cutter);
      return cutter;
    };
    const meshes = blocks.map((block) => {
      const dome = domes.get(block.domeId);
      if (!dome) throw new Error(`block ${block.mark} stands in no dome of the house`);
      const grid = blockGrid(dome, block, { faces, surface });
      if (block.cutBy.length === 0) return gridMesh(block.mark, grid);
      const by = block.cutBy.map(cutterOf);
      return scope.scope((inner) => inner.mesh(block.mark, cut(inner, block.mark, grid, by)));
    });
    return { meshes, divided: dividedOf(blocks, meshes) };
  });
}

function cut(scope: SolidScope, mark: string, grid: BlockGrid, by: readonly Solid[]): Solid {
  const count = grid.stations.length - 1;
  const place = (r: number, z: number, k: number) => placeAt(grid, r, z, k);
  const whole = scope.bend(mark, gridOutline(grid), count, place, gridFaces(grid));
  return scope.subtract(mark, whole, by);
}

function dividedOf(blocks: readonly Block[], meshes: readonly Mesh[]): BlockSolids['divided'] {
  return meshes.flatMap((mesh, i) => {
    if ((blocks[i] as Block).cutBy.length === 0) return [];
    const pieces = meshEuler(mesh).length;
    return pieces > 1 ? [{ mark: mesh.name, pieces }] : [];
  });
}
