import type { Mesh } from '../documents/mesh.js';
import type { LaidBlock } from '../masonry/block.js';
import type { CastPieces } from '../masonry/cast-pieces.js';
import type { HouseSetout } from '../setout/house.js';
import { blockSolids } from '../solids/block-solids.js';
import { houseSolids } from '../solids/house-solids.js';
import { type KernelSource, loadKernel } from '../solids/kernel.js';
import { pieceSolids } from '../solids/piece-solids.js';
import { writeStl } from '../writers/stl.js';
import type { PackageFile } from './file.js';

/**
 * The solids as STL: the house at full size and at print scale, its parts, its blocks, and all other pieces that are cast and laid.
 * @throws DocumentError naming the part when a solid isn't closed.
 */
export async function modelFiles(
  setout: HouseSetout,
  laid: readonly LaidBlock[],
  pieces: CastPieces,
  source: KernelSource,
): Promise<PackageFile[]> {
  const kernel = await loadKernel(source);
  const { whole, parts } = houseSolids(kernel, setout);
  const blocks = blockSolids(kernel, setout, laid);
  const cast = pieceSolids(kernel, setout, pieces);
  const title = setout.house.project.title;
  const stl = (path: string, meshes: readonly Mesh[], scale = 1) => ({
    path: `model/${path}.stl`,
    bytes: writeStl(meshes, { scale, title }),
  });
  const { scale } = setout.house.print;
  return [
    stl('house', [whole]),
    stl(`house-1-${scale}`, [whole], 1 / scale),
    stl('blocks', blocks),
    ...(cast.length > 0 ? [stl('pieces', cast)] : []),
    ...parts.map((part) => stl(`parts/${part.name.replaceAll(':', '-')}`, [part])),
  ];
}
