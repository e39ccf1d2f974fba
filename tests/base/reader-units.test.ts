import { describe, expect, it } from 'vitest';
import { figureText, inReaderUnits } from '../../lib/base/reader-units.js';

describe('figures in the units of their reader', () => {
  // NIST SP 811 (2008), appendix B.8, to the digits it gives.
  it.each([
    ['m2', 'ft2', 1 / 9.290304e-2],
    ['m3', 'ft3', 1 / 2.831685e-2],
    ['kPa', 'psf', 1 / 4.788026e-2],
    ['MPa', 'psi', 1 / 6.894757e-3],
    ['kN', 'lbf', 1 / 4.448222e-3],
    ['kN/m', 'lbf/ft', 1 / 1.45939e-2],
    ['kN m', 'lbf ft', 1 / 1.355818e-3],
    ['kg/m3', 'lb/ft3', 1 / 16.01846],
    ['kg', 'lb', 1 / 4.535924e-1],
    ['L', 'gal', 1 / 3.785412],
    ['W/(m2 K)', 'Btu/(h ft2 °F)', 1 / 5.678263],
    ['W/(m K)', 'Btu/(h ft °F)', 1 / 1.730735],
    ['m2 K/W', 'h ft2 °F/Btu', 1 / 1.761102e-1],
    ['W/K', 'Btu/(h °F)', 1 / 0.5275279],
    ['mm', 'in', 1 / 25.4],
  ])('%s are %s', (unit, name, factor) => {
    const shown = inReaderUnits(1, unit, 'ft');
    expect(shown.unit).toBe(name);
    expect(Math.abs(shown.value / factor - 1)).toBeLessThan(1e-6);
    expect(inReaderUnits(1, unit, 'm')).toEqual({ value: 1, unit });
  });

  it('are told in feet and inches, or metric as computed', () => {
    expect(figureText(609.6, 'mm', 'ft')).toBe(`2'-0"`);
    expect(figureText(600, 'mm', 'm')).toBe('600 mm');
    expect(figureText(2, '1', 'ft')).toBe('2');
    expect(figureText(4.98e-7, '1', 'm')).toBe('5.0e-7');
    // 100 / 0.04788026 = 2088.5; whole units are never rounded further.
    expect(figureText(100, 'kPa', 'in')).toBe('2089 psf');
  });
});
