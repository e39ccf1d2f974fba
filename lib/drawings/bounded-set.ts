import { cellKey } from '../math/cells.js';
import { type Bounded, meet } from './overlap.js';

/** Figures on a grid of square cells, so that each is only held against those near it. */
export class BoundedSet {
  private readonly all: Bounded[] = [];
  private readonly cells = new Map<number, number[]>();
  /** The last question in which each figure was held, for one may lie in several cells. */
  private readonly asked: number[] = [];
  private question = 0;

  constructor(private readonly cell: number) {}

  add(figures: readonly Bounded[]): void {
    for (const figure of figures) {
      const number = this.all.push(figure) - 1;
      this.asked.push(0);
      const x0 = this.at(figure.low[0]);
      const y0 = this.at(figure.low[1]);
      const x1 = this.at(figure.high[0]);
      const y1 = this.at(figure.high[1]);
      for (let x = x0; x <= x1; x++) {
        for (let y = y0; y <= y1; y++) {
          const inCell = this.cells.get(cellKey(x, y));
          if (inCell) inCell.push(number);
          else this.cells.set(cellKey(x, y), [number]);
        }
      }
    }
  }

  /** How many of the figures have a point in common with this one. */
  count(one: Bounded): number {
    if (this.all.length === 0) return 0;
    this.question++;
    let n = 0;
    const x0 = this.at(one.low[0]);
    const y0 = this.at(one.low[1]);
    const x1 = this.at(one.high[0]);
    const y1 = this.at(one.high[1]);
    for (let x = x0; x <= x1; x++) {
      for (let y = y0; y <= y1; y++) {
        const inCell = this.cells.get(cellKey(x, y));
        if (inCell === undefined) continue;
        for (const number of inCell) {
          if (this.asked[number] === this.question) continue;
          this.asked[number] = this.question;
          if (meet(this.all[number] as Bounded, one)) n++;
        }
      }
    }
    return n;
  }

  private at(place: number): number {
    return Math.floor(place / this.cell);
  }
}
