import { type Block, placeBlock } from '../../documents/block.js';
import type { View } from '../../documents/drawing.js';
import { scaleWords } from '../../documents/scales.js';
import { words } from '../../documents/shapes.js';
import type { PaperPrimitive, PlacedView } from '../../documents/sheet.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import { textWidth } from '../../documents/text-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import { TITLE } from '../foot-blocks.js';
import { columnOf, type Furniture, stripOf } from './furniture.js';
import { type Area, heightOf, type PackedRows, packRows, type SpreadView, spreadRows, widthOf } from './rows.js';

/** Room inside the frame that nothing enters, between views and what is beside them, and between blocks, paper mm. */
const PAD = 4;
const GAP = 8;

/** A sheet's content before it has a number. */
export interface Page {
  readonly views: readonly PlacedView[];
  readonly paper: readonly PaperPrimitive[];
  /** Tables that found room here. */
  readonly tables: readonly Block[];
  /** How much of the room for views they fill, along the side on which they fill it less. */
  readonly fill: number;
}

/**
 * Views, what is said beside them and as many of the tables as find room on one sheet: notes in a column over the title
 * block, else in a strip beside it. `null` when that is too much for the sheet.
 */
export function composePage(
  size: SheetSize,
  views: readonly View[],
  furniture: Furniture,
  tables: readonly Block[],
): Page | null {
  const [beside, below] = [composeBeside, composeBelow].map((compose) => compose(size, views, furniture, tables));
  if (!beside || !below) return beside ?? below ?? null;
  if (below.tables.length !== beside.tables.length) return below.tables.length > beside.tables.length ? below : beside;
  return below.fill > beside.fill ? below : beside;
}

function composeBeside(
  size: SheetSize,
  views: readonly View[],
  furniture: Furniture,
  tables: readonly Block[],
): Page | null {
  const space = drawingSpace(size);
  const inner = space.right - TITLE_BLOCK.width;
  const column: Area = {
    left: inner + PAD,
    right: space.right - PAD,
    bottom: space.bottom + TITLE_BLOCK.height + PAD,
    top: space.top - PAD,
  };
  const block = columnOf(furniture, widthOf(column));
  const area: Area = { left: space.left + PAD, right: inner, bottom: space.bottom + PAD, top: space.top - PAD };
  const rows = packRows(views, widthOf(area), heightOf(area));
  if (block.height > heightOf(column) || !rows) return null;
  const stack = new Shelf(column, block);
  const rest = tables.filter((table) => !stack.add(table));
  const page = withTables(area, rows, rest);
  return {
    views: page.views,
    paper: [...stack.primitives, ...page.paper],
    tables: tables.filter((t) => !rest.includes(t) || page.tables.includes(t)),
    fill: page.fill,
  };
}

function composeBelow(
  size: SheetSize,
  views: readonly View[],
  furniture: Furniture,
  tables: readonly Block[],
): Page | null {
  const space = drawingSpace(size);
  const left = space.left + PAD;
  const block = stripOf(furniture, space.right - TITLE_BLOCK.width - PAD - left);
  const strip = Math.max(TITLE_BLOCK.height, block.height + 2 * PAD);
  const area: Area = { left, right: space.right - PAD, bottom: space.bottom + strip + PAD, top: space.top - PAD };
  const rows = packRows(views, widthOf(area), heightOf(area));
  if (!rows) return null;
  const page = withTables(area, rows, tables);
  return { ...page, paper: [...placeBlock(block, [left, space.bottom + strip - PAD]), ...page.paper] };
}

/** Rows of views, with tables to their right or under them where that leaves room. */
function withTables(area: Area, rows: PackedRows, tables: readonly Block[]): Page {
  const fill = Math.min(rows.width / widthOf(area), rows.height / heightOf(area));
  const free: Area = { ...area, left: area.left + rows.width + GAP };
  const under: Area = { ...area, top: area.top - rows.height - GAP };
  for (const [room, views] of [
    [free, (used: Area): Area => ({ ...area, right: used.left - GAP })],
    [under, (used: Area): Area => ({ ...area, bottom: used.top + GAP })],
  ] as const) {
    const placed = tables.filter((t) => t.width <= widthOf(room) && t.height <= heightOf(room));
    if (placed.length === 0) continue;
    const widest = Math.max(...placed.map((t) => t.width));
    const used = room === free ? { ...room, left: room.right - widest } : lowered(room, placed);
    const stack = new Shelf(used);
    const done = placed.filter((t) => stack.add(t));
    const spread = spreadRows(rows, views(used));
    return {
      views: spread.map((s) => s.placed),
      paper: [...stack.primitives, ...captions(spread)],
      tables: done,
      fill,
    };
  }
  const spread = spreadRows(rows, area);
  return { views: spread.map((s) => s.placed), paper: captions(spread), tables: [], fill };
}

/** The lower part of a room that is as high as the highest of the blocks. */
const lowered = (room: Area, blocks: readonly Block[]): Area => ({
  ...room,
  top: room.bottom + Math.max(...blocks.map((b) => b.height)),
});

/** Blocks one under another in an area, and in further columns where that has room for them. */
class Shelf {
  readonly primitives: PaperPrimitive[] = [];
  private x: number;
  private y: number;
  private widest = 0;

  constructor(
    private readonly area: Area,
    first?: Block,
  ) {
    [this.x, this.y] = [area.left, area.top];
    if (first) this.add(first);
  }

  /** Adds a block and says whether there was room. */
  add(block: Block): boolean {
    if (this.y - block.height < this.area.bottom - 1e-6) {
      const next = this.x + this.widest + GAP;
      if (block.height > heightOf(this.area) || next + block.width > this.area.right + 1e-6) return false;
      [this.x, this.y, this.widest] = [next, this.area.top, 0];
    }
    if (this.x + block.width > this.area.right + 1e-6) return false;
    this.primitives.push(...placeBlock(block, [this.x, this.y]));
    this.y -= block.height + GAP;
    this.widest = Math.max(this.widest, block.width);
    return true;
  }
}

/** Titles and scales under views, those of a row on one line. */
const captions = (views: readonly SpreadView[]): PaperPrimitive[] =>
  views.flatMap(({ placed: { view }, left, bottom }) => {
    const y = bottom + 3;
    return [
      words('text', view.title, [left, y], TITLE),
      words('text', scaleWords(view.scale, view.units), [left + textWidth(view.title, TITLE) + 5, y], 3.5),
    ];
  });

/** Tables alone on a sheet; those that found no room come back in `left`. */
export function tablePage(size: SheetSize, tables: readonly Block[]): { page: Page; left: readonly Block[] } {
  const stack = new Shelf(tableArea(size));
  const done = tables.filter((table) => stack.add(table));
  return {
    page: { views: [], paper: stack.primitives, tables: done, fill: 0 },
    left: tables.filter((t) => !done.includes(t)),
  };
}

/** Height of the highest table that a sheet of its own can hold. */
export const highestTable = (size: SheetSize): number => heightOf(tableArea(size));

/** All of a sheet above its title block, where the widest table has room. */
function tableArea(size: SheetSize): Area {
  const space = drawingSpace(size);
  return {
    left: space.left + PAD,
    right: space.right - PAD,
    bottom: space.bottom + TITLE_BLOCK.height + PAD,
    top: space.top - PAD,
  };
}
