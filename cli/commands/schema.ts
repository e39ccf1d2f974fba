import type { Command } from '../command.js';
import { EXIT } from '../exit.js';
import { descriptionJsonSchema } from '../library.js';

export const schema: Command<object> = {
  usage: 'schema',
  describe: 'Print the JSON Schema of a description, with which editors complete it',
  names: {},
  options: {},
  run: async (_, terminal) => {
    terminal.raw(`${JSON.stringify(descriptionJsonSchema(), null, 2)}\n`);
    return EXIT.fine;
  },
};
