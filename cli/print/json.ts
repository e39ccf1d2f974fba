import type { Terminal } from '../terminal.js';

/** One result for programs, on standard output. */
export const printJson = (terminal: Terminal, result: unknown): void =>
  terminal.raw(`${JSON.stringify(result, null, 2)}\n`);
