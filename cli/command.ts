import type { Options, PositionalOptions } from 'yargs';
import type { ExitCode } from './exit.js';
import type { Terminal } from './terminal.js';

/** One command: what its call takes, and what it does. `run` may throw what `cli/trouble.ts` turns into an exit code. */
export interface Command<Arguments> {
  /** Calls that work as they stand, with what each does; help begins with them. */
  readonly examples: readonly (readonly [call: string, does: string])[];
  readonly names: Readonly<Record<string, PositionalOptions>>;
  readonly options: Readonly<Record<string, Options>>;
  readonly run: (given: Arguments, terminal: Terminal) => Promise<ExitCode>;
}

/** The name that every command on a description takes. */
export const FILE = {
  file: { type: 'string', demandOption: true, describe: 'The description, YAML or JSON; - for standard input' },
} as const satisfies Record<string, PositionalOptions>;

/** What every command takes. */
export const COMMON = {
  json: { type: 'boolean', default: false, describe: 'Print results, and troubles, as JSON on standard output' },
  quiet: { type: 'boolean', default: false, describe: 'Leave out progress and hints' },
} as const satisfies Record<string, Options>;

export interface CommonArguments {
  json: boolean;
  quiet: boolean;
}

/** Values put in the place of what the description says. */
export const SET = {
  set: {
    type: 'string',
    array: true,
    requiresArg: true,
    describe: 'Put a value in: domes.hall.radius=2.5; may be given many times',
  },
} as const satisfies Record<string, Options>;

/** How tables are written as CSV. */
export const COMMA = {
  'decimal-comma': {
    type: 'boolean',
    default: false,
    describe: 'Write CSV with decimal commas and semicolons between cells',
  },
} as const satisfies Record<string, Options>;
