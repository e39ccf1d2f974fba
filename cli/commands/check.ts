import { type Command, FILE } from '../command.js';
import { EXIT } from '../exit.js';
import { readInput } from '../input.js';
import { checkHouse, readDescription } from '../library.js';
import { printCautions, printChecks, printSummary } from '../print/results.js';

export const check: Command<{ file: string; json: boolean }> = {
  usage: 'check <file>',
  describe: 'Read a description and run every check on it, writing nothing',
  names: FILE,
  options: {
    json: { type: 'boolean', default: false, describe: 'Print summary, checks and cautions as JSON' },
  },
  run: async ({ file, json }, terminal) => {
    const { name, text } = readInput(file);
    const verdict = checkHouse(readDescription(text, name));
    const { checks, summary, cautions } = verdict;
    if (json) terminal.out(JSON.stringify(verdict, null, 2));
    else {
      printSummary(terminal, summary);
      printChecks(terminal, checks, false);
      printCautions(terminal, cautions);
    }
    return checks.some((one) => one.state === 'fails') ? EXIT.check : EXIT.fine;
  },
};
