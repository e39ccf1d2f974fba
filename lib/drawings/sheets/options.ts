import { ISO_SHEETS, type SheetSize, US_SHEETS } from '../../documents/sheet-size.js';
import type { SheetKind } from './chapter.js';
import type { Asked } from './choose.js';

/** What may be asked of a set; what is missing is chosen by the program. */
export interface SheetOptions {
  /** Name of a sheet size: `A3`, `ARCH C`. */
  readonly size?: string;
  /** Scale of plans, elevations and sections: 50 stands for 1:50. */
  readonly scale?: number;
  /** Which sheets; all when missing. */
  readonly only?: readonly SheetKind[];
}

export const ALL_SIZES: readonly SheetSize[] = [...ISO_SHEETS, ...US_SHEETS];

/** @throws RangeError when no sheet has the name. */
export function sizeNamed(name: string): SheetSize {
  const size = ALL_SIZES.find((s) => s.name === name);
  if (!size)
    throw new RangeError(`No sheet size is called "${name}"; there are ${ALL_SIZES.map((s) => s.name).join(', ')}.`);
  return size;
}

export const askedOf = ({ size, scale }: SheetOptions): Asked => ({
  size: size === undefined ? null : sizeNamed(size),
  scale: scale ?? null,
});
