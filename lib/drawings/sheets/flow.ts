import { type Block, placeBlock } from '../../documents/block.js';
import type { PaperPrimitive } from '../../documents/drawing.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import type { Vec2 } from '../../math/vec.js';
import type { Page } from './page.js';
import type { Area } from './rows.js';
import { type TextPart, textBlock } from './text-parts.js';

/** Room inside the frame that nothing enters, and between blocks, paper mm. */
const PAD = 6;
const GAP = 7;

/** The longest a line of text may be before it is hard to read, and the least a column may be, paper mm. */
const LONGEST = 150;

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
export const tableRoom = (size: SheetSize): { readonly width: number; readonly height: number } => {
  const { width, height } = roomOf(size);
  return { width, height: height - TITLE_BLOCK.height };
};

/** What flows over sheets of words: finished blocks, and texts that are broken into lines as wide as suits the sheet. */
export type Flowing = Block | TextPart;

/** The narrowest column of text that is tried where wider ones take more sheets, paper mm. */
const NARROWEST = 105;

/**
 * Blocks and texts in columns from the left, round the title block, on as few pages as they take; each block at most
 * `tableRoom`. Texts are as wide as is usual, and wider or narrower only where that saves a page.
 */
export function flowPages(size: SheetSize, items: readonly Flowing[]): Page[] {
  const tries = [textWidthOn(size), LONGEST, NARROWEST].flatMap((width) => {
    const blocks = items.map((item) => ('heading' in item ? textBlock(item, width) : item));
    return [false, true].map((even) => flowedPages(size, blocks, even));
  });
  return tries.reduce((best, pages) => (pages.length < best.length ? pages : best));
}

/** `even`: what is wider than the column begins the next one where it can, for under it no column would go on. */
function flowedPages(size: SheetSize, blocks: readonly Block[], even: boolean): Page[] {
  const pages: Page[] = [];
  let left = [...blocks];
  while (left.length > 0) {
    const { paper, rest } = flowPage(size, left, even);
    pages.push({ views: [], paper, tables: [] });
    // A block that is too large for any sheet would come back for ever.
    if (rest.length === left.length)
      throw new Error(`a block of ${left[0]?.width} by ${left[0]?.height} mm fits no ${size.name}`);
    left = rest;
  }
  return pages;
}

/** Each block under the one before it, else at the top of the next column: beside it, and under what is wider above. */
function flowPage(
  size: SheetSize,
  blocks: readonly Block[],
  even: boolean,
): { paper: PaperPrimitive[]; rest: Block[] } {
  const space = drawingSpace(size);
  const [left, right, top] = [space.left + PAD, space.right - PAD, space.top - PAD];
  const form = { left: space.right - TITLE_BLOCK.width - PAD, top: space.bottom + TITLE_BLOCK.height + PAD };
  const bottomAt = (end: number) => (end > form.left ? form.top : space.bottom + PAD);
  const paper: PaperPrimitive[] = [];
  const taken: Area[] = [];
  let [x, y] = [left, top];
  let placed = 0;
  for (const block of blocks) {
    const fits = (atX: number, atY: number) =>
      atX + block.width <= right + ROUNDING && atY - block.height >= bottomAt(atX + block.width) - ROUNDING;
    const column = Math.max(0, ...taken.filter((t) => t.left === x).map((t) => t.right - x));
    const wider = even && column > 0 && block.width > column + ROUNDING;
    const below: Vec2[] = [[x, under(x, block.width, y, taken)]];
    // The next columns: where one begins highest, else the first.
    const beside = columnsAfter(x, taken)
      .map((atX): Vec2 => [atX, under(atX, block.width, top, taken)])
      .sort((a, b) => b[1] - a[1] || a[0] - b[0]);
    const corner = (wider ? [...beside, ...below] : [...below, ...beside]).find((at) => fits(...at));
    if (!corner) break;
    [x, y] = corner;
    paper.push(...placeBlock(block, corner));
    taken.push({ left: x, right: x + block.width, top: y, bottom: y - block.height });
    y -= block.height + GAP;
    placed++;
  }
  return { paper, rest: blocks.slice(placed) };
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
