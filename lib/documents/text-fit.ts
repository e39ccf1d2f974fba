import { drawableText, textWidth } from './text-size.js';

/** Heights of lettering, paper mm: ISO 3098. */
export const LETTERING = [10, 7, 5, 3.5, 2.5, 1.8] as const;

/** What adding widths up may leave over. */
const ROUNDING = 1e-9;

export interface FittedText {
  readonly lines: readonly string[];
  readonly heightMm: number;
}

/** Lines of at most `width` at a height of capitals, broken at spaces; a word that is wider by itself is broken within. */
export function wrapText(text: string, width: number, height: number): string[] {
  const drawn = drawableText(text);
  // Letters stand side by side, so widths add up, and most texts need no second line.
  if (textWidth(drawn, height) <= width - ROUNDING) return [drawn];
  const lines: string[] = [];
  const space = textWidth(' ', height);
  let taken = 0;
  for (const word of drawn.split(' ').flatMap((w) => brokenWord(w, width, height))) {
    const own = textWidth(word, height);
    if (lines.length > 0 && taken + space + own <= width) {
      lines[lines.length - 1] += ` ${word}`;
      taken += space + own;
    } else {
      lines.push(word);
      taken = own;
    }
  }
  return lines;
}

function brokenWord(word: string, width: number, height: number): string[] {
  if (textWidth(word, height) <= width) return [word];
  const pieces: string[] = [];
  for (const letter of word) {
    const last = pieces[pieces.length - 1];
    if (last !== undefined && textWidth(last + letter, height) <= width) pieces[pieces.length - 1] = last + letter;
    else pieces.push(letter);
  }
  return pieces;
}

/**
 * A text in a field `width` wide: at the largest height of ISO 3098 from `tallest` down at which it takes no more than
 * `lines`; one that doesn't even fit at the least height is cut, and an ellipsis says so.
 */
export function fitText(text: string, width: number, tallest: number, lines: number): FittedText {
  for (const heightMm of LETTERING.filter((h) => h <= tallest)) {
    const wrapped = wrapText(text, width, heightMm);
    if (wrapped.length <= lines) return { lines: wrapped, heightMm };
  }
  const heightMm = LETTERING[LETTERING.length - 1] as number;
  const kept = wrapText(text, width, heightMm).slice(0, lines);
  let last = kept[lines - 1] as string;
  while (textWidth(`${last}…`, heightMm) > width) last = [...last].slice(0, -1).join('');
  return { lines: [...kept.slice(0, -1), `${last}…`], heightMm };
}
