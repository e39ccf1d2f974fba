import yargs, { type Argv } from 'yargs';
import type { Command } from './command.js';
import { build } from './commands/build.js';
import { check } from './commands/check.js';
import { start } from './commands/new.js';
import { picture } from './commands/picture.js';
import { schema } from './commands/schema.js';
import { table } from './commands/table.js';
import { tables } from './commands/tables.js';
import { EXIT, type ExitCode } from './exit.js';
import type { Terminal } from './terminal.js';
import { tellTrouble } from './trouble.js';
import { unknownCommand, usageError } from './usage.js';
import { version } from './version.js';

type Run = (terminal: Terminal) => Promise<ExitCode>;

interface Entry {
  readonly name: string;
  readonly options: readonly string[];
  /** Adds the command to yargs; `choose` learns what to run, so that parsing is over before anything is done. */
  readonly addTo: (argv: Argv, choose: (run: Run) => void) => Argv;
}

const entry = <A>(command: Command<A>): Entry => ({
  name: command.usage.replace(/ .*/, ''),
  options: Object.keys(command.options),
  addTo: (argv, choose) =>
    argv.command({
      command: command.usage,
      describe: command.describe,
      builder: (argv: Argv) =>
        Object.entries(command.names)
          .reduce((argv, [name, kind]) => argv.positional(name, kind), argv)
          .options(command.options),
      handler: (given) => choose((terminal) => command.run(given as A, terminal)),
    }),
});

const COMMANDS = [entry(build), entry(check), entry(picture), entry(start), entry(schema), entry(table), entry(tables)];

interface Parsed {
  readonly run: Run | undefined;
  /** The help or version that was asked for. */
  readonly text: string;
}

function parse(args: readonly string[]): Parsed {
  const parsed: { run: Run | undefined; text: string } = { run: undefined, text: '' };
  const options = COMMANDS.find(({ name }) => name === args[0])?.options ?? [];
  const bare = yargs([])
    .scriptName('ringcourse')
    .usage('$0 <command>\n\nCast-block dome houses: one description in; solids, drawings, tables and checks out.')
    .epilogue('Exit codes: 0 fine, 1 our fault, 2 usage, 3 description wrong, 4 a check fails, 5 file trouble.')
    .detectLocale(false)
    .wrap(100)
    .exitProcess(false)
    .showHelpOnFail(false)
    .parserConfiguration({
      'boolean-negation': false,
      'camel-case-expansion': false,
      'dot-notation': false,
      'duplicate-arguments-array': false,
      'greedy-arrays': false,
      'parse-numbers': false,
      'parse-positional-numbers': false,
    })
    .strict()
    .help()
    .version(version)
    .fail((message, error) => {
      if (error !== undefined && error.name !== 'YError') throw error;
      throw usageError(message ?? error.message, args, options);
    });
  const argv = COMMANDS.reduce(
    (argv, { addTo }) =>
      addTo(argv, (run) => {
        parsed.run = run;
      }),
    bare,
  );
  argv.parse([...args], {}, (_error: unknown, _argv: unknown, output: string) => {
    parsed.text = output;
  });
  return parsed;
}

/** Runs one call of the command line and returns its exit code; never throws. */
export async function run(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  try {
    const [first] = args;
    if (first === undefined) {
      terminal.err(parse(['--help']).text);
      return EXIT.usage;
    }
    const names = COMMANDS.map(({ name }) => name);
    if (!first.startsWith('-') && first !== 'help' && !names.includes(first)) throw unknownCommand(first, names);
    const { run, text } = parse(args);
    if (text !== '') terminal.out(text);
    return run === undefined ? EXIT.fine : await run(terminal);
  } catch (error) {
    return tellTrouble(terminal, error);
  }
}
