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
} satisfies Tools;
