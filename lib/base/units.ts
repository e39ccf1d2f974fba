import { formatLength as feetAndInches } from './measures.js';
import * as texts from './texts/quantities.js';

/**
 * Units of measurement: exact factors and the wording of values in the reader's own units.
 *
 * Sources: international yard and pound of 1959 (1 ft = 0.3048 m, 1 lb = 0.45359237 kg), standard gravity
 * 9.80665 m/s2 (third CGPM, 1901), US gallon of 231 cubic inches. All other factors follow from these.
 */

export type LengthUnit = 'm' | 'mm' | 'ft' | 'in';
export const LENGTH_UNITS: readonly LengthUnit[] = ['m', 'mm', 'ft', 'in'];

export type QuantityKind =
  | 'length'
  | 'angle'
  | 'pressure'
  | 'density'
  | 'mass'
  | 'volume'
  | 'flow'
  | 'duration'
  | 'fraction';

export interface Unit {
  /** Spelling used in messages. */
  readonly name: string;
  readonly aliases: readonly string[];
  /** Base units of its kind in one of this. */
  readonly factor: number;
}

export const FOOT_MM = 304.8;
const INCH_MM = 25.4;
const POUND_KG = 0.45359237;
/** Standard gravity, m/s2. */
export const GRAVITY = 9.80665;
/** In m2 and mm3, exact. */
export const SQUARE_FOOT_M2 = 0.09290304;
export const CUBIC_FOOT_MM3 = 28316846.592;
const PSI_KPA = (POUND_KG * GRAVITY * 1000) / (INCH_MM * INCH_MM);
const PSF_KPA = PSI_KPA / 144;
const POUND_PER_CUBIC_FOOT = POUND_KG / (CUBIC_FOOT_MM3 / 1e9);
const GALLON_LITRES = (231 * INCH_MM * INCH_MM * INCH_MM) / 1e6;
const CUBIC_FOOT_LITRES = CUBIC_FOOT_MM3 / 1e6;

const unit = (name: string, factor: number, ...aliases: string[]): Unit => ({ name, factor, aliases });

/** Accepted units of each kind; the base unit of a kind is the one with factor 1. */
export const UNITS: Readonly<Record<QuantityKind, readonly Unit[]>> = {
  length: [
    unit('m', 1000, 'metre', 'metres', 'meter', 'meters'),
    unit('cm', 10, 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
    unit('mm', 1, 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
    unit('ft', FOOT_MM, "'", 'foot', 'feet'),
    unit('in', INCH_MM, '"', 'inch', 'inches'),
  ],
  angle: [unit('deg', 1, '°', 'degree', 'degrees')],
  pressure: [
    unit('kPa', 1),
    unit('Pa', 0.001),
    unit('MPa', 1000),
    unit('kN/m2', 1),
    unit('N/mm2', 1000),
    unit('psf', PSF_KPA, 'lb/ft2', 'lbf/ft2'),
    unit('psi', PSI_KPA, 'lb/in2', 'lbf/in2'),
  ],
  density: [unit('kg/m3', 1), unit('g/cm3', 1000), unit('lb/ft3', POUND_PER_CUBIC_FOOT, 'pcf')],
  mass: [
    unit('kg', 1, 'kilogram', 'kilograms'),
    unit('g', 0.001, 'gram', 'grams'),
    unit('lb', POUND_KG, 'lbs', 'pound', 'pounds'),
    unit('oz', POUND_KG / 16, 'ounce', 'ounces'),
  ],
  volume: [
    unit('L', 1, 'litre', 'litres', 'liter', 'liters'),
    unit('m3', 1000),
    unit('gal', GALLON_LITRES, 'gallon', 'gallons'),
    unit('ft3', CUBIC_FOOT_LITRES),
    unit('yd3', 27 * CUBIC_FOOT_LITRES),
  ],
  flow: [
    unit('L/min', 1, 'litre/min', 'litres/min', 'liter/min', 'liters/min'),
    unit('L/s', 60),
    unit('m3/h', 1000 / 60),
    unit('gal/min', GALLON_LITRES, 'gpm'),
    unit('ft3/min', CUBIC_FOOT_LITRES, 'cfm'),
  ],
  duration: [unit('day', 1, 'days', 'd'), unit('h', 1 / 24, 'hour', 'hours'), unit('week', 7, 'weeks')],
  fraction: [unit('%', 0.01, 'percent', 'per cent')],
};

/** Finds a unit by name or alias: as written first, then without regard to case. */
export function findUnit(kind: QuantityKind, written: string): Unit | undefined {
  const units = UNITS[kind];
  const names = (u: Unit) => [u.name, ...u.aliases];
  const lower = written.toLowerCase();
  return (
    units.find((u) => names(u).includes(written)) ?? units.find((u) => names(u).some((n) => n.toLowerCase() === lower))
  );
}

/** A number for a sentence: at most `digits` significant digits, no trailing zeros, no exponent within 1e-6..1e9. */
export function formatNumber(value: number, digits = 4): string {
  if (value === 0 || !Number.isFinite(value)) return String(value + 0);
  const size = Math.abs(value);
  if (size >= 1e9 || size < 1e-6) return value.toPrecision(2);
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  const text = value.toFixed(Math.min(12, decimals));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/**
 * A length for a sentence in the reader's units: `2.10 m` (`2.105 m` where a millimetre counts, `10 mm` below
 * 50 mm), `2100 mm`, `6'-10 1/2"`, `82 1/2 in` (to 1/16 in; finer decimals below that).
 */
export function formatLength(mm: number, units: LengthUnit): string {
  if (!Number.isFinite(mm) || Math.abs(mm) >= 1e10) return `${formatNumber(mm / 1000)} m`;
  switch (units) {
    case 'mm':
      return `${formatNumber(Math.abs(mm) >= 1000 ? Math.round(mm) : mm)} mm`;
    case 'm': {
      if (Math.abs(mm) < 50 && mm !== 0) return `${formatNumber(mm, 3)} mm`;
      const whole = Math.round(mm);
      return `${(whole / 1000 + 0).toFixed(whole % 10 === 0 ? 2 : 3)} m`;
    }
    case 'in':
    case 'ft':
      if (mm !== 0 && Math.abs(mm) < INCH_MM / 32) return `${formatNumber(mm / INCH_MM, 2)} in`;
      return units === 'ft' ? feetAndInches(mm, 'feet-inches') : formatInches(mm);
  }
}

/** Two lengths in one sentence: with finer decimals where they would otherwise read the same. */
export function formatApart(a: number, b: number, units: LengthUnit): [string, string] {
  const coarse: [string, string] = [formatLength(a, units), formatLength(b, units)];
  if (coarse[0] !== coarse[1] || a === b) return coarse;
  const [name, factor]: [string, number] = units === 'ft' || units === 'in' ? ['in', INCH_MM] : ['mm', 1];
  const fine = (mm: number, digits: number) => `${formatNumber(mm / factor, digits)} ${name}`;
  const digits = [5, 6, 7, 8, 10, 12].find((n) => fine(a, n) !== fine(b, n)) ?? 15;
  return [fine(a, digits), fine(b, digits)];
}

function formatInches(mm: number): string {
  const sixteenths = Math.round((Math.abs(mm) / INCH_MM) * 16);
  const inches = Math.floor(sixteenths / 16);
  const rest = sixteenths - inches * 16;
  const part = rest === 0 ? '' : feetAndInches((rest * INCH_MM) / 16, 'feet-inches').slice(0, -1);
  const figure = [inches > 0 || part === '' ? String(inches) : '', part].filter(Boolean).join(' ');
  return `${mm < 0 && sixteenths > 0 ? '-' : ''}${figure} in`;
}

const READER_UNIT: Readonly<Record<Exclude<QuantityKind, 'length'>, readonly [metric: string, imperial: string]>> = {
  angle: ['deg', 'deg'],
  pressure: ['kPa', 'psf'],
  density: ['kg/m3', 'lb/ft3'],
  mass: ['kg', 'lb'],
  volume: ['L', 'gal'],
  flow: ['L/min', 'gal/min'],
  duration: ['day', 'day'],
  fraction: ['%', '%'],
};

/** A value in base units, worded in the reader's units: metric, or foot and pound where `units` is ft or in. */
export function formatQuantity(value: number, kind: QuantityKind, units: LengthUnit): string {
  if (kind === 'length') return formatLength(value, units);
  const name = READER_UNIT[kind][units === 'ft' || units === 'in' ? 1 : 0];
  const factor = findUnit(kind, name)?.factor ?? 1;
  const figure = formatNumber(value / factor);
  return kind === 'duration' && figure !== '1' ? texts.daysLong(figure) : `${figure} ${name}`;
}
