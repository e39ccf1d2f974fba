import type { Block } from '../../documents/block.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import type { Table } from '../../documents/table.js';
import { splitTable, type TablePart, tableBlock, tableHead, titledPart } from '../../documents/table-block.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import type { Vec2 } from '../../math/vec.js';
import { drawnBlocks, FreeRoom, GAP, type PlacedBlock, ROUNDING, shareOf } from './free-room.js';
import type { Page } from './page.js';
import { type Area, widthOf } from './rows.js';
import { type TextPart, textBlock } from './text-parts.js';

/** Room inside the frame that nothing enters, paper mm. */
const PAD = 6;

/** The longest a line of text may be before it is hard to read, paper mm. */
export const LONGEST = 150;

/** The narrowest column of text that is tried where wider ones take more sheets, paper mm. */
export const NARROWEST = 105;

/** What is free for words on a sheet. */
interface Ground {
  readonly name: string;
  readonly inner: Area;
  /** The title block and the room round it. */
  readonly form: Area;
  readonly whole: Area;
  /** How many times larger than usual letters are; all lengths of a ground are divided by that. */
  readonly letters: number;
}

/** @param depth how much of the room is used from the top, 0 to 1 */
function groundOf(size: SheetSize, letters = 1, depth = 1): Ground {
  const space = drawingSpace(size);
  const top = space.top - PAD;
  const inner = { left: space.left + PAD, right: space.right - PAD, bottom: top - depth * roomOf(size).height, top };
  const form = {
    left: space.right - TITLE_BLOCK.width - PAD,
    right: space.right,
    bottom: space.bottom,
    top: space.bottom + TITLE_BLOCK.height + PAD,
  };
  const divided = (a: Area): Area => ({
    left: a.left / letters,
    right: a.right / letters,
    bottom: a.bottom / letters,
    top: a.top / letters,
  });
  return { name: size.name, inner: divided(inner), form: divided(form), whole: divided(space), letters };
}

/** Width of columns of text: as few as keep lines readable. */
function textWidthOn({ inner }: Ground): number {
  const room = widthOf(inner);
  const columns = Math.ceil((room + GAP) / (LONGEST + GAP));
  return (room + GAP) / columns - GAP;
}

const roomOf = (size: SheetSize) => {
  const space = drawingSpace(size);
  return { width: space.right - space.left - 2 * PAD, height: space.top - space.bottom - 2 * PAD };
};

/** What a table may measure to stand on a sheet of its own. */
const tableRoom = ({ inner, form }: Ground): { readonly width: number; readonly height: number } => ({
  width: widthOf(inner),
  height: inner.top - Math.max(inner.bottom, form.top),
});

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
 * nearly empty where that can be helped; each block at most `tableRoom`. Letters are larger where as many pages hold
 * them, and rows are shared out where the last would be nearly empty.
 */
export function flowPages(size: SheetSize, items: readonly Flowing[]): Page[] {
  const usual = arranged(groundOf(size), items, 1);
  if (!usual) throw new Error(tooLarge(groundOf(size), items));
  const larger = LETTERS.filter((letters) => mayHold(usual, size, items, letters));
  for (const letters of larger) {
    const pages = arranged(groundOf(size, letters), items, usual.length);
    if (pages && pages.length <= usual.length) return pages;
  }
  return evened(size, items, usual);
}

/** How many times larger letters may be, the largest first: sizes of ISO 3098 grow by the root of two. */
const LETTERS = [2, Math.SQRT2] as const;

/** Whether larger letters are worth a try: there is room in all for them, and each table has that for its columns. */
function mayHold(usual: readonly Page[], size: SheetSize, items: readonly Flowing[], letters: number): boolean {
  const filled = usual.reduce((sum, page) => sum + page.filled, 0);
  if (filled * letters * letters > usual.length) return false;
  const [ground, plain] = [groundOf(size, letters), groundOf(size)];
  const { width, height } = tableRoom(ground);
  return items.every((item) => {
    if ('rows' in item) return longOf(item, width).length === longOf(item, tableRoom(plain).width).length;
    return 'heading' in item || (item.width <= width && item.height <= height);
  });
}

/** The same pages where none of them is nearly empty, else as many that are used less far down but more alike. */
function evened(size: SheetSize, items: readonly Flowing[], usual: readonly Page[]): Page[] {
  const tries = usual.length > 1 && emptiest(usual) < NEARLY_EMPTY ? DEPTHS : [];
  const others = tries.flatMap((depth) => {
    const pages = arranged(groundOf(size, 1, depth), items, usual.length);
    return pages?.length === usual.length ? [pages] : [];
  });
  return [...others.reduce((best, pages) => (emptiest(pages) > emptiest(best) + CLEARLY ? pages : best), usual)];
}

const DEPTHS = [0.9, 0.8, 0.7, 0.6, 0.5] as const;

/**
 * The pages of the best arrangement; `null` where something is too large for them. Texts are as wide as is usual, and
 * wider or narrower only where that helps; and only where that does, a table is broken off that would fit a sheet.
 * @param enough no arrangement with fewer pages is looked for
 */
function arranged(ground: Ground, items: readonly Flowing[], enough: number): Page[] | null {
  let best: readonly Page[] | undefined;
  for (const piecesOf of [wholePieces, brokenPieces, narrowPieces]) {
    // Rows in more lines than they need are worth a sheet, but not another arrangement.
    const better = piecesOf === narrowPieces ? fewer : betterFilled;
    const tables = new Map(items.flatMap((item) => ('rows' in item ? [[item, piecesOf(item, ground)] as const] : [])));
    for (const width of [textWidthOn(ground), LONGEST, NARROWEST]) {
      const pieces = items.flatMap((item): readonly Piece[] => {
        if ('rows' in item) return tables.get(item) ?? [];
        return ['heading' in item ? textBlock(item, width) : item];
      });
      for (const even of [false, true]) {
        const pages = flowedPages(ground, pieces, even);
        if (pages && (!best || better(pages, best))) best = pages;
        // Most chapters need no second look.
        if (best && best.length <= enough) return [...best];
      }
    }
  }
  return best ? [...best] : null;
}

/** What a block or a row is told that no sheet holds. */
function tooLarge(ground: Ground, items: readonly Flowing[]): string {
  for (const item of items) {
    if (arranged(ground, [item], 1)) continue;
    if ('rows' in item) return `a row of ${item.title} fits no ${ground.name}`;
    const { width, height } = 'heading' in item ? textBlock(item, textWidthOn(ground)) : item;
    return `a block of ${width} by ${height} mm fits no ${ground.name}`;
  }
  return `no arrangement fits ${ground.name}`;
}

const fewer = (pages: readonly Page[], others: readonly Page[]): boolean => pages.length < others.length;

/** Whether some pages are fewer than others or, where they are as many and one of those is nearly empty, all clearly fuller. */
export function betterFilled(pages: readonly Page[], others: readonly Page[]): boolean {
  if (pages.length !== others.length) return pages.length < others.length;
  return emptiest(others) < NEARLY_EMPTY && emptiest(pages) > emptiest(others) + CLEARLY;
}

const emptiest = (pages: readonly Page[]): number => Math.min(1, ...pages.map((page) => page.filled));

/** A sheet of which less is taken up looks empty, and less of a sheet isn't worth another arrangement. */
const NEARLY_EMPTY = 0.3;
const CLEARLY = 0.02;

/** A table in as many blocks as sheets that it takes. */
export const tableBlocks = (table: Table, size: SheetSize): Block[] => blocksOf(table, groundOf(size));

function blocksOf(table: Table, ground: Ground): Block[] {
  const { width, height } = tableRoom(ground);
  return splitTable(table, height, width).map((part) => tableBlock(part, width));
}

/** A table that stays whole where a sheet holds it. */
function wholePieces(table: Table, ground: Ground): Piece[] {
  const blocks = blocksOf(table, ground);
  return blocks.length === 1 ? blocks : brokenPieces(table, ground);
}

/** A table that is broken where a column ends; one that is wider than a sheet goes on in further tables. */
const brokenPieces = (table: Table, ground: Ground): Piece[] => longOf(table, tableRoom(ground).width);

/** The same, half as wide as a sheet, where all of its columns have room there. */
function narrowPieces(table: Table, ground: Ground): Piece[] {
  const narrow = longOf(table, (tableRoom(ground).width - GAP) / 2);
  return narrow.length === 1 ? narrow : brokenPieces(table, ground);
}

const longOf = (table: Table, width: number): Long[] =>
  splitTable(table, Number.POSITIVE_INFINITY, width).map((part) => ({ table: part, width }));

/** What stands somewhere: a block, or some rows of a table, whose title tells which part it is of how many. */
interface Put {
  readonly placed: PlacedBlock;
  readonly part?: { readonly of: Long; readonly rows: TablePart };
}

function flowedPages(ground: Ground, pieces: readonly Piece[], even: boolean): Page[] | null {
  const pages: Put[][] = [];
  let left = pieces;
  /** Rows of the first piece that stand already. */
  let done = 0;
  while (left.length > 0) {
    const page = flowPage(ground, left, done, even);
    // A block that is too large for any sheet would come back for ever.
    if (page.puts.length === 0) return null;
    pages.push(page.puts);
    [left, done] = [page.rest, page.done];
  }
  const areas = (placed: readonly PlacedBlock[]) => placed.map(({ area }) => area);
  return withTitles(pages).map((placed) => ({
    views: [],
    paper: drawnBlocks(placed, ground.letters),
    tables: [],
    filled: shareOf(areas(placed), ground.whole),
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
  { inner, form }: Ground,
  pieces: readonly Piece[],
  begun: number,
  even: boolean,
): { puts: Put[]; rest: readonly Piece[]; done: number } {
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
