import { type Command, FILE } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { houseTable, readDescription, TABLES, writeCsv } from '../library.js';
import { printTable, tableJson } from '../print/table.js';
import { didYouMean } from '../suggest.js';

const FORMATS = ['text', 'csv', 'json'] as const;

export const table: Command<{ file: string; name: string; format: string }> = {
  usage: 'table <file> <name>',
  describe: 'Print one table of a house; "ringcourse tables" lists them',
  names: { ...FILE, name: { type: 'string', demandOption: true, describe: 'Which table' } },
  options: {
    format: { type: 'string', default: 'text', describe: `How to print it: ${FORMATS.join(', ')}` },
  },
  run: async ({ file, name, format }, terminal) => {
    const names = TABLES.map(({ id }) => id);
    if (!names.includes(name)) {
      throw new UsageError(`There is no table ${name}.`, didYouMean(name, names, `There are: ${names.join(', ')}.`));
    }
    const known = FORMATS.find((one) => one === format);
    if (known === undefined) {
      const mend = didYouMean(format, FORMATS, `It knows: ${FORMATS.join(', ')}.`);
      throw new UsageError(`--format doesn't know ${JSON.stringify(format)}.`, mend);
    }
    const input = readInput(file);
    const found = houseTable(readDescription(input.text, input.name), name);
    if (found === undefined) throw new Error(`the table ${name} is listed and can't be made`);
    if (known === 'csv') terminal.raw(writeCsv(found));
    else if (known === 'json') terminal.out(tableJson(found));
    else printTable(terminal, found);
    return EXIT.fine;
  },
};
