import * as texts from '../base/texts/sheet-frame.js';
import { type Block, drawnLater } from './block.js';
import type { PaperPrimitive } from './drawing.js';
import { rectangle, stroke, words } from './shapes.js';
import type { Column, Table } from './table.js';
import { columnEdges, type Row, type RowsInColumns, rowsInColumns, STYLE } from './table-columns.js';
import { textWidth } from './text-size.js';

/** Some rows of a table: its columns are as wide in every part as the rows of all parts together ask for. */
export interface TablePart extends Table {
  readonly allRows: readonly Row[];
  /** Which of all rows is the part's first. */
  readonly from: number;
}

/**
 * A table as it is drawn on a sheet: title, heads, a row a line; numbers stand to the right of their column. Where it
 * would be wider than `most`, words in its widest columns go on in further lines; numbers never do.
 */
export function tableBlock(table: Table | TablePart, most = Number.POSITIVE_INFINITY): Block {
  const [all, from] = placeOf(table);
  const laid = rowsInColumns(all, table.columns, most);
  const tops = topsOf(laid, from, table.rows.length);
  return drawnLater(widthOf(table, laid.edges), -(tops[tops.length - 1] as number), () =>
    tablePrimitives(table, laid, from, tops),
  );
}

/** The rows that a table's columns are laid out for, and which of them is its first. */
const placeOf = (table: Table | TablePart): readonly [readonly Row[], number] =>
  'allRows' in table ? [table.allRows, table.from] : [table.rows, 0];

const widthOf = ({ title }: Table, edges: readonly number[]): number =>
  Math.max(edges[edges.length - 1] as number, textWidth(title, STYLE.title));

/** Levels of the tops of some rows and of the last one's bottom, under the title and the heads. */
function topsOf({ headHeight, heights }: RowsInColumns, from: number, count: number): number[] {
  let top = -STYLE.titleRoom - headHeight;
  const tops = [top];
  for (let r = from; r < from + count; r++) {
    top -= heights[r] as number;
    tops.push(top);
  }
  return tops;
}

function tablePrimitives(
  table: Table,
  { edges, heads, cells }: RowsInColumns,
  from: number,
  tops: readonly number[],
): PaperPrimitive[] {
  const [top, bottom, right] = [-STYLE.titleRoom, tops[tops.length - 1] as number, edges[edges.length - 1] as number];

  const form: PaperPrimitive[] = [
    words('form', table.title, [0, -STYLE.title], STYLE.title),
    rectangle('form', 0, bottom, right, top),
    ...edges.slice(1, -1).map((x) => stroke('form', [x, bottom], [x, top])),
    ...tops.slice(0, -1).map((y) => stroke('form', [0, y], [right, y])),
  ];
  const heading = heads.flatMap((lines, i) =>
    lines.map((text, k) => cell(text, i, top - 1 - STYLE.text - k * STYLE.line)),
  );
  const body = table.rows.flatMap((_, r) =>
    cells.flatMap((column, i) =>
      (column[from + r] as readonly string[])
        .map((text, k) => ({ text, y: (tops[r] as number) - (STYLE.row + STYLE.text) / 2 - k * STYLE.line }))
        .filter(({ text }) => text !== '')
        .map(({ text, y }) => cell(text, i, y)),
    ),
  );
  return [...form, ...heading, ...body];

  function cell(text: string, i: number, baseline: number): PaperPrimitive {
    const [left, end] = [edges[i] as number, edges[i + 1] as number];
    return table.columns[i]?.kind === 'text'
      ? words('form', text, [left + STYLE.pad, baseline], STYLE.text)
      : words('form', text, [end - STYLE.pad, baseline], STYLE.text, 'right');
  }
}

/**
 * The same table in parts that fit a room, each with its heads; columns that find no place go on in further parts.
 * `first` is how high the first part may be where that has less room. A part has at least one row, fit it or not.
 */
export function splitTable(
  table: Table,
  height: number,
  width = Number.POSITIVE_INFINITY,
  first: number = height,
): (Table | TablePart)[] {
  return columnParts(table, width).flatMap((part, i) => rowParts(part, height, width, i === 0 ? first : height));
}

/** The rows of a table from one on that are together at most so high with the heads; all of its columns are as in the whole. */
export function tableHead(table: Table, from: number, height: number, width = Number.POSITIVE_INFINITY): TablePart {
  const { rows } = table;
  const tops = topsOf(rowsInColumns(rows, table.columns, width), from, rows.length - from);
  const count = tops.slice(1).filter((y) => -y <= height).length;
  return { ...table, rows: rows.slice(from, from + count), allRows: rows, from };
}

/** A part under a title that tells which of how many it is; a table in one part keeps its own. */
export const titledPart = (part: TablePart, index: number, parts: number): TablePart =>
  parts === 1 ? part : { ...part, title: texts.titlePartOf(part.title, index + 1, parts) };

function rowParts(table: Table, height: number, width: number, first: number): (Table | TablePart)[] {
  const { rows } = table;
  const { headHeight, heights } = rowsInColumns(rows, table.columns, width);
  if (tableBlock(table, width).height <= first) return [table];
  const bare = STYLE.titleRoom + headHeight;
  const begins: number[] = [];
  let used = Number.POSITIVE_INFINITY;
  heights.forEach((own, r) => {
    if (used + own > (begins.length === 1 ? first : height)) {
      begins.push(r);
      used = bare;
    }
    used += own;
  });
  return begins.map((from, i) => ({
    ...table,
    title: texts.titlePartOf(table.title, i + 1, begins.length),
    rows: rows.slice(from, begins[i + 1]),
    allRows: rows,
    from,
  }));
}

/** As many columns as fit a width; the first column stands in each part again. */
function columnParts(table: Table, width: number): Table[] {
  const fits = (columns: readonly Column[]) => widthOf(table, columnEdges(table.rows, columns, width)) <= width + 1e-6;
  if (fits(table.columns)) return [table];
  const [first, ...rest] = table.columns;
  if (!first) return [table];
  const parts: Column[][] = [];
  for (const column of rest) {
    const open = parts[parts.length - 1];
    if (open && fits([...open, column])) open.push(column);
    else parts.push([first, column]);
  }
  return parts.map((columns) => ({ ...table, columns }));
}
