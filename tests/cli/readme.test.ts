import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { descriptionKeys, type KeyDoc } from '../../lib/description/json-schema.js';

const README = readFileSync('cli/README.md', 'utf8');

const cell = (text: string): string => text.replaceAll('|', '\\|').replace(/\s+/g, ' ').trim();

function row({ path, about, kind, required, default: standard, range }: KeyDoc): string {
  const otherwise = required ? 'required' : standard === '' ? '' : `\`${standard}\``;
  return `| \`${path}\` | ${[about, kind, otherwise, range].map(cell).join(' | ')} |`;
}

/** The readme with its table of keys made from the schema. */
function withKeys(readme: string): string {
  const head = '| key | meaning | kind | default | range |\n| --- | --- | --- | --- | --- |';
  const table = [head, ...descriptionKeys().map(row)].join('\n');
  return readme.replace(
    /(<!-- keys: .* -->\n)[\s\S]*(<!-- end of keys -->)/,
    (_, start, end) => `${start}\n${table}\n\n${end}`,
  );
}

describe('the readme of the command line', () => {
  it('lists every key of the description as the schema has it', async () => {
    expect(descriptionKeys().length).toBeGreaterThan(60);
    await expect(withKeys(README)).toMatchFileSnapshot('../../cli/README.md');
  });
});
