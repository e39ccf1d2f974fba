import { COMMON, type Command, type CommonArguments, FILE, SET } from '../command.js';
import { EXIT } from '../exit.js';
import { readInput } from '../input.js';
import { packing, reading } from '../library.js';
import { printJson } from '../print/json.js';
import { printCautions, printChecks, printSummary } from '../print/results.js';
import { progressOn } from '../progress.js';
import { STDIO } from '../stdio.js';
import * as texts from '../texts/look.js';

interface Arguments extends CommonArguments {
  file: string;
  set: string[] | undefined;
}

export const check: Command<Arguments> = {
  examples: [
    ['check house.yaml', texts.everyCheckWorstFirst],
    ['check house.yaml --set wall.thickness=0.25', texts.withAnotherValueFile],
    ['check house.yaml --json', texts.forPrograms],
  ],
  names: FILE,
  options: { ...SET, ...COMMON },
  run: async ({ file, json, quiet, set = [] }, terminal) => {
    const { name, text } = readInput(file);
    const [{ readDescription }, { checkHouse }] = await Promise.all([reading(), packing()]);
    const progress = progressOn(terminal);
    progress.stage('reading');
    const house = readDescription(text, name, { set });
    progress.stage('checking');
    const verdict = checkHouse(house);
    progress.end();
    const { checks, summary, cautions } = verdict;
    if (json) printJson(terminal, verdict);
    else {
      if (!quiet) printSummary(terminal, summary);
      printChecks(terminal, verdict, quiet ? ['fails'] : undefined);
      printCautions(terminal, cautions);
    }
    if (file !== STDIO) terminal.note(texts.nextBuild(file, file.replace(/\.\w+$/, '')));
    return checks.some(({ state }) => state === 'fails') ? EXIT.check : EXIT.fine;
  },
};
