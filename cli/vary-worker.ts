import { parentPort, workerData } from 'node:worker_threads';
import { type Variant, varyOne } from '../lib/deliver/vary.js';
import type { VaryingText } from './vary-threads.js';

const { text, name } = workerData as VaryingText;

// One variant after the other, as the main thread hands them out.
parentPort?.on('message', (variant: Variant) => parentPort?.postMessage(varyOne(text, name, variant)));
