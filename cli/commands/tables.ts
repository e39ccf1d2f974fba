import { COMMON, type Command, type CommonArguments } from '../command.js';
import { EXIT } from '../exit.js';
import { listing } from '../library.js';
import { printJson } from '../print/json.js';
import * as texts from '../texts/look.js';

export const tables: Command<CommonArguments> = {
  examples: [['tables', texts.inOrder]],
  names: {},
  options: COMMON,
  run: async ({ json }, terminal) => {
    const { TABLES } = await listing();
    if (json) {
      printJson(
        terminal,
        TABLES.map(({ id, about }) => ({ id, about })),
      );
      return EXIT.fine;
    }
    const width = Math.max(...TABLES.map(({ id }) => id.length));
    for (const { id, about } of TABLES) terminal.out(`${id.padEnd(width)}  ${about}`);
    terminal.note(texts.nextTable);
    return EXIT.fine;
  },
};
