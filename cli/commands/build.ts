import { COMMON, type Command, type CommonArguments, FILE } from '../command.js';
import { EXIT, type ExitCode, UsageError } from '../exit.js';
import { dryRun, inspectFolder, writeFolder } from '../folder/write.js';
import type { Memory } from '../library.js';
import { groupsAsked, MAKING, type MakingArguments, makePackage } from '../make.js';
import { printJson } from '../print/json.js';
import { printCautions, printChecks, printSummary } from '../print/results.js';
import { printDryRun, printWritten } from '../print/written.js';
import { progressOn } from '../progress.js';
import { STDIO } from '../stdio.js';
import { besideOutput, type Terminal } from '../terminal.js';
import * as texts from '../texts/build.js';
import { packageZip } from '../zip.js';

interface Arguments extends MakingArguments, CommonArguments {
  'dry-run': boolean;
}

export const build: Command<Arguments> = {
  examples: [
    ['build house.yaml -o house', texts.everythingIntoFolderHouse],
    ['build house.yaml -o house --only tables,report', texts.someGroupsAloneOthers],
    ['build house.yaml -o larger --only tables --set domes.room.radius=2.4', texts.withAnotherSize],
    ['build house.yaml -o house --only tables --dry-run', texts.whatWouldChangeThere],
    ['build - -o - --only tables < house.yaml > house.zip', texts.standardInputToOne],
  ],
  names: FILE,
  options: {
    ...MAKING,
    output: { ...MAKING.output, describe: texts.orZipOnStandardOutput(MAKING.output.describe) },
    'dry-run': {
      type: 'boolean',
      default: false,
      describe: texts.computeEverythingWriteNothing,
    },
    ...COMMON,
  },
  run: async (given, terminal) => {
    const { output } = given;
    if (output === '') throw new UsageError(texts.nameOfOutputFolder, texts.nameOneAfterO);
    groupsAsked(given.only);
    return output === STDIO ? toOutput(given, terminal) : buildInto(given, terminal);
  },
};

/** One build into a folder; `memory` is of builds before it. */
export async function buildInto(given: Arguments, terminal: Terminal, memory?: Memory): Promise<ExitCode> {
  const { file, output, force, json } = given;
  for (const note of await inspectFolder(output, force)) terminal.err(note);
  const progress = progressOn(terminal);
  const { made, delivery } = await makePackage(given, progress.stage, memory);
  const { checks, summary, cautions } = made;
  const dry = given['dry-run'];
  if (!dry) progress.stage(texts.writing(output));
  const written = dry ? dryRun(output, delivery) : await writeFolder(output, delivery, force);
  progress.end();
  if ('notes' in written) for (const note of written.notes) terminal.err(note);

  if (json) {
    const { carried, notes: _, ...rest } = { notes: [], ...written };
    printJson(terminal, {
      ...rest,
      output,
      carried: carried.files.map(({ path }) => path),
      dropped: carried.dropped,
      summary,
      checks,
      cautions,
    });
  } else if (given.quiet) {
    printChecks(terminal, made, ['fails']);
    if ('added' in written) printDryRun(terminal, output, written);
    printCautions(terminal, cautions);
  } else {
    printSummary(terminal, summary);
    printChecks(terminal, made, ['fails', 'attention']);
    if ('added' in written) printDryRun(terminal, output, written);
    else printWritten(terminal, output, written);
    printCautions(terminal, cautions);
  }
  const all = `ringcourse build ${file} -o ${output}`;
  if (dry) terminal.note(texts.nextWrites(all));
  else if (written.files.some(({ path }) => path === 'report.html')) terminal.note(texts.nextOpenReport(output));
  else terminal.note(texts.nextMakesEverything(all));
  return checks.some(({ state }) => state === 'fails') ? EXIT.check : EXIT.fine;
}

/** The archive takes standard output, so that everything else goes where progress goes. */
async function toOutput(given: Arguments, terminal: Terminal) {
  if (given.json || given['dry-run']) throw new UsageError(texts.outputIsZip, texts.nameFolderAfterO);
  const progress = progressOn(terminal);
  const { made, delivery } = await makePackage(given, progress.stage);
  progress.end();
  terminal.raw(await packageZip(delivery));
  const beside = besideOutput(terminal);
  printSummary(beside, made.summary);
  printChecks(beside, made, ['fails', 'attention']);
  printCautions(beside, made.cautions);
  return made.checks.some(({ state }) => state === 'fails') ? EXIT.check : EXIT.fine;
}
