import { remembered } from '../../base/remembered.js';
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
  readonly height: number;
  /** How far above the lowest of its views its common level lies; `null` where some view doesn't show that. */
  readonly level: number | null;
}

/** Views in rows; views of a row stand on one level or, where some don't show it, on one foot. */
export interface PackedRows {
  readonly rows: readonly Row[];
  readonly width: number;
  readonly height: number;
  /** Whether all rows have as many views. */
  readonly even: boolean;
}

/** Rows of views in their order, as even as they can be, or `null` when they don't fit `width` by `height`. */
export function packRows(views: readonly View[], width: number, height: number): PackedRows | null {
  const extents = views.map(extentOf);
  const n = extents.length;
  const long = longRows(extents, width);
  for (let count = 1; count <= n; count++) {
    const each = Math.ceil(n / count);
    // As many rows as this would leave one empty.
    if (each * (count - 1) >= n) continue;
    const rows = Array.from({ length: count }, (_, r) => rowOf(extents.slice(r * each, (r + 1) * each)));
    const packed =
      fitting(rows, n % each === 0, width, height) ??
      (long.length === count ? fitting(long, false, width, height) : null);
    if (packed) return packed;
  }
  return null;
}

function fitting(rows: readonly Row[], even: boolean, width: number, height: number): PackedRows | null {
  const whole: PackedRows = {
    rows,
    even,
    width: Math.max(...rows.map((r) => r.width)),
    height: rows.reduce((sum, row) => sum + rowHeight(row), GAP * (rows.length - 1)),
  };
  return whole.width <= width && whole.height <= height ? whole : null;
}

/** Each row as long as it may be. */
function longRows(extents: readonly Extent[], width: number): Row[] {
  const rows: Extent[][] = [];
  for (const extent of extents) {
    const open = rows[rows.length - 1];
    if (open && rowOf([...open, extent]).width <= width) open.push(extent);
    else rows.push([extent]);
  }
  return rows.map(rowOf);
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
    const bottom = top - rowHeight(row);
    const foot = bottom + CAPTION;
    top = bottom - GAP;
    const between = (widthOf(area) - row.width) / (row.views.length + 1);
    let x = area.left;
    return row.views.map((e): SpreadView => {
      x += between;
      const left = x;
      x += e.left + e.right + GAP;
      return { placed: { view: e.view, at: [left + e.left, foot + (row.level ?? e.down)] }, left, bottom };
    });
  });
}

/** Many ways are tried to share the same views out to sheets. */
const extentOf = remembered((view: View): Extent => {
  const { min, max } = placedBounds({ view, at: [0, 0] });
  return { view, left: -min[0], right: max[0], down: -min[1], up: max[1] };
});

const rowHeight = (row: Row): number => row.height + CAPTION;

function rowOf(views: readonly Extent[]): Row {
  const shown = views.every((e) => e.up >= 0 && e.down >= 0);
  const level = Math.max(...views.map((e) => e.down));
  return {
    views,
    width: views.reduce((sum, e) => sum + e.left + e.right, GAP * (views.length - 1)),
    height: Math.max(...views.map((e) => e.up + (shown ? level : e.down))),
    level: shown ? level : null,
  };
}
