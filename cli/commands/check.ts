import { type Command, FILE } from '../command.js';
import { EXIT } from '../exit.js';
import { readInput } from '../input.js';
import { checkHouse, readDescription } from '../library.js';
import { printCautions, printChecks, printSummary } from '../print/results.js';

export const check: Command<{ file: string }> = {
  usage: 'check <file>',
  describe: 'Read a description and run every check on it, writing nothing',
  names: FILE,
  options: {},
  run: async ({ file }, terminal) => {
    const { name, text } = readInput(file);
    const { checks, summary, cautions } = checkHouse(readDescription(text, name));
    printSummary(terminal, summary);
    printChecks(terminal, checks, false);
    printCautions(terminal, cautions);
    return checks.some((one) => one.state === 'fails') ? EXIT.check : EXIT.fine;
  },
};
