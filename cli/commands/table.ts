import { COMMA, COMMON, type Command, type CommonArguments, FILE, SET } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { listing, packing, reading } from '../library.js';
import { formatOf, PRINTED, printOneTable, type TableArguments } from '../print/tables.js';
import { didYouMean } from '../suggest.js';
import * as texts from '../texts/look.js';

interface Arguments extends CommonArguments, TableArguments {
  file: string;
  name: string;
  set: string[] | undefined;
}

export const table: Command<Arguments> = {
  examples: [
    ['table house.yaml moulds', texts.inColumns],
    ['table house.yaml blocks --format csv > blocks.csv', texts.forSpreadsheet],
    ['table house.yaml blocks --decimal-comma > blocks.csv', texts.forSpreadsheetThatWrites],
  ],
  names: { ...FILE, name: { type: 'string', demandOption: true, describe: texts.whichTable } },
  options: { ...PRINTED, ...COMMA, ...SET, ...COMMON },
  run: async (given, terminal) => {
    const { file, name, set = [] } = given;
    const { TABLES } = await listing();
    const names = TABLES.map(({ id }) => id);
    if (!names.includes(name)) {
      throw new UsageError(texts.thereIsNoTable(name), didYouMean(name, names, texts.thereAre(names.join(', '))));
    }
    const format = formatOf(given);
    const input = readInput(file);
    const [{ readDescription }, { houseTable }] = await Promise.all([reading(), packing()]);
    const found = await houseTable(readDescription(input.text, input.name, { set }), name);
    if (found === undefined) throw new Error(`the table ${name} is listed and can't be made`);
    await printOneTable(terminal, found, format, given['decimal-comma']);
    return EXIT.fine;
  },
};
