import type { Options, PositionalOptions } from 'yargs';
import type { ExitCode } from './exit.js';
import type { Terminal } from './terminal.js';

/** One command: how it is called, and what it does. `run` may throw what `cli/trouble.ts` turns into an exit code. */
export interface Command<Arguments> {
  /** As yargs reads it, `build <file>`. */
  readonly usage: string;
  readonly describe: string;
  readonly names: Readonly<Record<string, PositionalOptions>>;
  readonly options: Readonly<Record<string, Options>>;
  readonly run: (given: Arguments, terminal: Terminal) => Promise<ExitCode>;
}

/** The name that every command on a description takes. */
export const FILE = {
  file: { type: 'string', demandOption: true, describe: 'The description, YAML or JSON' },
} as const satisfies Record<string, PositionalOptions>;
