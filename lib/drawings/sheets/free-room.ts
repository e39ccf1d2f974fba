import { type Block, enlargedBlock, placeBlock } from '../../documents/block.js';
import type { PaperPrimitive } from '../../documents/drawing.js';
import type { Vec2 } from '../../math/vec.js';
import { type Area, heightOf, widthOf } from './rows.js';

/** Between blocks, paper mm. */
export const GAP = 7;

/** What adding lengths up may leave over. */
export const ROUNDING = 1e-6;

/** A block and where it stands. */
export interface PlacedBlock {
  readonly block: Block;
  readonly area: Area;
}

/**
 * What is free of a sheet, and blocks that are put there in their order: each under the one before it, else in a column
 * farther right, where one begins highest, else in what earlier columns leave free. A block there leaves the next one's
 * place as it was, so that what comes after is still read down and to the right.
 */
export class FreeRoom {
  private together: readonly (readonly PlacedBlock[])[] = [];
  private at: Vec2;
  /** Width of the column in which the next block stands. */
  private column = 0;

  /**
   * @param walls what is taken up to its very edge, such as the title block with the room round it
   * @param taken what else stands there, with a gap round it
   * @param first where the first column begins
   */
  constructor(
    private readonly area: Area,
    private readonly walls: readonly Area[] = [],
    private readonly taken: readonly Area[] = [],
    first = area.left,
  ) {
    this.at = [first, area.top];
  }

  get placed(): readonly PlacedBlock[] {
    return this.together.flat();
  }

  /** The same: blocks that were added together stand together. */
  get groups(): readonly (readonly PlacedBlock[])[] {
    return this.together;
  }

  /** Adds blocks, each right under the one before it or right beside it, and says whether there was room; none where there wasn't. */
  add(first: Block, ...others: readonly Block[]): boolean {
    const before = [this.together, this.at, this.column] as const;
    for (const corner of this.corners(first).filter((at) => this.fits(first, at))) {
      this.place(first, corner);
      if (others.every((block) => this.addToLast(block))) {
        const [groups] = before;
        this.together = [...groups, this.together.slice(groups.length).flat()];
        return true;
      }
      [this.together, this.at, this.column] = before;
    }
    return false;
  }

  private addToLast(block: Block): boolean {
    const { area } = this.placed[this.placed.length - 1] as PlacedBlock;
    const corners: Vec2[] = [
      [area.left, area.bottom - GAP],
      [area.right + GAP, area.top],
    ];
    const corner = corners.find((at) => this.fits(block, at));
    if (corner) this.place(block, corner);
    return corner !== undefined;
  }

  /**
   * Upper left corners at which a block may stand, fit it or not, the best first.
   * @param even what is wider than the column begins the next one where it can, for under it no column would go on
   */
  corners(block: Block, even = false): Vec2[] {
    const ahead = this.cornersAhead(block, even);
    const back = this.tops(block)
      .filter(([x]) => x < this.at[0] - ROUNDING)
      .sort(highestFirst);
    return [...ahead, ...back];
  }

  /** Those of them that don't go back to an earlier column. */
  cornersAhead(block: Block, even = false): Vec2[] {
    const [x, y] = this.at;
    const tops = this.tops(block);
    const below = tops.filter((at) => Math.abs(at[0] - x) <= ROUNDING && at[1] <= y + ROUNDING);
    const beside = tops.filter((at) => at[0] > x + ROUNDING).sort(highestFirst);
    const wider = even && this.column > 0 && block.width > this.column + ROUNDING;
    return wider ? [...beside, ...below] : [...below, ...beside];
  }

  fits(block: Block, at: Vec2): boolean {
    const { right, bottom } = this.area;
    const own = areaOf(block, at);
    if (own.right > right + ROUNDING || own.bottom < bottom - ROUNDING) return false;
    return this.obstacles().every((o) => apart(o, own));
  }

  /** How high a block of a width may be whose upper left corner is given. */
  roomUnder([x, y]: Vec2, width: number): number {
    const below = this.obstacles().filter(
      (o) => o.left < x + width - ROUNDING && o.right > x + ROUNDING && o.bottom < y,
    );
    return y - Math.max(this.area.bottom, ...below.map((o) => o.top));
  }

  place(block: Block, [x, y]: Vec2): void {
    const area = areaOf(block, [x, y]);
    this.together = [...this.together, [{ block, area }]];
    if (x < this.at[0] - ROUNDING) return;
    this.column = Math.abs(x - this.at[0]) <= ROUNDING ? Math.max(this.column, block.width) : block.width;
    this.at = [x, area.bottom - GAP];
  }

  private obstacles(): Area[] {
    return [...this.walls, ...[...this.taken, ...this.placed.map((b) => b.area)].map(withGap)];
  }

  /** Where columns may begin, from the left, and in each the levels from the top at which a block is free of what stands there. */
  private tops({ width }: Block): Vec2[] {
    const obstacles = this.obstacles();
    const starts = [this.area.left, this.at[0], ...obstacles.map((o) => o.right)];
    const levels = [this.area.top, ...obstacles.map((o) => o.bottom)];
    const distinct = (all: readonly number[]) => [...new Set(all)].sort((a, b) => a - b);
    return distinct(starts)
      .filter((x) => x >= this.area.left - ROUNDING && x + width <= this.area.right + ROUNDING)
      .flatMap((x) =>
        distinct(levels)
          .reverse()
          .filter((y) =>
            obstacles.every((o) => apart(o, { left: x, right: x + width, top: y, bottom: y - ROUNDING * 4 })),
          )
          .map((y): Vec2 => [x, y]),
      );
  }
}

/** Of columns, the one that begins highest, and of such the first. */
const highestFirst = (a: Vec2, b: Vec2): number => b[1] - a[1] || a[0] - b[0];

const withGap = (a: Area): Area => ({
  left: a.left - GAP,
  right: a.right + GAP,
  top: a.top + GAP,
  bottom: a.bottom - GAP,
});

const apart = (a: Area, b: Area): boolean =>
  a.right <= b.left + ROUNDING ||
  b.right <= a.left + ROUNDING ||
  a.bottom >= b.top - ROUNDING ||
  b.bottom >= a.top - ROUNDING;

/** How far some blocks may move together to the right or down before one comes to the edge or too near to what stands there. */
export function roomToMove(
  blocks: readonly PlacedBlock[],
  way: 'right' | 'down',
  edge: number,
  others: readonly Area[],
): number {
  const slack = blocks.flatMap(({ area }) =>
    way === 'right'
      ? [
          edge - area.right,
          ...others.filter((o) => o.left > area.left && !passes(o, area, 'y')).map((o) => o.left - GAP - area.right),
        ]
      : [
          area.bottom - edge,
          ...others.filter((o) => o.top < area.top && !passes(o, area, 'x')).map((o) => area.bottom - GAP - o.top),
        ],
  );
  return Math.max(0, Math.min(...slack));
}

/** Whether two areas have a gap between them along an axis. */
const passes = (a: Area, b: Area, axis: 'x' | 'y'): boolean =>
  axis === 'x'
    ? a.right + GAP <= b.left + ROUNDING || b.right + GAP <= a.left + ROUNDING
    : a.top + GAP <= b.bottom + ROUNDING || b.top + GAP <= a.bottom + ROUNDING;

export const moved = ({ block, area }: PlacedBlock, [x, y]: Vec2): PlacedBlock => ({
  block,
  area: { left: area.left + x, right: area.right + x, top: area.top + y, bottom: area.bottom + y },
});

/** The area of a block whose upper left corner is given. */
export const areaOf = (block: Block, [x, y]: Vec2): Area => ({
  left: x,
  right: x + block.width,
  top: y,
  bottom: y - block.height,
});

/** Primitives of placed blocks; blocks and places enlarged by a factor, letters with them. */
export const drawnBlocks = (placed: readonly PlacedBlock[], factor = 1): PaperPrimitive[] =>
  placed.flatMap(({ block, area }) =>
    placeBlock(factor === 1 ? block : enlargedBlock(block, factor), [area.left * factor, area.top * factor]),
  );

/** The least area that holds some. */
export const boundsOf = (areas: readonly Area[]): Area => ({
  left: Math.min(...areas.map((a) => a.left)),
  right: Math.max(...areas.map((a) => a.right)),
  bottom: Math.min(...areas.map((a) => a.bottom)),
  top: Math.max(...areas.map((a) => a.top)),
});

/** How much of a sheet some areas take up, 0 to 1. */
export const shareOf = (areas: readonly Area[], whole: Area): number =>
  areas.reduce((sum, a) => sum + widthOf(a) * heightOf(a), 0) / (widthOf(whole) * heightOf(whole));
