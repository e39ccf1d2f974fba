import type { Argv } from 'yargs';
import type { ExitCode } from './exit.js';
import type { Terminal } from './terminal.js';

/** One command: how it is called, and what it does. `run` may throw what `cli/run.ts` turns into an exit code. */
export interface Command<Arguments> {
  /** As yargs reads it, `build <file>`. */
  readonly usage: string;
  readonly describe: string;
  readonly options: (argv: Argv) => Argv<Arguments>;
  readonly run: (given: Arguments, terminal: Terminal) => Promise<ExitCode>;
}

/** The positional every command on a description shares. */
export const withFile = (argv: Argv): Argv<{ file: string }> =>
  argv.positional('file', { type: 'string', demandOption: true, describe: 'The description, YAML or JSON' });
