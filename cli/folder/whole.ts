import { existsSync, linkSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** Errors of file systems that know no hard links. */
const NO_LINKS = ['EPERM', 'ENOTSUP', 'ENOSYS'];

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

/**
 * Gives a file a name that must be free, in one step; `from` may be left. A link takes no name that is taken, and a
 * rename does. Where there are no links the name is there an instant before its content.
 * @throws the file system's error; `EEXIST` where the name is taken
 */
export function renameToFree(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    if (!NO_LINKS.includes((error as NodeJS.ErrnoException).code ?? '')) throw error;
    writeFileSync(to, '', { flag: 'wx' });
    try {
      renameSync(from, to);
    } catch (failed) {
      rmSync(to);
      throw failed;
    }
  }
}
