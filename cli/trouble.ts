import { EXIT, type ExitCode, FileError, UsageError } from './exit.js';
import { DescriptionError } from './library.js';
import { printProblems } from './print/problems.js';
import type { Terminal } from './terminal.js';

/** Tells what stopped a command, without a stack trace, and gives the exit code it stands for. */
export function tellTrouble(terminal: Terminal, error: unknown): ExitCode {
  if (process.env.RINGCOURSE_DEBUG === '1' && error instanceof Error) terminal.err(error.stack ?? error.message);
  if (error instanceof DescriptionError) {
    printProblems(terminal, error.problems);
    return EXIT.description;
  }
  if (error instanceof UsageError || error instanceof FileError) {
    terminal.err(['bad', 'ringcourse'], `: ${error.message}`);
    terminal.err('    ', error.mend);
    return error instanceof UsageError ? EXIT.usage : EXIT.file;
  }
  const message = error instanceof Error ? error.message : String(error);
  terminal.err(['bad', 'ringcourse'], `: unexpected error: ${message}`);
  terminal.err('    This is a fault of ringcourse and not of your description. Please report it with this line and');
  terminal.err('    the description; RINGCOURSE_DEBUG=1 in the environment adds where in the program it happened.');
  return EXIT.fault;
}
