import { isUtf8 } from 'node:buffer';
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { FileError, fileTrouble, UsageError } from './exit.js';
import { sha256 } from './folder/manifest.js';
import { DescriptionError } from './library.js';

/** More than any description needs by three orders of magnitude. */
const MOST_BYTES = 20 * 1024 * 1024;

export interface Input {
  readonly name: string;
  readonly text: string;
  /** Of the file's bytes. */
  readonly sha256: string;
}

/**
 * Reads a description file as text.
 * @throws UsageError for an empty name; FileError when it can't be read; DescriptionError when it isn't UTF-8 text
 */
export function readInput(name: string): Input {
  if (name === '') throw new UsageError('The name of the description file is missing.', 'Name a file.');
  const bytes = readCapped(name);
  const hash = sha256(bytes);
  if (!isUtf8(bytes) || bytes.includes(0)) throw notText(name, bytes);
  return { name, text: new TextDecoder().decode(bytes), sha256: hash };
}

function readCapped(name: string): Buffer {
  const what = `The description ${name} can't be read`;
  let handle: number | undefined;
  try {
    handle = openSync(name, 'r');
    if (fstatSync(handle).isDirectory()) throw new FileError(`${what}: it is a folder.`, 'Name a file in it.');
    const parts: Buffer[] = [];
    for (let size = 0; ; ) {
      const part = Buffer.allocUnsafe(1 << 20);
      const count = readSync(handle, part);
      if (count === 0) return Buffer.concat(parts);
      size += count;
      if (size > MOST_BYTES) {
        throw new FileError(
          `${what}: it is larger than ${MOST_BYTES >> 20} MB.`,
          'A description takes a few kilobytes; check that this is the right file.',
        );
      }
      parts.push(part.subarray(0, count));
    }
  } catch (error) {
    throw fileTrouble(what, error);
  } finally {
    if (handle !== undefined) closeSync(handle);
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
      message: wide
        ? 'The file is UTF-16 text, not UTF-8.'
        : 'The file is not UTF-8 text: it is binary, or text in another encoding.',
      mend: 'Save it as plain text in UTF-8, or check that this is the right file.',
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
