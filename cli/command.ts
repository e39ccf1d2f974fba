import type { Options, PositionalOptions } from 'yargs';
import type { ExitCode } from './exit.js';
import type { Terminal } from './terminal.js';
import * as texts from './texts/options.js';

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
  file: { type: 'string', demandOption: true, describe: texts.descriptionYamlOrJson },
} as const satisfies Record<string, PositionalOptions>;

/** What every command takes. */
export const COMMON = {
  json: { type: 'boolean', default: false, describe: texts.printResultsAndTroubles },
  quiet: { type: 'boolean', default: false, describe: texts.leaveOutProgress },
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
    describe: texts.putValueInDomes,
  },
} as const satisfies Record<string, Options>;

/** How tables are written as CSV. */
export const COMMA = {
  'decimal-comma': {
    type: 'boolean',
    default: false,
    describe: texts.writeCsvWithDecimal,
  },
} as const satisfies Record<string, Options>;
