import { type FSWatcher, watch as watchFiles } from 'node:fs';
import { basename, dirname } from 'node:path';
import { COMMON, type Command, type CommonArguments, FILE } from '../command.js';
import { fileTrouble, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { Memory } from '../library.js';
import { groupsAsked, MAKING, type MakingArguments } from '../make.js';
import { STDIO } from '../stdio.js';
import type { Terminal } from '../terminal.js';
import * as texts from '../texts/build.js';
import { tellTrouble } from '../trouble.js';
import { buildInto } from './build.js';

/** An editor writes a file in several steps; this long nothing more must come, milliseconds. */
const QUIET_AFTER = 80;

export const watch: Command<MakingArguments & CommonArguments> = {
  examples: [
    ['watch house.yaml -o house', texts.keepFolderUp],
    ['watch house.yaml -o house --only drawings', texts.someGroupsAlone],
  ],
  names: { file: { ...FILE.file, describe: texts.descriptionYamlOrJson } },
  options: { ...MAKING, ...COMMON },
  run: async (given, terminal) => {
    const { file, output } = given;
    if (file === STDIO || output === STDIO || output === '') throw new UsageError(texts.watchNeedsFile, texts.nameBoth);
    groupsAsked(given.only);
    let known = fingerprint(file);
    // A file that isn't there at all is told at once.
    if (known === null) readInput(file);
    const changes = changesOf(file);
    // What a change leaves as it is needn't be made again.
    const memory = new Memory();
    for (;;) {
      await once(given, terminal, memory);
      terminal.note(texts.waitingForToChange(file));
      let now = known;
      while (now === known || now === null) {
        await changes.next();
        now = fingerprint(file);
      }
      known = now;
      terminal.note();
    }
  },
};

/** One build; what is wrong is told and the next change waited for. */
async function once(given: MakingArguments & CommonArguments, terminal: Terminal, memory: Memory): Promise<void> {
  try {
    await buildInto({ ...given, 'dry-run': false }, terminal, memory);
  } catch (error) {
    tellTrouble(terminal, error, given.json);
  }
}

/** What the file holds, in short; `null` while it isn't there, as between the steps of an editor. */
function fingerprint(file: string): string | null {
  try {
    return readInput(file).sha256;
  } catch {
    return null;
  }
}

/** Tells of changes of a file, those that came while nobody asked as well. */
function changesOf(file: string): { readonly next: () => Promise<void> } {
  let changed = false;
  let tell: (() => void) | null = null;
  let timer: NodeJS.Timeout | undefined;
  try {
    // The folder and not the file: editors put a new file in the place of the old.
    const watcher: FSWatcher = watchFiles(dirname(file), (_, name) => {
      if (name !== null && name !== basename(file)) return;
      clearTimeout(timer);
      timer = setTimeout(() => {
        changed = true;
        tell?.();
      }, QUIET_AFTER);
    });
    watcher.on('error', () => undefined);
  } catch (error) {
    throw fileTrouble(texts.folderCannotBeWatched(file), error);
  }
  return {
    next: async () => {
      if (!changed) await new Promise<void>((resolve) => (tell = resolve));
      tell = null;
      changed = false;
    },
  };
}
