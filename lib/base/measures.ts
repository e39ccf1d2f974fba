/**
 * How lengths are written for people: whole millimetres and metres, half millimetres for what is cut in a workshop, or
 * feet and inches to a sixteenth.
 */
export type WrittenUnits = 'metric' | 'half-millimetres' | 'feet-inches';

export const MM_PER_INCH = 25.4;

/** Parts of an inch that lengths are written in: what a tape shows, and what a workshop cuts to. */
export type InchParts = 16 | 32;

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
  return feetAndInches(mm / MM_PER_INCH);
}

/**
 * Text of a size that common practice sets and nothing is measured from: as `formatLength`, in feet and inches to the
 * whole inch.
 * @throws RangeError when `mm` isn't finite.
 */
export const formatNominal = (mm: number, units: WrittenUnits): string =>
  formatLength(units === 'feet-inches' ? Math.round(mm / MM_PER_INCH) * MM_PER_INCH : mm, units);

/** Inches as feet and inches, rounded to a sixteenth or a thirty-second. */
export function feetAndInches(inches: number, parts: InchParts = 16): string {
  requireFinite(inches, 'length');
  const whole = Math.round(inches * parts);
  return (whole < 0 ? '-' : '') + feetInches(Math.abs(whole), false, parts);
}

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
  return signOf(sixteenths) + feetInches(Math.abs(sixteenths), true, 16);
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

function feetInches(count: number, feetAlways: boolean, parts: InchParts): string {
  const feet = Math.floor(count / (12 * parts));
  const rest = count - feet * 12 * parts;
  const inches = Math.floor(rest / parts);
  const fraction = reduced(rest - inches * parts, parts);
  const withFeet = feet > 0 || feetAlways;
  const inchText = fraction === '' ? `${inches}` : inches > 0 || withFeet ? `${inches} ${fraction}` : fraction;
  return withFeet ? `${feet}'-${inchText}"` : `${inchText}"`;
}

function reduced(count: number, parts: InchParts): string {
  if (count === 0) return '';
  let top = count;
  let bottom: number = parts;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${top}/${bottom}`;
}

function requireFinite(value: number, what: string): void {
  if (!Number.isFinite(value)) throw new RangeError(`A ${what} to be written is ${value}; it must be a finite number.`);
}
