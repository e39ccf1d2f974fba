import type { Options } from 'yargs';
import { COMMON, type Command, type CommonArguments } from '../command.js';
import { EXIT, FileError, fileTrouble, UsageError } from '../exit.js';
import { writeWhole } from '../folder/whole.js';
import { type StarterAnswers, starting } from '../library.js';
import { printJson } from '../print/json.js';
import { STDIO } from '../stdio.js';
import type { Terminal } from '../terminal.js';
import * as texts from '../texts/first-steps.js';

const { STARTER_QUESTIONS, starterDescription } = await starting();

interface Arguments extends CommonArguments {
  file: string;
  force: boolean;
  'dry-run': boolean;
}

/** Every question may be answered in the call. */
const ANSWERS: Readonly<Record<string, Options>> = Object.fromEntries(
  STARTER_QUESTIONS.map(({ key, question }) => [
    key,
    { type: 'string', requiresArg: true, describe: question('m').replace(/, in m$/, '') } satisfies Options,
  ]),
);

export const start: Command<Arguments> = {
  examples: [
    ['new first.yaml', texts.asksForRadiusProfile],
    ['new second.yaml --radius 3 --profile pointed --windows 2', texts.asksForRest],
    ['new - --units ft --quiet', texts.onStandardOutputWithout],
  ],
  names: {
    file: { type: 'string', demandOption: true, describe: texts.whereToWrite },
  },
  options: {
    ...ANSWERS,
    force: { type: 'boolean', default: false, describe: texts.writeOverFile },
    'dry-run': { type: 'boolean', default: false, describe: texts.printDescriptionAndWrite },
    ...COMMON,
  },
  run: async (given, terminal) => {
    const { file, force, json } = given;
    const print = file === STDIO || given['dry-run'];
    if (file !== STDIO && !/\.ya?ml$/i.test(file)) {
      throw new UsageError(texts.descriptionIsYaml(JSON.stringify(file)), texts.giveNameThatEnds);
    }
    // Answers are asked for where they are seen; a program that reads JSON is asked nothing.
    const answers = await answersFrom(given as unknown as Readonly<Record<string, unknown>>, terminal, json);
    const text = starterDescription(answers);
    if (print) {
      if (json) printJson(terminal, { description: text });
      else terminal.raw(text);
      return EXIT.fine;
    }
    try {
      writeWhole(file, text, force);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'EEXIST') {
        throw new FileError(texts.existsAlreadyAndWas(file), texts.chooseAnotherName);
      }
      throw fileTrouble(texts.cannotBeWritten(file), error);
    }
    if (json) printJson(terminal, { written: file });
    else terminal.out(texts.wrote(file));
    terminal.note(texts.nextCheck(file));
    return EXIT.fine;
  },
};

/**
 * Answers of the call, then of the person at the terminal, then none.
 * @throws UsageError for an answer in the call that is none
 */
async function answersFrom(
  given: Readonly<Record<string, unknown>>,
  terminal: Terminal,
  silent: boolean,
): Promise<Partial<StarterAnswers>> {
  const answers: Record<string, unknown> = {};
  for (const { key, question, standard, read } of STARTER_QUESTIONS) {
    const units = (answers.units ?? 'm') as StarterAnswers['units'];
    const said = given[key];
    if (typeof said === 'string') {
      const found = read(said, units);
      if ('wrong' in found) throw new UsageError(texts.optionIs(key, JSON.stringify(said)), found.wrong);
      answers[key] = found.value;
    } else {
      const ask = silent ? null : terminal.ask;
      const text = `${question(units)} [${standard(units)}]: `;
      const asked = async () => ask && read(answered(await ask(text)) || standard(units), units);
      for (let found = await asked(); found; ) {
        if ('value' in found) {
          answers[key] = found.value;
          break;
        }
        terminal.err('  ', found.wrong);
        found = await asked();
      }
      // Without questions the radius is the round one of its units.
      if (ask === null) answers[key] = (read(standard(units), units) as { value: unknown }).value;
    }
  }
  return answers;
}

/** @throws UsageError where the input ends: who goes away before the last question wants no file */
function answered(said: string | null): string {
  if (said !== null) return said.trim();
  throw new UsageError(texts.inputEnded, texts.answerAll);
}
