import { existsSync, renameSync } from 'node:fs';
import { FileError } from '../exit.js';
import { removeOurs, strangersIn } from './contents.js';
import type { Places } from './paths.js';

/**
 * Moves a folder that holds files which aren't ours out of the way, whole, under the first free name beside it.
 * Returns what was done, in words.
 */
export function setAside(dir: string): string[] {
  if (!existsSync(dir) || strangersIn(dir).length === 0) return [];
  let n = 1;
  while (existsSync(`${dir}.kept-${n}`)) n++;
  renameSync(dir, `${dir}.kept-${n}`);
  return [`Moved ${dir}, which holds files of others, to ${dir}.kept-${n}.`];
}

/** @throws FileError naming the files in `dir` that aren't ours. */
export function refuseStrangers(dir: string, begun = false): void {
  if (!existsSync(dir)) return;
  const strangers = strangersIn(dir, begun);
  if (strangers.length === 0) return;
  const named = strangers.slice(0, 10).join(', ');
  const more = strangers.length > 10 ? ` and ${strangers.length - 10} more` : '';
  throw new FileError(
    `The folder ${dir} holds what no package of ours lists: ${named}${more}.`,
    'Move it elsewhere, name another folder, or give --force, which moves it aside whole.',
  );
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
    done.push(`Removed ${places.fresh}, left by a run that was cut short.`);
  }
  if (!existsSync(places.old)) return done;
  if (existsSync(places.dir)) {
    refuseStrangers(places.old);
    removeOurs(places.old);
    done.push(`Removed ${places.old}, left by a run that was cut short.`);
  } else {
    renameSync(places.old, places.dir);
    done.push(`Restored ${places.dir}, moved aside by a run that was cut short.`);
  }
  return done;
}
