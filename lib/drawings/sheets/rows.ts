import type { View } from '../../documents/drawing.js';
import { type PlacedView, placedBounds } from '../../documents/sheet.js';

/** A level box on paper, mm from the sheet's lower left corner. */
export interface Area {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export const widthOf = (a: Area): number => a.right - a.left;
export const heightOf = (a: Area): number => a.top - a.bottom;

/** Room under each view for its title, and least room between views, paper mm. */
export const CAPTION = 11;
const GAP = 6;

/** What a view takes up on paper, from its model's origin. */
interface Extent {
  readonly view: View;
  readonly left: number;
  readonly right: number;
  readonly down: number;
  readonly up: number;
}

interface Row {
  readonly views: readonly Extent[];
  readonly width: number;
  readonly up: number;
  readonly down: number;
}

/** Views in rows that are as long as they may be; views of a row stand on one level. */
export interface PackedRows {
  readonly rows: readonly Row[];
  readonly width: number;
  readonly height: number;
}

/** Rows of views in their order, or `null` when they don't fit `width` by `height`. */
export function packRows(views: readonly View[], width: number, height: number): PackedRows | null {
  const rows: Row[] = [];
  let open: Extent[] = [];
  for (const view of views) {
    const extent = extentOf(view);
    if (extent.right + extent.left > width) return null;
    if (open.length > 0 && rowOf([...open, extent]).width > width) {
      rows.push(rowOf(open));
      open = [];
    }
    open.push(extent);
  }
  if (open.length > 0) rows.push(rowOf(open));
  const whole = rows.reduce((sum, row) => sum + rowHeight(row), GAP * (rows.length - 1));
  return whole > height ? null : { rows, width: Math.max(...rows.map((r) => r.width)), height: whole };
}

/** A placed view, its left edge and the lower edge of its row, caption included. */
export interface SpreadView {
  readonly placed: PlacedView;
  readonly left: number;
  readonly bottom: number;
}

/** Places packed rows in an area, what is left over shared out evenly. */
export function spreadRows({ rows, height }: PackedRows, area: Area): SpreadView[] {
  const spare = (heightOf(area) - height) / (rows.length + 1);
  let top = area.top;
  return rows.flatMap((row) => {
    top -= spare;
    const level = top - row.up;
    const bottom = top - rowHeight(row);
    top = bottom - GAP;
    const between = (widthOf(area) - row.width) / (row.views.length + 1);
    let x = area.left;
    return row.views.map((e): SpreadView => {
      x += between;
      const left = x;
      x += e.left + e.right + GAP;
      return { placed: { view: e.view, at: [left + e.left, level] }, left, bottom };
    });
  });
}

/** Many ways are tried to share the same views out to sheets. */
const known = new WeakMap<View, Extent>();

function extentOf(view: View): Extent {
  const before = known.get(view);
  if (before) return before;
  const { min, max } = placedBounds({ view, at: [0, 0] });
  const extent = { view, left: -min[0], right: max[0], down: -min[1], up: max[1] };
  known.set(view, extent);
  return extent;
}

const rowHeight = (row: Row): number => row.up + row.down + CAPTION;

function rowOf(views: readonly Extent[]): Row {
  return {
    views,
    width: views.reduce((sum, e) => sum + e.left + e.right, GAP * (views.length - 1)),
    up: Math.max(...views.map((e) => e.up)),
    down: Math.max(...views.map((e) => e.down)),
  };
}
