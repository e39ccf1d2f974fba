import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Check } from '../library.js';
import { isSafePath } from './paths.js';

export const MANIFEST = 'manifest.json';

/** One file of a package: its path inside the folder, parts joined by `/`, and its content. */
export interface PackageFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

export interface ManifestEntry {
  readonly path: string;
  /** Bytes. */
  readonly size: number;
  readonly sha256: string;
}

/** What stands in an output folder. It holds no clock, so the same description gives the same bytes. */
export interface Manifest {
  readonly program: 'ringcourse';
  readonly version: string;
  readonly description: { readonly sha256: string };
  readonly files: readonly ManifestEntry[];
  readonly checks: readonly Check[];
}

export const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

const entryOf = ({ path, bytes }: PackageFile): ManifestEntry => ({
  path,
  size: bytes.length,
  sha256: sha256(bytes),
});

const manifestBytes = (manifest: Manifest): Uint8Array =>
  new TextEncoder().encode(`${JSON.stringify(manifest, null, 2)}\n`);

/** The entries of a package's files, and the manifest that lists them. */
export function manifestFor(
  files: readonly PackageFile[],
  made: { readonly version: string; readonly description: string; readonly checks: Manifest['checks'] },
): { readonly entries: readonly ManifestEntry[]; readonly manifest: Uint8Array } {
  const entries = files.map(entryOf);
  const { version, description, checks } = made;
  const manifest = manifestBytes({
    program: 'ringcourse',
    version,
    description: { sha256: description },
    files: entries,
    checks,
  });
  return { entries, manifest };
}

function isEntry(value: unknown): value is ManifestEntry {
  const entry = value as Partial<ManifestEntry> | null;
  return typeof entry?.path === 'string' && isSafePath(entry.path) && typeof entry.sha256 === 'string';
}

/** The manifest in a folder, or `null` when there is none of ours. */
export function readManifest(dir: string): Manifest | null {
  try {
    const found = JSON.parse(readFileSync(join(dir, MANIFEST), 'utf8')) as Partial<Manifest> | null;
    const ours =
      found?.program === 'ringcourse' &&
      typeof found.description?.sha256 === 'string' &&
      Array.isArray(found.files) &&
      found.files.every(isEntry);
    return ours ? (found as Manifest) : null;
  } catch {
    return null;
  }
}
