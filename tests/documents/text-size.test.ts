import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { oneLine } from '../../lib/documents/plain-text.js';
import { fitText, LETTERING, wrapText } from '../../lib/documents/text-fit.js';
import { drawableText, emOf, MISSING_LETTER, textWidth, undrawableLetters } from '../../lib/documents/text-size.js';

/** The font as the maker of PDF reads it. */
interface Font {
  readonly unitsPerEm: number;
  hasGlyphForCodePoint(code: number): boolean;
  glyphForCodePoint(code: number): { readonly id: number; readonly advanceWidth: number };
}
const require = createRequire(import.meta.url);
const { create } = createRequire(require.resolve('pdfkit'))('fontkit') as { create(bytes: Uint8Array): Font };
const font = create(readFileSync(require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')));

it('gives widths of DejaVu Sans: capitals are 0.729 em high, figures 0.636 em wide', () => {
  expect(2.5 / emOf(2.5)).toBeCloseTo(0.729, 3);
  expect(textWidth('0', 0.729)).toBeCloseTo(0.636, 3);
  expect(textWidth('6000', 2.5)).toBeCloseTo(4 * textWidth('0', 2.5), 12);
  expect(textWidth('iii', 1)).toBeLessThan(textWidth('mmm', 1));
});

it('knows the width of every letter that it draws, by the font’s own metrics, and draws none that the font lacks', () => {
  const glyphs = new Set<number>();
  let known = 0;
  for (let code = 0x20; code < 0x3000; code++) {
    const letter = String.fromCodePoint(code);
    if (undrawableLetters(letter).length > 0 || drawableText(letter) !== letter) continue;
    known++;
    expect(font.hasGlyphForCodePoint(code), code.toString(16)).toBe(true);
    const { id, advanceWidth } = font.glyphForCodePoint(code);
    glyphs.add(id);
    const ems = advanceWidth / font.unitsPerEm;
    expect(textWidth(letter, 1), code.toString(16)).toBeCloseTo(ems * emOf(1), 9);
  }
  expect(known).toBeGreaterThan(1500);
  // No two share one: so a font that was read for one file tells the letters of the next as if it were new.
  expect(glyphs.size).toBe(known);
});

it('never takes an unknown letter for nothing', () => {
  for (const letter of ['Ø', 'é', '漢', '🏠']) expect(textWidth(letter, 1)).toBeGreaterThan(0.5);
});

it('brings a text onto one line', () => {
  expect(oneLine('a\r\nb\tc\u0000d\u0085e\u2028f\ud800g')).toBe('a  b c d e f g');
  expect(oneLine('Ø 6 m – 5\'-0" 🏠')).toBe('Ø 6 m – 5\'-0" 🏠');
});

it('draws a box for what it can’t, joins accents, and lets nothing unseen through', () => {
  expect(drawableText('Łódź № 7 – 6\u2032')).toBe('Łódź □ 7 – 6\u2032');
  expect(drawableText('a\u0301o\u0308')).toBe('áö');
  expect(drawableText('漢字')).toBe(MISSING_LETTER.repeat(2));
  expect(drawableText('שלום')).toBe(MISSING_LETTER.repeat(4));
  expect(drawableText('ab\u202ec\u200bd\u00ade')).toBe('abcde');
  expect(undrawableLetters('漢漢字 ok')).toEqual(['漢', '字']);
});

it('breaks texts at spaces, and words that are wider than their place within, and loses nothing', () => {
  const note = 'Preliminary. Not a design. To be confirmed by a licensed engineer.';
  const lines = wrapText(note, 40, 2.5);
  expect(lines.length).toBeGreaterThan(2);
  expect(lines.join(' ')).toBe(note);
  const word = 'unbreakable-word-far-wider-than-its-place';
  expect(wrapText(word, 10, 2.5).join('')).toBe(word);
  for (const line of wrapText(`${note} ${word}`, 10, 2.5)) expect(textWidth(line, 2.5)).toBeLessThanOrEqual(10);
});

it('fits a text into a field at the largest height of the series, and says where it had to cut', () => {
  expect(fitText('short', 60, 5, 1)).toEqual({ lines: ['short'], heightMm: 5 });
  for (const text of ['a longer title of a drawing', 'x'.repeat(200), 'many words '.repeat(18)]) {
    const { lines, heightMm } = fitText(text, 60, 5, 2);
    expect(LETTERING).toContain(heightMm);
    expect(lines.length).toBeLessThanOrEqual(2);
    for (const line of lines) expect(textWidth(line, heightMm)).toBeLessThanOrEqual(60);
    const whole = lines.join(' ').replace(/ /g, '') === text.replace(/ /g, '');
    expect(whole).toBe(!lines[lines.length - 1]?.endsWith('…'));
  }
});
