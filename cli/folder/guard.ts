import { mkdirSync, rmdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileTrouble } from '../exit.js';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Runs `body` and undoes what it began when it throws or the process is told to stop. `body` registers each
 * undoing step as it goes; they run last first. After a signal the process ends by that same signal.
 */
export async function guarded<T>(body: (onUndo: (step: () => void) => void) => Promise<T>): Promise<T> {
  const steps: (() => void)[] = [];
  const undo = () => {
    for (let step = steps.pop(); step !== undefined; step = steps.pop()) {
      try {
        step();
      } catch {
        // The trouble that led here is the one to tell; the next run tidies up what this step couldn't.
      }
    }
  };
  const stop = (signal: NodeJS.Signals) => {
    undo();
    release();
    process.kill(process.pid, signal);
  };
  const release = () => {
    for (const signal of SIGNALS) process.off(signal, stop);
  };
  for (const signal of SIGNALS) process.on(signal, stop);
  try {
    return await body((step) => steps.push(step));
  } catch (error) {
    undo();
    throw error;
  } finally {
    release();
  }
}

/**
 * Makes a folder and those above it that are missing; returns the ones made, deepest first.
 * @throws FileError
 */
export function makeFolders(dir: string): string[] {
  try {
    const first = mkdirSync(dir, { recursive: true });
    const made: string[] = [];
    if (first !== undefined) {
      for (let up = dir; up.length >= first.length; up = dirname(up)) made.push(up);
    }
    return made;
  } catch (error) {
    throw fileTrouble(`The folder ${dir} can't be made`, error);
  }
}

/** Removes folders that we made, as far as they are still empty. */
export function unmakeFolders(made: readonly string[]): void {
  for (const dir of made) {
    try {
      rmdirSync(dir);
    } catch {
      return;
    }
  }
}
