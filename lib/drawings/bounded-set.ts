import { type Bounded, meet } from './overlap.js';

/** Figures on a grid of square cells, so that each is only held against those near it. */
export class BoundedSet {
  private readonly all: Bounded[] = [];
  private readonly cells = new Map<number, number[]>();
  /** The last question in which each figure was held, for one may lie in several cells. */
  private readonly asked: number[] = [];
  private question = 0;

  constructor(private readonly cell: number) {}

  add(...figures: readonly Bounded[]): void {
    for (const figure of figures) {
      const number = this.all.push(figure) - 1;
      this.asked.push(0);
      for (const key of this.keys(figure)) {
        const inCell = this.cells.get(key);
        if (inCell) inCell.push(number);
        else this.cells.set(key, [number]);
      }
    }
  }

  /** How many of the figures have a point in common with this one. */
  count(one: Bounded): number {
    this.question++;
    let n = 0;
    for (const key of this.keys(one)) {
      for (const number of this.cells.get(key) ?? []) {
        if (this.asked[number] === this.question) continue;
        this.asked[number] = this.question;
        if (meet(this.all[number] as Bounded, one)) n++;
      }
    }
    return n;
  }

  private keys({ low, high }: Bounded): number[] {
    const [x0, y0] = [Math.floor(low[0] / this.cell), Math.floor(low[1] / this.cell)];
    const [x1, y1] = [Math.floor(high[0] / this.cell), Math.floor(high[1] / this.cell)];
    const keys: number[] = [];
    // One number for a cell; cells that share one are told apart by what lies in them.
    for (let x = x0; x <= x1; x++) for (let y = y0; y <= y1; y++) keys.push(x * 1000003 + y);
    return keys;
  }
}
