import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Hands a file to an outside program and returns what it printed.
 * @throws Error when the program isn't there (a missing reader fails the test) or when it refuses the file.
 */
export function readWith(
  program: { readonly command: string; readonly args: readonly string[]; readonly debianPackage: string },
  file: { readonly name: string; readonly bytes: Uint8Array },
): string {
  const folder = mkdtempSync(join(tmpdir(), 'ringcourse-reader-'));
  try {
    const path = join(folder, file.name);
    writeFileSync(path, file.bytes);
    const run = spawnSync(program.command, [...program.args, path], {
      encoding: 'utf8',
      timeout: 60_000,
      maxBuffer: 1 << 28,
    });
    const missing = run.error && 'code' in run.error && run.error.code === 'ENOENT';
    if (missing || /No module named/.test(run.stderr ?? ''))
      throw new Error(`The outside reader ${program.command} is missing: apt-get install ${program.debianPackage}`);
    if (run.error) throw run.error;
    if (run.status !== 0)
      throw new Error(
        `${program.command} refused ${file.name} (exit ${run.status}): ${run.stderr.trim() || run.stdout.trim()}`,
      );
    return run.stdout;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
