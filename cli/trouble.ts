import { EXIT, type ExitCode, FileError, UsageError } from './exit.js';
import { DescriptionError } from './library.js';
import { printJson } from './print/json.js';
import { printProblems } from './print/problems.js';
import type { Terminal } from './terminal.js';
import * as texts from './texts/trouble.js';

/**
 * Tells what stopped a command, without a stack trace, and gives the exit code it stands for.
 * @param json whether to tell it on standard output as well, as an object of `problems` or `trouble`
 */
export function tellTrouble(terminal: Terminal, error: unknown, json = false): ExitCode {
  if (process.env.RINGCOURSE_DEBUG === '1' && error instanceof Error) terminal.err(error.stack ?? error.message);
  if (error instanceof DescriptionError) {
    if (json) printJson(terminal, { problems: error.problems });
    printProblems(terminal, error.problems);
    return EXIT.description;
  }
  if (error instanceof UsageError || error instanceof FileError) {
    const code = error instanceof UsageError ? EXIT.usage : EXIT.file;
    if (json) printJson(terminal, { trouble: { exit: code, message: error.message, mend: error.mend } });
    terminal.err(['bad', 'ringcourse'], `: ${error.message}`);
    terminal.err('    ', error.mend);
    return code;
  }
  const message = error instanceof Error ? error.message : String(error);
  if (json) printJson(terminal, { trouble: { exit: EXIT.fault, message, mend: '' } });
  terminal.err(['bad', 'ringcourse'], texts.unexpectedError(message));
  terminal.err(texts.faultOfOurs);
  terminal.err(texts.faultWithDebug);
  return EXIT.fault;
}
