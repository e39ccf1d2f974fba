import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Tools } from './library.js';

/** What the library takes from its host, by Node's means. The kernel is loaded only when solids are asked for. */
export const tools: Tools = {
  async kernel() {
    const [module, wasm] = await Promise.all([
      import('manifold-3d'),
      readFile(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm')),
    ]);
    return { factory: module.default, wasm };
  },
};
