import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Variant, VariantResult } from './library.js';

/** The description that is varied. */
export interface VaryingText {
  readonly text: string;
  readonly name: string;
}

/**
 * Computes variants side by side, as many threads as the machine has room for.
 * @param told called after each with how many are done
 * @returns results in the order of the variants
 */
export async function varyBeside(
  description: VaryingText,
  variants: readonly Variant[],
  told: (done: number) => void,
): Promise<VariantResult[]> {
  const results: VariantResult[] = [];
  let next = 0;
  let done = 0;
  const work = async (): Promise<void> => {
    const worker = new Worker(new URL('./vary-worker.js', import.meta.url), { workerData: description });
    try {
      for (let index = next++; index < variants.length; index = next++) {
        results[index] = await computed(worker, variants[index] as Variant);
        told(++done);
      }
    } finally {
      await worker.terminate();
    }
  };
  const threads = Math.min(availableParallelism(), variants.length);
  await Promise.all(Array.from({ length: threads }, work));
  return results;
}

const computed = (worker: Worker, variant: Variant): Promise<VariantResult> =>
  new Promise((resolve, reject) => {
    const clear = () => {
      worker.off('message', onMessage);
      worker.off('error', onError);
    };
    const onMessage = (result: VariantResult) => {
      clear();
      resolve(result);
    };
    const onError = (error: unknown) => {
      clear();
      reject(error);
    };
    worker.on('message', onMessage);
    worker.on('error', onError);
    worker.postMessage(variant);
  });
