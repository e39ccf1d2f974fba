import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { House, PackageFile } from './library.js';

export interface DrawingThread {
  /** Draws a house on the other thread; its trouble comes back as the promise's. */
  readonly draw: (house: House) => Promise<readonly PackageFile[]>;
  /** Ends a thread that was given nothing to draw. */
  readonly dismiss: () => Promise<unknown>;
}

/** Starts a thread that gets ready while this one still reads; `null` where the machine has no room for two. */
export function startDrawingThread(): DrawingThread | null {
  if (availableParallelism() < 2) return null;
  const worker = new Worker(new URL('./drawing-worker.js', import.meta.url));
  return {
    draw: (house) =>
      new Promise((resolve, reject) => {
        worker.once('message', resolve);
        worker.once('error', reject);
        worker.once('exit', (code) => reject(new Error(`the drawing thread ended with ${code} and gave nothing back`)));
        worker.postMessage(house);
      }),
    dismiss: () => worker.terminate(),
  };
}
