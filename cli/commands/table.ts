import { type Command, FILE } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { houseTable, houseTables, readDescription, writeCsv } from '../library.js';
import { printTable } from '../print/table.js';
import { didYouMean } from '../suggest.js';

export const table: Command<{ file: string; name: string | undefined; csv: boolean }> = {
  usage: 'table <file> [name]',
  describe: 'Print one table of a house; without a name, list those there are',
  names: { ...FILE, name: { type: 'string', describe: 'Which table' } },
  options: {
    csv: { type: 'boolean', default: false, describe: 'Print comma-separated values for a spreadsheet' },
  },
  run: async ({ file, name, csv }, terminal) => {
    const input = readInput(file);
    const house = readDescription(input.text, input.name);
    const found = name === undefined ? undefined : houseTable(house, name);
    if (found === undefined) {
      const tables = houseTables(house);
      const names = tables.map(({ id }) => id);
      if (name !== undefined)
        throw new UsageError(`There is no table ${name}.`, didYouMean(name, names, `There are: ${names.join(', ')}.`));
      const width = Math.max(...names.map((id) => id.length));
      for (const { id, title } of tables) terminal.out(`${id.padEnd(width)}  ${title}`);
      return EXIT.fine;
    }
    if (csv) terminal.raw(writeCsv(found));
    else printTable(terminal, found);
    return EXIT.fine;
  },
};
