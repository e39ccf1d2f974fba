import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digits, NumberText } from '../../lib/writers/number-text.js';

const told = (add: (text: NumberText) => void): string => {
  const text = new NumberText(1);
  add(text);
  return text.toString();
};

describe('NumberText', () => {
  it('tells float32 numbers as the language tells them in nine digits', () => {
    const near = fc.float({ min: -1e5, max: 1e5, noNaN: true, noDefaultInfinity: true }).map(Math.fround);
    const any = fc.float();
    fc.assert(
      fc.property(fc.oneof(near, any), (x) => {
        expect(told((text) => text.float32(x))).toBe(String(Number(x.toPrecision(9))));
      }),
      { numRuns: 2000 },
    );
  });

  it('tells those at the ends of its own reckoning, whole ones and zero alike', () => {
    const edges = [0, -0, 1, -1, 10, 9.9999990463, 1e-4, 1.0000001e-4, 9.999999e-5, 1e8, 99999992, 999999936, 1e9, 0.5];
    for (const x of edges.map(Math.fround)) expect(told((text) => text.float32(x))).toBe(digits(x));
  });

  it('tells whole numbers and words one after the other, however long the text grows', () => {
    const numbers = [0, 7, 10, 99, 100, 2147483647];
    const text = told((one) => {
      for (const n of numbers) {
        one.integer(n);
        one.text(' and ');
      }
    });
    expect(text).toBe(numbers.map((n) => `${n} and `).join(''));
  });
});
