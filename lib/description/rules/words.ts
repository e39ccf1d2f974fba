import * as texts from '../../base/texts/problems-values.js';
import { WHOLE } from '../../base/tolerances.js';
import { formatLength, formatNumber, type LengthUnit } from '../../base/units.js';

/** Lengths and angles that are offered as a mend are rounded to the side on which they help. */

/** The step in which a length is written in the reader's units. */
const stepOf = (units: LengthUnit): number => (units === 'ft' || units === 'in' ? 25.4 / 16 : 1);

export function atLeast(mm: number, units: LengthUnit): string {
  const step = stepOf(units);
  return formatLength(Math.ceil(mm / step - WHOLE) * step, units);
}

export function atMost(mm: number, units: LengthUnit): string {
  const step = stepOf(units);
  return formatLength(Math.floor(mm / step + WHOLE) * step, units);
}

/** Degrees rounded up to a tenth. */
export const turnOf = (deg: number): string => `${formatNumber(Math.ceil(deg / 0.1 - WHOLE) * 0.1, 4)} deg`;

/** Where in height something happens. */
export const levelOf = (z: number, units: LengthUnit): string =>
  z < 0.5 ? texts.atFloor : texts.atAboveFloor(formatLength(z, units));
