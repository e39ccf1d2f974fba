import type { Delivery } from './folder/carry.js';
import { MANIFEST, manifestFor } from './folder/manifest.js';
import { archiving } from './library.js';

/** A package as one ZIP archive, with its manifest. */
export async function packageZip(delivery: Delivery): Promise<Uint8Array> {
  const files = [...delivery.files].sort((a, b) => (a.path < b.path ? -1 : 1));
  const { manifest } = manifestFor(files, delivery);
  const entries = [{ path: MANIFEST, bytes: manifest }, ...files];
  const { zipFiles } = await archiving();
  return zipFiles(entries.map(({ path, bytes }) => [path, bytes]));
}
