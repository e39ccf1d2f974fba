import { COMMA, COMMON, type Command, type CommonArguments, FILE, SET } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { listing, packing, reading } from '../library.js';
import { formatOf, PRINTED, printOneTable, type TableArguments } from '../print/tables.js';
import { didYouMean } from '../suggest.js';

interface Arguments extends CommonArguments, TableArguments {
  file: string;
  name: string;
  set: string[] | undefined;
}

export const table: Command<Arguments> = {
  examples: [
    ['table house.yaml moulds', 'in columns'],
    ['table house.yaml blocks --format csv > blocks.csv', 'for a spreadsheet'],
    ['table house.yaml blocks --decimal-comma > blocks.csv', 'for a spreadsheet that writes 2,5'],
  ],
  names: { ...FILE, name: { type: 'string', demandOption: true, describe: 'Which table' } },
  options: { ...PRINTED, ...COMMA, ...SET, ...COMMON },
  run: async (given, terminal) => {
    const { file, name, set = [] } = given;
    const { TABLES } = await listing();
    const names = TABLES.map(({ id }) => id);
    if (!names.includes(name)) {
      throw new UsageError(`There is no table ${name}.`, didYouMean(name, names, `There are: ${names.join(', ')}.`));
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
