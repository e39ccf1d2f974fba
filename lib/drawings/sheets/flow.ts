import { type Block, placeBlock } from '../../documents/block.js';
import type { PaperPrimitive } from '../../documents/drawing.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import type { Table } from '../../documents/table.js';
import { splitTable, tableBlock } from '../../documents/table-block.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import type { Vec2 } from '../../math/vec.js';
import type { Page } from './page.js';
import type { Area } from './rows.js';
import { type TextPart, textBlock } from './text-parts.js';

/** Room inside the frame that nothing enters, paper mm. */
const PAD = 6;
/** Room between blocks, paper mm. */
export const GAP = 7;

/** The longest a line of text may be before it is hard to read, and the least a column may be, paper mm. */
export const LONGEST = 150;

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

/** A block to be placed; of a table that may begin in the rest of a sheet and go on on the next, the table too. */
interface Piece {
  readonly block: Block;
  readonly table?: Table;
}

/** Fewer rows than these don't begin a table at the end of a sheet. */
const LEAST_ROWS = 4;

/** The narrowest column of text that is tried where wider ones take more sheets, paper mm. */
export const NARROWEST = 105;

/**
 * Blocks, tables and texts in columns from the left, round the title block, on as few pages as they take; each block at
 * most `tableRoom`. Texts are as wide as is usual, and wider or narrower only where that saves a page; and only where
 * that does, a table is broken off at the end of a sheet although it would fit one by itself.
 */
export function flowPages(size: SheetSize, items: readonly Flowing[]): Page[] {
  let best: Page[] | undefined;
  for (const piecesOf of [wholePieces, brokenPieces]) {
    const tables = new Map(items.flatMap((item) => ('rows' in item ? [[item, piecesOf(item, size)] as const] : [])));
    for (const width of [textWidthOn(size), LONGEST, NARROWEST]) {
      const pieces = items.flatMap((item): readonly Piece[] => {
        if ('rows' in item) return tables.get(item) ?? [];
        return [{ block: 'heading' in item ? textBlock(item, width) : item }];
      });
      for (const even of [false, true]) {
        const pages = flowedPages(size, pieces, even);
        if (!best || pages.length < best.length) best = pages;
        // Nothing takes fewer: most chapters need no second look.
        if (best.length <= 1) return best;
      }
    }
  }
  return best ?? [];
}

/** A table in as many blocks as sheets that it takes. */
export function tableBlocks(table: Table, size: SheetSize): Block[] {
  const { width, height } = tableRoom(size);
  return splitTable(table, height, width).map((part) => tableBlock(part, width));
}

const wholePieces = (table: Table, size: SheetSize): Piece[] => tableBlocks(table, size).map((block) => ({ block }));

/** A table that is broken where a sheet ends. */
function brokenPieces(table: Table, size: SheetSize): Piece[] {
  const { width } = tableRoom(size);
  return splitTable(table, Number.POSITIVE_INFINITY, width).map((part) => ({
    block: tableBlock(part, width),
    table: part,
  }));
}

/** A table whose first part has less room than a sheet; none where hardly a row would stand there. */
function brokenAfter(table: Table, size: SheetSize, room: number): Piece[] {
  const { width, height } = tableRoom(size);
  const parts = splitTable(table, height, width, room);
  if ((parts[0]?.rows.length ?? 0) < Math.min(LEAST_ROWS, table.rows.length)) return [];
  return parts.map((part) => ({ block: tableBlock(part, width) }));
}

/** `even`: what is wider than the column begins the next one where it can, for under it no column would go on. */
function flowedPages(size: SheetSize, pieces: readonly Piece[], even: boolean): Page[] {
  const pages: Page[] = [];
  let left = pieces;
  while (left.length > 0) {
    const { paper, rest } = flowPage(size, left, even);
    // A block that is too large for any sheet would come back for ever.
    if (paper.length === 0)
      throw new Error(`a block of ${left[0]?.block.width} by ${left[0]?.block.height} mm fits no ${size.name}`);
    pages.push({ views: [], paper, tables: [] });
    left = rest;
  }
  return pages;
}

/** Each block under the one before it, else at the top of the next column: beside it, and under what is wider above. */
function flowPage(
  size: SheetSize,
  pieces: readonly Piece[],
  even: boolean,
): { paper: PaperPrimitive[]; rest: readonly Piece[] } {
  const space = drawingSpace(size);
  const [left, right, top] = [space.left + PAD, space.right - PAD, space.top - PAD];
  const form = { left: space.right - TITLE_BLOCK.width - PAD, top: space.bottom + TITLE_BLOCK.height + PAD };
  const bottomAt = (end: number) => (end > form.left ? form.top : space.bottom + PAD);
  const fits = ({ width, height }: Block, [atX, atY]: Vec2) =>
    atX + width <= right + ROUNDING && atY - height >= bottomAt(atX + width) - ROUNDING;
  const paper: PaperPrimitive[] = [];
  const taken: Area[] = [];
  let [x, y] = [left, top];
  const place = (block: Block, corner: Vec2) => {
    [x, y] = corner;
    paper.push(...placeBlock(block, corner));
    taken.push({ left: x, right: x + block.width, top: y, bottom: y - block.height });
    y -= block.height + GAP;
  };
  for (const [placed, piece] of pieces.entries()) {
    const { block, table } = piece;
    const column = Math.max(0, ...taken.filter((t) => t.left === x).map((t) => t.right - x));
    const wider = even && column > 0 && block.width > column + ROUNDING;
    const below: Vec2[] = [[x, under(x, block.width, y, taken)]];
    // The next columns: where one begins highest, else the first.
    const beside = columnsAfter(x, taken)
      .map((atX): Vec2 => [atX, under(atX, block.width, top, taken)])
      .sort((a, b) => b[1] - a[1] || a[0] - b[0]);
    const corners = wider ? [...beside, ...below] : [...below, ...beside];
    const corner = corners.find((at) => fits(block, at));
    if (corner) {
      place(block, corner);
      continue;
    }
    for (const at of corners) {
      const parts = table ? brokenAfter(table, size, at[1] - bottomAt(at[0] + block.width)) : [];
      const [begun, ...others] = parts;
      if (!begun || !fits(begun.block, at)) continue;
      place(begun.block, at);
      return { paper, rest: [...others, ...pieces.slice(placed + 1)] };
    }
    return { paper, rest: pieces.slice(placed) };
  }
  return { paper, rest: [] };
}

/** Where further columns may begin: to the right of what stands there. */
const columnsAfter = (x: number, taken: readonly Area[]): number[] =>
  [...new Set(taken.map((t) => t.right + GAP))].filter((start) => start > x);

/** The highest level, not over `from`, at which a column of a width is free from there down. */
function under(x: number, width: number, from: number, taken: readonly Area[]): number {
  const over = taken.filter((t) => t.left < x + width + GAP - ROUNDING && t.right > x - GAP + ROUNDING);
  return Math.min(from, ...over.map((t) => t.bottom - GAP));
}

/** What adding lengths up may leave over. */
const ROUNDING = 1e-6;
