import type { Entry } from './commands.js';
import { UsageError } from './exit.js';
import { didYouMean } from './suggest.js';

export const unknownCommand = (typed: string, known: readonly string[]): UsageError =>
  new UsageError(`There is no command ${typed}.`, didYouMean(typed, known, `There are: ${known.join(', ')}.`));

const dashed = (name: string): string => (name.length === 1 ? `-${name}` : `--${name}`);

/** yargs's own messages in our words: what is wrong with the call, and how to put it right. */
export function usageError(message: string, args: readonly string[], called: Entry | undefined): UsageError {
  const command = args[0]?.startsWith('-') ? '' : ` ${args[0]}`;
  const help = `"ringcourse${command} --help" tells how it is called.`;
  const known = [...(called?.options ?? []), 'help', 'version'].map(dashed);
  const noOption = (typed: string) =>
    new UsageError(`There is no option ${typed} here.`, didYouMean(typed, known, help));

  const [, kind, rest = ''] = /^(Unknown|Missing required|Not enough)[^:]*: ?(.*)/s.exec(message) ?? [];
  const name = rest.replace(/,.*/s, '');
  const typed = args.map((arg) => arg.replace(/=.*/s, '')).filter((arg) => arg.startsWith('-') && arg !== '--');
  const strange = typed.find((arg) => (arg.startsWith('--') ? !known.includes(arg) : arg.includes(name)));
  if (kind === 'Unknown') {
    return strange === undefined || args.includes(name)
      ? new UsageError(`${JSON.stringify(name)} is one name too many.`, help)
      : noOption(strange);
  }
  if (kind === 'Missing required') {
    // A mistyped option is the likelier trouble than a forgotten one.
    return strange === undefined ? new UsageError(`Option ${dashed(name)} is missing.`, help) : noOption(strange);
  }
  if (kind === 'Not enough') {
    if (message.includes('non-option')) {
      const alone = /^\S+ <file>$/.test(called?.usage ?? '');
      const missing = alone ? 'The name of a file is missing.' : `A name is missing: ringcourse ${called?.usage}.`;
      return new UsageError(missing, help);
    }
    return new UsageError(`Option ${dashed(name)} needs a value.`, help);
  }
  return new UsageError(message, help);
}
