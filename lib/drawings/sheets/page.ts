import type { PaperPrimitive, View } from '../../documents/drawing.js';
import { scaleWords } from '../../documents/scales.js';
import { words } from '../../documents/shapes.js';
import type { PlacedView } from '../../documents/sheet.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import { textWidth } from '../../documents/text-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import type { Vec2 } from '../../math/vec.js';
import { TITLE } from '../foot-blocks.js';
import {
  areaOf,
  boundsOf,
  drawnBlocks,
  FreeRoom,
  GAP,
  moved,
  type PlacedBlock,
  roomToMove,
  shareOf,
} from './free-room.js';
import { columnOf, type Furniture, stripOf } from './furniture.js';
import { type Area, heightOf, type PackedRows, packRows, type SpreadView, spreadRows, widthOf } from './rows.js';
import type { Told } from './told.js';

/** Room inside the frame that nothing enters, paper mm. */
const PAD = 4;

/** A sheet's content before it has a number. */
export interface Page {
  readonly views: readonly PlacedView[];
  readonly paper: readonly PaperPrimitive[];
  /** Tables that found room here. */
  readonly tables: readonly Told[];
  /** How much of the sheet views, tables and texts take up, 0 to 1. */
  readonly filled: number;
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
  tables: readonly Told[],
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
  tables: readonly Told[],
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
  if (block.height > heightOf(column) || block.width > widthOf(column)) return null;
  const area: Area = { left: space.left + PAD, right: inner, bottom: space.bottom + PAD, top: space.top - PAD };
  return withTables(size, {
    views,
    area,
    tables,
    furniture: { block, area: areaOf(block, [column.left, column.top]) },
  });
}

function composeBelow(
  size: SheetSize,
  views: readonly View[],
  furniture: Furniture,
  tables: readonly Told[],
): Composed | null {
  const space = drawingSpace(size);
  const left = space.left + PAD;
  const block = stripOf(furniture, space.right - TITLE_BLOCK.width - PAD - left);
  const strip = Math.max(TITLE_BLOCK.height, block.height + 2 * PAD);
  const area: Area = { left, right: space.right - PAD, bottom: space.bottom + strip + PAD, top: space.top - PAD };
  const placed = { block, area: areaOf(block, [left, space.bottom + strip - PAD]) };
  return withTables(size, { views, area, tables, furniture: placed });
}

interface Parts {
  readonly views: readonly View[];
  /** Where the views stand. */
  readonly area: Area;
  readonly furniture: PlacedBlock;
  readonly tables: readonly Told[];
}

/** Rows of views, with tables to their right, under them or under what is said beside them, where that leaves room. */
function withTables(size: SheetSize, { views, area, furniture, tables }: Parts): Composed | null {
  const rows = packRows(views, widthOf(area), heightOf(area));
  if (!rows) return null;
  const space = drawingSpace(size);
  const inner: Area = {
    left: area.left,
    right: space.right - PAD,
    bottom: space.bottom + PAD,
    top: area.top,
  };
  const form: Area = {
    left: space.right - TITLE_BLOCK.width,
    right: space.right,
    bottom: space.bottom,
    top: space.bottom + TITLE_BLOCK.height + PAD,
  };
  const figure: Area = { ...area, right: area.left + rows.width, bottom: area.top - rows.height };
  const first = Math.max(furniture.area.left, figure.right + GAP);
  const fixed = [figure, furniture.area];
  const room = new FreeRoom(inner, [form], fixed, first);
  const early = tables.filter(({ ways }) => ways.some((blocks) => room.add(...blocks)));
  const aside = asideOf(figure, room.groups, area, [form, furniture.area]);
  // Blocks that were moved aside may leave room for more.
  const rest = new FreeRoom(inner, [form], [...fixed, ...areasOf(aside.groups.flat())], first);
  const others = early.length > 0 ? tables.filter((t) => !early.includes(t)) : [];
  const late = others.filter(({ ways }) => ways.some((blocks) => rest.add(...blocks)));
  const { groups, left } =
    late.length > 0 ? asideOf(figure, [...aside.groups, ...rest.groups], area, [form, furniture.area]) : aside;
  const placed = groups.flat();
  const spread = spreadRows(rows, left);
  return {
    views: spread.map((s) => s.placed),
    paper: [...drawnBlocks([furniture, ...placed]), ...captions(spread)],
    tables: tables.filter((t) => early.includes(t) || late.includes(t)),
    filled: shareOf([figure, furniture.area, ...placed.map((p) => p.area)], {
      left: space.left,
      right: space.right,
      bottom: space.bottom,
      top: space.top,
    }),
    rows,
    area,
  };
}

/**
 * Blocks beside a figure moved to the edge and those under it to the foot of its area, those that stand together alike,
 * and what is left of that for the figure.
 */
function asideOf(
  figure: Area,
  groups: readonly (readonly PlacedBlock[])[],
  area: Area,
  others: readonly Area[],
): { readonly groups: readonly (readonly PlacedBlock[])[]; readonly left: Area } {
  const within = (all: readonly (readonly PlacedBlock[])[], of: (bounds: Area) => boolean) =>
    all.filter((g) => of(boundsOf(areasOf(g))));
  const inside = within(groups, (g) => g.left < area.right && g.top > area.bottom);
  const outside = groups.filter((g) => !inside.includes(g));
  const beside = within(inside, (g) => g.left >= figure.right && g.top > figure.bottom);
  const under = inside.filter((g) => !beside.includes(g));
  const areas = (all: readonly (readonly PlacedBlock[])[]) => areasOf(all.flat());
  const by = (all: readonly (readonly PlacedBlock[])[], move: Vec2) => all.map((g) => g.map((b) => moved(b, move)));
  const down =
    under.length > 0
      ? roomToMove(under.flat(), 'down', area.bottom, [...others, ...areas(outside), ...areas(beside)])
      : 0;
  const low = by(under, [0, -down]);
  const right =
    beside.length > 0
      ? roomToMove(beside.flat(), 'right', area.right, [...others, ...areas(outside), ...areas(low)])
      : 0;
  const aside = by(beside, [right, 0]);
  const left: Area = {
    ...area,
    right: Math.min(area.right, ...areas(aside).map((a) => a.left - GAP)),
    bottom: Math.max(area.bottom, ...areas(low).map((a) => a.top + GAP)),
  };
  return { groups: [...outside, ...aside, ...low], left };
}

const areasOf = (blocks: readonly PlacedBlock[]): Area[] => blocks.map((b) => b.area);

/** Titles and scales under views, those of a row on one line. */
const captions = (views: readonly SpreadView[]): PaperPrimitive[] =>
  views.flatMap(({ placed: { view }, left, bottom }) => {
    const y = bottom + 3;
    return [
      words('text', view.title, [left, y], TITLE),
      words('text', scaleWords(view.scale, view.units), [left + textWidth(view.title, TITLE) + 5, y], 3.5),
    ];
  });
