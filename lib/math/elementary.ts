/**
 * Elementary functions that give the same bits on every machine and in every browser. Engines differ in the last bit
 * of `Math.sin` and its kin, which shows in files; IEEE 754 makes `+ - * /` and `Math.sqrt` exact, and these use
 * nothing else. Taylor and arctangent series after reduction of the argument; off by 2 units in the last place at most.
 */

const PI_LOW = 1.2246467991473532e-16;
const HALF_PI = Math.PI / 2;
const HALF_PI_LOW = PI_LOW / 2;

/** Half of pi in three parts, the first two of 33 bits, so that their products with a count are exact. */
const HALF_PI_1 = 1.5707963267341256;
const HALF_PI_2 = 6.077100506303966e-11;
const HALF_PI_3 = 2.0222662487959506e-21;

/**
 * Sine of `r + low`, |r| at most pi/4. The series is written out: these two are asked more than anything else, and
 * long before an engine has compiled a loop.
 */
function sineNear(r: number, low: number): number {
  const z = r * r;
  let sum = z * (-1 / 121645100408832000) + 1 / 355687428096000;
  sum = z * (z * (z * sum - 1 / 1307674368000) + 1 / 6227020800) - 1 / 39916800;
  sum = z * (z * (z * (z * sum + 1 / 362880) - 1 / 5040) + 1 / 120) - 1 / 6;
  return r + (r * z * sum + low * (1 - z / 2));
}

/** Cosine of `r + low`, |r| at most pi/4. */
function cosineNear(r: number, low: number): number {
  const z = r * r;
  let sum = z * (1 / 2432902008176640000) - 1 / 6402373705728000;
  sum = z * (z * (z * sum + 1 / 20922789888000) - 1 / 87178291200) + 1 / 479001600;
  sum = z * (z * (z * (z * sum - 1 / 3628800) + 1 / 40320) - 1 / 720) + 1 / 24;
  const half = z / 2;
  const head = 1 - half;
  return head + (1 - head - half + (z * z * sum - r * low));
}

/** Greatest angle that the reduction holds for, in quarter turns. */
const MOST_QUARTERS = 1_048_576;

/** Sine (`shift` 0) or cosine (`shift` 1) of an angle, by the quarter turn it falls in. */
function ofQuarter(angleRad: number, shift: 0 | 1): number {
  const quarters = Math.round(angleRad / HALF_PI);
  if (Math.abs(quarters) > MOST_QUARTERS) throw new RangeError(`${angleRad} rad is too large an angle`);
  const rest = angleRad - quarters * HALF_PI_1;
  const second = quarters * HALF_PI_2;
  const r = rest - second;
  const low = rest - r - second - quarters * HALF_PI_3;
  const quarter = (quarters + shift) & 3;
  const value = (quarter & 1) === 0 ? sineNear(r, low) : cosineNear(r, low);
  return quarter < 2 ? value : -value;
}

/** @throws RangeError beyond a million quarter turns. */
export const sin = (angleRad: number): number => (angleRad === 0 ? angleRad : ofQuarter(angleRad, 0));

/** @throws RangeError beyond a million quarter turns. */
export const cos = (angleRad: number): number => ofQuarter(angleRad, 1);

/** @throws RangeError beyond a million quarter turns. */
export const tan = (angleRad: number): number => sin(angleRad) / cos(angleRad);

/** Arctangents of 0, 1/8 ... 1, each as a number and what rounding took from it. */
const EIGHTHS: readonly (readonly [high: number, low: number])[] = [
  [0, 0],
  [0.12435499454676144, -3.1253241424539383e-18],
  [0.24497866312686414, 1.0698755618734451e-17],
  [0.35877067027057225, -2.4623815582638635e-17],
  [0.4636476090008061, 2.2698777452961687e-17],
  [0.5585993153435624, -5.4556305485916264e-18],
  [0.6435011087932844, 1.5834785051444286e-17],
  [0.7188299996216245, -2.1478388444456983e-17],
  [0.7853981633974483, 3.061616997868383e-17],
];

/** Arctangent of `t` in [0, 1]. */
function atanNear(t: number): number {
  const eighth = Math.round(t * 8);
  const d = (t - eighth / 8) / (1 + (t * eighth) / 8);
  const z = d * d;
  let sum = z * (z * (z * (-1 / 15) + 1 / 13) - 1 / 11) + 1 / 9;
  sum = z * (z * (z * sum - 1 / 7) + 1 / 5) - 1 / 3;
  const known = EIGHTHS[eighth] as (typeof EIGHTHS)[number];
  return known[0] + (known[1] + d * z * sum + d);
}

export function atan(x: number): number {
  const size = Math.abs(x);
  if (size === 0 || Number.isNaN(x)) return x;
  const value = size > 1 ? HALF_PI - (atanNear(1 / size) - HALF_PI_LOW) : atanNear(size);
  return x < 0 ? -value : value;
}

/** Angle of the point (x, y), from -pi to pi; the signs of zeros count as for `Math.atan2`. */
export function atan2(y: number, x: number): number {
  if (Number.isNaN(x) || Number.isNaN(y)) return Number.NaN;
  const below = y < 0 || Object.is(y, -0);
  const behind = x < 0 || Object.is(x, -0);
  const ahead = x === 0 && y !== 0 ? HALF_PI : atan(y === 0 ? 0 : Math.abs(y) / Math.abs(x));
  const value = behind && ahead !== HALF_PI ? Math.PI - (ahead - PI_LOW) : ahead;
  return below ? -value : value;
}

/** NaN outside -1 to 1. */
export const asin = (x: number): number => atan2(x, Math.sqrt((1 - x) * (1 + x)));

/** NaN outside -1 to 1. */
export const acos = (x: number): number => atan2(Math.sqrt((1 - x) * (1 + x)), x);

/** Length of (x, y, z). */
export const hypot = (x: number, y: number, z = 0): number => Math.sqrt(x * x + y * y + z * z);

/** `x ** 2` without the engine's power function. */
export const square = (x: number): number => x * x;
