import type { House } from '../description/house.js';
import { mouldNames } from '../masonry/plan.js';
import { housePage } from '../models/page.js';
import { builtScene } from '../models/page-scene.js';
import { blockSolids } from '../solids/block-solids.js';
import { houseSolids } from '../solids/house-solids.js';
import { type KernelSource, loadKernel } from '../solids/kernel.js';
import { writePicture } from '../writers/picture.js';
import type { HousePictureOptions } from './picture.js';
import { study } from './study.js';

/** A house as a PNG picture: blocks and cast parts, joints showing as the gaps that they are. */
export async function drawPicture(
  house: House,
  source: KernelSource,
  { colours = 'as built', ...options }: HousePictureOptions,
): Promise<Uint8Array> {
  const { setout, laid, plan } = study(house);
  const kernel = await loadKernel(source);
  const built = {
    setout,
    blocks: laid.blocks,
    solids: blockSolids(kernel, setout, laid.blocks),
    parts: houseSolids(kernel, setout).parts,
    mouldOf: mouldNames(plan),
  };
  const page = housePage(built, builtScene(built));
  const colouring = page.colourings.find((c) => c.name === colours);
  if (!colouring) throw new RangeError(`The picture can't be coloured by ${colours}.`);
  const { entries, of } = colouring;
  return writePicture(page.scene, {
    ...options,
    colours: of.map((k) => (entries[k] as (typeof entries)[number]).colour),
  });
}
