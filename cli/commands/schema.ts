import { COMMON, type Command, type CommonArguments } from '../command.js';
import { EXIT } from '../exit.js';
import { describing } from '../library.js';
import { printJson } from '../print/json.js';
import * as texts from '../texts/first-steps.js';

export const schema: Command<CommonArguments> = {
  examples: [['schema > ringcourse.schema.json', texts.onceBesideDescriptions]],
  names: {},
  options: COMMON,
  run: async (_, terminal) => {
    printJson(terminal, (await describing()).descriptionJsonSchema());
    return EXIT.fine;
  },
};
