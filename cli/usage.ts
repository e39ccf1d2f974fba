import { UsageError } from './exit.js';
import { didYouMean } from './suggest.js';

const OPTIONS = ['output', 'only', 'csv', 'help', 'version'] as const;

export const unknownCommand = (typed: string, known: readonly string[]): UsageError =>
  new UsageError(`There is no command ${typed}.`, didYouMean(typed, known, `There are: ${known.join(', ')}.`));

const dashed = (name: string): string => (name.length === 1 ? `-${name}` : `--${name}`);

const isOption = (name: string, args: readonly string[]): boolean =>
  args.some((arg) => arg.startsWith('-') && arg.replace(/^-+/, '').replace(/=.*/s, '').includes(name));

/** yargs's own messages in our words: what is wrong with the call, and how to put it right. */
export function usageError(message: string, args: readonly string[]): UsageError {
  const help = `"ringcourse ${args[0]?.startsWith('-') ? '' : `${args[0]} `}--help" tells how it is called.`;
  const [, kind, rest = ''] = /^(Unknown|Missing required|Not enough|Invalid|)[^:]*:? ?(.*)/s.exec(message) ?? [];
  const names = rest.split(', ');
  if (kind === 'Unknown') {
    const [name = ''] = names;
    return isOption(name, args)
      ? new UsageError(
          `There is no option ${dashed(name)}.`,
          didYouMean(name, OPTIONS, help).replace(/(mean )(\w+\?)/, '$1--$2'),
        )
      : new UsageError(`${JSON.stringify(name)} is one name too many.`, help);
  }
  if (kind === 'Missing required') return new UsageError(`Option ${names.map(dashed).join(' and ')} is missing.`, help);
  if (kind === 'Not enough') {
    return message.includes('non-option')
      ? new UsageError('The name of a file is missing.', help)
      : new UsageError(`Option ${names.map(dashed).join(' and ')} needs a value.`, help);
  }
  return new UsageError(message, help);
}
