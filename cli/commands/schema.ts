import { COMMON, type Command, type CommonArguments } from '../command.js';
import { EXIT } from '../exit.js';
import { descriptionJsonSchema } from '../library.js';
import { printJson } from '../print/json.js';
import * as texts from '../texts/first-steps.js';

export const schema: Command<CommonArguments> = {
  usage: 'schema',
  describe: texts.printJsonSchema,
  examples: [['schema > ringcourse.schema.json', texts.onceBesideDescriptions]],
  names: {},
  options: COMMON,
  run: async (_, terminal) => {
    printJson(terminal, descriptionJsonSchema());
    return EXIT.fine;
  },
};
