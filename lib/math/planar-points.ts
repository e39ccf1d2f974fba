import { cellKey } from './cells.js';
import { hypot } from './elementary.js';
import type { Vec2 } from './vec.js';

/** How many times the tolerance a cell is wide: so few points lie near another cell. */
const CELL = 16;

/** Gives near points the same number: a grid of cells, with a look into those that lie within the tolerance. */
export class PointIndex {
  private readonly cells = new Map<number, number[]>();
  private readonly points: Vec2[] = [];
  private readonly width: number;

  constructor(private readonly tolerance: number) {
    this.width = CELL * tolerance;
  }

  /** Number of a point seen before within the tolerance of `p`, or a new one; of several the westernmost, roughly. */
  of(p: Vec2): number {
    const { tolerance, width } = this;
    const x0 = Math.floor((p[0] - tolerance) / width);
    const x1 = Math.floor((p[0] + tolerance) / width);
    const y0 = Math.floor((p[1] - tolerance) / width);
    const y1 = Math.floor((p[1] + tolerance) / width);
    let found: number | undefined;
    for (let x = x0; x <= x1; x++) {
      for (let y = y0; y <= y1; y++) {
        for (const known of this.cells.get(cellKey(x, y)) ?? NONE) {
          const q = this.points[known] as Vec2;
          if (hypot(p[0] - q[0], p[1] - q[1]) > tolerance) continue;
          if (found === undefined || this.goesBefore(known, found)) found = known;
        }
      }
    }
    if (found !== undefined) return found;
    const number = this.points.push(p) - 1;
    const key = cellKey(Math.floor(p[0] / width), Math.floor(p[1] / width));
    const cell = this.cells.get(key);
    if (cell) cell.push(number);
    else this.cells.set(key, [number]);
    return number;
  }

  /** By the places of two points in steps of the tolerance, then by which was seen first. */
  private goesBefore(one: number, other: number): boolean {
    const [p, q] = [this.points[one] as Vec2, this.points[other] as Vec2];
    for (const axis of [0, 1] as const) {
      const apart = Math.floor(p[axis] / this.tolerance) - Math.floor(q[axis] / this.tolerance);
      if (apart !== 0) return apart < 0;
    }
    return one < other;
  }
}

const NONE: readonly number[] = [];
