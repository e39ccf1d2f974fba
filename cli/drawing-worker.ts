import { parentPort } from 'node:worker_threads';
import { drawHouse } from '../lib/deliver/drawings.js';
import type { House } from './library.js';

// One house and its end: the thread lives no longer than that.
parentPort?.once('message', (house: House) => parentPort?.postMessage(drawHouse(house)));
