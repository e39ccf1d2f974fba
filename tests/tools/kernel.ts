import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import manifold from 'manifold-3d';
import { type Kernel, loadKernel } from '../../lib/solids/kernel.js';

/** The geometry kernel as Node's tests load it. */
export async function nodeKernel(): Promise<Kernel> {
  const wasm = await readFile(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm'));
  return loadKernel({ factory: manifold, wasm });
}
