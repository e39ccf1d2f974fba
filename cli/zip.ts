import type { Delivery } from './folder/carry.js';
import { MANIFEST, manifestFor } from './folder/manifest.js';
import { zipFiles } from './library.js';

/** A package as one ZIP archive, with its manifest. */
export function packageZip(delivery: Delivery): Uint8Array {
  const files = [...delivery.files].sort((a, b) => (a.path < b.path ? -1 : 1));
  const { manifest } = manifestFor(files, delivery);
  const entries = [{ path: MANIFEST, bytes: manifest }, ...files];
  return zipFiles(entries.map(({ path, bytes }) => [path, bytes]));
}
