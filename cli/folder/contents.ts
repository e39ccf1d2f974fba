import { readdirSync, rmdirSync, unlinkSync } from 'node:fs';
import { join } from 'node:path';
import { MANIFEST, readManifest } from './manifest.js';

/** Files that file browsers leave in any folder they show: nobody's work. */
const LITTER: ReadonlySet<string> = new Set(['.DS_Store', 'Thumbs.db', 'desktop.ini']);

interface Contents {
  readonly files: readonly string[];
  /** Deepest first. */
  readonly folders: readonly string[];
  readonly emptyFolders: readonly string[];
}

function walk(dir: string, under = ''): Contents {
  const files: string[] = [];
  const folders: string[] = [];
  const emptyFolders: string[] = [];
  for (const entry of readdirSync(join(dir, under), { withFileTypes: true })) {
    const path = under === '' ? entry.name : `${under}/${entry.name}`;
    if (!entry.isDirectory()) {
      files.push(path);
      continue;
    }
    const inner = walk(dir, path);
    if (inner.files.length + inner.folders.length === 0) emptyFolders.push(`${path}/`);
    files.push(...inner.files);
    folders.push(...inner.folders, path);
    emptyFolders.push(...inner.emptyFolders);
  }
  return { files, folders, emptyFolders };
}

const isLitter = (path: string): boolean => LITTER.has(path.slice(path.lastIndexOf('/') + 1));

/**
 * What a folder holds that its manifest doesn't list, sorted. Links count as files and are never followed.
 * A folder we were killed in while writing its manifest holds that file alone, perhaps torn: `begun` lets it pass.
 */
export function strangersIn(dir: string, begun = false): string[] {
  const { files, folders, emptyFolders } = walk(dir);
  const manifest = readManifest(dir);
  if (manifest === null) {
    const torn = begun && files.length === 1 && files[0] === MANIFEST && folders.length === 0;
    return torn ? [] : [...files.filter((path) => !isLitter(path)), ...emptyFolders].sort();
  }
  const listed = new Set(manifest.files.map((entry) => entry.path)).add(MANIFEST);
  const listedFolders = new Set([...listed].flatMap((path) => ancestors(path)));
  return [
    ...files.filter((path) => !listed.has(path) && !isLitter(path)),
    ...emptyFolders.filter((path) => !listedFolders.has(path)),
  ].sort();
}

/** The folders above a file, each with a closing slash: a killed removal leaves them behind, empty. */
function ancestors(path: string): string[] {
  const parts = path.split('/').slice(0, -1);
  return parts.map((_, i) => `${parts.slice(0, i + 1).join('/')}/`);
}

/**
 * Removes a folder that holds nothing but ours, the manifest last, so that a removal cut short can be told
 * from someone else's folder. Call `strangersIn` first.
 */
export function removeOurs(dir: string): void {
  const { files, folders } = walk(dir);
  for (const path of files) if (path !== MANIFEST) unlinkSync(join(dir, path));
  for (const path of folders) rmdirSync(join(dir, path));
  if (files.includes(MANIFEST)) unlinkSync(join(dir, MANIFEST));
  rmdirSync(dir);
}
