import { parentPort, workerData } from 'node:worker_threads';
import type { Task } from './apart.js';
import { groupFiles } from './library.js';
import { tools } from './tools.js';

const { house, group } = workerData as Task;
parentPort?.postMessage(await groupFiles(house, group, tools));
