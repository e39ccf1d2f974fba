import type { InchParts } from '../base/measures.js';
import { inReaderUnits } from '../base/reader-units.js';
import { CUBIC_FOOT_MM3, SQUARE_FOOT_M2 } from '../base/units.js';
import type { LengthUnit } from '../description/house.js';
import type { Column } from '../documents/table.js';

/** One kind of quantity as tables print it: unit in the header, decimals, and the number of it. */
export interface Printed {
  readonly unit: string;
  readonly decimals: number;
  readonly inchParts?: InchParts;
  of(value: number): number;
}

export interface TableUnits {
  /** From mm, for what is cut in a workshop. */
  readonly length: Printed;
  /** From mm, for what is measured with a tape. */
  readonly tape: Printed;
  /** From mm, for what is finer than any fraction. */
  readonly fine: Printed;
  /** From mm, for a tape on site: to 1 mm or 1/16 in. */
  readonly site: Printed;
  /** From mm³, for one block. */
  readonly pieceVolume: Printed;
  /** From mm³, for a part of the house. */
  readonly volume: Printed;
  /** From mm³, for what a truck brings. */
  readonly concrete: Printed;
  /** From kg. */
  readonly mass: Printed;
  /** From m2. */
  readonly area: Printed;
  /** From m. */
  readonly run: Printed;
  /** From litres. */
  readonly liquid: Printed;
  /** From litres, for what is added by the spoon. */
  readonly dose: Printed;
  /** From kg/m3. */
  readonly density: Printed;
  /** From kN. */
  readonly force: Printed;
  /** From kN/m. */
  readonly lineForce: Printed;
  /** From kPa. */
  readonly pressure: Printed;
}

const METRIC: TableUnits = {
  length: { unit: 'mm', decimals: 1, of: (mm) => mm },
  tape: { unit: 'mm', decimals: 1, of: (mm) => mm },
  fine: { unit: 'mm', decimals: 1, of: (mm) => mm },
  site: { unit: 'mm', decimals: 0, of: (mm) => mm },
  pieceVolume: { unit: 'L', decimals: 3, of: (v) => v / 1e6 },
  volume: { unit: 'm3', decimals: 4, of: (v) => v / 1e9 },
  concrete: { unit: 'm3', decimals: 4, of: (v) => v / 1e9 },
  mass: { unit: 'kg', decimals: 2, of: (kg) => kg },
  area: { unit: 'm2', decimals: 2, of: (m2) => m2 },
  run: { unit: 'm', decimals: 2, of: (m) => m },
  liquid: { unit: 'L', decimals: 1, of: (l) => l },
  dose: { unit: 'mL', decimals: 0, of: (l) => l * 1000 },
  density: { unit: 'kg/m3', decimals: 0, of: (d) => d },
  force: { unit: 'kN', decimals: 2, of: (kn) => kn },
  lineForce: { unit: 'kN/m', decimals: 2, of: (knM) => knM },
  pressure: { unit: 'kPa', decimals: 1, of: (kpa) => kpa },
};

/** What one of a unit of force is in pounds. */
const pounds = (unit: string): number => inReaderUnits(1, unit, 'ft').value;

// International foot and pound: 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, exactly.
const FEET: TableUnits = {
  length: { unit: 'in', decimals: 3, inchParts: 32, of: (mm) => mm / 25.4 },
  tape: { unit: 'in', decimals: 3, inchParts: 16, of: (mm) => mm / 25.4 },
  fine: { unit: 'in', decimals: 3, of: (mm) => mm / 25.4 },
  site: { unit: 'in', decimals: 4, inchParts: 16, of: (mm) => Math.round((mm / 25.4) * 16) / 16 },
  pieceVolume: { unit: 'ft3', decimals: 4, of: (v) => v / CUBIC_FOOT_MM3 },
  volume: { unit: 'ft3', decimals: 3, of: (v) => v / CUBIC_FOOT_MM3 },
  concrete: { unit: 'yd3', decimals: 3, of: (v) => v / (27 * CUBIC_FOOT_MM3) },
  mass: { unit: 'lb', decimals: 2, of: (kg) => kg / 0.45359237 },
  area: { unit: 'ft2', decimals: 2, of: (m2) => m2 / SQUARE_FOOT_M2 },
  run: { unit: 'ft', decimals: 2, of: (m) => m / 0.3048 },
  // US gallon of 231 cubic inches.
  liquid: { unit: 'gal', decimals: 2, of: (l) => l / 3.785411784 },
  // US fluid ounce, a 128th of the gallon.
  dose: { unit: 'fl oz', decimals: 1, of: (l) => (l / 3.785411784) * 128 },
  density: { unit: 'lb/ft3', decimals: 1, of: (d) => (d * 0.028316846592) / 0.45359237 },
  force: { unit: 'lbf', decimals: 0, of: (kn) => kn * pounds('kN') },
  lineForce: { unit: 'lbf/ft', decimals: 0, of: (knM) => knM * pounds('kN/m') },
  pressure: { unit: 'psf', decimals: 0, of: (kpa) => kpa * pounds('kPa') },
};

export const tableUnits = (units: LengthUnit): TableUnits => (units === 'ft' || units === 'in' ? FEET : METRIC);

export const textColumn = (key: string, label: string): Column => ({ key, label, kind: 'text' });
export const countColumn = (key: string, label: string): Column => ({ key, label, kind: 'integer' });
export const degreesColumn = (key: string, label: string): Column => ({
  key,
  label,
  kind: 'number',
  unit: 'deg',
  decimals: 3,
});
export const numberColumn = (
  key: string,
  label: string,
  { unit, decimals, inchParts }: Omit<Printed, 'of'>,
): Column => ({
  key,
  label,
  kind: 'number',
  unit,
  decimals,
  ...(inchParts && { inchParts }),
});

/** Of what has no unit. */
export const ratioColumn = (key: string, label: string): Column => ({ key, label, kind: 'number', decimals: 2 });
