import { expect, it } from 'vitest';
import { ByteText } from '../../lib/writers/byte-text.js';

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
