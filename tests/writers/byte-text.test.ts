import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ByteText, floatDigits } from '../../lib/writers/byte-text.js';

const written = (write: (out: ByteText) => void): string => {
  const out = new ByteText();
  write(out);
  return new TextDecoder().decode(out.written());
};

/** Numbers of every size that drawings hold, halves of the last place and their neighbours among them. */
const NUMBERS = [
  0,
  -0,
  1,
  -1,
  10,
  1e-7,
  -1e-7,
  4.9e-7,
  5e-7,
  1e-10,
  5e-10,
  -5e-10,
  0.1,
  0.3,
  -0.5,
  999999.9999995,
  1234567.125,
  4503599627370495.5,
  1e15,
  1e20,
  ...Array.from({ length: 4000 }, (_, i) => (((i * 7919) % 4001) - 2000) * 1.0000001 ** i * 0.37),
  ...Array.from({ length: 2000 }, (_, i) => (i - 1000.5) / 2 ** (i % 41)),
  ...Array.from({ length: 2000 }, (_, i) => (i * 977 + 0.5) / 1e9),
];

const lines = (write: (out: ByteText, x: number) => void): string[] =>
  written((out) => {
    for (const x of NUMBERS) {
      write(out, x);
      out.ascii('\n');
    }
  })
    .trimEnd()
    .split('\n');

it('writes rounded numbers as the engine writes them', () => {
  for (const places of [0, 4, 6]) {
    const unit = 10 ** places;
    expect(lines((out, x) => out.rounded(x, places))).toEqual(NUMBERS.map((x) => String(Math.round(x * unit) / unit)));
  }
});

it('writes fixed numbers as `toFixed` does, less noughts at the end and the sign of nought', () => {
  const short = (x: number): string => {
    const [whole, part = ''] = x.toFixed(9).split('.');
    const text = `${whole}.${part.replace(/0+$/, '') || '0'}`;
    return text === '-0.0' ? '0.0' : text;
  };
  expect(lines((out, x) => out.fixed(x, 9))).toEqual(NUMBERS.map(short));
});

it('keeps texts of any length in UTF-8, one after another', () => {
  const long = 'Ø 漢字 🏠 é '.repeat(5000);
  expect(
    written((out) => {
      out.ascii('head ');
      out.text(long);
      out.ascii(' foot '.repeat(4000));
    }),
  ).toBe(`head ${long}${' foot '.repeat(4000)}`);
});

it('tells float32 numbers as the language tells them in nine digits', () => {
  const near = fc.float({ min: -1e5, max: 1e5, noNaN: true, noDefaultInfinity: true }).map(Math.fround);
  fc.assert(
    fc.property(fc.oneof(near, fc.float()), (x) => {
      expect(written((out) => out.float32(x))).toBe(String(Number(x.toPrecision(9))));
    }),
    { numRuns: 2000 },
  );
});

it('tells float32 numbers at the ends of its own reckoning, whole ones and zero alike', () => {
  const edges = [0, -0, 1, -1, 10, 9.9999990463, 1e-4, 1.0000001e-4, 9.999999e-5, 1e8, 99999992, 999999936, 1e9, 0.5];
  for (const x of edges.map(Math.fround)) expect(written((out) => out.float32(x))).toBe(floatDigits(x));
});

it('tells whole numbers as they are', () => {
  for (const n of [0, 7, 10, 99, 100, 2147483647]) expect(written((out) => out.integer(n))).toBe(String(n));
});
