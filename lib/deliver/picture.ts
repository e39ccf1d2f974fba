import type { House } from '../description/house.js';
import type { PictureOptions } from '../writers/picture.js';
import type { Tools } from './package.js';

/** What the colours of a picture can tell. */
export const PICTURE_COLOURS = ['as built', 'part', 'course', 'mould'] as const;

/** How a picture of a house is made: size, view, what is cut away, what its colours tell. */
export interface HousePictureOptions extends Omit<PictureOptions, 'colours'> {
  readonly colours?: (typeof PICTURE_COLOURS)[number];
}

/** A house as a PNG picture: blocks and cast parts, joints showing as the gaps that they are. */
export async function housePicture(
  house: House,
  tools: Pick<Tools, 'kernel'>,
  options: HousePictureOptions = {},
): Promise<Uint8Array> {
  // Solids bring much code with them, which only those wait for who ask for a picture.
  const [{ drawPicture }, kernel] = await Promise.all([import('./picture-file.js'), tools.kernel()]);
  return drawPicture(house, kernel, options);
}
