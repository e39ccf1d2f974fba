import { existsSync, linkSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { hasNoLinks } from './lock.js';

/**
 * Writes one file as a whole or not at all: whatever stops it, a file of that name stays as it was.
 * @param over whether to write over a file of that name
 * @throws the file system's error; `EEXIST` where a file stands there that may not be written over
 */
export function writeWhole(name: string, content: string | Uint8Array, over: boolean): void {
  // One name for each file, so that the next run writes over what a killed one left.
  const beside = join(dirname(name), `.${basename(name)}.new`);
  try {
    writeFileSync(beside, content, { flush: true });
    if (over) renameSync(beside, name);
    else renameToFree(beside, name);
  } finally {
    if (existsSync(beside)) rmSync(beside);
  }
}

/** A link takes no name that is taken, and a rename does. */
function renameToFree(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    if (!hasNoLinks(error)) throw error;
    writeFileSync(to, '', { flag: 'wx' });
    renameSync(from, to);
  }
}
