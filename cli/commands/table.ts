import { type Command, FILE } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { houseTables, readDescription, writeCsv } from '../library.js';
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
    const tables = houseTables(readDescription(input.text, input.name));
    if (name === undefined) {
      const width = Math.max(...tables.map(({ id }) => id.length));
      for (const { id, title } of tables) terminal.out(`${id.padEnd(width)}  ${title}`);
      return EXIT.fine;
    }
    const found = tables.find(({ id }) => id === name);
    if (found === undefined) {
      const names = tables.map(({ id }) => id);
      throw new UsageError(`There is no table ${name}.`, didYouMean(name, names, `There are: ${names.join(', ')}.`));
    }
    if (csv) terminal.raw(writeCsv(found));
    else printTable(terminal, found);
    return EXIT.fine;
  },
};
