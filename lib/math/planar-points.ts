import type { Vec2 } from './vec.js';

/** Gives near points the same number: a grid of cells as wide as the tolerance, with a look into the neighbours. */
export class PointIndex {
  private readonly cells = new Map<string, number[]>();
  private readonly points: Vec2[] = [];

  constructor(private readonly tolerance: number) {}

  /** Number of the first point seen within the tolerance of `p`, or a new one. */
  of(p: Vec2): number {
    const x = Math.floor(p[0] / this.tolerance);
    const y = Math.floor(p[1] / this.tolerance);
    for (let i = -1; i <= 1; i++) {
      for (let j = -1; j <= 1; j++) {
        for (const known of this.cells.get(`${x + i} ${y + j}`) ?? []) {
          const q = this.points[known] as Vec2;
          if (Math.hypot(p[0] - q[0], p[1] - q[1]) <= this.tolerance) return known;
        }
      }
    }
    const number = this.points.push(p) - 1;
    const key = `${x} ${y}`;
    this.cells.set(key, [...(this.cells.get(key) ?? []), number]);
    return number;
  }
}
