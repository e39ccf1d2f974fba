import TagsManager from 'dxf-writer/src/TagsManager.js';
import * as texts from '../../base/texts/writers.js';

/** One tag: group code and value. */
export type Tag = readonly [code: number, value: string | number];

type Kind = 'text' | 'real' | 'whole' | 'handle';

/**
 * Collects tags and lets none through that a reader could take for something else: numbers are finite and in the form
 * of their group, texts hold no control character (a newline would begin a tag of its own), handles are hexadecimal.
 */
export class GuardedTags extends TagsManager {
  override push(code: number, value: string | number): void {
    super.push(code, formatted(code, value));
  }

  /** With the line end after the last tag that the library leaves out. */
  override toDxfString(): string {
    return `${super.toDxfString()}\n`;
  }
}

function formatted(code: number, value: string | number): string {
  const kind = kindOf(code);
  if (kind === 'real')
    return Number.isFinite(value) ? realText(value as number) : refuse(code, value, texts.finiteNumber);
  if (kind === 'whole') return Number.isSafeInteger(value) ? String(value) : refuse(code, value, texts.wholeNumber);
  if (kind === 'handle')
    return /^[0-9A-F]{1,16}$/.test(String(value)) ? String(value) : refuse(code, value, texts.handle);
  return typeof value === 'string' && !/\p{Cc}/u.test(value) ? value : refuse(code, value, texts.textOnOneLine);
}

function refuse(code: number, value: unknown, wanted: string): never {
  const shown = typeof value === 'string' ? JSON.stringify(value) : String(value);
  throw new RangeError(`Group ${code} of a DXF file can't be ${shown}: it must be ${wanted}.`);
}

const NOUGHT = '0'.charCodeAt(0);
const POINT = '.'.charCodeAt(0);

/** To 1e-9 without an exponent, which not every reader takes. */
function realText(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e15) return `${value === 0 ? 0 : value}.0`;
  const text = value.toFixed(9);
  let end = text.length;
  // One nought stays after the point.
  while (text.charCodeAt(end - 1) === NOUGHT && text.charCodeAt(end - 2) !== POINT) end--;
  const short = text.slice(0, end);
  return short === '-0.0' ? '0.0' : short;
}

/** Kinds of values by group code, as far as this writer uses them. */
function kindOf(code: number): Kind {
  if (code === 5 || code === 105 || (code >= 320 && code <= 369) || (code >= 390 && code <= 399)) return 'handle';
  if ((code >= 10 && code <= 59) || (code >= 110 && code <= 149) || (code >= 210 && code <= 239)) return 'real';
  if ((code >= 60 && code <= 99) || (code >= 160 && code <= 179) || (code >= 270 && code <= 299)) return 'whole';
  if ((code >= 370 && code <= 389) || (code >= 420 && code <= 429)) return 'whole';
  return 'text';
}

export const point = (code: number, [x, y]: readonly [number, number]): Tag[] => [
  [code, x],
  [code + 10, y],
  [code + 20, 0],
];
