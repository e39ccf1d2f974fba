import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { FileError, fileTrouble } from '../exit.js';
import * as texts from '../texts/folder.js';
import { type Carried, carryOver, type Delivery } from './carry.js';
import { removeOurs, strangersIn } from './contents.js';
import { guarded, makeFolders, unmakeFolders } from './guard.js';
import { takeLock } from './lock.js';
import { MANIFEST, type ManifestEntry, manifestFor, type PackageFile, readManifest, sha256 } from './manifest.js';
import { assertPaths, type Places, placesOf } from './paths.js';
import { recover, refuseStrangers, setAside } from './recover.js';

export interface Written {
  readonly dir: string;
  /** All files of the folder now, the manifest excepted. */
  readonly files: readonly ManifestEntry[];
  readonly carried: Carried;
  /** What was put in order beforehand, and what couldn't be tidied afterwards. */
  readonly notes: readonly string[];
}

/**
 * Looks at the output folder before the long work: restores it if a run was cut short, and refuses one that
 * can't be used or written beside. Leaves nothing else behind. Returns what was done, in words.
 * @param force whether a folder with files of others will be moved aside
 * @throws FileError
 */
export async function inspectFolder(asked: string, force = false): Promise<string[]> {
  const places = placesOf(asked);
  const passing: string[] = [];
  const notes = await underLock(
    places,
    async () => {
      const notes = recover(places);
      if (!force) refuseStrangers(places.dir);
      return notes;
    },
    (made) => passing.push(...made),
  );
  unmakeFolders(passing);
  return notes;
}

/**
 * Writes a package, all or nothing: into a sibling folder first, synced, then exchanged with the folder by
 * renames. Where it fails or is told to stop, the folder stands as before and nothing else is left.
 * @param force whether to move a folder with files of others aside instead of refusing it
 * @throws FileError; Error when the package's paths are unsafe
 */
export async function writeFolder(asked: string, delivery: Delivery, force = false): Promise<Written> {
  assertPaths([...delivery.files.map((file) => file.path), MANIFEST]);
  const places = placesOf(asked);
  return underLock(places, async (onUndo) => {
    const notes = recover(places);
    const aside = force ? setAside(places.dir) : null;
    if (aside !== null) {
      notes.push(aside.note);
      onUndo(aside.undo);
    }
    refuseStrangers(places.dir);
    const { files, entries, manifest, carried } = planned(places.dir, delivery);
    try {
      mkdirSync(places.fresh);
      onUndo(() => removeOurs(places.fresh));
      await fill(places.fresh, [{ path: MANIFEST, bytes: manifest }, ...files]);
      await readBack(places.fresh, [...entries, { path: MANIFEST, sha256: sha256(manifest) }]);
    } catch (error) {
      throw fileTrouble(texts.packageCannotBeWritten(places.fresh), error);
    }
    exchange(places);
    return { dir: places.dir, files: entries, carried, notes: [...notes, ...tidy(places)] };
  });
}

interface Planned {
  readonly files: readonly PackageFile[];
  readonly entries: readonly ManifestEntry[];
  readonly manifest: Uint8Array;
  readonly carried: Carried;
}

/** What a folder will hold: what was made now, and what is carried over from the package in it. */
function planned(dir: string, delivery: Delivery): Planned {
  const carried = carryOver(dir, delivery);
  const files = [...delivery.files, ...carried.files].sort((a, b) => (a.path < b.path ? -1 : 1));
  assertPaths(files.map((file) => file.path));
  const { entries, manifest } = manifestFor(files, delivery);
  return { files, entries, manifest, carried };
}

/** What writing would do to a folder, and nothing done. */
export interface DryRun extends Omit<Written, 'notes'> {
  /** Paths by what becomes of them. */
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly same: readonly string[];
  readonly removed: readonly string[];
}

/** @throws FileError where the folder can't be one for a package */
export function dryRun(asked: string, delivery: Delivery): DryRun {
  const { dir } = placesOf(asked);
  const { entries, carried } = planned(dir, delivery);
  const before = new Map((readManifest(dir)?.files ?? []).map(({ path, sha256 }) => [path, sha256]));
  const now = new Set(entries.map(({ path }) => path));
  const paths = (is: (entry: ManifestEntry) => boolean) => entries.filter(is).map(({ path }) => path);
  return {
    dir,
    files: entries,
    carried,
    added: paths(({ path }) => !before.has(path)),
    changed: paths(({ path, sha256 }) => before.has(path) && before.get(path) !== sha256),
    same: paths(({ path, sha256 }) => before.get(path) === sha256),
    removed: [...before.keys()].filter((path) => !now.has(path)),
  };
}

/** @param onMade told of folders above the package's own that were missing and now stand */
async function underLock<T>(
  places: Places,
  body: (onUndo: (step: () => void) => void) => Promise<T>,
  onMade: (made: readonly string[]) => void = () => {},
): Promise<T> {
  return guarded(async (onUndo) => {
    const made = makeFolders(places.parent);
    onMade(made);
    onUndo(() => unmakeFolders(made));
    const release = takeLock(places.lock);
    onUndo(release);
    try {
      const result = await body(onUndo);
      release();
      return result;
    } catch (error) {
      throw fileTrouble(texts.folderCannotBeUsed(places.dir), error);
    }
  });
}

/** Each file is written in one go; between two the process listens for signals. */
async function fill(dir: string, files: readonly PackageFile[]): Promise<void> {
  const folders = new Set([dir]);
  for (const { path, bytes } of files) {
    const file = join(dir, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, bytes, { flag: 'wx', flush: true });
    for (let up = dirname(file); up !== dir; up = dirname(up)) folders.add(up);
    await setImmediate();
  }
  for (const folder of folders) syncFolder(folder);
}

/**
 * Reads every file again before the package takes its place: what a failing disk garbled must not replace a good one.
 * @throws FileError
 */
async function readBack(dir: string, files: readonly Pick<ManifestEntry, 'path' | 'sha256'>[]): Promise<void> {
  for (const { path, sha256: expected } of files) {
    const file = join(dir, path);
    if (sha256(readFileSync(file)) !== expected) {
      throw new FileError(texts.readsBackOtherwise(file), texts.diskMayBeFailing);
    }
    await setImmediate();
  }
}

/** Both renames in one go: no signal comes between them. */
function exchange(places: Places): void {
  const hadOne = existsSync(places.dir);
  try {
    if (hadOne) renameSync(places.dir, places.old);
    renameSync(places.fresh, places.dir);
  } catch (error) {
    if (hadOne && !existsSync(places.dir)) renameSync(places.old, places.dir);
    throw fileTrouble(texts.packageCannotTakePlace(places.dir), error);
  }
  syncFolder(places.parent);
}

/** The new package stands by now, so trouble with the old one is told and no failure; the next run tries again. */
function tidy(places: Places): string[] {
  if (!existsSync(places.old)) return [];
  try {
    const strangers = strangersIn(places.old);
    if (strangers.length > 0) return [texts.oldWasLeft(places.old, strangers.join(', '))];
    removeOurs(places.old);
    return [];
  } catch (error) {
    const trouble = fileTrouble(texts.cannotBeRemoved(places.old), error);
    return [trouble instanceof Error ? trouble.message : String(trouble)];
  }
}

/** Makes renames and new names last through a power cut; systems that can't sync a folder do it by themselves. */
function syncFolder(dir: string): void {
  let handle: number | undefined;
  try {
    handle = openSync(dir, 'r');
    fsyncSync(handle);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? '';
    if (!['EPERM', 'EACCES', 'EISDIR', 'EINVAL', 'ENOTSUP'].includes(code)) throw error;
  } finally {
    if (handle !== undefined) closeSync(handle);
  }
}
