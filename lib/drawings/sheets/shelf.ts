import { type Block, placeBlock } from '../../documents/block.js';
import type { PaperPrimitive } from '../../documents/drawing.js';
import { type Area, heightOf } from './rows.js';

/** Between blocks, paper mm. */
export const GAP = 8;

/** Blocks one under another in an area, and in further columns where that has room for them. */
export class Shelf {
  readonly primitives: PaperPrimitive[] = [];
  private x: number;
  private y: number;
  private widest = 0;

  constructor(
    private readonly area: Area,
    first?: Block,
  ) {
    [this.x, this.y] = [area.left, area.top];
    if (first && !this.add(first)) throw new RangeError('a block that is wider or higher than its area');
  }

  /** Adds a block and says whether there was room. */
  add(block: Block): boolean {
    if (this.y - block.height < this.area.bottom - ROUNDING) {
      const next = this.x + this.widest + GAP;
      if (block.height > heightOf(this.area) || next + block.width > this.area.right + ROUNDING) return false;
      [this.x, this.y, this.widest] = [next, this.area.top, 0];
    }
    if (this.x + block.width > this.area.right + ROUNDING) return false;
    this.primitives.push(...placeBlock(block, [this.x, this.y]));
    this.y -= block.height + GAP;
    this.widest = Math.max(this.widest, block.width);
    return true;
  }
}

/** What adding lengths up may leave over. */
const ROUNDING = 1e-6;
