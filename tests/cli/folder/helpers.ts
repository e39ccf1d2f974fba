import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import type { Delivery } from '../../../cli/folder/carry.js';

/** A temporary folder for each test of the file that calls it. */
export function temporaryFolder(): { readonly path: string } {
  const state = { path: '' };
  beforeEach(() => {
    state.path = mkdtempSync(join(tmpdir(), 'ringcourse-'));
  });
  afterEach(() => rmSync(state.path, { recursive: true, force: true }));
  return state;
}

/** A temporary folder that all tests of the file share. */
export function lastingFolder(): { readonly path: string } {
  const state = { path: '' };
  beforeAll(() => {
    state.path = mkdtempSync(join(tmpdir(), 'ringcourse-'));
  });
  afterAll(() => rmSync(state.path, { recursive: true, force: true }));
  return state;
}

/** Every entry under a folder with its text; folders end in a slash. */
export function tree(dir: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const name of readdirSync(dir, { recursive: true, encoding: 'utf8' }).sort()) {
    const path = join(dir, name);
    if (statSync(path).isDirectory()) found[`${relative(dir, path)}/`] = '';
    else found[relative(dir, path)] = readFileSync(path, 'utf8');
  }
  return found;
}

export const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** What a run delivers: files by path, all made from description `a` unless told otherwise. */
export function delivery(files: Record<string, string>, more: Partial<Delivery> = {}): Delivery {
  return {
    files: Object.entries(files).map(([path, text]) => ({ path, bytes: bytes(text) })),
    only: null,
    description: 'a'.repeat(64),
    version: '0.1.0',
    checks: [],
    ...more,
  };
}
