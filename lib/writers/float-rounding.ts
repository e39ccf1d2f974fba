import { remembered } from '../base/remembered.js';

/** Well within the normal float32, so that a step of the last digit is still a float32. */
const SMALLEST = 1e-30;
const LARGEST = 1e30;

/**
 * Rounds points to float32 so that no two of them fall together: a point whose rounded place is taken is set
 * a last digit aside. What a mesh tells apart by index stays apart in a file that knows only coordinates,
 * so a closed mesh stays closed however thin its triangles are.
 * `positions` holds x, y, z of each point; the result is float32 values, in the same order, made once for each array.
 * @throws RangeError when the farthest point lies within 1e-30 of the origin or beyond 1e30, where a last digit aside is lost.
 */
export const roundApart = remembered((positions: Float64Array): Float32Array => {
  const rounded = new Float32Array(positions.length);
  const table = new PointTable(positions.length / 3);
  let greatest = 0;
  for (let i = 0; i < positions.length; i++) greatest = Math.max(greatest, Math.abs(positions[i] as number));
  if (greatest < SMALLEST || greatest > LARGEST)
    throw new RangeError(`A solid that reaches to ${greatest} mm from the origin can't be told in float32.`);
  const step = 2 * lastDigit(greatest);
  for (let i = 0; i < positions.length; i += 3) {
    for (let attempt = 0; ; attempt++) {
      const aside = asideOf(attempt);
      // Adding zero turns a negative zero into zero: as bits they differ, as places they don't.
      const x = Math.fround((positions[i] as number) + aside[0] * step + 0);
      const y = Math.fround((positions[i + 1] as number) + aside[1] * step + 0);
      const z = Math.fround((positions[i + 2] as number) + aside[2] * step + 0);
      if (table.place(x, y, z) !== i / 3) continue;
      rounded[i] = x;
      rounded[i + 1] = y;
      rounded[i + 2] = z;
      break;
    }
  }
  return rounded;
});

/** What the last binary digit of a positive float32 of this size is worth. */
function lastDigit(size: number): number {
  bits[0] = size;
  const value = bits[0];
  words[0] = (words[0] as number) + 1;
  return (bits[0] as number) - value;
}

const bits = new Float32Array(3);
const words = new Int32Array(bits.buffer);

const IN_PLACE = [0, 0, 0] as const;

/** Small whole steps round a place: none, then along each axis both ways, then farther. */
function asideOf(attempt: number): readonly [number, number, number] {
  if (attempt === 0) return IN_PLACE;
  const reach = Math.floor((attempt - 1) / 6) + 1;
  const way = (attempt - 1) % 6;
  const sign = way % 2 === 0 ? reach : -reach;
  return [way < 2 ? sign : 0, way === 2 || way === 3 ? sign : 0, way > 3 ? sign : 0];
}

/** Numbers distinct float32 points from 0 in the order of their coming; equal points get their first number. */
export class PointTable {
  private readonly slots: Int32Array;
  private readonly keys: Float32Array;
  private count = 0;

  constructor(capacity: number) {
    let slots = 4;
    while (slots < 2 * capacity) slots *= 2;
    this.slots = new Int32Array(slots).fill(-1);
    this.keys = new Float32Array(3 * capacity);
  }

  get size(): number {
    return this.count;
  }

  place(x: number, y: number, z: number): number {
    const mask = this.slots.length - 1;
    let slot = hash(x, y, z) & mask;
    for (;;) {
      const v = this.slots[slot] as number;
      if (v < 0) break;
      if (this.keys[3 * v] === x && this.keys[3 * v + 1] === y && this.keys[3 * v + 2] === z) return v;
      slot = (slot + 1) & mask;
    }
    this.slots[slot] = this.count;
    this.keys[3 * this.count] = x;
    this.keys[3 * this.count + 1] = y;
    this.keys[3 * this.count + 2] = z;
    return this.count++;
  }
}

function hash(x: number, y: number, z: number): number {
  bits[0] = x;
  bits[1] = y;
  bits[2] = z;
  let h = Math.imul(words[0] as number, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15) ^ (words[1] as number), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13) ^ (words[2] as number), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
