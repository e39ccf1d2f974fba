import type { Block } from '../../documents/block.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import type { Table } from '../../documents/table.js';
import { splitTable, type TablePart, tableBlock, tableHead, titledPart } from '../../documents/table-block.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import type { Vec2 } from '../../math/vec.js';
import { drawnBlocks, FreeRoom, GAP, type PlacedBlock, ROUNDING, shareOf } from './free-room.js';
import type { Page } from './page.js';
import type { Area } from './rows.js';
import { type TextPart, textBlock } from './text-parts.js';

/** Room inside the frame that nothing enters, paper mm. */
const PAD = 6;

/** The longest a line of text may be before it is hard to read, paper mm. */
export const LONGEST = 150;

/** The narrowest column of text that is tried where wider ones take more sheets, paper mm. */
export const NARROWEST = 105;

/** Width of columns of text on a sheet: as few as keep lines readable. */
function textWidthOn(size: SheetSize): number {
  const room = roomOf(size).width;
  const columns = Math.ceil((room + GAP) / (LONGEST + GAP));
  return (room + GAP) / columns - GAP;
}

const roomOf = (size: SheetSize) => {
  const space = drawingSpace(size);
  return { width: space.right - space.left - 2 * PAD, height: space.top - space.bottom - 2 * PAD };
};

/** What a table may measure to stand on a sheet of its own. */
const tableRoom = (size: SheetSize): { readonly width: number; readonly height: number } => {
  const { width, height } = roomOf(size);
  return { width, height: height - TITLE_BLOCK.height };
};

/** What flows over sheets of words: finished blocks, tables, and texts broken into lines as wide as suits the sheet. */
export type Flowing = Block | TextPart | Table;

/** A table that may go on in the next column or on the next sheet, at most so wide. */
interface Long {
  readonly table: Table;
  readonly width: number;
}

type Piece = Block | Long;

/** Fewer rows than these don't begin a table at the end of a column. */
const LEAST_ROWS = 4;

/**
 * Blocks, tables and texts in columns from the left, round the title block, on as few pages as they take, none of them
 * nearly empty where that can be helped; each block at most `tableRoom`. Texts are as wide as is usual, and wider or
 * narrower only where that helps; and only where that does, a table is broken off that would fit a sheet.
 */
export function flowPages(size: SheetSize, items: readonly Flowing[]): Page[] {
  let best: readonly Page[] | undefined;
  for (const piecesOf of [wholePieces, brokenPieces, narrowPieces]) {
    // Rows in more lines than they need are worth a sheet, but not another arrangement.
    const better = piecesOf === narrowPieces ? fewer : betterFilled;
    const tables = new Map(items.flatMap((item) => ('rows' in item ? [[item, piecesOf(item, size)] as const] : [])));
    for (const width of [textWidthOn(size), LONGEST, NARROWEST]) {
      const pieces = items.flatMap((item): readonly Piece[] => {
        if ('rows' in item) return tables.get(item) ?? [];
        return ['heading' in item ? textBlock(item, width) : item];
      });
      for (const even of [false, true]) {
        const pages = flowedPages(size, pieces, even);
        if (!best || better(pages, best)) best = pages;
        // Nothing takes fewer: most chapters need no second look.
        if (best.length <= 1) return [...best];
      }
    }
  }
  return [...(best ?? [])];
}

const fewer = (pages: readonly Page[], others: readonly Page[]): boolean => pages.length < others.length;

/** Whether some pages are fewer than others or, where they are as many and one of those is nearly empty, all clearly fuller. */
export function betterFilled(pages: readonly Page[], others: readonly Page[]): boolean {
  if (pages.length !== others.length) return pages.length < others.length;
  const emptiest = (all: readonly Page[]) => Math.min(1, ...all.map((page) => page.filled));
  return emptiest(others) < NEARLY_EMPTY && emptiest(pages) > emptiest(others) + CLEARLY;
}

/** A sheet of which less is taken up looks empty, and less of a sheet isn't worth another arrangement. */
const NEARLY_EMPTY = 0.3;
const CLEARLY = 0.02;

/** A table in as many blocks as sheets that it takes. */
export function tableBlocks(table: Table, size: SheetSize): Block[] {
  const { width, height } = tableRoom(size);
  return splitTable(table, height, width).map((part) => tableBlock(part, width));
}

/** A table that stays whole where a sheet holds it. */
function wholePieces(table: Table, size: SheetSize): Piece[] {
  const blocks = tableBlocks(table, size);
  return blocks.length === 1 ? blocks : brokenPieces(table, size);
}

/** A table that is broken where a column ends; one that is wider than a sheet goes on in further tables. */
const brokenPieces = (table: Table, size: SheetSize): Piece[] => longOf(table, tableRoom(size).width);

/** The same, half as wide as a sheet, where all of its columns have room there. */
function narrowPieces(table: Table, size: SheetSize): Piece[] {
  const narrow = longOf(table, (tableRoom(size).width - GAP) / 2);
  return narrow.length === 1 ? narrow : brokenPieces(table, size);
}

const longOf = (table: Table, width: number): Long[] =>
  splitTable(table, Number.POSITIVE_INFINITY, width).map((part) => ({ table: part, width }));

/** What stands somewhere: a block, or some rows of a table, whose title tells which part it is of how many. */
interface Put {
  readonly placed: PlacedBlock;
  readonly part?: { readonly of: Long; readonly rows: TablePart };
}

function flowedPages(size: SheetSize, pieces: readonly Piece[], even: boolean): Page[] {
  const pages: Put[][] = [];
  let left = pieces;
  /** Rows of the first piece that stand already. */
  let done = 0;
  while (left.length > 0) {
    const page = flowPage(size, left, done, even);
    // A block that is too large for any sheet would come back for ever.
    if (page.puts.length === 0) {
      const [first] = left as [Piece];
      throw new Error(
        'table' in first
          ? `a row of ${first.table.title} fits no ${size.name}`
          : `a block of ${first.width} by ${first.height} mm fits no ${size.name}`,
      );
    }
    pages.push(page.puts);
    [left, done] = [page.rest, page.done];
  }
  const { left: from, right, bottom, top } = drawingSpace(size);
  const titled = withTitles(pages);
  return titled.map((placed) => ({
    views: [],
    paper: drawnBlocks(placed),
    tables: [],
    filled: shareOf(
      placed.map(({ area }) => area),
      { left: from, right, bottom, top },
    ),
  }));
}

/** Parts of a table are told apart once it is known how many there are. */
function withTitles(pages: readonly (readonly Put[])[]): PlacedBlock[][] {
  const parts = new Map<Long, TablePart[]>();
  for (const { part } of pages.flat()) if (part) parts.set(part.of, [...(parts.get(part.of) ?? []), part.rows]);
  return pages.map((puts) =>
    puts.map(({ placed, part }): PlacedBlock => {
      if (!part) return placed;
      const all = parts.get(part.of) ?? [];
      return { ...placed, block: tableBlock(titledPart(part.rows, all.indexOf(part.rows), all.length), part.of.width) };
    }),
  );
}

/** One sheet of pieces, and what is left: the pieces that found no room, and of the first of them how many rows are done. */
function flowPage(
  size: SheetSize,
  pieces: readonly Piece[],
  begun: number,
  even: boolean,
): { puts: Put[]; rest: readonly Piece[]; done: number } {
  const space = drawingSpace(size);
  const form: Area = {
    left: space.right - TITLE_BLOCK.width - PAD,
    right: space.right,
    bottom: space.bottom,
    top: space.bottom + TITLE_BLOCK.height + PAD,
  };
  const inner: Area = {
    left: space.left + PAD,
    right: space.right - PAD,
    bottom: space.bottom + PAD,
    top: space.top - PAD,
  };
  const room = new FreeRoom(inner, [form]);
  const puts: Put[] = [];
  const put = (block: Block, at: Vec2, part?: Put['part']) => {
    room.place(block, at);
    puts.push({ placed: room.placed[room.placed.length - 1] as PlacedBlock, ...(part && { part }) });
  };
  let done = begun;
  for (const [placed, piece] of pieces.entries()) {
    if (!('table' in piece)) {
      const corner = room.corners(piece, even).find((at) => room.fits(piece, at));
      if (!corner) return { puts, rest: pieces.slice(placed), done: 0 };
      put(piece, corner);
      continue;
    }
    const { table, width } = piece;
    while (done < table.rows.length) {
      const whole = tableHead(table, done, Number.POSITIVE_INFINITY, width);
      const block = tableBlock(done > 0 ? measured(whole) : whole, width);
      const corners = room.cornersAhead(block, even);
      const corner = corners.find((at) => room.fits(block, at));
      if (corner) {
        put(block, corner, { of: piece, rows: whole });
        break;
      }
      const begin = beginning(room, piece, done, corners);
      if (!begin) return { puts, rest: pieces.slice(placed), done };
      put(begin.block, begin.at, { of: piece, rows: begin.rows });
      done += begin.rows.rows.length;
    }
    done = 0;
  }
  return { puts, rest: [], done: 0 };
}

/** A part under a title as long as any that it may get. */
const measured = (part: TablePart): TablePart => titledPart(part, MOST_PARTS - 1, MOST_PARTS);
const MOST_PARTS = 99;

/** The next rows of a table at the first corner that has room for more than hardly any; none where there is no such room. */
function beginning(room: FreeRoom, { table, width }: Long, from: number, corners: readonly Vec2[]) {
  for (const at of corners) {
    const own = tableBlock(measured(tableHead(table, from, 0, width)), width).width;
    const rows = tableHead(table, from, room.roomUnder(at, own) + ROUNDING, width);
    if (rows.rows.length < Math.min(LEAST_ROWS, table.rows.length - from)) continue;
    const block = tableBlock(measured(rows), width);
    if (room.fits(block, at)) return { at, rows, block };
  }
  return null;
}
