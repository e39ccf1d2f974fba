import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { apiEntries, apiReference } from '../tools/api-reference.js';

const INDEX = resolve('dist/lib/index.d.ts');

describe('the reference of the library', () => {
  it('is made from what the public door exports', async () => {
    await expect(apiReference(INDEX)).toMatchFileSnapshot('../../lib/API.md');
  });

  it('has a comment for each name', () => {
    expect(apiEntries(INDEX).length).toBeGreaterThan(100);
    expect(
      apiEntries(INDEX)
        .filter(({ doc }) => doc === '')
        .map(({ name }) => name),
    ).toEqual([]);
  });
});
