import type { Problem } from '../library.js';
import type { Terminal } from '../terminal.js';
import * as texts from '../texts/trouble.js';

const count = (n: number): string => texts.problemsCount(n);

/** All problems of a description, in the form editors and terminals turn into links, each with how to mend it. */
export function printProblems(terminal: Terminal, problems: readonly Problem[]): void {
  for (const { where, code, path, message, mend } of problems) {
    const place = where === undefined ? 'description' : `${where.file}:${where.line}:${where.column}`;
    const key = path === '' ? '' : `${path}: `;
    terminal.err(['strong', `${place}:`], ' ', ['bad', code], `: ${key}${message}`);
    terminal.err('    ', mend);
  }
  terminal.err(texts.nothingWasWritten(count(problems.length)));
}
