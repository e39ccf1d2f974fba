import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from './folder/helpers.js';
import { call } from './in-process.js';

const temporary = temporaryFolder();

/** What is completed, and what must be among the answers. */
const LINES: readonly (readonly [line: string, answers: readonly string[]])[] = [
  ['ringcourse ch', ['check']],
  ['ringcourse build --dr', ['--dry-run']],
  ['ringcourse table house.yaml mo', ['moulds', 'mould-copies']],
  ['ringcourse build --only tables ho', ['house.yaml']],
  ['ringcourse completion z', ['zsh']],
];

async function script(shell: string): Promise<string> {
  const { code, out } = await call(temporary.path, 'completion', shell);
  expect(code).toBe(0);
  const path = join(temporary.path, `ringcourse.${shell}`);
  writeFileSync(path, out);
  writeFileSync(join(temporary.path, 'house.yaml'), '');
  return path;
}

const asked = (shell: string, ...args: string[]): string => {
  const { status, stdout, stderr } = spawnSync(shell, args, { cwd: temporary.path, encoding: 'utf8' });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  return stdout;
};

describe('completion', () => {
  it('bash completes commands, options, names of tables and files', async () => {
    const path = await script('bash');
    const lines = LINES.map(
      ([line]) => `COMP_WORDS=(${line}); COMP_CWORD=$((\${#COMP_WORDS[@]} - 1)); _ringcourse; echo "\${COMPREPLY[@]}"`,
    );
    const told = asked('bash', '-c', `source ${path}; ${lines.join('; ')}`);
    expect(told.trim().split('\n')).toEqual(LINES.map(([, answers]) => answers.join(' ')));
  });

  it('fish completes the same', async () => {
    const path = await script('fish');
    const lines = LINES.map(([line]) => `complete -C '${line}' | cut -f1 | string join ' '`);
    const told = asked('fish', '--no-config', '-c', `source ${path}; ${lines.join('; ')}; true`);
    expect(told.trim().split('\n')).toEqual(LINES.map(([, answers]) => answers.join(' ')));
  });

  it('zsh reads its script, which offers the same words', async () => {
    const path = await script('zsh');
    // zsh completes at a terminal alone, so its own functions for that are stood in for by ones that print.
    const stands =
      // biome-ignore lint/suspicious/noTemplateCurlyInString: the shell's own
      'compdef() { :; }; compadd() { shift; print -- $*; }; _files() { print FILES; }; _describe() { print -l -- ${(P)2}; }';
    const words = [
      'words=(ringcourse table house.yaml mo); CURRENT=4; _ringcourse',
      'words=(ringcourse build --); CURRENT=3; _ringcourse',
      "words=(ringcourse check ''); CURRENT=3; _ringcourse",
      'words=(ringcourse ch); CURRENT=2; _ringcourse',
    ];
    const told = asked('zsh', '-f', '-c', `${stands}; source ${path}; ${words.join('; ')}`);
    const [tables, options, files, ...commands] = told.trim().split('\n');
    expect(tables?.split(' ')).toEqual(expect.arrayContaining(['moulds', 'mould-copies', 'blocks']));
    expect(options?.split(' ')).toEqual(expect.arrayContaining(['--dry-run', '--output', '-o']));
    expect(files).toBe('FILES');
    expect(commands.some((line) => line.startsWith('check:'))).toBe(true);
  });

  it('a shell that it doesn’t know: exit 2, with the nearest', async () => {
    const { code, err } = await call(temporary.path, 'completion', 'fishh');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean fish?');
  });
});
