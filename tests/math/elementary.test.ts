import { describe, expect, it } from 'vitest';
import { acos, asin, atan, atan2, cos, hypot, sin, tan } from '../../lib/math/elementary.js';
import { acosh, asinh, cosh, exp, log, powerOfTwo, sinh, tanh } from '../../lib/math/hyperbolic.js';

/** The distance of two numbers in units in the last place of the second. */
function ulps(found: number, wanted: number): number {
  if (Object.is(found, wanted)) return 0;
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, Math.abs(wanted));
  view.setBigUint64(0, view.getBigUint64(0) + 1n);
  return Math.abs(found - wanted) / (view.getFloat64(0) - Math.abs(wanted));
}

/** Points spread over a range, the same in each run. */
function spread(from: number, to: number, count = 4001): number[] {
  return Array.from({ length: count }, (_, i) => from + (to - from) * ((i * 0.6180339887498949) % 1));
}

/** Closed forms, and values as in DLMF 4 and Abramowitz & Stegun 4 (digits recomputed to 40 places). */
const CLOSED_FORMS: readonly (readonly [name: string, found: number, wanted: number])[] = [
  ['sin 30 deg', sin(Math.PI / 6), 0.5],
  ['sin 45 deg', sin(Math.PI / 4), Math.SQRT1_2],
  ['sin 18 deg, (sqrt 5 - 1)/4', sin(Math.PI / 10), (Math.sqrt(5) - 1) / 4],
  ['cos 36 deg, (sqrt 5 + 1)/4', cos(Math.PI / 5), (Math.sqrt(5) + 1) / 4],
  ['cos 60 deg', cos(Math.PI / 3), 0.5],
  ['sin 1', sin(1), Number('0.8414709848078965066525')],
  ['cos 1', cos(1), Number('0.5403023058681397174009')],
  ['tan 1', tan(1), Number('1.557407724654902230507')],
  ['sin 100', sin(100), Number('-0.5063656411097587936566')],
  ['atan 1', atan(1), Math.PI / 4],
  ['atan 2', atan(2), Number('1.107148717794090503017')],
  ['asin 1/2', asin(0.5), Math.PI / 6],
  ['acos -1/2', acos(-0.5), (2 * Math.PI) / 3],
  ['e', exp(1), Math.E],
  ['ln 10', log(10), Math.LN10],
  ['sinh 1', sinh(1), Number('1.175201193643801456882')],
  ['cosh 1', cosh(1), Number('1.543080634815243778478')],
  ['tanh 1', tanh(1), Number('0.7615941559557648881195')],
  ['asinh 1, ln(1 + sqrt 2)', asinh(1), Number('0.8813735870195430252326')],
  ['acosh 2, ln(2 + sqrt 3)', acosh(2), Number('1.316957896924816708625')],
];

describe('elementary functions', () => {
  it.each(CLOSED_FORMS)('give %s', (_, found, wanted) => {
    expect(ulps(found, wanted)).toBeLessThanOrEqual(2);
  });

  it.each([
    ['sin', sin, Math.sin, -40, 40, 2],
    ['cos', cos, Math.cos, -40, 40, 2],
    ['tan', tan, Math.tan, -1.5, 1.5, 3],
    ['asin', asin, Math.asin, -1, 1, 3],
    ['acos', acos, Math.acos, -1, 1, 3],
    ['atan', atan, Math.atan, -20, 20, 3],
    ['exp', exp, Math.exp, -50, 50, 3],
    ['log', log, Math.log, 1e-6, 100, 3],
    ['sinh', sinh, Math.sinh, -5, 5, 5],
    ['cosh', cosh, Math.cosh, -5, 5, 4],
    ['tanh', tanh, Math.tanh, -5, 5, 6],
    ['asinh', asinh, Math.asinh, -50, 50, 5],
    ['acosh', acosh, Math.acosh, 1, 50, 5],
  ])('%s agrees with the engine to the last places', (_, ours, engines, from, to, most) => {
    const worst = Math.max(...spread(from, to).map((x) => ulps(ours(x), engines(x))));
    expect(worst).toBeLessThanOrEqual(most);
  });

  it('atan2 agrees with the engine in every quarter, and on signs of zeros', () => {
    const sides = [...spread(-7, 7, 61), 0, -0, 1, -1];
    for (const x of sides) for (const y of sides) expect(ulps(atan2(y, x), Math.atan2(y, x))).toBeLessThanOrEqual(3);
    for (const [y, x] of [
      [0, -1],
      [-0, -1],
      [0, 1],
      [-0, 1],
      [1, 0],
      [-1, -0],
      [0, 0],
      [-0, -0],
    ] as const) {
      expect(Object.is(atan2(y, x), Math.atan2(y, x)), `${y}, ${x}`).toBe(true);
    }
  });

  it('keep what geometry counts on: quarter turns, oddness, small arguments', () => {
    expect([sin(0), cos(0), tan(0), atan(0), exp(0), log(1), sinh(0), cosh(0), asinh(0), acosh(1)]).toEqual([
      0, 1, 0, 0, 1, 0, 0, 1, 0, 0,
    ]);
    expect(sin(Math.PI / 2)).toBe(1);
    expect(cos(Math.PI)).toBe(-1);
    // The rounding of pi itself, as the engines give it.
    expect(sin(Math.PI)).toBe(1.2246467991473532e-16);
    for (const x of spread(0, 6, 200)) expect([sin(-x), cos(-x)]).toEqual([-sin(x), cos(x)]);
    for (const x of [1e-300, 1e-20, 1e-9]) expect([sin(x), atan(x), sinh(x), asinh(x)]).toEqual([x, x, x, x]);
    expect(hypot(3, 4)).toBe(5);
    expect(hypot(2, 3, 6)).toBe(7);
    expect([powerOfTwo(10), powerOfTwo(-3), powerOfTwo(0), powerOfTwo(1023)]).toEqual([1024, 0.125, 1, 2 ** 1023]);
  });

  it('tell what they have no value for', () => {
    expect(asin(1.1)).toBeNaN();
    expect(acos(-1.1)).toBeNaN();
    expect(atan2(Number.NaN, 1)).toBeNaN();
    expect(atan(Number.POSITIVE_INFINITY)).toBe(Math.PI / 2);
    for (const wrong of [() => sin(1e9), () => exp(1000), () => log(0), () => acosh(0.9)])
      expect(wrong).toThrow(RangeError);
  });
});
