import { isUtf8 } from 'node:buffer';
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { FileError, fileTrouble, UsageError } from './exit.js';
import { sha256 } from './folder/manifest.js';
import { DescriptionError } from './library.js';
import { STDIO } from './stdio.js';
import * as texts from './texts/trouble.js';

/** More than any description needs by three orders of magnitude. */
const MOST_BYTES = 20 * 1024 * 1024;

export interface Input {
  /** As it stands in problems. */
  readonly name: string;
  readonly text: string;
  /** Of the file's bytes, and of what else was said of the house. */
  readonly sha256: string;
}

/**
 * Reads a description file as text.
 * @param asked its name, or `-` for standard input
 * @param also values set from outside the file and the like: what makes another package of the same bytes
 * @throws UsageError for an empty name; FileError when it can't be read; DescriptionError when it isn't UTF-8 text
 */
export function readInput(asked: string, also: readonly string[] = []): Input {
  if (asked === '') throw new UsageError(texts.nameOfDescriptionFile, texts.nameFile);
  const name = asked === STDIO ? texts.standardInput : asked;
  const bytes = readCapped(asked === STDIO ? 0 : asked, name);
  const hash = sha256(also.length === 0 ? bytes : Buffer.concat([bytes, Buffer.from(JSON.stringify(also))]));
  if (!isUtf8(bytes) || bytes.includes(0)) throw notText(name, bytes);
  return { name, text: new TextDecoder().decode(bytes), sha256: hash };
}

/** @param from a file's name, or the number of an open one */
function readCapped(from: string | number, name: string): Buffer {
  const what = texts.descriptionCantBeRead(name);
  let handle: number | undefined;
  try {
    handle = typeof from === 'number' ? from : openSync(from, 'r');
    if (fstatSync(handle).isDirectory()) throw new FileError(texts.inputIsFolder(what), texts.nameFileInIt);
    const parts: Buffer[] = [];
    for (let size = 0; ; ) {
      const part = Buffer.allocUnsafe(1 << 20);
      const count = readSome(handle, part);
      if (count === 0) return Buffer.concat(parts);
      size += count;
      if (size > MOST_BYTES) {
        throw new FileError(texts.itIsLarger(what, MOST_BYTES >> 20), texts.descriptionTakesFewKilobytes);
      }
      parts.push(part.subarray(0, count));
    }
  } catch (error) {
    throw fileTrouble(what, error);
  } finally {
    if (handle !== undefined && typeof from === 'string') closeSync(handle);
  }
}

/** A pipe that is still empty says so instead of waiting, and one whose writer is gone may say that it is at its end. */
function readSome(handle: number, into: Buffer): number {
  for (;;) {
    try {
      return readSync(handle, into);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
    }
  }
}

function notText(file: string, bytes: Buffer): DescriptionError {
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  const { line, column } = wide ? { line: 1, column: 1 } : firstBadByte(bytes);
  return new DescriptionError([
    {
      code: 'file-not-text',
      path: '',
      where: { file, line, column },
      message: wide ? texts.fileIsUtf16 : texts.fileIsNotUtf,
      mend: texts.saveItAsPlain,
    },
  ]);
}

function firstBadByte(bytes: Buffer): { line: number; column: number } {
  let line = 1;
  for (let start = 0; ; line++) {
    const end = bytes.indexOf(0x0a, start);
    const part = bytes.subarray(start, end < 0 ? undefined : end);
    if (end < 0 || !isUtf8(part) || part.includes(0)) {
      const signs = [...part.toString('utf8')];
      const at = signs.findIndex((sign) => sign === '\ufffd' || sign === '\0');
      return { line, column: Math.max(at, 0) + 1 };
    }
    start = end + 1;
  }
}
