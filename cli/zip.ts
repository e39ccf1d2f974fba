import { zipSync } from 'fflate';
import type { Delivery } from './folder/carry.js';
import { MANIFEST, manifestFor } from './folder/manifest.js';

/** Local time without a zone, as archives keep it: the earliest they can, so that the same package has the same bytes. */
const TIME = '1980-01-01T00:00:00';

/** A package as one ZIP archive, with its manifest. */
export function packageZip(delivery: Delivery): Uint8Array {
  const files = [...delivery.files].sort((a, b) => (a.path < b.path ? -1 : 1));
  const { manifest } = manifestFor(files, delivery);
  const entries = [{ path: MANIFEST, bytes: manifest }, ...files];
  return zipSync(Object.fromEntries(entries.map(({ path, bytes }) => [path, bytes])), { mtime: TIME });
}
