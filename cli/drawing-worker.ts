import { parentPort } from 'node:worker_threads';
import { DescriptionError } from '../lib/base/problems.js';
import { drawHouse } from '../lib/deliver/drawn.js';
import type { Drawn, Order, ToDraw } from './drawing-thread.js';
import type { HandedOver } from './library.js';
import { tools } from './tools.js';

let handOver: (handed: HandedOver) => void = () => undefined;
const handed = new Promise<HandedOver>((resolve) => {
  handOver = resolve;
});

// What makes PDF is got ready while the other thread still reads.
const pdf = tools.pdf();

async function draw({ house, groups }: ToDraw): Promise<Drawn> {
  try {
    return { sets: await drawHouse(house, groups, handed, await pdf) };
  } catch (error) {
    // An error's class doesn't cross between threads; its problems do.
    if (error instanceof DescriptionError) return { problems: error.problems };
    throw error;
  }
}

/** Memory that goes over to the other thread instead of being copied there: whole buffers of large files. */
function movable(drawn: Drawn): ArrayBuffer[] {
  if (!('sets' in drawn)) return [];
  const files = [...drawn.sets.values()].flatMap((set) => set.files);
  const whole = files.filter(({ bytes }) => bytes.buffer.byteLength === bytes.byteLength);
  return [...new Set(whole.map(({ bytes }) => bytes.buffer as ArrayBuffer))];
}

// One house and its end: the thread lives no longer than that.
parentPort?.on('message', async (order: Order) => {
  if ('handed' in order) return handOver(order.handed);
  const drawn = await draw(order);
  parentPort?.postMessage(drawn, movable(drawn));
  parentPort?.close();
});
