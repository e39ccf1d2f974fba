import { type Block, placeBlock } from '../../documents/block.js';
import type { PaperPrimitive, View } from '../../documents/drawing.js';
import { scaleWords } from '../../documents/scales.js';
import { words } from '../../documents/shapes.js';
import type { PlacedView } from '../../documents/sheet.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import { textWidth } from '../../documents/text-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import { TITLE } from '../foot-blocks.js';
import { columnOf, type Furniture, stripOf } from './furniture.js';
import { type Area, heightOf, type PackedRows, packRows, type SpreadView, spreadRows, widthOf } from './rows.js';
import { GAP, Shelf } from './shelf.js';

/** Room inside the frame that nothing enters, paper mm. */
const PAD = 4;

/** A sheet's content before it has a number. */
export interface Page {
  readonly views: readonly PlacedView[];
  readonly paper: readonly PaperPrimitive[];
  /** Tables that found room here. */
  readonly tables: readonly Block[];
}

/** A page, and the rows of views in the room that they had. */
interface Composed extends Page {
  readonly rows: PackedRows;
  readonly area: Area;
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
  if (below.rows.even !== beside.rows.even) return below.rows.even ? below : beside;
  return filling(below) > filling(beside) ? below : beside;
}

/** How much of their room the views take up, along the side on which they take less. */
const filling = ({ rows, area }: Composed): number =>
  Math.min(rows.width / widthOf(area), rows.height / heightOf(area));

function composeBeside(
  size: SheetSize,
  views: readonly View[],
  furniture: Furniture,
  tables: readonly Block[],
): Composed | null {
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
  if (block.height > heightOf(column) || block.width > widthOf(column) || !rows) return null;
  const stack = new Shelf(column, block);
  const rest = tables.filter((table) => !stack.add(table));
  const composed = withTables(area, rows, rest);
  return {
    ...composed,
    paper: [...stack.primitives, ...composed.paper],
    tables: tables.filter((t) => !rest.includes(t) || composed.tables.includes(t)),
  };
}

function composeBelow(
  size: SheetSize,
  views: readonly View[],
  furniture: Furniture,
  tables: readonly Block[],
): Composed | null {
  const space = drawingSpace(size);
  const left = space.left + PAD;
  const block = stripOf(furniture, space.right - TITLE_BLOCK.width - PAD - left);
  const strip = Math.max(TITLE_BLOCK.height, block.height + 2 * PAD);
  const area: Area = { left, right: space.right - PAD, bottom: space.bottom + strip + PAD, top: space.top - PAD };
  const rows = packRows(views, widthOf(area), heightOf(area));
  if (!rows) return null;
  const composed = withTables(area, rows, tables);
  return { ...composed, paper: [...placeBlock(block, [left, space.bottom + strip - PAD]), ...composed.paper] };
}

/** Rows of views, with tables to their right or under them where that leaves room. */
function withTables(area: Area, rows: PackedRows, tables: readonly Block[]): Composed {
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
    return { ...spreadPage(area, rows, spread), paper: [...stack.primitives, ...captions(spread)], tables: done };
  }
  return spreadPage(area, rows, spreadRows(rows, area));
}

const spreadPage = (area: Area, rows: PackedRows, spread: readonly SpreadView[]): Composed => ({
  views: spread.map((s) => s.placed),
  paper: captions(spread),
  tables: [],
  rows,
  area,
});

/** The lower part of a room that is as high as the highest of the blocks. */
const lowered = (room: Area, blocks: readonly Block[]): Area => ({
  ...room,
  top: room.bottom + Math.max(...blocks.map((b) => b.height)),
});

/** Titles and scales under views, those of a row on one line. */
const captions = (views: readonly SpreadView[]): PaperPrimitive[] =>
  views.flatMap(({ placed: { view }, left, bottom }) => {
    const y = bottom + 3;
    return [
      words('text', view.title, [left, y], TITLE),
      words('text', scaleWords(view.scale, view.units), [left + textWidth(view.title, TITLE) + 5, y], 3.5),
    ];
  });
