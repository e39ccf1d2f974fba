import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { terminalOn } from '../../cli/terminal.js';
import type { Ran } from './program.js';

type Program = typeof import('../../cli/run.js');

let program: Promise<Program> | undefined;

/** What a call prints, as bytes: an archive is no text. */
export interface RanBytes extends Omit<Ran, 'out'> {
  readonly out: Buffer;
}

/**
 * Runs the built program in this process: a new one takes half a second to begin. It reads no standard input and is no
 * terminal unless answers are given.
 */
export async function callBytes(
  cwd: string,
  args: readonly string[],
  answers: readonly string[] | null = null,
): Promise<RanBytes> {
  program ??= import(/* @vite-ignore */ pathToFileURL(resolve('dist/cli/run.js')).href) as Promise<Program>;
  const { run } = await program;
  const out: Buffer[] = [];
  const err: string[] = [];
  const left = [...(answers ?? [])];
  const ask = async (question: string) => {
    err.push(`${question}\n`);
    return left.shift() ?? '';
  };
  const terminal = terminalOn(
    { write: (part) => out.push(Buffer.from(part as string)) },
    { write: (part) => err.push(String(part)) },
    {},
    answers && ask,
  );
  const before = process.cwd();
  process.chdir(cwd);
  try {
    const code = await run(args, terminal);
    return { code, out: Buffer.concat(out), err: err.join('') };
  } finally {
    process.chdir(before);
  }
}

export async function call(cwd: string, ...args: readonly string[]): Promise<Ran> {
  const { out, ...rest } = await callBytes(cwd, args);
  return { ...rest, out: out.toString('utf8') };
}
