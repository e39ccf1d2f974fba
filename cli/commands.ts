import type { Argv } from 'yargs';
import type { Command } from './command.js';
import { build } from './commands/build.js';
import { check } from './commands/check.js';
import { compare } from './commands/compare.js';
import { completion } from './commands/completion.js';
import { start } from './commands/new.js';
import { picture } from './commands/picture.js';
import { schema } from './commands/schema.js';
import { table } from './commands/table.js';
import { tables } from './commands/tables.js';
import { vary } from './commands/vary.js';
import { watch } from './commands/watch.js';
import type { ExitCode } from './exit.js';
import { TABLES } from './library.js';
import { type Completed, SHELLS } from './shells/completion.js';
import { showStdio } from './stdio.js';
import { quietly, type Terminal } from './terminal.js';

export type Run = (terminal: Terminal) => Promise<ExitCode>;

/** A command as the program knows it. */
export interface Entry {
  readonly name: string;
  readonly usage: string;
  readonly describe: string;
  readonly examples: Command<never>['examples'];
  readonly options: readonly string[];
  /** Those that may be given many times. */
  readonly manyTimes: readonly string[];
  readonly completed: Completed;
  /** Adds the command to yargs; `choose` learns what to run, so that parsing is over before anything is done. */
  readonly addTo: (argv: Argv, choose: (run: Run) => void) => Argv;
}

/** Words that may stand in the place of a name; every other name is a file's. */
const WORDS: Readonly<Record<string, readonly string[]>> = { name: TABLES.map(({ id }) => id), shell: SHELLS };

/** Calls under one another, what each does beside it. */
export function exampleLines(examples: Command<never>['examples']): string {
  const width = Math.max(...examples.map(([call]) => call.length));
  return examples.map(([call, does]) => `ringcourse ${call.padEnd(width)}  ${does}`).join('\n');
}

const entry = <A>(command: Command<A>): Entry => {
  const name = command.usage.replace(/ .*/, '');
  const aliases = Object.values(command.options).flatMap(({ alias }) => (alias === undefined ? [] : [alias].flat()));
  return {
    name,
    usage: command.usage,
    describe: command.describe,
    examples: command.examples,
    options: [...Object.keys(command.options), ...(aliases as string[])],
    manyTimes: Object.keys(command.options).filter((option) => command.options[option]?.array === true),
    completed: {
      name,
      describe: command.describe,
      options: Object.entries(command.options).flatMap(([option, { type, describe, alias }]) =>
        [option, ...((alias === undefined ? [] : [alias].flat()) as string[])].map((one) => ({
          name: one.length === 1 ? `-${one}` : `--${one}`,
          describe: describe ?? '',
          takesValue: type !== 'boolean',
        })),
      ),
      names: Object.keys(command.names).map((own) => WORDS[own] ?? null),
    },
    addTo: (argv, choose) =>
      argv.command({
        command: command.usage,
        describe: command.describe,
        builder: (argv: Argv) =>
          Object.entries(command.names)
            .reduce((argv, [own, kind]) => argv.positional(own, kind), argv)
            .usage(
              `${exampleLines(command.examples)}\n\n${command.describe}\n\n  ringcourse ${command.usage} [options]`,
            )
            .options(command.options),
        handler: (given) => {
          const shown = showStdio(given) as unknown as A & { readonly quiet?: boolean };
          choose((terminal) => command.run(shown, shown.quiet ? quietly(terminal) : terminal));
        },
      }),
  };
};

/** Every command, in the order in which they are met. */
export const COMMANDS: readonly Entry[] = [
  entry(start),
  entry(check),
  entry(build),
  entry(watch),
  entry(vary),
  entry(compare),
  entry(tables),
  entry(table),
  entry(picture),
  entry(schema),
  entry(completion(() => COMMANDS.map(({ completed }) => completed))),
];
