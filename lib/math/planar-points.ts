import { hypot } from './elementary.js';
import type { Vec2 } from './vec.js';

/** Gives near points the same number: a grid of cells as wide as the tolerance, with a look into the neighbours. */
export class PointIndex {
  private readonly cells = new Map<number, number[]>();
  private readonly points: Vec2[] = [];

  constructor(private readonly tolerance: number) {}

  /** Number of the first point seen within the tolerance of `p`, or a new one. */
  of(p: Vec2): number {
    const x = Math.floor(p[0] / this.tolerance);
    const y = Math.floor(p[1] / this.tolerance);
    for (let i = -1; i <= 1; i++) {
      for (let j = -1; j <= 1; j++) {
        const cell = this.cells.get(cellKey(x + i, y + j));
        if (cell === undefined) continue;
        for (const known of cell) {
          const q = this.points[known] as Vec2;
          if (hypot(p[0] - q[0], p[1] - q[1]) <= this.tolerance) return known;
        }
      }
    }
    const number = this.points.push(p) - 1;
    const key = cellKey(x, y);
    const cell = this.cells.get(key);
    if (cell) cell.push(number);
    else this.cells.set(key, [number]);
    return number;
  }
}

/** One number for a cell; cells that share one are told apart by distance. */
const cellKey = (x: number, y: number): number => x * 1000003 + y;
