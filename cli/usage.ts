import type { Entry } from './commands.js';
import { UsageError } from './exit.js';
import { didYouMean } from './suggest.js';
import * as texts from './texts/options.js';

export const unknownCommand = (typed: string, known: readonly string[]): UsageError =>
  new UsageError(texts.thereIsNoCommand(typed), didYouMean(typed, known, texts.thereAreThese(known.join(', '))));

const dashed = (name: string): string => (name.length === 1 ? `-${name}` : `--${name}`);

/** yargs's own messages in our words: what is wrong with the call, and how to put it right. */
export function usageError(message: string, args: readonly string[], called: Entry | undefined): UsageError {
  const command = args[0]?.startsWith('-') ? '' : ` ${args[0]}`;
  const help = texts.helpTellsHow(command);
  const known = [...(called?.options ?? []), 'help', 'version'].map(dashed);
  const noOption = (typed: string) => new UsageError(texts.thereIsNoOption(typed), didYouMean(typed, known, help));

  const [, kind, rest = ''] = /^(Unknown|Missing required|Not enough)[^:]*: ?(.*)/s.exec(message) ?? [];
  const name = rest.replace(/,.*/s, '');
  const typed = args.map((arg) => arg.replace(/=.*/s, '')).filter((arg) => arg.startsWith('-') && arg !== '--');
  const strange = typed.find((arg) => (arg.startsWith('--') ? !known.includes(arg) : arg.includes(name)));
  if (kind === 'Unknown') {
    return strange === undefined || args.includes(name)
      ? new UsageError(texts.oneNameTooMany(JSON.stringify(name)), help)
      : noOption(strange);
  }
  if (kind === 'Missing required') {
    // A mistyped option is the likelier trouble than a forgotten one.
    return strange === undefined ? new UsageError(texts.optionIsMissing(dashed(name)), help) : noOption(strange);
  }
  if (kind === 'Not enough') {
    if (message.includes('non-option')) {
      const alone = /^\S+ <file>$/.test(called?.usage ?? '');
      const missing = alone ? texts.fileNameIsMissing : texts.nameIsMissing(called?.usage);
      return new UsageError(missing, help);
    }
    return new UsageError(texts.optionNeedsValue(dashed(name)), help);
  }
  return new UsageError(message, help);
}
