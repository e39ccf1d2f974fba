import type { DrawingChoice } from '../../description/house.js';
import { ISO_SHEETS, type SheetSize, US_SHEETS } from '../../documents/sheet-size.js';
import type { Asked } from './choose.js';

const ALL_SIZES: readonly SheetSize[] = [...ISO_SHEETS, ...US_SHEETS];

/** @throws RangeError when no sheet has the name. */
function sizeNamed(name: string): SheetSize {
  const size = ALL_SIZES.find((s) => s.name === name);
  if (!size)
    throw new RangeError(`No sheet size is called "${name}"; there are ${ALL_SIZES.map((s) => s.name).join(', ')}.`);
  return size;
}

export const askedOf = ({ sheet, scale }: DrawingChoice): Asked => ({
  size: sheet === null ? null : sizeNamed(sheet),
  scale,
});
