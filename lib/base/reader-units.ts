import { findUnit, formatLength, formatNumber, type LengthUnit } from './units.js';

const of = (kind: Parameters<typeof findUnit>[0], name: string): number => findUnit(kind, name)?.factor ?? 1;

const FOOT_M = of('length', 'ft') / 1000;
const POUND = of('mass', 'lb');
/** Standard gravity makes a pound's weight 4.448 N. */
const POUND_FORCE_KN = of('pressure', 'psf') * FOOT_M * FOOT_M;
/** Btu of the International Table, joule. */
const BTU = 1055.05585262;
const PER_FAHRENHEIT = 5 / 9;

/** What one of each unit that figures are computed in is in feet, pounds and British thermal units. */
const IMPERIAL: Readonly<Record<string, readonly [unit: string, factor: number]>> = {
  m: ['ft', 1 / FOOT_M],
  mm2: ['in2', 1 / (of('length', 'in') * of('length', 'in'))],
  m2: ['ft2', 1 / (FOOT_M * FOOT_M)],
  m3: ['ft3', 1 / (FOOT_M * FOOT_M * FOOT_M)],
  kPa: ['psf', 1 / of('pressure', 'psf')],
  MPa: ['psi', 1000 / of('pressure', 'psi')],
  kN: ['lbf', 1 / POUND_FORCE_KN],
  'kN/m': ['lbf/ft', FOOT_M / POUND_FORCE_KN],
  'kN m': ['lbf ft', 1 / POUND_FORCE_KN / FOOT_M],
  kg: ['lb', 1 / POUND],
  'kg/m3': ['lb/ft3', 1 / of('density', 'lb/ft3')],
  L: ['gal', 1 / of('volume', 'gal')],
  'L/min': ['gal/min', 1 / of('volume', 'gal')],
  'W/K': ['Btu/(h °F)', (3600 / BTU) * PER_FAHRENHEIT],
  'W/(m2 K)': ['Btu/(h ft2 °F)', (3600 / BTU) * PER_FAHRENHEIT * FOOT_M * FOOT_M],
  'W/(m K)': ['Btu/(h ft °F)', (3600 / BTU) * PER_FAHRENHEIT * FOOT_M],
  'm2 K/W': ['h ft2 °F/Btu', BTU / 3600 / PER_FAHRENHEIT / (FOOT_M * FOOT_M)],
};

const imperial = (units: LengthUnit): boolean => units === 'ft' || units === 'in';

/** A value and its unit as the reader of a description in `units` has them; lengths in mm become inches. */
export function inReaderUnits(value: number, unit: string, units: LengthUnit): { value: number; unit: string } {
  if (!imperial(units)) return { value, unit };
  if (unit === 'mm') return { value: value / of('length', 'in'), unit: 'in' };
  const [name, factor] = IMPERIAL[unit] ?? [unit, 1];
  return { value: value * factor, unit: name };
}

/** A unit as people write it, its powers as raised signs (`kg/m³`); tables of data and descriptions keep plain letters. */
export const writtenUnit = (unit: string): string =>
  unit.replace(/(?<=[a-z])[23]/g, (power) => (power === '2' ? '²' : '³'));

/** A computed figure for a sentence: three or four digits and its unit, lengths in feet and inches where these are used. */
export function figureText(value: number, unit: string, units: LengthUnit, digits = 3): string {
  if (unit === 'mm' && imperial(units)) return formatLength(value, units);
  const shown = inReaderUnits(value, unit, units);
  const number =
    Math.abs(shown.value) < 1e-4 && shown.value !== 0
      ? shown.value.toExponential(1)
      : formatNumber(shown.value, digits);
  return shown.unit === '1' ? number : `${number} ${writtenUnit(shown.unit)}`;
}
