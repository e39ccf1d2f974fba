import type { Argv } from 'yargs';
import type { Command } from './command.js';
import type { ExitCode } from './exit.js';
import type { Completed } from './shells/completion.js';
import { showStdio } from './stdio.js';
import { quietly, type Terminal } from './terminal.js';
import * as buildTexts from './texts/build.js';
import * as firstStepsTexts from './texts/first-steps.js';
import * as housesTexts from './texts/houses.js';
import * as lookTexts from './texts/look.js';

export type Run = (terminal: Terminal) => Promise<ExitCode>;

/** A command as the list of all tells of it; what it takes and does is loaded when it is called. */
export interface Listed {
  /** As yargs reads it, `build <file>`. */
  readonly usage: string;
  readonly describe: string;
  readonly load: () => Promise<Command<never>>;
}

/** Every command, in the order in which they are met. */
export const LISTED: readonly Listed[] = [
  {
    usage: 'new <file>',
    describe: firstStepsTexts.writeCommentedDescription,
    load: async () => (await import('./commands/new.js')).start,
  },
  {
    usage: 'check <file>',
    describe: lookTexts.readDescriptionAndRun,
    load: async () => (await import('./commands/check.js')).check,
  },
  {
    usage: 'build <file>',
    describe: buildTexts.computeHouseAndWrite,
    load: async () => (await import('./commands/build.js')).build,
  },
  {
    usage: 'watch <file>',
    describe: buildTexts.buildAndBuildAgain,
    load: async () => (await import('./commands/watch.js')).watch,
  },
  {
    usage: 'vary <file>',
    describe: housesTexts.computeRowOfHouses,
    load: async () => (await import('./commands/vary.js')).vary,
  },
  {
    usage: 'compare <before> <after>',
    describe: housesTexts.tellWhatChangedBetween,
    load: async () => (await import('./commands/compare.js')).compare,
  },
  {
    usage: 'tables',
    describe: lookTexts.listTablesOfHouse,
    load: async () => (await import('./commands/tables.js')).tables,
  },
  {
    usage: 'table <file> <name>',
    describe: lookTexts.printOneTable,
    load: async () => (await import('./commands/table.js')).table,
  },
  {
    usage: 'picture <file>',
    describe: lookTexts.drawHouseAsPng,
    load: async () => (await import('./commands/picture.js')).picture,
  },
  {
    usage: 'schema',
    describe: firstStepsTexts.printJsonSchema,
    load: async () => (await import('./commands/schema.js')).schema,
  },
  {
    usage: 'completion <shell>',
    describe: firstStepsTexts.printScriptThatTeaches,
    load: async () => (await import('./commands/completion.js')).completion,
  },
];

export const nameOf = ({ usage }: Listed): string => usage.replace(/ .*/, '');

/** A command as the program knows it once it is loaded. */
export interface Entry extends Listed {
  readonly name: string;
  readonly examples: Command<never>['examples'];
  readonly options: readonly string[];
  /** Those that may be given many times. */
  readonly manyTimes: readonly string[];
  readonly completed: Completed;
  /** Adds the command to yargs; `choose` learns what to run, so that parsing is over before anything is done. */
  readonly addTo: (argv: Argv, choose: (run: Run) => void) => Argv;
}

/** Calls under one another, what each does beside it. */
export function exampleLines(examples: Command<never>['examples']): string {
  const width = Math.max(...examples.map(([call]) => call.length));
  return examples.map(([call, does]) => `ringcourse ${call.padEnd(width)}  ${does}`).join('\n');
}

/** Loads what a command takes and does. */
export async function entryOf(listed: Listed): Promise<Entry> {
  const command = await listed.load();
  const name = nameOf(listed);
  const words = await wordsOf(command);
  const aliases = Object.values(command.options).flatMap(({ alias }) => (alias === undefined ? [] : [alias].flat()));
  return {
    ...listed,
    name,
    examples: command.examples,
    options: [...Object.keys(command.options), ...(aliases as string[])],
    manyTimes: Object.keys(command.options).filter((option) => command.options[option]?.array === true),
    completed: {
      name,
      describe: listed.describe,
      options: Object.entries(command.options).flatMap(([option, { type, describe, alias }]) =>
        [option, ...((alias === undefined ? [] : [alias].flat()) as string[])].map((one) => ({
          name: one.length === 1 ? `-${one}` : `--${one}`,
          describe: describe ?? '',
          takesValue: type !== 'boolean',
        })),
      ),
      names: words,
    },
    addTo: (argv, choose) =>
      argv.command({
        command: listed.usage,
        describe: listed.describe,
        builder: (argv: Argv) =>
          Object.entries(command.names)
            .reduce((argv, [own, kind]) => argv.positional(own, kind), argv)
            .usage(`${exampleLines(command.examples)}\n\n${listed.describe}\n\n  ringcourse ${listed.usage} [options]`)
            .options(command.options),
        handler: (given) => {
          const shown = showStdio(given);
          choose((terminal) => command.run(shown as never, shown.quiet === true ? quietly(terminal) : terminal));
        },
      }),
  };
}

/** Words that may stand in the place of each name; every other name is a file's, `null`. */
async function wordsOf({ names }: Command<never>): Promise<(readonly string[] | null)[]> {
  const tables = 'name' in names ? (await (await import('./library.js')).listing()).TABLES.map(({ id }) => id) : [];
  const shells = 'shell' in names ? (await import('./shells/completion.js')).SHELLS : [];
  const words: Readonly<Record<string, readonly string[]>> = { name: tables, shell: shells };
  return Object.keys(names).map((own) => words[own] ?? null);
}
