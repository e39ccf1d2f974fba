/** Sets of small whole numbers as bits in 32-bit words. */
export type Bits = Uint32Array;

export const noBits = (size: number): Bits => new Uint32Array(Math.ceil(size / 32));

export function bitsOf(members: Iterable<number>, size: number): Bits {
  const bits = noBits(size);
  for (const m of members) addBit(bits, m);
  return bits;
}

export function addBit(bits: Bits, member: number): void {
  bits[member >>> 5] = (bits[member >>> 5] as number) | (1 << (member & 31));
}

export function removeBit(bits: Bits, member: number): void {
  bits[member >>> 5] = (bits[member >>> 5] as number) & ~(1 << (member & 31));
}

export const hasBit = (bits: Bits, member: number): boolean =>
  ((bits[member >>> 5] as number) & (1 << (member & 31))) !== 0;

export function without(bits: Bits, taken: Bits): Bits {
  const rest = new Uint32Array(bits.length);
  for (let k = 0; k < bits.length; k++) rest[k] = (bits[k] as number) & ~(taken[k] as number);
  return rest;
}

/** Whether all of `part` that lies in `within` is in `whole`. */
export function isWithin(part: Bits, whole: Bits, within: Bits): boolean {
  for (let k = 0; k < part.length; k++) {
    if (((part[k] as number) & (within[k] as number) & ~(whole[k] as number)) !== 0) return false;
  }
  return true;
}

export const isEmpty = (bits: Bits): boolean => bits.every((word) => word === 0);

/** Number of members that two sets share. */
export function countShared(one: Bits, other: Bits): number {
  let sum = 0;
  for (let k = 0; k < one.length; k++) sum += onesIn((one[k] as number) & (other[k] as number));
  return sum;
}

export function members(bits: Bits): number[] {
  const found: number[] = [];
  for (let k = 0; k < bits.length; k++) {
    for (let word = bits[k] as number; word !== 0; word &= word - 1) found.push(32 * k + 31 - Math.clz32(word & -word));
  }
  return found;
}

function onesIn(word: number): number {
  let w = word - ((word >>> 1) & 0x55555555);
  w = (w & 0x33333333) + ((w >>> 2) & 0x33333333);
  return (((w + (w >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}

type Branch = Map<number, Branch | true>;

/** Remembers sets of one size by their words, without making anything for those it knows. */
export class KnownBits {
  readonly #root: Branch = new Map();

  /** Whether the set is new. */
  add(bits: Bits): boolean {
    let branch = this.#root;
    const last = bits.length - 1;
    for (let k = 0; k < last; k++) {
      const word = bits[k] as number;
      const found = branch.get(word);
      const next = found instanceof Map ? found : new Map<number, Branch | true>();
      if (next !== found) branch.set(word, next);
      branch = next;
    }
    const word = bits[last] as number;
    if (branch.has(word)) return false;
    branch.set(word, true);
    return true;
  }
}
