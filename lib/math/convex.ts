import { cross2, sub2, type Vec2 } from './vec.js';

/**
 * Convex regions of the plane as their corners, counter-clockwise; a point or a stretch counts as a region, an empty
 * list is none. They hold all solutions of a linear programme of two unknowns at once.
 */
export type Convex = readonly Vec2[];

const ROOM = 64;

/**
 * A region that is changed in place. Programmes clip by thousands of lines, of which most take little or nothing:
 * corners stand in flat arrays, so that this costs no memory.
 */
export class ConvexRegion {
  #x = new Float64Array(ROOM);
  #y = new Float64Array(ROOM);
  #size = 0;
  /** How far each corner lies inside a line that cuts. */
  #heights = new Float64Array(ROOM);
  /** The corners of the next region while it is made. */
  #spareX = new Float64Array(ROOM);
  #spareY = new Float64Array(ROOM);
  #spareSize = 0;

  constructor(corners: Convex) {
    this.#take(corners);
  }

  get empty(): boolean {
    return this.#size === 0;
  }

  corners(): Vec2[] {
    return Array.from({ length: this.#size }, (_, i): Vec2 => [this.#x[i] as number, this.#y[i] as number]);
  }

  #take(corners: Convex): void {
    for (const [x, y] of corners) this.#add(x, y);
    this.#swap();
  }

  #add(x: number, y: number): void {
    if (this.#spareSize === this.#spareX.length) {
      this.#spareX = longer(this.#spareX);
      this.#spareY = longer(this.#spareY);
      this.#heights = longer(this.#heights);
    }
    this.#spareX[this.#spareSize] = x;
    this.#spareY[this.#spareSize] = y;
    this.#spareSize++;
  }

  #addCorner(i: number): void {
    this.#add(this.#x[i] as number, this.#y[i] as number);
  }

  #swap(): void {
    [this.#x, this.#spareX] = [this.#spareX, this.#x];
    [this.#y, this.#spareY] = [this.#spareY, this.#y];
    this.#size = this.#spareSize;
    this.#spareSize = 0;
  }

  /** Leaves what lies where a x + b y + c >= 0; the greatest value there was, negative where nothing is left. */
  cut(a: number, b: number, c: number): number {
    const xs = this.#x;
    const ys = this.#y;
    const heights = this.#heights;
    const size = this.#size;
    let most = Number.NEGATIVE_INFINITY;
    let least = 0;
    for (let i = 0; i < size; i++) {
      const height = a * (xs[i] as number) + b * (ys[i] as number) + c;
      heights[i] = height;
      if (height > most) most = height;
      if (height < least) least = height;
    }
    if (least < 0) {
      if (most >= 0) this.#dropBelow(size);
      else this.#size = 0;
    }
    return most;
  }

  /** A convex region leaves by one run of corners, which may go round the list's end. */
  #dropBelow(size: number): void {
    const heights = this.#heights;
    let from = 0;
    if ((heights[0] as number) < 0) {
      from = size - 1;
      while ((heights[from] as number) < 0) from--;
      from++;
    } else {
      while ((heights[from] as number) >= 0) from++;
    }
    let past = from === size ? 0 : from;
    let wrapped = from === size;
    while ((heights[past] as number) < 0) {
      past++;
      if (past === size) {
        past = 0;
        wrapped = true;
      }
    }
    for (let i = wrapped ? past : 0; i < from; i++) this.#addCorner(i);
    this.#addCrossing(from - 1, from === size ? 0 : from);
    this.#addCrossing(past, past === 0 ? size - 1 : past - 1);
    for (let i = wrapped ? size : past; i < size; i++) this.#addCorner(i);
    this.#swap();
  }

  /** Where the stretch from a corner inside to one outside crosses the line. */
  #addCrossing(inside: number, outside: number): void {
    const [px, py, hp] = [this.#x[inside] as number, this.#y[inside] as number, this.#heights[inside] as number];
    const t = hp / (hp - (this.#heights[outside] as number));
    this.#add(px + ((this.#x[outside] as number) - px) * t, py + ((this.#y[outside] as number) - py) * t);
  }

  #farthest(x: number, y: number): number {
    let best = 0;
    let most = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < this.#size; i++) {
      const along = (this.#x[i] as number) * x + (this.#y[i] as number) * y;
      if (along > most) {
        best = i;
        most = along;
      }
    }
    return best;
  }

  /** The corner that goes farthest along a direction; only of regions that aren't empty. */
  farthest([x, y]: Vec2): Vec2 {
    const i = this.#farthest(x, y);
    return [this.#x[i] as number, this.#y[i] as number];
  }

  /** Sweeps it along any direction (1, slope), slope in [low, high], as far as x = `most`. */
  sweep(low: number, high: number, most: number): void {
    if (this.#size === 0) return;
    const upper = this.#farthest(-high, 1);
    const lower = this.#farthest(low, -1);
    // Counter-clockwise from the upper tangent point by the left side to the lower one.
    for (let i = upper; ; i = (i + 1) % this.#size) {
      this.#addCorner(i);
      if (i === lower) break;
    }
    const [lx, ly] = [this.#x[lower] as number, this.#y[lower] as number];
    const [ux, uy] = [this.#x[upper] as number, this.#y[upper] as number];
    if (lx < most) this.#add(most, ly + low * (most - lx));
    if (ux < most) this.#add(most, uy + high * (most - ux));
    this.#swap();
  }

  /** Sweeps it along `path` and no farther. */
  drag(path: Vec2): void {
    const corners = this.corners();
    this.#take(hullOf([...corners, ...corners.map(([x, y]): Vec2 => [x + path[0], y + path[1]])]));
  }
}

function longer(list: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const made = new Float64Array(2 * list.length);
  made.set(list);
  return made;
}

/** Smallest convex region that holds all points. */
export function hullOf(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const chain = (list: readonly Vec2[]): Vec2[] => {
    const hull: Vec2[] = [];
    for (const p of list) {
      while (hull.length > 1) {
        const [a, b] = [hull[hull.length - 2] as Vec2, hull[hull.length - 1] as Vec2];
        if (cross2(sub2(b, a), sub2(p, b)) > 0) break;
        hull.pop();
      }
      hull.push(p);
    }
    return hull;
  };
  if (sorted.length < 2) return sorted;
  const lower = chain(sorted);
  const upper = chain(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}
