import { linkSync, readdirSync, readFileSync, renameSync, unlinkSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { FileError, fileTrouble } from '../exit.js';
import * as texts from '../texts/folder.js';
import { renameToFree } from './whole.js';

interface Holder {
  readonly pid: number;
  readonly host: string;
}

const code = (error: unknown): string | undefined => (error as NodeJS.ErrnoException).code;

function readHolder(path: string): Holder | 'unreadable' | 'gone' {
  try {
    const found = JSON.parse(readFileSync(path, 'utf8')) as Partial<Holder> | null;
    if (typeof found?.pid !== 'number' || typeof found.host !== 'string') return 'unreadable';
    return { pid: found.pid, host: found.host };
  } catch (error) {
    return code(error) === 'ENOENT' ? 'gone' : 'unreadable';
  }
}

/** A process of ours can't meet its own lock: the number was given out again after the holder died. */
function isAlive(holder: Holder): boolean {
  if (holder.host !== hostname()) return true;
  if (holder.pid === process.pid) return false;
  try {
    process.kill(holder.pid, 0);
    return true;
  } catch (error) {
    return code(error) !== 'ESRCH';
  }
}

/** Puts the lock in place with its content in one step; false when another lock stands there. */
function place(path: string, content: string): boolean {
  const draft = `${path}.${process.pid}`;
  try {
    writeFileSync(draft, content, { flush: true });
    renameToFree(draft, path);
    return true;
  } catch (error) {
    if (code(error) === 'EEXIST') return false;
    throw error;
  } finally {
    remove(draft);
  }
}

function remove(path: string): void {
  try {
    unlinkSync(path);
  } catch (error) {
    if (code(error) !== 'ENOENT') throw error;
  }
}

/** Takes a dead process's lock away; if another process renewed it in that instant, gives theirs back. */
function clearStale(path: string, stale: Holder): void {
  const aside = `${path}.${process.pid}`;
  try {
    renameSync(path, aside);
  } catch (error) {
    if (code(error) === 'ENOENT') return;
    throw error;
  }
  const taken = readHolder(aside);
  const wasStale = typeof taken === 'object' && taken.pid === stale.pid && taken.host === stale.host;
  if (!wasStale) linkSync(aside, path);
  remove(aside);
}

/** Removes what processes killed in the instant of taking or clearing the lock left beside it, as far as it can. */
function sweep(path: string): void {
  const begin = `${basename(path)}.`;
  try {
    for (const name of readdirSync(dirname(path))) {
      // A draft that was torn names its process all the same.
      const pid = name.startsWith(begin) ? /^\d+$/.exec(name.slice(begin.length)) : null;
      if (pid === null) continue;
      const left = join(dirname(path), name);
      const holder = readHolder(left);
      const known = typeof holder === 'object' ? holder : { pid: Number(pid[0]), host: hostname() };
      if (!isAlive(known)) remove(left);
    }
  } catch {
    // A folder that can't be listed is no reason to write nothing into it.
  }
}

function refuse(path: string, holder: Holder | 'unreadable'): never {
  const who =
    holder === 'unreadable'
      ? texts.cannotBeRead(path)
      : texts.processHolds(holder.pid, holder.host === hostname() ? '' : texts.onHost(holder.host));
  throw new FileError(texts.outputFolderIsLocked(who), texts.waitForThatRun(path));
}

/**
 * Takes the lock, clearing one whose process is dead, and returns the function that gives it back.
 * @throws FileError when a living process holds it, or when it can't be written.
 */
export function takeLock(path: string): () => void {
  const content = `${JSON.stringify({ pid: process.pid, host: hostname() } satisfies Holder)}\n`;
  try {
    while (!place(path, content)) {
      const holder = readHolder(path);
      if (holder === 'gone') continue;
      if (holder === 'unreadable' || isAlive(holder)) refuse(path, holder);
      clearStale(path, holder);
    }
  } catch (error) {
    throw fileTrouble(texts.cannotBeWritten(path), error);
  }
  sweep(path);
  return () => {
    const holder = readHolder(path);
    if (typeof holder === 'object' && holder.pid === process.pid && holder.host === hostname()) remove(path);
  };
}
