import { expect, it } from 'vitest';
import { oneLine } from '../../lib/documents/plain-text.js';
import { emOf, textWidth } from '../../lib/documents/text-size.js';

it('gives widths of DejaVu Sans: capitals are 0.729 em high, figures 0.636 em wide', () => {
  expect(2.5 / emOf(2.5)).toBeCloseTo(0.729, 3);
  expect(textWidth('0', 0.729)).toBeCloseTo(0.636, 3);
  expect(textWidth('6000', 2.5)).toBeCloseTo(4 * textWidth('0', 2.5), 12);
  expect(textWidth('iii', 1)).toBeLessThan(textWidth('mmm', 1));
});

it('never takes an unknown letter for nothing', () => {
  for (const letter of ['Ø', 'é', '漢', '🏠']) expect(textWidth(letter, 1)).toBeGreaterThan(0.5);
});

it('brings a text onto one line', () => {
  expect(oneLine('a\r\nb\tc\u0000d\u0085e\u2028f\ud800g')).toBe('a  b c d e f g');
  expect(oneLine('Ø 6 m – 5\'-0" 🏠')).toBe('Ø 6 m – 5\'-0" 🏠');
});
