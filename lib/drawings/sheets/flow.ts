import type { Block } from '../../documents/block.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import type { Table } from '../../documents/table.js';
import { splitTable, tableBlock } from '../../documents/table-block.js';
import { flowedPages, type Long, type Piece } from './flowed-pages.js';
import { GAP } from './free-room.js';
import { type Ground, groundOf, LONGEST, NARROWEST, tableRoom, textWidthOn } from './ground.js';
import type { Page } from './page.js';
import { type TextPart, textBlock } from './text-parts.js';

/** What flows over sheets of words: finished blocks, tables, and texts broken into lines as wide as suits the sheet. */
export type Flowing = Block | TextPart | Table;

/**
 * Blocks, tables and texts in columns from the left, round the title block, on as few pages as they take, none of them
 * nearly empty where that can be helped; each block at most `tableRoom`. Letters are larger where as many pages hold
 * them, and rows are shared out where the last would be nearly empty.
 */
export function flowPages(size: SheetSize, items: readonly Flowing[]): Page[] {
  const usual = arranged(groundOf(size), items, 1);
  if (!usual) return refuse(groundOf(size), items);
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
  let best = usual;
  if (usual.length > 1 && emptiest(usual) < NEARLY_EMPTY)
    for (const depth of DEPTHS) {
      const pages = arranged(groundOf(size, 1, depth), items, usual.length);
      // Less room takes no fewer.
      if (!pages || pages.length > usual.length) break;
      if (emptiest(pages) > emptiest(best) + CLEARLY) best = pages;
    }
  return [...best];
}

const DEPTHS = [0.85, 0.7, 0.55] as const;

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

/** Tells which block or row no sheet holds. */
function refuse(ground: Ground, items: readonly Flowing[]): never {
  for (const item of items) {
    if (arranged(ground, [item], 1)) continue;
    if ('rows' in item) throw new Error(`a row of ${item.title} fits no ${ground.name}`);
    const { width, height } = 'heading' in item ? textBlock(item, textWidthOn(ground)) : item;
    throw new Error(`a block of ${width} by ${height} mm fits no ${ground.name}`);
  }
  throw new Error(`no arrangement fits ${ground.name}`);
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
