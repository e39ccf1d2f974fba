/**
 * Exponentials, logarithms and hyperbolic functions that give the same bits everywhere, by the means of
 * `elementary.ts`; off by 4 units in the last place at most.
 */

/** The logarithm of 2 in two parts, the first of 32 bits, so that its product with a count is exact. */
const LN2 = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;

/** `2^k` for a whole `k`, exactly, by repeated squaring. */
export function powerOfTwo(k: number): number {
  let value = 1;
  let factor = k < 0 ? 0.5 : 2;
  for (let rest = Math.abs(k); rest > 0; rest = Math.floor(rest / 2)) {
    if (rest % 2 === 1) value *= factor;
    factor *= factor;
  }
  return value;
}

/** Least and greatest argument whose exponential is a normal number. */
const EXP_RANGE = [-708, 709] as const;

/** @throws RangeError where the exponential is no normal number. */
export function exp(x: number): number {
  const [least, most] = EXP_RANGE;
  if (!(x >= least && x <= most)) throw new RangeError(`the exponential of ${x} is out of range`);
  const twos = Math.round(x / (LN2 + LN2_LOW));
  const high = x - twos * LN2;
  const low = twos * LN2_LOW;
  const r = high - low;
  // e^r = 1 + r + r^2/2! + ..., its first two terms added last and exactly.
  let sum = 1;
  for (let n = 16; n >= 3; n--) sum = 1 + (r * sum) / n;
  return powerOfTwo(twos) * (1 + (r + ((r * r * sum) / 2 + (high - r - low))));
}

/** `2 atanh(s)` for |s| at most 0.18. */
function twiceAtanh(s: number): number {
  const z = s * s;
  let sum = 0;
  for (let n = 23; n >= 3; n -= 2) sum = sum * z + 1 / n;
  return 2 * (s + s * z * sum);
}

/** @throws RangeError unless `x` is positive and finite. */
export function log(x: number): number {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY)) throw new RangeError(`${x} has no finite logarithm`);
  let twos = 0;
  let part = x;
  for (; part > Math.SQRT2; twos++) part /= 2;
  for (; part < Math.SQRT1_2; twos--) part *= 2;
  return twos * LN2 + (twiceAtanh((part - 1) / (part + 1)) + twos * LN2_LOW);
}

/** Logarithm of `1 + x`, exact for a small `x` too. */
const logOnePlus = (x: number): number => (Math.abs(x) < 0.4 ? twiceAtanh(x / (2 + x)) : log(1 + x));

/** Within the range of `exp`. */
export function cosh(x: number): number {
  const e = exp(Math.abs(x));
  return (e + 1 / e) / 2;
}

/** Within the range of `exp`. */
export function sinh(x: number): number {
  const size = Math.abs(x);
  if (size >= 1) {
    const e = exp(size);
    const value = (e - 1 / e) / 2;
    return x < 0 ? -value : value;
  }
  const z = x * x;
  let sum = 1;
  for (let n = 19; n >= 5; n -= 2) sum = 1 + (z * sum) / (n * (n - 1));
  return x + (x * z * sum) / 6;
}

export const tanh = (x: number): number => (Math.abs(x) > 20 ? Math.sign(x) : sinh(x) / cosh(x));

export function asinh(x: number): number {
  const size = Math.abs(x);
  const value = logOnePlus(size + (size * size) / (1 + Math.sqrt(1 + size * size)));
  return x < 0 ? -value : value;
}

/** @throws RangeError below 1. */
export function acosh(x: number): number {
  if (!(x >= 1)) throw new RangeError(`no hyperbolic cosine is ${x}`);
  const past = x - 1;
  return logOnePlus(past + Math.sqrt(past * (x + 1)));
}
