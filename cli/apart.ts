import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { House, OutputGroup, PackageFile } from './library.js';

/** What the other thread is given, and what it gives back. */
export interface Task {
  readonly house: House;
  readonly group: OutputGroup;
}

/** Makes a group's files on a thread of its own; its trouble comes back as the promise's. */
function apart(house: House, group: OutputGroup): Promise<readonly PackageFile[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./apart-thread.js', import.meta.url), { workerData: { house, group } });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) =>
      reject(new Error(`the thread for ${group} ended with ${code} and gave nothing back`)),
    );
  });
}

/** Threads side by side, where the machine has room for two. */
export const threads = availableParallelism() > 1 ? { apart } : {};
