import { feetAndInches } from '../base/measures.js';
import { writtenUnit } from '../base/reader-units.js';
import { remembered, rememberedPair } from '../base/remembered.js';
import * as texts from '../base/texts/sheet-frame.js';
import { type Block, drawnLater } from './block.js';
import type { PaperPrimitive } from './drawing.js';
import { rectangle, stroke, words } from './shapes.js';
import type { Cell, Column, Table } from './table.js';
import { wrapText } from './text-fit.js';
import { textWidth } from './text-size.js';

/** Paper mm: lettering of ISO 3098; the rest common practice, no source. */
const STYLE = { title: 3.5, titleRoom: 6.5, text: 2.5, row: 5, line: 3.8, pad: 1.5 } as const;

type Row = Table['rows'][number];

/** Some rows of a table: its columns are as wide in every part as the rows of all parts together ask for. */
export interface TablePart extends Table {
  readonly allRows: readonly Row[];
}

/** Narrowest column of words that is still easy to read, paper mm. */
const NARROW = 28;
/** A word longer than this, which no language has, may be broken where its table would be too wide, paper mm. */
const LONG_WORD = 80;

/**
 * A table as it is drawn on a sheet: title, heads, a row a line; numbers stand to the right of their column. Where it
 * would be wider than `most`, words in its widest columns go on in further lines; numbers never do.
 */
export function tableBlock(table: Table | TablePart, most = Number.POSITIVE_INFINITY): Block {
  const laid = laidOut(table, most);
  return drawnLater(laid.width, laid.height, () => tablePrimitives(table, laid));
}

function tablePrimitives(table: Table, { cells, heads, tops, edges, height }: LaidOut): PaperPrimitive[] {
  const [top, bottom, right] = [-STYLE.titleRoom, -height, edges[edges.length - 1] as number];

  const form: PaperPrimitive[] = [
    words('form', table.title, [0, -STYLE.title], STYLE.title),
    rectangle('form', 0, bottom, right, top),
    ...edges.slice(1, -1).map((x) => stroke('form', [x, bottom], [x, top])),
    ...tops.slice(0, -1).map((y) => stroke('form', [0, y], [right, y])),
  ];
  const heading = heads.flatMap((lines, i) =>
    lines.map((text, k) => cell(text, i, top - 1 - STYLE.text - k * STYLE.line)),
  );
  const body = cells.flatMap((row, r) =>
    row.flatMap((lines, i) =>
      lines
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

type LaidOut = ReturnType<typeof laidOut>;

/** Lines of every cell and head, edges of the columns, tops of the rows and the last one's bottom, size of the whole. */
function laidOut(table: Table | TablePart, most: number) {
  const { columns } = table;
  const room = columnRoom('allRows' in table ? table.allRows : table.rows, columns, most);
  const inside = room.map((w) => w + 1e-6);
  const heads = columns.map((column, i) => wrapText(headText(column), inside[i] as number, STYLE.text));
  const cells = table.rows.map((row) =>
    columns.map((column, i) => measuredCell(row, column).wrapped(inside[i] as number)),
  );

  const tops = [-STYLE.titleRoom - (Math.max(...heads.map((lines) => lines.length)) * STYLE.line + 2)];
  for (const row of cells) tops.push((tops[tops.length - 1] as number) - rowHeight(row));
  const edges = [0];
  for (const w of room) edges.push((edges[edges.length - 1] as number) + (w + 2 * STYLE.pad));
  return {
    heads,
    cells,
    tops,
    edges,
    width: Math.max(edges[edges.length - 1] as number, textWidth(table.title, STYLE.title)),
    height: -(tops[tops.length - 1] as number),
  };
}

/** Room for words in each column of some rows, where all together may be `most` wide. */
function columnRoom(rows: readonly Row[], columns: readonly Column[], most: number): readonly number[] {
  const known = knownRoom(rows, columns);
  let room = known.get(most);
  if (room === undefined) {
    const cells = rows.map((row) => columns.map((column) => measuredCell(row, column)));
    const headWidths = columns.map((column) => longestWord(headText(column)));
    const natural = headWidths.map((head, i) => cells.reduce((w, row) => Math.max(w, (row[i] as Words).width), head));
    const least = columns.map((column, i) => {
      if (column.kind !== 'text') return natural[i] as number;
      const word = cells.reduce((w, row) => Math.max(w, Math.min(LONG_WORD, (row[i] as Words).longest)), NARROW);
      return Math.max(headWidths[i] as number, Math.min(natural[i] as number, word));
    });
    room = narrowed(natural, least, most - 2 * STYLE.pad * columns.length);
    known.set(most, room);
  }
  return room;
}

/** Parts of a table are laid out again and again before they have their place, all with the same columns. */
const knownRoom = rememberedPair((_: readonly Row[], __: readonly Column[]) => new Map<number, readonly number[]>());

/** A cell's words and how wide they are. */
class Words {
  readonly width: number;
  readonly longest: number;
  private readonly lines = new Map<number, readonly string[]>();

  constructor(private readonly text: string) {
    this.width = textWidth(text, STYLE.text);
    this.longest = longestWord(text);
  }

  /** In lines of at most `width`. */
  wrapped(width: number): readonly string[] {
    let lines = this.lines.get(width);
    if (lines === undefined) {
      lines = this.text === '' ? [''] : wrapText(this.text, width, STYLE.text);
      this.lines.set(width, lines);
    }
    return lines;
  }
}

/** A table is laid out whole, in parts and in other widths before it has its place: its rows and columns stay the same. */
const measuredRow = remembered((_: Row) => new Map<Column, Words>());

function measuredCell(row: Row, column: Column): Words {
  const known = measuredRow(row);
  let cell = known.get(column);
  if (cell === undefined) {
    cell = new Words(cellText(row[column.key] ?? null, column));
    known.set(column, cell);
  }
  return cell;
}

/** Columns cut down to one widest width each may have, but none below its least. */
function narrowed(natural: readonly number[], least: readonly number[], most: number): readonly number[] {
  const sum = (all: readonly number[]) => all.reduce((s, w) => s + w, 0);
  if (sum(natural) <= most) return natural;
  const at = (cap: number) => natural.map((w, i) => Math.max(least[i] as number, Math.min(w, cap)));
  let [low, high] = [0, Math.max(...natural)];
  for (let i = 0; i < 40; i++) {
    const cap = (low + high) / 2;
    if (sum(at(cap)) > most) high = cap;
    else low = cap;
  }
  return at(low);
}

const longestWord = (text: string): number => Math.max(...text.split(' ').map((word) => textWidth(word, STYLE.text)));

const rowHeight = (row: readonly (readonly string[])[]): number =>
  STYLE.row + (Math.max(...row.map((lines) => lines.length)) - 1) * STYLE.line;

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
  const left: TablePart = { ...table, rows: table.rows.slice(from), allRows: table.rows };
  const { tops } = laidOut(left, width);
  const count = tops.slice(1).filter((y) => -y <= height).length;
  return { ...left, rows: left.rows.slice(0, count) };
}

/** A part under a title that tells which of how many it is; a table in one part keeps its own. */
export const titledPart = (part: TablePart, index: number, parts: number): TablePart =>
  parts === 1 ? part : { ...part, title: texts.titlePartOf(part.title, index + 1, parts) };

function rowParts(table: Table, height: number, width: number, first: number): (Table | TablePart)[] {
  const { cells, height: whole } = laidOut(table, width);
  if (whole <= first) return [table];
  const bare = laidOut({ ...table, rows: [], allRows: table.rows }, width).height;
  const parts: Row[][] = [];
  let used = Number.POSITIVE_INFINITY;
  table.rows.forEach((row, r) => {
    const own = rowHeight(cells[r] as readonly (readonly string[])[]);
    if (used + own > (parts.length === 1 ? first : height)) {
      parts.push([]);
      used = bare;
    }
    parts[parts.length - 1]?.push(row);
    used += own;
  });
  return parts.map((rows, i) => ({
    ...table,
    title: texts.titlePartOf(table.title, i + 1, parts.length),
    rows,
    allRows: table.rows,
  }));
}

/** As many columns as fit a width; the first column stands in each part again. */
function columnParts(table: Table, width: number): Table[] {
  const fits = (columns: readonly Column[]) => laidOut({ ...table, columns }, width).width <= width + 1e-6;
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

/** Lengths in fractions of an inch carry their signs with them. */
const headText = ({ label, unit, inchParts }: Column): string =>
  unit === undefined || unit === '' || inchParts ? label : `${label} ${writtenUnit(unit)}`;

function cellText(value: Cell, column: Column): string {
  if (value === null) return '';
  if (column.inchParts && typeof value === 'number') return feetAndInches(value, column.inchParts);
  return typeof value === 'number' ? value.toFixed(column.decimals ?? 0) : value;
}
