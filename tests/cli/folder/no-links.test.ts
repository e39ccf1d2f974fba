import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { takeLock } from '../../../cli/folder/lock.js';
import { writeWhole } from '../../../cli/folder/whole.js';
import { temporaryFolder } from './helpers.js';

vi.mock('node:fs', async (original) => ({
  ...(await original<typeof import('node:fs')>()),
  linkSync: () => {
    throw Object.assign(new Error('no links here'), { code: 'EPERM' });
  },
}));

const temporary = temporaryFolder();
const at = (name: string) => join(temporary.path, name);

describe('a file system without hard links', () => {
  it('locks, and unlocks, once at a time', () => {
    const release = takeLock(at('lock'));
    expect(JSON.parse(readFileSync(at('lock'), 'utf8')).pid).toBe(process.pid);
    expect(readdirSync(temporary.path)).toEqual(['lock']);
    release();
    expect(existsSync(at('lock'))).toBe(false);
  });

  it('takes no name that is taken, and leaves nothing beside it', () => {
    writeWhole(at('a'), 'first', false);
    writeFileSync(at('b'), 'mine');
    expect(() => writeWhole(at('b'), 'second', false)).toThrow('EEXIST');
    expect(readFileSync(at('a'), 'utf8') + readFileSync(at('b'), 'utf8')).toBe('firstmine');
    expect(readdirSync(temporary.path).sort()).toEqual(['a', 'b']);
  });
});
