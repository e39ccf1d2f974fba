import type { Block } from './block.js';
import { rectangle, stroke, words } from './shapes.js';
import type { PaperPrimitive } from './sheet.js';
import type { Cell, Column, Table } from './table.js';
import { wrapText } from './text-fit.js';
import { textWidth } from './text-size.js';

/** Paper mm: lettering of ISO 3098; the rest common practice, no source. */
const STYLE = { title: 3.5, titleRoom: 6.5, text: 2.5, row: 5, line: 3.8, pad: 1.5 } as const;

/** A table as it is drawn on a sheet: title, heads, a row a line; numbers stand to the right of their column. */
export function tableBlock(table: Table): Block {
  const cells = table.rows.map((row) => table.columns.map((column) => cellText(row[column.key] ?? null, column)));
  const widths = table.columns.map((column, i) => {
    const longest = headText(column)
      .split(' ')
      .map((word) => textWidth(word, STYLE.text));
    return Math.max(...longest, ...cells.map((row) => textWidth(row[i] as string, STYLE.text))) + 2 * STYLE.pad;
  });
  const heads = table.columns.map((column, i) =>
    wrapText(headText(column), (widths[i] as number) - 2 * STYLE.pad + 1e-6, STYLE.text),
  );
  const headHeight = Math.max(...heads.map((lines) => lines.length)) * STYLE.line + 2;
  const width = Math.max(
    widths.reduce((sum, w) => sum + w, 0),
    textWidth(table.title, STYLE.title),
  );
  const top = -STYLE.titleRoom;
  const bottom = top - headHeight - cells.length * STYLE.row;
  const edges = [0];
  for (const w of widths) edges.push((edges[edges.length - 1] as number) + w);
  const right = edges[edges.length - 1] as number;

  const form: PaperPrimitive[] = [
    words('form', table.title, [0, -STYLE.title], STYLE.title),
    rectangle('form', 0, bottom, right, top),
    ...edges.slice(1, -1).map((x) => stroke('form', [x, bottom], [x, top])),
    ...cells.map((_, r) => {
      const y = top - headHeight - r * STYLE.row;
      return stroke('form', [0, y], [right, y]);
    }),
  ];
  const heading = heads.flatMap((lines, i) =>
    lines.map((text, k) => cell(text, i, top - 1 - STYLE.text - k * STYLE.line)),
  );
  const body = cells.flatMap((row, r) =>
    row
      .map((text, i) => cell(text, i, top - headHeight - (r + 1) * STYLE.row + (STYLE.row - STYLE.text) / 2))
      .filter((_, i) => row[i] !== ''),
  );
  return { width, height: -bottom, primitives: [...form, ...heading, ...body] };

  function cell(text: string, i: number, baseline: number): PaperPrimitive {
    const [left, end] = [edges[i] as number, edges[i + 1] as number];
    return table.columns[i]?.kind === 'text'
      ? words('form', text, [left + STYLE.pad, baseline], STYLE.text)
      : words('form', text, [end - STYLE.pad, baseline], STYLE.text, 'right');
  }
}

/** The same table in parts that are at most so high, each with its heads. */
export function splitTable(table: Table, height: number): Table[] {
  if (tableBlock(table).height <= height) return [table];
  const bare = tableBlock({ ...table, rows: table.rows.slice(0, 1) }).height - STYLE.row;
  const most = Math.max(1, Math.floor((height - bare) / STYLE.row));
  const parts = Math.ceil(table.rows.length / most);
  return Array.from({ length: parts }, (_, i) => ({
    ...table,
    title: `${table.title} (${i + 1} of ${parts})`,
    rows: table.rows.slice(i * most, (i + 1) * most),
  }));
}

const headText = ({ label, unit }: Column): string => (unit === undefined || unit === '' ? label : `${label} ${unit}`);

function cellText(value: Cell, column: Column): string {
  if (value === null) return '';
  return typeof value === 'number' ? value.toFixed(column.decimals ?? 0) : value;
}
