/** Digits that tell any two float32 numbers apart. */
const FLOAT_DIGITS = 9;
/** Powers of ten that times a float32 number give it exactly in float64: 24 and at most 28 binary digits. */
const TENS = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12];
/** Least and greatest number whose nine digits are reached by these powers. */
const LEAST = 1e-4;
const GREATEST = 999999999;

/** The least whole number of nine digits. */
const LEAST_WHOLE = 1e8;

const MINUS = 0x2d;
const POINT = 0x2e;
const ZERO = 0x30;

/** Nine digits of a number as JavaScript tells the shortest number that has them. */
export const digits = (x: number): string => String(Number(x.toPrecision(FLOAT_DIGITS)));

/** Grows a text of ASCII letters: one of millions of numbers is made faster letter by letter than of strings. */
export class NumberText {
  #letters: Uint8Array;
  #length = 0;

  /** @param about letters that will come, more or less */
  constructor(about: number) {
    this.#letters = new Uint8Array(about);
  }

  /** Adds letters and signs as they stand. */
  text(text: string): void {
    this.#reserve(text.length);
    const letters = this.#letters;
    const from = this.#length;
    for (let i = 0; i < text.length; i++) letters[from + i] = text.charCodeAt(i);
    this.#length = from + text.length;
  }

  /** Adds a whole number from 0 to 2³¹ − 1. */
  integer(n: number): void {
    this.#reserve(10);
    let count = 1;
    for (let rest = n; rest >= 10; rest = (rest / 10) | 0) count++;
    let rest = n;
    for (let at = this.#length + count - 1; at >= this.#length; at--) {
      const tenth = (rest / 10) | 0;
      this.#letters[at] = ZERO + rest - 10 * tenth;
      rest = tenth;
    }
    this.#length += count;
  }

  /** Adds a float32 number as `digits` tells it. */
  float32(x: number): void {
    const size = Math.abs(x);
    if (!(size >= LEAST && size < GREATEST)) {
      this.text(digits(x));
      return;
    }
    let decimals = FLOAT_DIGITS - 1;
    while (decimals > 0 && size >= (TENS[FLOAT_DIGITS - decimals] as number)) decimals--;
    while (size * (TENS[decimals] as number) < LEAST_WHOLE) decimals++;
    let n = Math.round(size * (TENS[decimals] as number));
    for (; decimals > 0 && n % 10 === 0; decimals--) n /= 10;
    this.#reserve(24);
    if (x < 0) this.#letters[this.#length++] = MINUS;
    const unit = TENS[decimals] as number;
    const whole = Math.floor(n / unit);
    this.integer(whole);
    if (decimals === 0) return;
    this.#letters[this.#length++] = POINT;
    let rest = n - whole * unit;
    for (let at = this.#length + decimals - 1; at >= this.#length; at--) {
      const tenth = Math.floor(rest / 10);
      this.#letters[at] = ZERO + rest - 10 * tenth;
      rest = tenth;
    }
    this.#length += decimals;
  }

  toString(): string {
    return new TextDecoder().decode(this.#letters.subarray(0, this.#length));
  }

  #reserve(count: number): void {
    if (this.#length + count <= this.#letters.length) return;
    const larger = new Uint8Array(2 * (this.#length + count));
    larger.set(this.#letters);
    this.#letters = larger;
  }
}
