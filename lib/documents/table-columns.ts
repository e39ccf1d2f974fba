import { feetAndInches } from '../base/measures.js';
import { writtenUnit } from '../base/reader-units.js';
import { rememberedPair } from '../base/remembered.js';
import type { Cell, Column, Table } from './table.js';
import { wrapText } from './text-fit.js';
import { textWidth } from './text-size.js';

/** Paper mm: lettering of ISO 3098; the rest common practice, no source. */
export const STYLE = { title: 3.5, titleRoom: 6.5, text: 2.5, row: 5, line: 3.8, pad: 1.5 } as const;

/** Narrowest column of words that is still easy to read, paper mm. */
const NARROW = 28;
/** A word longer than this, which no language has, may be broken where its table would be too wide, paper mm. */
const LONG_WORD = 80;
/** What adding widths up may leave over. */
const ROUNDING = 1e-6;

export type Row = Table['rows'][number];
type Lines = readonly string[];

/** Rows in their columns; paper mm. */
export interface RowsInColumns {
  /** Edges of the columns from the left, the last one's right edge among them. */
  readonly edges: readonly number[];
  /** Lines of each column's head. */
  readonly heads: readonly Lines[];
  readonly headHeight: number;
  /** Lines of each cell, by column and row. */
  readonly cells: readonly (readonly Lines[])[];
  readonly heights: readonly number[];
}

/**
 * Rows set in columns that are together at most so wide: where they would be wider, words in the widest columns go on in
 * further lines; numbers never do. A table is tried whole, in parts and on many sheets, and its rows stay the same.
 */
export function rowsInColumns(rows: readonly Row[], columns: readonly Column[], most: number): RowsInColumns {
  const known = knownLayouts(rows, columns);
  let laid = known.get(most);
  if (laid === undefined) {
    laid = laidOut(rows, columns, most);
    known.set(most, laid);
  }
  return laid;
}

const knownLayouts = rememberedPair((_: readonly Row[], __: readonly Column[]) => new Map<number, RowsInColumns>());

function laidOut(rows: readonly Row[], columns: readonly Column[], most: number): RowsInColumns {
  const room = columnRoom(rows, columns, most);
  const heads = columns.map((column, i) => wrapText(headText(column), (room[i] as number) + ROUNDING, STYLE.text));
  const cells = columns.map((column, i) => columnWords(rows, column).lines((room[i] as number) + ROUNDING));
  const heights = rows.map((_, r) => {
    let lines = 0;
    for (const column of cells) lines = Math.max(lines, (column[r] as Lines).length);
    return STYLE.row + (lines - 1) * STYLE.line;
  });
  const headHeight = Math.max(...heads.map((lines) => lines.length)) * STYLE.line + 2;
  return { edges: edgesOf(room), heads, headHeight, cells, heights };
}

/** Edges of columns that are together at most so wide. */
export const columnEdges = (rows: readonly Row[], columns: readonly Column[], most: number): readonly number[] =>
  edgesOf(columnRoom(rows, columns, most));

function edgesOf(room: readonly number[]): number[] {
  const edges = [0];
  for (const w of room) edges.push((edges[edges.length - 1] as number) + (w + 2 * STYLE.pad));
  return edges;
}

/** Room for words in each column of some rows, where all together may be `most` wide. */
function columnRoom(rows: readonly Row[], columns: readonly Column[], most: number): readonly number[] {
  const words = columns.map((column) => columnWords(rows, column));
  const natural = words.map((column) => column.natural);
  const least = words.map((column) => column.least);
  return narrowed(natural, least, most - 2 * STYLE.pad * columns.length);
}

/** What stands in one column of some rows. */
class ColumnWords {
  /** How wide it is where each cell stands in one line. */
  readonly natural: number;
  /** How narrow it may become. */
  readonly least: number;
  private readonly texts: readonly string[];
  private readonly wrapped = new Map<number, readonly Lines[]>();

  constructor(rows: readonly Row[], column: Column) {
    const head = longestWord(headText(column));
    this.texts = rows.map((row) => cellText(row[column.key] ?? null, column));
    let natural = head;
    for (const text of this.texts) natural = Math.max(natural, textWidth(text, STYLE.text));
    this.natural = natural;
    this.least = column.kind === 'text' ? Math.max(head, Math.min(natural, longest(this.texts))) : natural;
  }

  /** Each cell in lines of at most `width`. */
  lines(width: number): readonly Lines[] {
    let lines = this.wrapped.get(width);
    if (lines === undefined) {
      lines = this.texts.map((text) => (text === '' ? [''] : wrapText(text, width, STYLE.text)));
      this.wrapped.set(width, lines);
    }
    return lines;
  }
}

const columnWords = rememberedPair((rows: readonly Row[], column: Column) => new ColumnWords(rows, column));

/** Width of the longest word that isn't broken. */
function longest(texts: readonly string[]): number {
  let width: number = NARROW;
  for (const text of texts) width = Math.max(width, Math.min(LONG_WORD, longestWord(text)));
  return width;
}

const longestWord = (text: string): number => Math.max(...text.split(' ').map((word) => textWidth(word, STYLE.text)));

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

/** Lengths in fractions of an inch carry their signs with them. */
const headText = ({ label, unit, inchParts }: Column): string =>
  unit === undefined || unit === '' || inchParts ? label : `${label} ${writtenUnit(unit)}`;

function cellText(value: Cell, column: Column): string {
  if (value === null) return '';
  if (column.inchParts && typeof value === 'number') return feetAndInches(value, column.inchParts);
  return typeof value === 'number' ? value.toFixed(column.decimals ?? 0) : value;
}
