import { COMMON, type Command, type CommonArguments } from '../command.js';
import { EXIT } from '../exit.js';
import { descriptionJsonSchema } from '../library.js';
import { printJson } from '../print/json.js';

export const schema: Command<CommonArguments> = {
  usage: 'schema',
  describe: 'Print the JSON Schema of a description, with which editors complete it.',
  examples: [['schema > ringcourse.schema.json', 'once, beside the descriptions']],
  names: {},
  options: COMMON,
  run: async (_, terminal) => {
    printJson(terminal, descriptionJsonSchema());
    return EXIT.fine;
  },
};
