import { realpathSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { FileError, fileTrouble } from '../exit.js';
import * as texts from '../texts/folder.js';

/** The output folder and its siblings, all in one parent so that renames stay on one file system. */
export interface Places {
  readonly dir: string;
  readonly parent: string;
  /** Where a new package is written before it takes the folder's name. */
  readonly fresh: string;
  /** Where the package before it stands during the exchange. */
  readonly old: string;
  readonly lock: string;
}

const missing = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'ENOENT';

/** The folder that `asked` names, links followed; a folder yet to be made is fine. */
function settle(asked: string): string {
  try {
    const real = realpathSync(asked);
    if (!statSync(real).isDirectory()) {
      throw new FileError(texts.isFileNotFolder(asked), texts.nameFolder);
    }
    return real;
  } catch (error) {
    if (missing(error)) return resolve(asked);
    throw fileTrouble(texts.outputFolderCannotBeUsed(asked), error);
  }
}

/** @throws FileError when `asked` can't be an output folder. */
export function placesOf(asked: string): Places {
  const dir = settle(asked);
  const name = basename(dir);
  const fromHere = relative(dir, realpathSync(process.cwd()));
  const holdsUs = !fromHere.startsWith('..') && resolve(dir, fromHere) === realpathSync(process.cwd());
  if (name === '' || holdsUs) {
    throw new FileError(texts.isFolderThisCommand(asked), texts.nameFolderOfItsOwn);
  }
  const parent = dirname(dir);
  const beside = (ending: string) => join(parent, `.${name}.${ending}`);
  return { dir, parent, fresh: beside('new'), old: beside('old'), lock: beside('lock') };
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const UNSAFE = /[\u0000-\u001f\u007f<>:"|?*\\]/;
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

/** Whether a path in a package is relative, stays inside, and can be written on every common system. */
export function isSafePath(path: string): boolean {
  return path
    .split('/')
    .every((part) => part !== '' && !UNSAFE.test(part) && !/[. ]$/.test(part) && !RESERVED.test(part));
}

/**
 * Checks the paths of a package before anything is written.
 * @throws Error on an unsafe path, or on two paths that a system without upper and lower case can't tell apart.
 */
export function assertPaths(paths: readonly string[]): void {
  const files = new Set<string>();
  const folders = new Set<string>();
  for (const path of paths) {
    if (!isSafePath(path)) throw new Error(`the package holds an unsafe path: ${JSON.stringify(path)}`);
    const plain = path.toLowerCase();
    if (files.has(plain)) throw new Error(`the package holds ${path} twice`);
    files.add(plain);
    for (let up = dirname(plain); up !== '.'; up = dirname(up)) folders.add(up);
  }
  for (const path of files) {
    if (folders.has(path)) throw new Error(`the package holds ${path} both as a file and as a folder`);
  }
}
