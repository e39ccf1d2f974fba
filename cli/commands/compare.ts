import { COMMON, type Command, type CommonArguments, SET } from '../command.js';
import { EXIT } from '../exit.js';
import { readInput } from '../input.js';
import { comparing, type House, reading } from '../library.js';
import { printJson } from '../print/json.js';
import { printTable } from '../print/table.js';
import { progressOn } from '../progress.js';
import * as texts from '../texts/houses.js';

interface Arguments extends CommonArguments {
  before: string;
  after: string;
  set: string[] | undefined;
}

export const compare: Command<Arguments> = {
  examples: [
    ['compare house.yaml larger.yaml', texts.twoFiles],
    ['compare house.yaml house.yaml --set domes.room.radius=2.4', texts.fileAndSame],
  ],
  names: {
    before: { type: 'string', demandOption: true, describe: texts.descriptionAsItWas },
    after: { type: 'string', demandOption: true, describe: texts.descriptionAs },
  },
  options: { ...SET, ...COMMON },
  run: async ({ before, after, set = [], json }, terminal) => {
    const [{ readDescription }, { compareHouses, comparisonTables }] = await Promise.all([reading(), comparing()]);
    const progress = progressOn(terminal);
    progress.stage('comparing');
    const read = (file: string, set: readonly string[]): House => {
      const { name, text } = readInput(file);
      return readDescription(text, name, { set });
    };
    const [first, second] = [read(before, []), read(after, set)];
    const comparison = compareHouses(first, second);
    progress.end();
    if (json) printJson(terminal, comparison);
    else
      for (const [i, table] of comparisonTables(comparison, second.units).entries()) {
        if (i > 0) terminal.out();
        printTable(terminal, table);
      }
    return EXIT.fine;
  },
};
