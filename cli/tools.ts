import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Tools } from './library.js';

/** What the library takes from its host, by Node's means. Each is loaded only when it is asked for. */
export const tools = {
  async kernel() {
    const [module, wasm] = await Promise.all([
      import('manifold-3d'),
      readFile(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm')),
    ]);
    return { factory: module.default, wasm };
  },
  async pdf() {
    const [module, font] = await Promise.all([
      import('pdfkit'),
      readFile(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')),
    ]);
    return { document: module.default, font };
  },
  async page() {
    // By the package's own name, so that it is found from the sources as well.
    const script = await readFile(createRequire(import.meta.url).resolve('ringcourse/page-script'), 'utf8');
    return { script, sha256: async (bytes: Uint8Array) => createHash('sha256').update(bytes).digest() };
  },
} satisfies Tools;
