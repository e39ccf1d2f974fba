import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { CODES } from '../../lib/base/texts/problem-codes.js';

const cell = (text: string): string => text.replaceAll('|', '\\|');

it('the table of problems is that of the codes', async () => {
  const rows = Object.entries(CODES).map(
    ([code, { cause, mend }]) => `| \`${code}\` | ${cell(cause)} | ${cell(mend)} |`,
  );
  const table = `| code | cause | mend |\n| --- | --- | --- |\n${rows.join('\n')}`;
  const written = readFileSync('cli/PROBLEMS.md', 'utf8').replace(
    /(<!-- codes: .* -->\n)[\s\S]*(<!-- end of codes -->)/,
    (_, start, end) => `${start}\n${table}\n\n${end}`,
  );
  await expect(written).toMatchFileSnapshot('../../cli/PROBLEMS.md');
});
