import { describe, expect, it } from 'vitest';
import { feetAndInches, formatAngle, formatLength, formatLevel, formatNominal } from '../../lib/base/measures.js';

describe('formatLength', () => {
  it('writes whole millimetres without a unit (ISO 129-1)', () => {
    expect([0, 2100, 1523.5, 0.4, -12.6, -0.2].map((mm) => formatLength(mm, 'metric'))).toEqual([
      '0',
      '2100',
      '1524',
      '0',
      '-13',
      '0',
    ]);
  });

  it('writes feet and inches to a sixteenth, the fraction in lowest terms', () => {
    // 1 in = 25.4 mm exactly (international yard, 1959).
    const inch = 25.4;
    const cases: [number, string][] = [
      [0, '0"'],
      [84, `7'-0"`],
      [82, `6'-10"`],
      [12, `1'-0"`],
      [82.5, `6'-10 1/2"`],
      [9.75, '9 3/4"'],
      [0.5, '1/2"'],
      [12.25, `1'-0 1/4"`],
      [11.97, `1'-0"`],
      [3 / 16, '3/16"'],
      [-30.125, `-2'-6 1/8"`],
    ];
    for (const [inches, text] of cases) expect(formatLength(inches * inch, 'feet-inches')).toBe(text);
  });

  it('is never more than half of its last place off', () => {
    for (let mm = 0; mm < 2000; mm += 7.3) {
      const [, feet = '0', inches = '0', top = '0', bottom = '1'] =
        /^(?:(\d+)'-)?(?:(\d+)(?!\/))? ?(?:(\d+)\/(\d+))?"$/.exec(formatLength(mm, 'feet-inches')) ?? [];
      const read = (Number(feet) * 12 + Number(inches) + Number(top) / Number(bottom)) * 25.4;
      expect(Math.abs(read - mm)).toBeLessThanOrEqual(25.4 / 32 + 1e-9);
    }
  });
});

describe('formatLevel', () => {
  it('writes the sign always, metres to the millimetre', () => {
    expect([2700, -150, 0, 0.3, -0.4, 12345.6].map((mm) => formatLevel(mm, 'metric'))).toEqual([
      '+2.700',
      '-0.150',
      '±0.000',
      '±0.000',
      '±0.000',
      '+12.346',
    ]);
  });

  it('writes feet even when there are none', () => {
    expect([106.25, -6, 0].map((inches) => formatLevel(inches * 25.4, 'feet-inches'))).toEqual([
      `+8'-10 1/4"`,
      `-0'-6"`,
      `±0'-0"`,
    ]);
  });
});

describe('formatAngle', () => {
  it('writes degrees to a tenth', () => {
    expect([90, 22.5, 34.377, 0.04, -0.01].map(formatAngle)).toEqual(['90°', '22.5°', '34.4°', '0°', '0°']);
  });
});

it('refuses what is no number', () => {
  for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => formatLength(bad, 'metric')).toThrow(RangeError);
    expect(() => formatLevel(bad, 'feet-inches')).toThrow(RangeError);
    expect(() => formatAngle(bad)).toThrow(RangeError);
  }
});

it('sizes of common practice are nominal: whole inches, where a measured length has sixteenths', () => {
  const sizes = [60, 100, 150, 2000];
  expect(sizes.map((mm) => formatNominal(mm, 'feet-inches'))).toEqual(['2"', '4"', '6"', `6'-7"`]);
  expect(formatLength(100, 'feet-inches')).toBe('3 15/16"');
  expect(sizes.map((mm) => formatNominal(mm, 'metric'))).toEqual(['60', '100', '150', '2000']);
});

it('inches are told to a sixteenth for a tape and to a thirty-second for a workshop', () => {
  expect(feetAndInches(14.625)).toBe('1\'-2 5/8"');
  expect(feetAndInches(7 + 5 / 32, 32)).toBe('7 5/32"');
  expect(feetAndInches(7 + 5 / 32)).toBe('7 3/16"');
  expect(feetAndInches(-0.5, 32)).toBe('-1/2"');
  expect(feetAndInches(11.99, 32)).toBe('1\'-0"');
});
