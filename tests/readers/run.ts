import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Reader {
  readonly command: string;
  readonly debianPackage: string;
  readonly env?: Readonly<Record<string, string>>;
}

export interface InputFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * Hands files to an outside program and returns what it printed.
 * @throws Error when the program isn't there (a missing reader fails the test) or when it refuses a file.
 */
export function readWith(
  program: Reader & { readonly args: readonly string[] },
  file: InputFile,
  ...more: readonly InputFile[]
): string {
  return inFolder(file, (path, folder) => {
    for (const { name, bytes } of more) writeFileSync(join(folder, name), bytes);
    const paths = [path, ...more.map(({ name }) => join(folder, name))];
    return runReader(program, [...program.args, ...paths], [file, ...more].map(({ name }) => name).join(', ')).stdout;
  });
}

/**
 * Hands a file to an outside program that writes another one, and returns that.
 * @throws Error when the program isn't there, refuses the file or writes nothing.
 */
export function convertWith(
  program: Reader & { readonly args: (input: string, output: string) => readonly string[] },
  file: InputFile,
  output: string,
): Uint8Array {
  return inFolder(file, (path, folder) => {
    const { stderr } = runReader(program, program.args(path, join(folder, output)), file.name);
    try {
      return new Uint8Array(readFileSync(join(folder, output)));
    } catch {
      throw new Error(`${program.command} made nothing of ${file.name}: ${stderr.trim()}`);
    }
  });
}

/** Puts a file into a folder of its own, which is gone afterwards. */
export function inFolder<T>(file: InputFile, use: (path: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'ringcourse-reader-'));
  try {
    const path = join(folder, file.name);
    writeFileSync(path, file.bytes);
    return use(path, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** @throws Error when the program isn't there or refuses the file of that name. */
export function runReader(program: Reader, args: readonly string[], name: string): { stdout: string; stderr: string } {
  const run = spawnSync(program.command, [...args], {
    encoding: 'utf8',
    timeout: 180_000,
    maxBuffer: 1 << 28,
    env: { ...process.env, ...program.env },
  });
  const missing = run.error && 'code' in run.error && run.error.code === 'ENOENT';
  if (missing || /No module named/.test(run.stderr ?? ''))
    throw new Error(`The outside reader ${program.command} is missing: apt-get install ${program.debianPackage}`);
  if (run.error) throw run.error;
  if (run.status !== 0)
    throw new Error(
      `${program.command} refused ${name} (exit ${run.status}): ${run.stderr.trim() || run.stdout.trim()}`,
    );
  return { stdout: run.stdout, stderr: run.stderr };
}
