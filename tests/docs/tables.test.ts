import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { houseTables } from '../../lib/deliver/package.js';
import { TABLES } from '../../lib/deliver/tables.js';
import { readDescription } from '../../lib/description/read.js';
import type { Table } from '../../lib/documents/table.js';
import { HOUSE } from '../cli/houses.js';

/** A room and prices besides, so that no table is left without what it is for. */
const WHOLE = `${HOUSE}rooms: [{ id: studio, in: room, use: habitable }]\nprices: { currency: EUR }\n`;

function sectionOf({ id, title, columns, notes = [] }: Table): string {
  const about = TABLES.find((table) => table.id === id)?.about;
  const list = columns.map(({ label, unit }) => `${label}${unit ? ` (${unit})` : ''}`).join('; ');
  const [note] = notes;
  return [`## \`${id}\``, `${title}: ${about}.`, `Columns: ${list}.`, ...(note ? [note] : [])].join('\n\n');
}

it('the list of tables and columns is that of the tables', async () => {
  const tables = await houseTables(readDescription(WHOLE, 'house.yaml'));
  const written = readFileSync('samples/TABLES.md', 'utf8').replace(
    /(<!-- tables: .* -->\n)[\s\S]*(<!-- end of tables -->)/,
    (_, start, end) => `${start}\n${tables.map(sectionOf).join('\n\n')}\n\n${end}`,
  );
  await expect(written).toMatchFileSnapshot('../../samples/TABLES.md');
});
