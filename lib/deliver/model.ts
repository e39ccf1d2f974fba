import type { Mesh } from '../documents/mesh.js';
import { blockSolids } from '../solids/block-solids.js';
import { houseSolids } from '../solids/house-solids.js';
import { type KernelSource, loadKernel } from '../solids/kernel.js';
import type { PageSource } from '../writers/html-model.js';
import { writeStl } from '../writers/stl.js';
import type { PackageFile } from './file.js';
import { pageFile } from './page-file.js';
import type { Study } from './study.js';

/**
 * The solids as STL: the house at full size and at print scale, its parts, and its blocks; and the page on which it is
 * turned, where its script is given.
 * @throws DocumentError naming the part when a solid isn't closed.
 */
export async function modelFiles(known: Study, source: KernelSource, pageSource?: PageSource): Promise<PackageFile[]> {
  const kernel = await loadKernel(source);
  const { setout, laid } = known;
  const { whole, parts } = houseSolids(kernel, setout);
  const blocks = blockSolids(kernel, setout, laid.blocks);
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
    ...parts.map((part) => stl(`parts/${part.name.replaceAll(':', '-')}`, [part])),
    ...(pageSource ? [await pageFile(known, { blocks, parts }, pageSource)] : []),
  ];
}
