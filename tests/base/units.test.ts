import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseNumber, parseQuantity } from '../../lib/base/quantities.js';
import {
  formatApart,
  formatLength,
  formatNumber,
  formatQuantity,
  LENGTH_UNITS,
  type LengthUnit,
  type QuantityKind,
  UNITS,
} from '../../lib/base/units.js';

const read = (written: number | string, kind: QuantityKind = 'length', bare: string | null = null): number => {
  const result = parseQuantity(written, kind, bare);
  if ('fault' in result) throw new Error(`${written}: ${result.fault.message}`);
  return result.value;
};
const fault = (written: number | string, kind: QuantityKind = 'length', bare: string | null = null) => {
  const result = parseQuantity(written, kind, bare);
  if ('value' in result) throw new Error(`${written} was read as ${result.value}`);
  return result.fault;
};

describe('conversion factors against published tables', () => {
  // NIST SP 811 (2008), appendix B.8, seven digits as printed there; from memory.
  test.each<[string, QuantityKind, number]>([
    ['1 ft', 'length', 304.8],
    ['1 in', 'length', 25.4],
    ['1 lb', 'mass', 0.4535924],
    ['1 oz', 'mass', 0.02834952],
    ['1 lb/ft3', 'density', 16.01846],
    ['1 psi', 'pressure', 6.894757],
    ['1 gal/min', 'flow', 3.785412],
    ['1 ft3/min', 'flow', 28.31685],
  ])('%s', (written, kind, expected) => {
    expect(read(written, kind)).toBeCloseTo(expected, 5 - Math.floor(Math.log10(expected)));
  });

  test('1 psf is 0.04788026 kPa (IBC 2021, table 1806.2 and its notes give 0.0479)', () => {
    expect(read('1 psf', 'pressure')).toBeCloseTo(0.04788026, 8);
  });

  test('the international yard and pound, exactly', () => {
    expect(read('1 ft')).toBe(304.8);
    expect(read('1 in')).toBe(25.4);
    expect(read('1 lb', 'mass')).toBe(0.45359237);
  });
});

describe('ways to write a quantity', () => {
  test.each<[string, number]>([
    ['2.1 m', 2100],
    ['2.1m', 2100],
    ['.5 m', 500],
    ['150 mm', 150],
    ['15 cm', 150],
    ['6 ft 10 in', 82 * 25.4],
    ['6ft10in', 82 * 25.4],
    ['6ft3in', 75 * 25.4],
    [`6'10"`, 82 * 25.4],
    [`6'-10"`, 82 * 25.4],
    [`6' 10 1/2"`, 82.5 * 25.4],
    [`6'-10 1/2"`, 82.5 * 25.4],
    ['6′ 10½″'.replace('½', ' 1/2'), 82.5 * 25.4],
    [`6'10''`, 82 * 25.4],
    [`6'`, 72 * 25.4],
    ['6.5 ft', 78 * 25.4],
    ['3/8 in', 9.525],
    ['10-1/2 in', 10.5 * 25.4],
    [`1/16"`, 1.5875],
    [`-6'-10"`, -82 * 25.4],
    ['-0.15 m', -150],
    ['+3 mm', 3],
    ['1e3 mm', 1000],
    ['2 Metres', 2000],
  ])('%s', (written, mm) => {
    expect(read(written)).toBeCloseTo(mm, 9);
  });

  test.each<[string, QuantityKind, number]>([
    ['0.8 kPa', 'pressure', 0.8],
    ['1 MPa', 'pressure', 1000],
    ['2 N/mm²', 'pressure', 2000],
    ['5 kN/m^2', 'pressure', 5],
    ['600 kg/m3', 'density', 600],
    ['600 kg / m³', 'density', 600],
    ['20 kg', 'mass', 20],
    ['500 g', 'mass', 0.5],
    ['38 L/min', 'flow', 38],
    ['38 l/min', 'flow', 38],
    ['0.25 %', 'fraction', 0.0025],
    ['1 day', 'duration', 1],
    ['28 days', 'duration', 28],
    ['2 weeks', 'duration', 14],
    ['12 h', 'duration', 0.5],
    ['180 deg', 'angle', 180],
    ['30°', 'angle', 30],
  ])('%s', (written, kind, expected) => {
    expect(read(written, kind)).toBeCloseTo(expected, 12);
  });

  test('bare numbers and numeric texts are in the unit given for them', () => {
    expect(read(2.1, 'length', 'm')).toBe(2100);
    expect(read('2.01', 'length', 'm')).toBe(2010);
    expect(read('3/8', 'length', 'in')).toBe(9.525);
    expect(read(180, 'angle', 'deg')).toBe(180);
  });

  test('no zero is negative', () => {
    for (const zero of ['-0 mm', '-0.0 m']) expect(Object.is(read(zero), 0)).toBe(true);
    expect(Object.is(read(-0, 'length', 'm'), 0)).toBe(true);
    expect(Object.is(parseNumber(-0), 0)).toBe(true);
    expect(Object.is(parseNumber('-0'), 0)).toBe(true);
  });
});

describe('what cannot be a quantity', () => {
  test.each<[number | string, string]>([
    [Number.NaN, 'quantity-unreadable'],
    [Number.POSITIVE_INFINITY, 'quantity-unreadable'],
    ['.nan', 'quantity-unreadable'],
    ['.inf', 'quantity-unreadable'],
    ['Infinity', 'quantity-unreadable'],
    ['', 'quantity-unreadable'],
    ['m', 'quantity-unreadable'],
    ['2,1 m', 'quantity-unreadable'],
    ['1 000 mm', 'quantity-unreadable'],
    ['1/0 in', 'quantity-unreadable'],
    ['--2 m', 'quantity-unreadable'],
    ['2 m 10 cm', 'quantity-unreadable'],
    ['6 ft 10 in 3 in', 'quantity-unreadable'],
    ['0x10 m', 'quantity-unreadable'],
    ['9'.repeat(5000), 'quantity-unreadable'],
    ['1e400 m', 'quantity-size'],
    ['1e308 m', 'quantity-size'],
    ['6.5 ft 2 in', 'quantity-feet-inches'],
    [`6'14"`, 'quantity-feet-inches'],
    ['2.1 metrs', 'quantity-unit'],
    ['20 kg', 'quantity-kind'],
    ['0.8 kPa', 'quantity-kind'],
    ['2.1', 'quantity-unit-missing'],
    [2.1, 'quantity-unit-missing'],
  ])('%s: %s', (written, code) => {
    expect(fault(written).code).toBe(code);
  });

  test('a decimal comma is answered with the point, a comma that may part thousands is not', () => {
    expect(fault('2,5').mend).toContain('(2.5)');
    expect(fault('-2,25 m').mend).toContain('(-2.25)');
    expect(fault('1,000 mm').mend).not.toContain('1.000');
  });

  test('names the units that are accepted, and the one that was meant', () => {
    expect(fault('2.1 metrs').mend).toBe('Did you mean "metre"? Accepted here: m, cm, mm, ft, in.');
    expect(fault('20 kg').message).toBe('is a mass (kg); a length is needed here.');
    expect(fault('2,1 m').mend).toContain('point');
  });

  test('any text is answered at once and without an exception (seed 20260504)', () => {
    const kinds = Object.keys(UNITS) as QuantityKind[];
    const pieces = fc.constantFrom('1', '9', '.', '/', '-', ' ', "'", '"', 'ft', 'in', 'm', 'e', '3', '%', 'é', '\n');
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 80 }), fc.constantFrom(...kinds), (parts, kind) => {
        const result = parseQuantity(parts.join(''), kind, null);
        if ('value' in result) expect(Number.isFinite(result.value)).toBe(true);
        else expect(result.fault.mend).not.toBe('');
      }),
      { seed: 20260504, numRuns: 3000 },
    );
  });
});

describe('lengths for people', () => {
  test.each<[number, LengthUnit, string]>([
    [2100, 'm', '2.10 m'],
    [2105, 'm', '2.105 m'],
    [10, 'm', '10 mm'],
    [2.5, 'm', '2.5 mm'],
    [0.1, 'm', '0.1 mm'],
    [0, 'm', '0.00 m'],
    [-150, 'm', '-0.15 m'],
    [2100, 'mm', '2100 mm'],
    [2.25, 'mm', '2.25 mm'],
    [82.5 * 25.4, 'ft', `6'-10 1/2"`],
    [72 * 25.4, 'ft', `6'-0"`],
    [72.25 * 25.4, 'ft', `6'-0 1/4"`],
    [9.525, 'ft', '3/8"'],
    [82.5 * 25.4, 'in', '82 1/2 in'],
    [9.525, 'in', '3/8 in'],
    [-9.525, 'in', '-3/8 in'],
    [0, 'in', '0 in'],
    [0.1, 'in', '0.0039 in'],
    [0.1, 'ft', '0.0039 in'],
    [304.8 - 0.1, 'ft', `1'-0"`],
  ])('%d mm in %s is %s', (mm, units, text) => {
    expect(formatLength(mm, units)).toBe(text);
  });

  test('what is written is read back to within its last digit (seed 7)', () => {
    const slack: Record<LengthUnit, number> = { m: 0.5, mm: 0.5, ft: 25.4 / 32, in: 25.4 / 32 };
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.constantFrom(...LENGTH_UNITS), (mm, units) => {
        expect(Math.abs(read(formatLength(mm, units)) - mm)).toBeLessThanOrEqual(slack[units] + 1e-6);
      }),
      { seed: 7, numRuns: 2000 },
    );
  });

  test('two different lengths never read the same', () => {
    expect(formatApart(250, 250.4, 'm')).toEqual(['250 mm', '250.4 mm']);
    expect(formatApart(250, 300, 'm')).toEqual(['0.25 m', '0.30 m']);
    expect(formatApart(304.8, 304.9, 'ft')).toEqual(['12 in', '12.004 in']);
  });

  test('other quantities in the reader’s system', () => {
    expect(formatQuantity(read('16 psf', 'pressure'), 'pressure', 'ft')).toBe('16 psf');
    expect(formatQuantity(0.8, 'pressure', 'm')).toBe('0.8 kPa');
    expect(formatQuantity(read('44 lb', 'mass'), 'mass', 'in')).toBe('44 lb');
    expect(formatQuantity(0.0025, 'fraction', 'm')).toBe('0.25 %');
    expect(formatQuantity(1, 'duration', 'm')).toBe('1 day');
    expect(formatQuantity(28, 'duration', 'm')).toBe('28 days');
    expect(formatNumber(0.1 + 0.2)).toBe('0.3');
    expect(formatNumber(123456)).toBe('123456');
    expect(formatNumber(-0)).toBe('0');
  });
});
