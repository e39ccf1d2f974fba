import { type Block, placeBlock } from '../../documents/block.js';
import type { PaperPrimitive } from '../../documents/sheet.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import type { Page } from './page.js';

/** Room inside the frame that nothing enters, and between blocks, paper mm. */
const PAD = 6;
const GAP = 7;

/** The longest a line of text may be before it is hard to read, and the least a column may be, paper mm. */
const LONGEST = 150;

/** Width of columns of text on a sheet: as few as keep lines readable. */
export function textWidthOn(size: SheetSize): number {
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

/** Blocks in columns from the left, round the title block, on as many pages as they take; each at most `tableRoom`. */
export function flowPages(size: SheetSize, blocks: readonly Block[]): Page[] {
  const pages: Page[] = [];
  let left = [...blocks];
  while (left.length > 0) {
    const { paper, rest } = flowPage(size, left);
    pages.push({ views: [], paper, tables: [] });
    // A block that is too large for any sheet would come back for ever.
    if (rest.length === left.length)
      throw new Error(`a block of ${left[0]?.width} by ${left[0]?.height} mm fits no ${size.name}`);
    left = rest;
  }
  return pages;
}

function flowPage(size: SheetSize, blocks: readonly Block[]): { paper: PaperPrimitive[]; rest: Block[] } {
  const space = drawingSpace(size);
  const [left, right, top] = [space.left + PAD, space.right - PAD, space.top - PAD];
  const form = { left: space.right - TITLE_BLOCK.width - PAD, top: space.bottom + TITLE_BLOCK.height + PAD };
  const bottomAt = (end: number) => (end > form.left ? form.top : space.bottom + PAD);
  const paper: PaperPrimitive[] = [];
  let [x, y, widest] = [left, top, 0];
  let placed = 0;
  for (const block of blocks) {
    const fits = (atX: number, atY: number) =>
      atX + block.width <= right + ROUNDING && atY - block.height >= bottomAt(atX + block.width) - ROUNDING;
    if (!fits(x, y)) {
      [x, y, widest] = [widest > 0 ? x + widest + GAP : x, top, 0];
      if (!fits(x, y)) break;
    }
    paper.push(...placeBlock(block, [x, y]));
    y -= block.height + GAP;
    widest = Math.max(widest, block.width);
    placed++;
  }
  return { paper, rest: blocks.slice(placed) };
}

/** What adding lengths up may leave over. */
const ROUNDING = 1e-6;
