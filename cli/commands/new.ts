import { writeFileSync } from 'node:fs';
import { type Command, FILE } from '../command.js';
import { EXIT, FileError, fileTrouble, UsageError } from '../exit.js';
import { starterDescription } from '../library.js';

export const start: Command<{ file: string }> = {
  usage: 'new <file>',
  describe: 'Write a small description to start from',
  names: FILE,
  options: {},
  run: async ({ file }, terminal) => {
    if (!/\.ya?ml$/i.test(file)) {
      throw new UsageError(
        `The description to start from is YAML, and ${JSON.stringify(file)} is not named so.`,
        'Give a name that ends in .yaml.',
      );
    }
    try {
      writeFileSync(file, starterDescription(), { flag: 'wx' });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'EEXIST') {
        throw new FileError(`${file} exists already and was left as it is.`, 'Choose another name.');
      }
      throw fileTrouble(`${file} can't be written`, error);
    }
    terminal.out(`Wrote ${file}. Next: ringcourse build ${file} -o out`);
    return EXIT.fine;
  },
};
