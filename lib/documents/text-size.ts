import { WIDTH_RANGES } from './glyph-widths.js';
import { oneLine } from './plain-text.js';

/** Units in an em, and height of a capital, of DejaVu Sans 2.37. */
const EM = 2048;
const CAPITAL = 1493;

/** Stands for a letter that the drawings' font can't show. */
export const MISSING_LETTER = '□';

/** What has no place on paper: soft hyphens, joiners, marks and overrides of direction, which could also mislead. */
const INVISIBLE = /[\u00ad\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff]/g;

/** Widths by code point, -1 where the font has no glyph: a set of drawings asks for millions. */
const WIDTHS = widthsByCode();

function widthsByCode(): Int16Array {
  const widths = new Int16Array(Math.max(...WIDTH_RANGES.map(([first, digits]) => first + digits.length / 3))).fill(-1);
  for (const [first, digits] of WIDTH_RANGES)
    for (let i = 0; i < digits.length; i += 3) {
      const own = digits.slice(i, i + 3);
      if (own !== '...') widths[first + i / 3] = Number.parseInt(own, 36);
    }
  return widths;
}

const drawable = (letter: string): boolean => (WIDTHS[letter.codePointAt(0) as number] ?? -1) >= 0;

/** Font height (em) of a text whose capitals are `capitalHeight` high, in the same unit. */
export const emOf = (capitalHeight: number): number => (capitalHeight * EM) / CAPITAL;

/** Width of a text whose capitals are `capitalHeight` high, in the same unit; unknown letters count as wide. */
export function textWidth(text: string, capitalHeight: number): number {
  let units = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.codePointAt(i) as number;
    if (code > 0xffff) i++;
    const width = WIDTHS[code] ?? -1;
    units += width < 0 ? EM : width;
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
    drawn += drawable(letter) ? letter : MISSING_LETTER;
  return drawn;
}

/** The letters of a text that can't be drawn, each once. */
export function undrawableLetters(text: string): string[] {
  const letters = [...oneLine(text.normalize('NFC')).replace(INVISIBLE, '')];
  return [...new Set(letters.filter((letter) => !drawable(letter)))];
}
