import { cross2, sub2, type Vec2 } from './vec.js';

/**
 * Convex regions of the plane as their corners, counter-clockwise; a point or a stretch counts as a region, an empty
 * list is none. They hold all solutions of a linear programme of two unknowns at once.
 */
export type Convex = readonly Vec2[];

const ROOM = 256;
/** Heights that differ by less than this part of themselves may stand in the wrong order by rounding. */
const NOISE = 1e-13;
/** Stands for the corner before, of corners that were cut away. */
const GONE = -1;

/**
 * A region that is changed in place. Programmes clip by thousands of lines, each of which takes a few corners near to
 * where the last one like it did: corners are a ring whose ends that lie farthest along a direction are found by
 * walking from the last one found, so that a cut costs as many steps as it takes corners, and no memory.
 */
export class ConvexRegion {
  #x = new Float64Array(ROOM);
  #y = new Float64Array(ROOM);
  #next = new Int32Array(ROOM);
  #before = new Int32Array(ROOM);
  /** Places taken, by corners and by those that are gone. */
  #taken = 0;
  /** Any corner; GONE when the region is empty. */
  #any = GONE;
  /** Corners found last: lowest and highest, seen from below and from above. */
  readonly #found = new Int32Array(4);

  constructor(corners: Convex) {
    this.#take(corners);
  }

  get empty(): boolean {
    return this.#any === GONE;
  }

  corners(): Vec2[] {
    const corners: Vec2[] = [];
    if (this.empty) return corners;
    let i = this.#any;
    do {
      corners.push(this.#at(i));
      i = this.#next[i] as number;
    } while (i !== this.#any);
    return corners;
  }

  #at(i: number): Vec2 {
    return [this.#x[i] as number, this.#y[i] as number];
  }

  #take(corners: Convex): void {
    this.#taken = 0;
    this.#any = corners.length > 0 ? 0 : GONE;
    this.#found.fill(this.#any);
    for (const [x, y] of corners) this.#add(x, y);
    for (let i = 0; i < corners.length; i++) this.#join(i, i + 1 < corners.length ? i + 1 : 0);
  }

  #add(x: number, y: number): number {
    const i = this.#taken++;
    if (i === this.#x.length) {
      this.#x = longer(this.#x, new Float64Array(2 * i));
      this.#y = longer(this.#y, new Float64Array(2 * i));
      this.#next = longer(this.#next, new Int32Array(2 * i));
      this.#before = longer(this.#before, new Int32Array(2 * i));
    }
    this.#x[i] = x;
    this.#y[i] = y;
    return i;
  }

  #join(i: number, next: number): void {
    this.#next[i] = next;
    this.#before[next] = i;
  }

  /**
   * The corner with the least a x + b y. Heights fall and rise but once round a convex region; where rounding may
   * have turned their order, the walk goes on.
   */
  #least(a: number, b: number, from: number): number {
    const xs = this.#x;
    const ys = this.#y;
    let best = from;
    let least = a * (xs[from] as number) + b * (ys[from] as number);
    for (const ring of [this.#next, this.#before]) {
      for (let i = ring[from] as number; i !== from; i = ring[i] as number) {
        const along = a * (xs[i] as number);
        const up = b * (ys[i] as number);
        const height = along + up;
        if (height < least) {
          best = i;
          least = height;
        } else if (height - least > NOISE * (Math.abs(along) + Math.abs(up))) break;
      }
    }
    return best;
  }

  /** The same, from where one was found last in such a direction. */
  #lowest(a: number, b: number, highest = false): number {
    const like = (b > 0 ? 0 : 1) + (highest ? 2 : 0);
    const last = this.#found[like] as number;
    const from = this.#before[last] === GONE ? this.#any : last;
    const found = highest ? this.#least(-a, -b, from) : this.#least(a, b, from);
    this.#found[like] = found;
    return found;
  }

  /** Leaves what lies where a x + b y + c >= 0; the greatest value there was, negative where nothing is left. */
  cut(a: number, b: number, c: number): number {
    if (this.empty) return Number.NEGATIVE_INFINITY;
    const highest = this.#lowest(a, b, true);
    const most = a * (this.#x[highest] as number) + b * (this.#y[highest] as number) + c;
    if (most < 0) {
      this.#any = GONE;
      return most;
    }
    const lowest = this.#lowest(a, b);
    if (a * (this.#x[lowest] as number) + b * (this.#y[lowest] as number) + c < 0) {
      const behind = this.#crossing(a, b, c, lowest, false);
      const ahead = this.#crossing(a, b, c, lowest, true);
      this.#join(behind, ahead);
      this.#any = ahead;
    }
    return most;
  }

  /**
   * The new corner where a line is crossed on the way round from a corner outside it, joined to the first one inside;
   * those on the way are gone.
   */
  #crossing(a: number, b: number, c: number, from: number, forward: boolean): number {
    const ring = forward ? this.#next : this.#before;
    let outside = from;
    let inside = from;
    let depth = 0;
    let height = a * (this.#x[from] as number) + b * (this.#y[from] as number) + c;
    while (height < 0) {
      outside = inside;
      depth = height;
      inside = ring[inside] as number;
      this.#before[outside] = GONE;
      height = a * (this.#x[inside] as number) + b * (this.#y[inside] as number) + c;
    }
    const x = this.#x[inside] as number;
    const y = this.#y[inside] as number;
    const t = height / (height - depth);
    const made = this.#add(x + ((this.#x[outside] as number) - x) * t, y + ((this.#y[outside] as number) - y) * t);
    if (forward) this.#join(made, inside);
    else this.#join(inside, made);
    return made;
  }

  /** The corner that goes farthest along a direction; only of regions that aren't empty. */
  farthest([x, y]: Vec2): Vec2 {
    return this.#at(this.#lowest(-x, -y));
  }

  /** Sweeps it along any direction (1, slope), slope in [low, high], as far as x = `most`. */
  sweep(low: number, high: number, most: number): void {
    if (this.empty) return;
    // Counter-clockwise from the upper tangent point by the left side to the lower one all stays.
    const upper = this.#lowest(high, -1);
    const lower = this.#lowest(-low, 1);
    const [lx, ly] = this.#at(lower);
    const [ux, uy] = this.#at(upper);
    let last = lower;
    for (let i = this.#next[lower] as number; i !== upper; i = this.#next[i] as number) this.#before[i] = GONE;
    if (lx < most) {
      const made = this.#add(most, ly + low * (most - lx));
      this.#join(last, made);
      last = made;
    }
    if (ux < most) {
      const made = this.#add(most, uy + high * (most - ux));
      this.#join(last, made);
      last = made;
    }
    this.#join(last, upper);
    this.#any = upper;
  }

  /** Sweeps it along `path` and no farther. */
  drag([along, up]: Vec2): void {
    if (this.empty) return;
    // Corners from the right of the path forward to the left move with it; the outermost two stay behind as well.
    const right = this.#lowest(-up, along);
    const left = this.#lowest(up, -along);
    if (right === left) {
      // A point, or a stretch along the path.
      const corners = this.corners();
      this.#take(hullOf([...corners, ...corners.map(([x, y]): Vec2 => [x + along, y + up])]));
      return;
    }
    const behindLeft = this.#next[left] as number;
    const behindRight = this.#before[right] as number;
    const [stayLeft, stayRight] = [this.#add(...this.#at(left)), this.#add(...this.#at(right))];
    for (let i = right; ; i = this.#next[i] as number) {
      this.#x[i] = (this.#x[i] as number) + along;
      this.#y[i] = (this.#y[i] as number) + up;
      if (i === left) break;
    }
    this.#join(left, stayLeft);
    if (behindLeft === right) this.#join(stayLeft, stayRight);
    else {
      this.#join(stayLeft, behindLeft);
      this.#join(behindRight, stayRight);
    }
    this.#join(stayRight, right);
  }
}

function longer<T extends Float64Array | Int32Array>(list: T, made: T): T {
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
