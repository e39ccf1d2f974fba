import { type Command, FILE } from '../command.js';
import { startDrawingThread } from '../drawing-thread.js';
import { EXIT, UsageError } from '../exit.js';
import { groupOf } from '../folder/carry.js';
import { inspectFolder, type Written, writeFolder } from '../folder/write.js';
import { type Input, readInput } from '../input.js';
import { buildPackage, type HousePackage, OUTPUT_GROUPS, type OutputGroup, readDescription } from '../library.js';
import { printCautions, printChecks, printSummary } from '../print/results.js';
import { didYouMean } from '../suggest.js';
import type { Terminal } from '../terminal.js';
import { tools } from '../tools.js';
import { version } from '../version.js';

/** `drawings,tables` and `--only drawings --only tables` alike; `null` when everything is asked for. */
function groupsAsked(only: readonly string[] | undefined): readonly OutputGroup[] | null {
  if (only === undefined) return null;
  const names = only.flatMap((part) => part.split(',')).map((name) => name.trim());
  return names.map((name) => {
    const group = OUTPUT_GROUPS.find((known) => known === name);
    if (group !== undefined) return group;
    throw new UsageError(
      `--only doesn't know ${JSON.stringify(name)}.`,
      didYouMean(name, OUTPUT_GROUPS, `It knows: ${OUTPUT_GROUPS.join(', ')}.`),
    );
  });
}

interface Arguments {
  file: string;
  output: string;
  only: string[] | undefined;
}

export const build: Command<Arguments> = {
  usage: 'build <file>',
  describe: 'Compute a house and write its drawings, model, tables and report into a folder',
  names: FILE,
  options: {
    output: {
      alias: 'o',
      type: 'string',
      demandOption: true,
      requiresArg: true,
      describe: 'Folder of the package; it is replaced as a whole',
    },
    only: {
      type: 'string',
      array: true,
      requiresArg: true,
      describe: `Make some groups alone: ${OUTPUT_GROUPS.join(', ')}`,
    },
  },
  run: async ({ file, output, only }, terminal) => {
    if (output === '') throw new UsageError('The name of the output folder is missing.', 'Name one after -o.');
    const groups = groupsAsked(only);
    const tell = (note: string) => terminal.err(note);
    for (const note of await inspectFolder(output)) tell(note);

    const input = readInput(file);
    const made = await buildBeside(input, groups, tell);
    tell(`writing ${output}`);
    const { files, checks, summary, cautions } = made;
    const written = await writeFolder(output, { files, only: groups, description: input.sha256, version, checks });
    for (const note of written.notes) tell(note);

    printSummary(terminal, summary);
    printChecks(terminal, checks, true);
    printWritten(terminal, output, written);
    printCautions(terminal, cautions);
    return checks.some((check) => check.state === 'fails') ? EXIT.check : EXIT.fine;
  },
};

/** Builds with the drawings on a thread of their own where something else is asked for as well. */
async function buildBeside(
  input: Input,
  groups: readonly OutputGroup[] | null,
  progress: (note: string) => void,
): Promise<HousePackage> {
  const beside = (groups ?? OUTPUT_GROUPS).length > 1 ? startDrawingThread() : null;
  try {
    const house = readDescription(input.text, input.name);
    return await buildPackage(
      house,
      { ...tools, ...(beside && { drawApart: beside.draw }) },
      { ...(groups && { only: groups }), progress },
    );
  } finally {
    await beside?.dismiss();
  }
}

const inMegabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

const inFiles = (count: number): string => (count === 1 ? '1 file' : `${count} files`);

function printWritten(terminal: Terminal, output: string, { files, carried }: Written): void {
  const size = files.reduce((sum, entry) => sum + entry.size, 0);
  terminal.out();
  terminal.out(['strong', `Written to ${output}`], `: ${inFiles(files.length + 1)}, ${inMegabytes(size)}`);
  const kept = new Set(carried.files.map(({ path }) => path));
  for (const group of new Set(files.map(({ path }) => groupOf(path)))) {
    const own = files.filter(({ path }) => groupOf(path) === group);
    const asBefore = own.every(({ path }) => kept.has(path)) ? ', as before' : '';
    terminal.out(`  ${group.padEnd(10)}${inFiles(own.length)}${asBefore}`);
  }
  if (carried.dropped.length > 0) {
    terminal.out(['warn', `  Left out, ${carried.because}: ${carried.dropped.join(', ')}.`]);
    terminal.out('  Run build without --only to make them anew.');
  }
}
