import yargs, { type Argv } from 'yargs';
import { entryOf, exampleLines, LISTED, nameOf, type Run } from './commands.js';
import { EXIT, type ExitCode } from './exit.js';
import { hideStdio } from './stdio.js';
import type { Terminal } from './terminal.js';
import * as texts from './texts/trouble.js';
import { tellTrouble } from './trouble.js';
import { unknownCommand, usageError } from './usage.js';
import { version } from './version.js';

/** What someone does first, second, third. */
const FIRST_CALLS = [
  ['new house.yaml', texts.writeDescriptionToStart],
  ['check house.yaml', texts.readItAndRun],
  ['build house.yaml -o house', texts.drawingsModelTables],
  ['vary house.yaml --set domes.room.radius=2.25..2.75/0.25', texts.compareRowOfSizes],
] as const;

interface Parsed {
  readonly run: Run | undefined;
  /** The help or version that was asked for. */
  readonly text: string;
}

async function parse(args: readonly string[]): Promise<Parsed> {
  const parsed: { run: Run | undefined; text: string } = { run: undefined, text: '' };
  // What the others take and do isn't loaded: their names and lines are enough to list them.
  const name = args[0] === 'help' ? args[1] : args[0];
  const listed = LISTED.find((one) => nameOf(one) === name);
  const called = listed && (await entryOf(listed));
  const manyTimes = called?.manyTimes ?? [];
  const bare = yargs([])
    .scriptName('ringcourse')
    .usage(texts.firstHelp(exampleLines(FIRST_CALLS)))
    .epilogue(texts.exitCodes)
    .detectLocale(false)
    .wrap(120)
    .exitProcess(false)
    .showHelpOnFail(false)
    .parserConfiguration({
      'boolean-negation': false,
      'camel-case-expansion': false,
      'dot-notation': false,
      'greedy-arrays': false,
      'parse-numbers': false,
      'parse-positional-numbers': false,
    })
    .middleware((argv) => lastOfEach(argv, manyTimes), true)
    .strict()
    .help()
    .version(version)
    .fail((message, error) => {
      if (error !== undefined && error.name !== 'YError') throw error;
      throw usageError(message ?? error.message, args, called);
    });
  const choose = (run: Run) => {
    parsed.run = run;
  };
  const argv = LISTED.reduce(
    (argv, one) =>
      one === listed && called
        ? called.addTo(argv, choose)
        : argv.command({ command: one.usage, describe: one.describe, handler: () => undefined }),
    bare as Argv,
  );
  argv.parse(hideStdio(args), {}, (_error: unknown, _argv: unknown, output: string) => {
    parsed.text = output;
  });
  return parsed;
}

/** Of an option that may not be given many times the last counts. */
function lastOfEach(argv: Record<string, unknown>, manyTimes: readonly string[]): void {
  for (const [name, value] of Object.entries(argv)) {
    if (Array.isArray(value) && name !== '_' && !manyTimes.includes(name)) argv[name] = value[value.length - 1];
  }
}

/** Runs one call of the command line and returns its exit code; never throws. */
export async function run(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  try {
    const [first] = args;
    if (first === undefined) {
      terminal.err((await parse(['--help'])).text);
      return EXIT.usage;
    }
    const names = LISTED.map(nameOf);
    if (!first.startsWith('-') && first !== 'help' && !names.includes(first)) throw unknownCommand(first, names);
    const { run, text } = await parse(args);
    if (text !== '') terminal.out(text);
    return run === undefined ? EXIT.fine : await run(terminal);
  } catch (error) {
    return tellTrouble(terminal, error, args.includes('--json'));
  }
}
