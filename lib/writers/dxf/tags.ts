import TagsManager from 'dxf-writer/src/TagsManager.js';
import * as texts from '../../base/texts/writers.js';
import { ByteText } from '../byte-text.js';

const TEXT = 0;
const REAL = 1;
const WHOLE = 2;
const HANDLE = 3;
type Kind = typeof TEXT | typeof REAL | typeof WHOLE | typeof HANDLE;

/** Reals are written to 1e-9 without an exponent, which not every reader takes. */
const PLACES = 9;

/**
 * Collects tags and lets none through that a reader could take for something else: numbers are finite and in the form
 * of their group, texts hold no control character (a newline would begin a tag of its own), handles are hexadecimal.
 * They are written as they come, for a file holds hundreds of thousands.
 */
export class GuardedTags extends TagsManager {
  private readonly file = new ByteText();

  override push(code: number, value: string | number): void {
    const { file } = this;
    file.ascii(CODE_LINES[code] ?? `${code}\n`);
    switch (kindOf(code)) {
      case REAL:
        if (!Number.isFinite(value)) refuse(code, value, texts.finiteNumber);
        file.fixed(value as number, PLACES);
        break;
      case WHOLE:
        if (!Number.isSafeInteger(value)) refuse(code, value, texts.wholeNumber);
        file.rounded(value as number, 0);
        break;
      case HANDLE:
        if (!/^[0-9A-F]{1,16}$/.test(String(value))) refuse(code, value, texts.handle);
        file.ascii(String(value));
        break;
      case TEXT:
        if (typeof value !== 'string' || /\p{Cc}/u.test(value)) refuse(code, value, texts.textOnOneLine);
        file.text(value as string);
    }
    file.ascii('\n');
  }

  /** A place in the plane: the groups of its coordinates are ten apart. */
  place(code: number, [x, y]: readonly [number, number]): void {
    this.push(code, x);
    this.push(code + 10, y);
    this.push(code + 20, 0);
  }

  /** The file. */
  written(): Uint8Array {
    return this.file.written();
  }
}

function refuse(code: number, value: unknown, wanted: string): never {
  const shown = typeof value === 'string' ? JSON.stringify(value) : String(value);
  throw new RangeError(`Group ${code} of a DXF file can't be ${shown}: it must be ${wanted}.`);
}

const CODE_LINES = Array.from({ length: 400 }, (_, code) => `${code}\n`);
const KINDS = Uint8Array.from(CODE_LINES, (_, code) => kindByRange(code));

const kindOf = (code: number): number => KINDS[code] ?? kindByRange(code);

/** Kinds of values by group code, as far as this writer uses them. */
function kindByRange(code: number): Kind {
  if (code === 5 || code === 105 || (code >= 320 && code <= 369) || (code >= 390 && code <= 399)) return HANDLE;
  if ((code >= 10 && code <= 59) || (code >= 110 && code <= 149) || (code >= 210 && code <= 239)) return REAL;
  if ((code >= 60 && code <= 99) || (code >= 160 && code <= 179) || (code >= 270 && code <= 299)) return WHOLE;
  if ((code >= 370 && code <= 389) || (code >= 420 && code <= 429)) return WHOLE;
  return TEXT;
}
