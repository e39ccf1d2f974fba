import { existsSync, renameSync } from 'node:fs';
import { FileError } from '../exit.js';
import * as texts from '../texts/folder.js';
import { removeOurs, strangersIn } from './contents.js';
import type { Places } from './paths.js';

/**
 * Moves a folder that holds files which aren't ours out of the way, whole, under the first free name beside it.
 * Returns what was done, in words, and how to put it back; `null` where there was nothing to do.
 */
export function setAside(dir: string): { readonly note: string; readonly undo: () => void } | null {
  if (!existsSync(dir) || strangersIn(dir).length === 0) return null;
  let n = 1;
  while (existsSync(`${dir}.kept-${n}`)) n++;
  const kept = `${dir}.kept-${n}`;
  renameSync(dir, kept);
  return { note: texts.movedAside(dir, n), undo: () => renameSync(kept, dir) };
}

/** @throws FileError naming the files in `dir` that aren't ours. */
export function refuseStrangers(dir: string, begun = false): void {
  if (!existsSync(dir)) return;
  const strangers = strangersIn(dir, begun);
  if (strangers.length === 0) return;
  const named = strangers.slice(0, 10).join(', ');
  const more = strangers.length > 10 ? texts.andMore(strangers.length - 10) : '';
  throw new FileError(texts.folderHoldsOthers(dir, named, more), texts.moveItElsewhereName);
}

/**
 * Puts in order what a run that was killed left behind; call it under the lock. The package before it comes
 * back if the folder is missing. Returns what was done, in words.
 */
export function recover(places: Places): string[] {
  const done: string[] = [];
  if (existsSync(places.fresh)) {
    refuseStrangers(places.fresh, true);
    removeOurs(places.fresh);
    done.push(texts.removedLeftByRun(places.fresh));
  }
  if (!existsSync(places.old)) return done;
  if (existsSync(places.dir)) {
    refuseStrangers(places.old);
    removeOurs(places.old);
    done.push(texts.removedLeftByRun(places.old));
  } else {
    renameSync(places.old, places.dir);
    done.push(texts.restoredMovedAside(places.dir));
  }
  return done;
}
