/**
 * How lengths are written for people: whole millimetres and metres, half millimetres for what is cut in a workshop, or
 * feet and inches to a sixteenth.
 */
export type WrittenUnits = 'metric' | 'half-millimetres' | 'feet-inches';

const MM_PER_INCH = 25.4;
const SIXTEENTHS_PER_FOOT = 12 * 16;

/**
 * Text of a dimension.
 * Metric: whole millimetres without a unit (`2100`), as ISO 129-1 asks of a drawing in one unit; in a workshop to half
 * a millimetre (`381.5`).
 * Feet and inches: rounded to 1/16 in (`6'-10 1/2"`, `9 3/4"`, `7'-0"`), common practice, no source.
 * @throws RangeError when `mm` isn't finite.
 */
export function formatLength(mm: number, units: WrittenUnits): string {
  requireFinite(mm, 'length');
  if (units === 'metric') return plain(Math.round(mm));
  if (units === 'half-millimetres') return plain(Math.round(2 * mm) / 2);
  const sixteenths = Math.round((mm / MM_PER_INCH) * 16);
  return (sixteenths < 0 ? '-' : '') + feetInches(Math.abs(sixteenths), false);
}

/**
 * Text of a size that common practice sets and nothing is measured from: as `formatLength`, in feet and inches to the
 * whole inch.
 * @throws RangeError when `mm` isn't finite.
 */
export const formatNominal = (mm: number, units: WrittenUnits): string =>
  formatLength(units === 'feet-inches' ? Math.round(mm / MM_PER_INCH) * MM_PER_INCH : mm, units);

/** Inches in whole sixteenths as feet and inches. */
export const feetAndInches = (inches: number): string => formatLength(inches * MM_PER_INCH, 'feet-inches');

/**
 * Text of a level above the finished floor, always with its sign.
 * Metric: metres with three decimals (`+2.700`, `±0.000`); feet and inches to 1/16 in (`+8'-10 1/4"`, `±0'-0"`).
 * @throws RangeError when `mm` isn't finite.
 */
export function formatLevel(mm: number, units: WrittenUnits): string {
  requireFinite(mm, 'level');
  if (units !== 'feet-inches') {
    const whole = Math.round(mm);
    return signOf(whole) + (Math.abs(whole) / 1000).toFixed(3);
  }
  const sixteenths = Math.round((mm / MM_PER_INCH) * 16);
  return signOf(sixteenths) + feetInches(Math.abs(sixteenths), true);
}

/**
 * Text of an angle in degrees, to a tenth (`22.5°`, `90°`).
 * @throws RangeError when `deg` isn't finite.
 */
export function formatAngle(deg: number): string {
  requireFinite(deg, 'angle');
  return `${plain(Math.round(deg * 10) / 10)}°`;
}

const signOf = (value: number): string => (value > 0 ? '+' : value < 0 ? '-' : '±');

/** Without the sign that JavaScript keeps on a negative zero. */
const plain = (value: number): string => String(value === 0 ? 0 : value);

function feetInches(sixteenths: number, feetAlways: boolean): string {
  const feet = Math.floor(sixteenths / SIXTEENTHS_PER_FOOT);
  const rest = sixteenths - feet * SIXTEENTHS_PER_FOOT;
  const inches = Math.floor(rest / 16);
  const fraction = reduced(rest - inches * 16);
  const withFeet = feet > 0 || feetAlways;
  const inchText = fraction === '' ? `${inches}` : inches > 0 || withFeet ? `${inches} ${fraction}` : fraction;
  return withFeet ? `${feet}'-${inchText}"` : `${inchText}"`;
}

function reduced(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let top = sixteenths;
  let bottom = 16;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${top}/${bottom}`;
}

function requireFinite(value: number, what: string): void {
  if (!Number.isFinite(value)) throw new RangeError(`A ${what} to be written is ${value}; it must be a finite number.`);
}
