import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { MAIN } from './program.js';

const folder = mkdtempSync(join(tmpdir(), 'ringcourse-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** `new` at a terminal, which `script` of util-linux makes; `keys` are pressed one at each question. */
function asked(file: string, keys: readonly string[]): Promise<string> {
  const call = `'${process.execPath}' '${MAIN}' new '${join(folder, file)}'`;
  const child = spawn('script', ['-qec', call, '/dev/null'], { env: { ...process.env, TERM: 'xterm' } });
  let pressed = 0;
  let said = '';
  child.stdout.on('data', (part: Buffer) => {
    said += part;
    const questions = said.split(']: ').length - 1;
    for (; pressed < questions && pressed < keys.length; pressed++) child.stdin.write(keys[pressed] as string);
  });
  return new Promise((resolve) => child.once('close', () => resolve(said)));
}

describe('questions of new at a terminal', () => {
  it('end without a file when they are stopped', async () => {
    const said = await asked('stopped.yaml', ['\r', '\u0003', '\r', '\r', '\r']);
    expect(said).toContain('Inside radius');
    expect(said).not.toContain('Wrote');
    expect(existsSync(join(folder, 'stopped.yaml'))).toBe(false);
  });

  it('end without a file where the input ends', async () => {
    // Ctrl-D at the second question.
    const said = await asked('ended.yaml', ['\r', '\u0004', '\r', '\r', '\r']);
    expect(said).toContain('nothing was written');
    expect(said).not.toContain('Wrote');
    expect(existsSync(join(folder, 'ended.yaml'))).toBe(false);
  });

  it('take what is usual for return', async () => {
    expect(await asked('usual.yaml', Array(5).fill('\r'))).toContain('Wrote');
    expect(existsSync(join(folder, 'usual.yaml'))).toBe(true);
  });
});
