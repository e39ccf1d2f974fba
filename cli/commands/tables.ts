import type { Command } from '../command.js';
import { EXIT } from '../exit.js';
import { TABLES } from '../library.js';

export const tables: Command<Record<never, never>> = {
  usage: 'tables',
  describe: 'List the tables of a house and what each is for',
  names: {},
  options: {},
  run: async (_, terminal) => {
    const width = Math.max(...TABLES.map(({ id }) => id.length));
    for (const { id, about } of TABLES) terminal.out(`${id.padEnd(width)}  ${about}`);
    return EXIT.fine;
  },
};
