import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as texts from '../texts/folder.js';
import { type Manifest, type PackageFile, readManifest, sha256 } from './manifest.js';

/** What a run made, before it is joined with what the folder holds already. */
export interface Delivery {
  readonly files: readonly PackageFile[];
  /** Groups made this time (`drawings`, ...); `null` when all were. */
  readonly only: readonly string[] | null;
  /** SHA-256 of the description's bytes. */
  readonly description: string;
  readonly version: string;
  readonly checks: Manifest['checks'];
}

export interface Carried {
  readonly files: readonly PackageFile[];
  readonly dropped: readonly string[];
  /** Why files were dropped, in words. */
  readonly because: string;
}

/** The group of a file is its top folder; a file outside any folder is its own group (`report.html`: report). */
export const groupOf = (path: string): string => path.replace(/(\/|\.[^/]*$).*/s, '');

const NOTHING: Carried = { files: [], dropped: [], because: '' };

/**
 * The files of the package in `dir` that a run limited to some groups keeps: those of other groups, made by the
 * same version from the same description, and unchanged since.
 */
export function carryOver(dir: string, delivery: Delivery): Carried {
  const before = delivery.only === null ? null : readManifest(dir);
  if (before === null) return NOTHING;
  const made = new Set(delivery.files.map((file) => file.path));
  const others = before.files.filter(({ path }) => !delivery.only?.includes(groupOf(path)) && !made.has(path));
  const dropAll = (because: string): Carried => ({ files: [], dropped: others.map(({ path }) => path), because });
  if (before.description.sha256 !== delivery.description) return dropAll(texts.madeFromAnotherDescription);
  if (before.version !== delivery.version) return dropAll(texts.madeByAnotherVersion);

  const files: PackageFile[] = [];
  const dropped: string[] = [];
  for (const entry of others) {
    const bytes = readIfUnchanged(join(dir, entry.path), entry.sha256);
    if (bytes === null) dropped.push(entry.path);
    else files.push({ path: entry.path, bytes });
  }
  return { files, dropped, because: texts.missingOrChangedSince };
}

function readIfUnchanged(path: string, expected: string): Uint8Array | null {
  try {
    const bytes = readFileSync(path);
    return sha256(bytes) === expected ? bytes : null;
  } catch {
    return null;
  }
}
