import { WIDTH_RANGES } from './glyph-widths.js';
import { oneLine } from './plain-text.js';

/** Units in an em, and height of a capital, of DejaVu Sans 2.37. */
const EM = 2048;
const CAPITAL = 1493;

/** Stands for a letter that the drawings' font can't show. */
export const MISSING_LETTER = '□';

/** What has no place on paper: soft hyphens, joiners, marks and overrides of direction, which could also mislead. */
const INVISIBLE = /[\u00ad\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff]/g;

const WIDTHS: ReadonlyMap<number, number> = new Map(
  WIDTH_RANGES.flatMap(([first, digits]) =>
    Array.from({ length: digits.length / 3 }, (_, i): [number, string] => [first + i, digits.slice(3 * i, 3 * i + 3)])
      .filter(([, width]) => width !== '...')
      .map(([code, width]): [number, number] => [code, Number.parseInt(width, 36)]),
  ),
);

/** Font height (em) of a text whose capitals are `capitalHeight` high, in the same unit. */
export const emOf = (capitalHeight: number): number => (capitalHeight * EM) / CAPITAL;

/** Widths of the letters that nearly all texts are made of: layout asks for them some million times. */
const COMMON = Uint16Array.from({ length: 0x250 }, (_, code) => WIDTHS.get(code) ?? EM);

/** Width of a text whose capitals are `capitalHeight` high, in the same unit; unknown letters count as wide. */
export function textWidth(text: string, capitalHeight: number): number {
  let units = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code < COMMON.length) units += COMMON[code] as number;
    else {
      const letter = text.codePointAt(i) as number;
      if (letter > code) i++;
      units += WIDTHS.get(letter) ?? EM;
    }
  }
  return (units / CAPITAL) * capitalHeight;
}

/**
 * A text as it is drawn: on one line, accents joined to their letters, and a box for each letter that the drawings'
 * font doesn't show by its advance alone. Scripts that are written from the right or join their letters count among these.
 */
export function drawableText(text: string): string {
  if (/^[ -~]*$/.test(text)) return text;
  let drawn = '';
  for (const letter of oneLine(text.normalize('NFC')).replace(INVISIBLE, ''))
    drawn += WIDTHS.has(letter.codePointAt(0) as number) ? letter : MISSING_LETTER;
  return drawn;
}

/** The letters of a text that can't be drawn, each once. */
export function undrawableLetters(text: string): string[] {
  const letters = [...oneLine(text.normalize('NFC')).replace(INVISIBLE, '')];
  return [...new Set(letters.filter((letter) => !WIDTHS.has(letter.codePointAt(0) as number)))];
}
