import { COMMON, type Command, type CommonArguments } from '../command.js';
import { EXIT } from '../exit.js';
import { describing } from '../library.js';
import { printJson } from '../print/json.js';

export const schema: Command<CommonArguments> = {
  examples: [['schema > ringcourse.schema.json', 'once, beside the descriptions']],
  names: {},
  options: COMMON,
  run: async (_, terminal) => {
    printJson(terminal, (await describing()).descriptionJsonSchema());
    return EXIT.fine;
  },
};
