import { describe, expect, it } from 'vitest';
import { terminalOn } from '../../cli/terminal.js';

function printed(isTTY: boolean, env: NodeJS.ProcessEnv, text: string): string {
  let all = '';
  const stream = { isTTY, write: (part: string | Uint8Array) => (all += part) };
  terminalOn(stream, stream, env).out(['bad', text], ' plain');
  return all;
}

describe('the terminal', () => {
  it('has colour when it is one', () => {
    expect(printed(true, {}, 'fails')).toBe('\u001b[31mfails\u001b[0m plain\n');
  });

  it.each([
    ['off a terminal', false, {}],
    ['with NO_COLOR set', true, { NO_COLOR: '1' }],
    ['on a dumb terminal', true, { TERM: 'dumb' }],
  ])('has none %s', (_, isTTY, env) => {
    expect(printed(isTTY, env, 'fails')).toBe('fails plain\n');
  });

  it('shows what would steer it instead of obeying', () => {
    expect(printed(false, {}, 'a\u001b[2Jb\u0007\u009b\u202ec\r')).toBe(
      'a\\u001b[2Jb\\u0007\\u009b\\u202ec\\u000d plain\n',
    );
    expect(printed(false, {}, 'Bögen 6′10″\tund\n')).toBe('Bögen 6′10″\tund\n plain\n');
  });
});
