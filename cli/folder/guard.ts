import { existsSync, mkdirSync, rmdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { fileTrouble } from '../exit.js';
import * as texts from '../texts/folder.js';

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
    const result = await body((step) => steps.push(step));
    // What is done stays done.
    steps.length = 0;
    return result;
  } catch (error) {
    undo();
    throw error;
  } finally {
    await heard();
    release();
  }
}

/**
 * A signal that comes while the process is busy waits for the event loop, and is lost when nobody listens by then.
 * The first turn may have begun before it came; the second hears it.
 */
async function heard(): Promise<void> {
  await setImmediate();
  await setImmediate();
}

/**
 * Makes a folder and those above it that are missing; returns the ones made, deepest first.
 * @throws FileError
 */
export function makeFolders(dir: string): string[] {
  // One by one: asked to make several at once where none can be made, as in /proc, Node never ends.
  const missing: string[] = [];
  for (let up = dir; !existsSync(up) && up !== dirname(up); up = dirname(up)) missing.push(up);
  const made: string[] = [];
  try {
    for (const folder of missing.reverse()) {
      if (makeOne(folder)) made.unshift(folder);
    }
    return made;
  } catch (error) {
    unmakeFolders(made);
    throw fileTrouble(texts.folderCannotBeMade(dir), error);
  }
}

/** Whether the folder was made here; another process may be faster. */
function makeOne(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
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
