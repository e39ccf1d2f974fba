import { UsageError } from './exit.js';
import { didYouMean } from './suggest.js';

export const unknownCommand = (typed: string, known: readonly string[]): UsageError =>
  new UsageError(`There is no command ${typed}.`, didYouMean(typed, known, `There are: ${known.join(', ')}.`));

const dashed = (name: string): string => (name.length === 1 ? `-${name}` : `--${name}`);

const isOption = (name: string, args: readonly string[]): boolean =>
  args.some((arg) => arg.startsWith('-') && arg.replace(/^-+/, '').replace(/=.*/s, '').includes(name));

/** yargs's own messages in our words: what is wrong with the call, and how to put it right. */
export function usageError(message: string, args: readonly string[], options: readonly string[]): UsageError {
  const command = args[0]?.startsWith('-') ? '' : ` ${args[0]}`;
  const help = `"ringcourse${command} --help" tells how it is called.`;
  const [, kind, rest = ''] = /^(Unknown|Missing required|Not enough)[^:]*: ?(.*)/s.exec(message) ?? [];
  const [name = ''] = rest.split(', ');
  if (kind === 'Missing required') return new UsageError(`Option ${dashed(name)} is missing.`, help);
  if (kind === 'Not enough') {
    return message.includes('non-option')
      ? new UsageError('The name of a file is missing.', help)
      : new UsageError(`Option ${dashed(name)} needs a value.`, help);
  }
  if (kind !== 'Unknown') return new UsageError(message, help);
  if (!isOption(name, args)) return new UsageError(`${JSON.stringify(name)} is one name too many.`, help);
  const known = [...options, 'help', 'version'].map(dashed);
  return new UsageError(`There is no option ${dashed(name)} here.`, didYouMean(dashed(name), known, help));
}
