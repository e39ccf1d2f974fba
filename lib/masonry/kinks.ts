import { SAME_SHARE } from '../base/tolerances.js';
import { signChange } from '../math/roots.js';
import type { Column } from './column.js';
import type { Cutter } from './cutter.js';

/** Columns one behind the other along a line, from 0 to 1. */
export type ColumnLine = (t: number) => Column;

/** A kink misplaced by a share d of the run costs d² of the volume, at most d^1.5 where a cut begins. */
const KINK = 1e-6;

/** Two ends that may pass each other, as places in the list of a column's ends: its own two, then each cut's two. */
type Pair = readonly [number, number];
const CUTS = 2;

/** A kink: where two ends pass each other, or where the cut with these two ends begins, ends or changes its law. */
export interface Kink {
  readonly at: number;
  readonly ends: Pair;
}

/** Kinks along a line. */
export interface Kinks {
  /** Where they are, with 0 and 1, in order. */
  readonly breaks: readonly number[];
  readonly kinks: readonly Kink[];
}

/**
 * Kinks along a line of what cutters leave of its columns: where a cut begins or changes its law, and where two of
 * the ends (of the column and of its cuts) pass each other.
 * @param steps of the scan; two kinks within one step are found where the ends' gap bends towards nothing
 */
export function kinksAlong(line: ColumnLine, cutters: readonly Cutter[], steps: number): Kinks {
  const kinks = new Scan(line, cutters, steps).kinks();
  kinks.sort((a, b) => a.at - b.at);
  const breaks = [0];
  for (const { at } of kinks) {
    if (at - (breaks[breaks.length - 1] as number) > SAME_SHARE && 1 - at > SAME_SHARE) breaks.push(at);
  }
  breaks.push(1);
  return { breaks, kinks };
}

/** Whether two lines beside each other have the same kinks: none comes, goes or meets another between them. */
export function alike(one: readonly Kink[], other: readonly Kink[]): boolean {
  if (one.length !== other.length) return false;
  const rest = [...other];
  for (const { ends } of one) {
    const k = rest.findIndex((kink) => kink.ends[0] === ends[0] && kink.ends[1] === ends[1]);
    if (k < 0) return false;
    // What changes its order with a kink of the same end met it between the lines; others have nothing to do with it.
    for (let before = 0; before < k; before++) if (shareEnd((rest[before] as Kink).ends, ends)) return false;
    rest.splice(k, 1);
  }
  return true;
}

const shareEnd = (one: Pair, other: Pair): boolean =>
  one[0] === other[0] || one[0] === other[1] || one[1] === other[0] || one[1] === other[1];

/** Samples of a line, in order. A class with plain loops, for hundreds of thousands are made. */
class Scan {
  readonly #line: ColumnLine;
  readonly #cutters: readonly Cutter[];
  readonly #at: number[] = [];
  /** Ends on each sampled column; NaN where a cutter takes nothing. */
  readonly #ends: (readonly number[])[] = [];
  readonly #lowest: number;
  readonly #highest: number;

  constructor(line: ColumnLine, cutters: readonly Cutter[], steps: number) {
    this.#line = line;
    this.#cutters = cutters;
    let column = line(0);
    this.#lowest = column.z;
    for (let k = 0; k <= steps; k++) {
      if (k > 0) column = line(k / steps);
      this.#at.push(k / steps);
      this.#ends.push(endsOf(column, cutters));
    }
    this.#highest = column.z;
  }

  kinks(): Kink[] {
    const kinks: Kink[] = [];
    for (let c = 0; c < this.#cutters.length; c++) {
      this.#addHeights(kinks, this.#cutters[c] as Cutter, CUTS + 2 * c);
      this.#addBeginnings(kinks, this.#cutters[c] as Cutter, CUTS + 2 * c);
    }
    const [least, most] = this.#ranges();
    const count = least.length;
    for (let one = CUTS; one < count; one++) {
      for (let other = 0; other < one - (one & 1); other++) {
        // Ends that keep apart by more than they move themselves can't touch between samples; NaN never.
        const moved =
          (most[one] as number) - (least[one] as number) + (most[other] as number) - (least[other] as number);
        const apart = Math.max(
          (least[one] as number) - (most[other] as number),
          (least[other] as number) - (most[one] as number),
        );
        if (apart <= moved) this.#addPassings(kinks, one, other);
      }
    }
    return kinks;
  }

  /** The least and the most that each end comes to in the samples; infinite, and the wrong way round, where it never is. */
  #ranges(): readonly [least: readonly number[], most: readonly number[]] {
    const count = CUTS + 2 * this.#cutters.length;
    const least: number[] = [];
    const most: number[] = [];
    for (let end = 0; end < count; end++) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      for (let k = 0; k < this.#ends.length; k++) {
        const at = (this.#ends[k] as readonly number[])[end] as number;
        if (at < low) low = at;
        if (at > high) high = at;
      }
      least.push(low);
      most.push(high);
    }
    return [least, most];
  }

  #insert(t: number): readonly number[] {
    let k = this.#at.length;
    while (k > 0 && (this.#at[k - 1] as number) > t) k--;
    this.#at.splice(k, 0, t);
    const ends = endsOf(this.#line(t), this.#cutters);
    this.#ends.splice(k, 0, ends);
    return ends;
  }

  /** Heights at which a cutter changes its law. Just beside one its cut may be new, and the ends far apart soon. */
  #addHeights(kinks: Kink[], { heights }: Cutter, place: number): void {
    for (const z of heights) {
      if (!(z > this.#lowest && z < this.#highest)) continue;
      const over = (t: number) => this.#line(t).z - z;
      const at = signChange(over, [0, this.#lowest - z], [1, this.#highest - z], KINK);
      kinks.push({ at, ends: [place, place + 1] });
      if (Number.isNaN(this.#insert(at - KINK)[place])) this.#insert(at + KINK);
    }
  }

  /** Where a cut begins or ends between the heights, by halving; the scan gains its first ends. */
  #addBeginnings(kinks: Kink[], cutter: Cutter, place: number): void {
    for (let k = 1; k < this.#at.length; k++) {
      let [a, b] = [this.#at[k - 1] as number, this.#at[k] as number];
      const ends = Number.isNaN(this.#ends[k]?.[place]);
      if (Number.isNaN(this.#ends[k - 1]?.[place]) === ends) continue;
      if (kinks.some((height) => height.ends[0] === place && height.at > a && height.at < b)) continue;
      while (b - a > KINK) {
        const middle = (a + b) / 2;
        if ((this.#line(middle).cut(cutter) !== null) === ends) a = middle;
        else b = middle;
      }
      kinks.push({ at: (a + b) / 2, ends: [place, place + 1] });
      this.#insert(ends ? a : b);
      k++;
    }
  }

  /** Where two ends pass each other: their gap changes its sign, or comes to nothing within two steps. */
  #addPassings(kinks: Kink[], one: number, other: number): void {
    let before = Number.NaN;
    let here = Number.NaN;
    for (let k = 0; k < this.#at.length; k++) {
      const ends = this.#ends[k] as readonly number[];
      const after = (ends[one] as number) - (ends[other] as number);
      if (passes(here, after))
        this.#addPassing(kinks, one, other, this.#at[k - 1] as number, here, this.#at[k] as number, after);
      if (leastInMiddle(before, here, after)) this.#addTouching(kinks, one, other, k, before, here, after);
      before = here;
      here = after;
    }
  }

  #addPassing(kinks: Kink[], one: number, other: number, a: number, gapA: number, b: number, gapB: number): void {
    const at = signChange((t) => this.#gap(t, one, other), [a, gapA], [b, gapB], KINK);
    kinks.push({ at, ends: [one, other] });
  }

  /** Where the parabola through three gaps of one sign comes nearly to nothing, the ends may pass twice. */
  #addTouching(kinks: Kink[], one: number, other: number, k: number, gapA: number, gapB: number, gapC: number): void {
    const [a, b, c] = [this.#at[k - 2] as number, this.#at[k - 1] as number, this.#at[k] as number];
    const [left, right] = [(gapB - gapA) / (b - a), (gapC - gapB) / (c - b)];
    const bend = (right - left) / (c - a);
    const t = (a + b) / 2 - left / (2 * bend);
    const least = gapA + (t - a) * left + (t - a) * (t - b) * bend;
    if (!(least / gapB < NEARLY && t > a && t < c)) return;
    const gap = this.#gap(t, one, other);
    if (!passes(gapA, gap)) return;
    this.#addPassing(kinks, one, other, a, gapA, t, gap);
    this.#addPassing(kinks, one, other, t, gap, c, gapC);
  }

  #gap(t: number, one: number, other: number): number {
    const column = this.#line(t);
    return this.#endOn(column, one) - this.#endOn(column, other);
  }

  #endOn(column: Column, place: number): number {
    if (place < CUTS) return place === 0 ? column.low : column.high;
    const cut = column.cut(this.#cutters[(place - CUTS) >> 1] as Cutter);
    return cut ? (cut[place & 1] as number) : Number.NaN;
  }
}

function endsOf(column: Column, cutters: readonly Cutter[]): readonly number[] {
  const ends = [column.low, column.high];
  for (let c = 0; c < cutters.length; c++) {
    const cut = column.cut(cutters[c] as Cutter);
    if (cut) ends.push(cut[0], cut[1]);
    else ends.push(Number.NaN, Number.NaN);
  }
  return ends;
}

/** Whether a gap changes its sign; where it has no value it doesn't. */
const passes = (from: number, to: number): boolean => (from > 0 ? to <= 0 : from <= 0 && to > 0);

/** Whether three gaps have one sign, and the one in the middle is the least. */
const leastInMiddle = (before: number, here: number, after: number): boolean =>
  here > 0 ? before >= here && after >= here : here < 0 && before <= here && after <= here;

/** Ends whose gap may come under this share of the sampled one are looked at there. */
const NEARLY = 0.3;
