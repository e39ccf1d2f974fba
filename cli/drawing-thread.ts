import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import {
  DescriptionError,
  type DrawnGroup,
  type DrawnSet,
  type HandedOver,
  type House,
  type Problem,
} from './library.js';

/** What the thread is given. */
export interface ToDraw {
  readonly house: House;
  readonly groups: readonly DrawnGroup[];
}

/** What comes back from the thread: what was drawn, or what is wrong with the description. */
export type Drawn = { readonly sets: ReadonlyMap<DrawnGroup, DrawnSet> } | { readonly problems: readonly Problem[] };

/** What the thread is told: first the task, and when it is known what the sheets show of other results. */
export type Order = ToDraw | { readonly handed: HandedOver };

export interface DrawingThread {
  /** Draws a house on the other thread; its trouble comes back as the promise's. */
  readonly draw: (
    house: House,
    groups: readonly DrawnGroup[],
    handed: Promise<HandedOver>,
  ) => Promise<ReadonlyMap<DrawnGroup, DrawnSet>>;
  /** Ends a thread that was given nothing to draw. */
  readonly dismiss: () => Promise<unknown>;
}

/** Starts a thread that gets ready while this one still reads; `null` where the machine has no room for two. */
export function startDrawingThread(): DrawingThread | null {
  if (availableParallelism() < 2) return null;
  const worker = new Worker(new URL('./drawing-worker.js', import.meta.url));
  return {
    draw: (house, groups, handed) =>
      new Promise((resolve, reject) => {
        worker.once('message', (drawn: Drawn) =>
          'sets' in drawn ? resolve(drawn.sets) : reject(new DescriptionError(drawn.problems)),
        );
        worker.once('error', reject);
        worker.once('exit', (code) => reject(new Error(`the drawing thread ended with ${code} and gave nothing back`)));
        worker.postMessage({ house, groups } satisfies Order);
        handed.then((given) => worker.postMessage({ handed: given } satisfies Order), reject);
      }),
    dismiss: () => worker.terminate(),
  };
}
