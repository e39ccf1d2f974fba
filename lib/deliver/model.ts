import type { Memory } from '../base/memory.js';
import type { Mesh } from '../documents/mesh.js';
import { mouldNames } from '../masonry/plan.js';
import { housePage } from '../models/page.js';
import { builtScene } from '../models/page-scene.js';
import { blockSolids } from '../solids/block-solids.js';
import { houseSolids } from '../solids/house-solids.js';
import { type KernelSource, loadKernel } from '../solids/kernel.js';
import { pieceSolids } from '../solids/piece-solids.js';
import { writeGlb } from '../writers/glb.js';
import { type PageSource, writeModelPage } from '../writers/html-model.js';
import { writeStl } from '../writers/stl.js';
import type { PackageFile } from './file.js';
import { printFiles } from './print-files.js';
import type { Study } from './study.js';

export interface ModelSet {
  readonly files: readonly PackageFile[];
  /** Lines that tell of the printed model. */
  readonly summary: readonly string[];
}

/**
 * The house as solids: at full size as STL, whole, in parts, in blocks and in all other pieces that are cast and laid,
 * and as GLB; the printed scale model; and the page on which it is turned, where its script is given.
 * @throws DocumentError naming the part when a solid isn't closed.
 */
export async function modelFiles(
  known: Study,
  source: KernelSource,
  pageSource?: PageSource,
  memory?: Memory,
): Promise<ModelSet> {
  const kernel = await loadKernel(source);
  const { setout, laid, plan } = known;
  const before = memory ? { memory } : {};
  const { whole, parts } = houseSolids(kernel, setout, before);
  const blocks = blockSolids(kernel, setout, laid.blocks, before);
  const pieces = pieceSolids(kernel, setout, known.pieces);
  const built = { setout, blocks: laid.blocks, solids: blocks, parts, mouldOf: mouldNames(plan) };
  const scene = builtScene(built);
  const title = setout.house.project.title;
  const stl = (path: string, meshes: readonly Mesh[]) => ({
    path: `model/${path}.stl`,
    bytes: writeStl(meshes, { title }),
  });
  const print = printFiles(kernel, known, { blocks, built: scene });
  const files = [
    stl('house', [whole]),
    stl('blocks', blocks),
    ...(pieces.length > 0 ? [stl('pieces', pieces)] : []),
    { path: 'model/house.glb', bytes: await writeGlb(scene) },
    ...parts.map((part) => stl(`parts/${part.name.replaceAll(':', '-')}`, [part])),
    ...print.files,
    ...(pageSource
      ? [{ path: 'model/house.html', bytes: await writeModelPage(housePage(built, scene), pageSource) }]
      : []),
  ];
  return { files, summary: print.summary };
}
