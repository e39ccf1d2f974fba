import { spawn, spawnSync } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { terminalOn } from '../../cli/terminal.js';
import { tellTrouble } from '../../cli/trouble.js';
import { temporaryFolder } from './folder/helpers.js';
import { HOUSE } from './houses.js';
import { MAIN } from './program.js';

const temporary = temporaryFolder();

function told(error: unknown): { code: number; text: string } {
  let text = '';
  const stream = { write: (part: string | Uint8Array) => (text += part) };
  const code = tellTrouble(terminalOn(stream, stream, {}), error);
  return { code, text };
}

describe('an unexpected error', () => {
  afterEach(() => vi.unstubAllEnvs());

  it('is our fault: exit 1, a short message, how to report it, no stack trace', () => {
    vi.stubEnv('RINGCOURSE_DEBUG', '');
    const { code, text } = told(new TypeError('x is not a function'));
    expect(code).toBe(1);
    expect(text).toMatch(/^ringcourse: unexpected error: x is not a function\n {4}This is a fault of ringcourse/);
    expect(text).toContain('report');
    expect(text).not.toContain('trouble.test');
    expect(told('a text').text).toContain('unexpected error: a text');
  });

  it('tells where in the program it happened when asked', () => {
    vi.stubEnv('RINGCOURSE_DEBUG', '1');
    expect(told(new TypeError('x is not a function')).text).toContain('trouble.test');
  });
});

describe('the program', () => {
  it('ends quietly when its reader has seen enough', () => {
    const line = `set -o pipefail; "${process.execPath}" "${MAIN}" schema | (exec <&-; sleep 2)`;
    const { status, stderr } = spawnSync('bash', ['-c', line], { encoding: 'utf8' });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });

  it('tells by its exit code that its results were lost on a full disk', () => {
    const { status } = spawnSync('bash', ['-c', `"${process.execPath}" "${MAIN}" schema > /dev/full`]);
    expect(status).toBe(5);
  });

  it.each(['SIGINT', 'SIGTERM'] as const)('stopped by %s while it computes leaves nothing behind', async (signal) => {
    writeFileSync(join(temporary.path, 'house.yaml'), HOUSE);
    const child = spawn(process.execPath, [MAIN, 'build', 'house.yaml', '-o', 'deep/out'], { cwd: temporary.path });
    child.stderr.once('data', () => child.kill(signal));
    const ended = await new Promise((done) => child.on('exit', (_, by) => done(by)));
    expect(ended).toBe(signal);
    expect(readdirSync(temporary.path)).toEqual(['house.yaml']);
  });
});
