import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Tools } from './library.js';

/** What the library takes from its host, by Node's means. */
export const tools: Tools = {
  kernel: () => readFile(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm')),
};
