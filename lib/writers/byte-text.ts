const NOUGHT = '0'.charCodeAt(0);
const MINUS = '-'.charCodeAt(0);
const POINT = '.'.charCodeAt(0);

/** Whole numbers below this, and their quotients by powers of ten, are written digit by digit as an engine would. */
const MOST = 1e15;

/** Digits that tell any two float32 numbers apart. */
const FLOAT_DIGITS = 9;

/** Nine digits of a number as JavaScript tells the shortest number that has them. */
export const floatDigits = (value: number): string => String(Number(value.toPrecision(FLOAT_DIGITS)));

/**
 * A text that grows, kept as its bytes in UTF-8: files of drawings are numbers for the most part, whose digits go
 * straight to their place here instead of through a string each.
 */
export class ByteText {
  private bytes = new Uint8Array(1 << 14);
  private length = 0;

  /** Letters, digits and signs of ASCII. */
  ascii(text: string): void {
    this.room(text.length);
    const { bytes } = this;
    let at = this.length;
    for (let i = 0; i < text.length; i++) bytes[at++] = text.charCodeAt(i);
    this.length = at;
  }

  /** Any text. */
  text(text: string): void {
    this.room(3 * text.length);
    this.length += new TextEncoder().encodeInto(text, this.bytes.subarray(this.length)).written;
  }

  /** A number rounded to so many places as `Math.round` does, without trailing noughts. */
  rounded(value: number, places: number): void {
    const whole = Math.round(value * (TENS[places] as number));
    this.parts(whole, places, 0);
  }

  /** A number as `toFixed` rounds it, without trailing noughts but for one after the point. */
  fixed(value: number, places: number): void {
    const shifted = Math.abs(value) * (TENS[places] as number);
    const floor = Math.floor(shifted);
    const rest = shifted - floor;
    // Near a half, what the product lost in rounding could tip the last digit.
    if (shifted >= MOST || Math.abs(rest - 0.5) <= shifted * Number.EPSILON) {
      this.ascii(
        value
          .toFixed(places)
          .replace(/(\.\d+?)0+$/, '$1')
          .replace(/^-(?=0\.0$)/, ''),
      );
      return;
    }
    const whole = rest > 0.5 ? floor + 1 : floor;
    this.parts(value < 0 ? -whole : whole, places, 1);
  }

  /** A whole number that isn't negative. */
  integer(whole: number): void {
    this.room(24);
    this.digits(whole);
  }

  /** A float32 number as `floatDigits` tells it. */
  float32(value: number): void {
    const size = Math.abs(value);
    // Here a float32 number times the power of ten is exact in float64: 24 and at most 28 binary digits.
    if (!(size >= 1e-4 && size < 999999999)) {
      this.ascii(floatDigits(value));
      return;
    }
    let places = FLOAT_DIGITS - 1;
    while (places > 0 && size >= (TENS[FLOAT_DIGITS - places] as number)) places--;
    while (size * (TENS[places] as number) < (TENS[FLOAT_DIGITS - 1] as number)) places++;
    const whole = Math.round(size * (TENS[places] as number));
    this.parts(value < 0 ? -whole : whole, places, 0);
  }

  /** All that was written, in memory of its own. */
  written(): Uint8Array {
    return this.bytes.slice(0, this.length);
  }

  /** `whole / 10 ** places`, with `least` places after the point at least. */
  private parts(whole: number, places: number, least: 0 | 1): void {
    const size = Math.abs(whole);
    if (!(size < MOST)) {
      this.ascii(String(whole / (TENS[places] as number)));
      return;
    }
    this.room(24);
    const { bytes } = this;
    if (whole < 0) bytes[this.length++] = MINUS;
    const units = TENS[places] as number;
    const before = Math.floor(size / units);
    let after = size - before * units;
    this.digits(before);
    let shown = places;
    while (shown > least && after % 10 === 0) {
      after /= 10;
      shown--;
    }
    if (shown === 0) return;
    bytes[this.length] = POINT;
    for (let at = this.length + shown; at > this.length; at--) {
      const tenth = Math.floor(after / 10);
      bytes[at] = NOUGHT + after - 10 * tenth;
      after = tenth;
    }
    this.length += shown + 1;
  }

  private digits(whole: number): void {
    let count = 1;
    while (whole >= (TENS[count] as number)) count++;
    let rest = whole;
    for (let at = this.length + count - 1; at >= this.length; at--) {
      const tenth = Math.floor(rest / 10);
      this.bytes[at] = NOUGHT + rest - 10 * tenth;
      rest = tenth;
    }
    this.length += count;
  }

  private room(more: number): void {
    if (this.length + more <= this.bytes.length) return;
    const larger = new Uint8Array(2 * (this.length + more));
    larger.set(this.bytes.subarray(0, this.length));
    this.bytes = larger;
  }
}

/** Powers of ten from the 0th; all that are asked for are exact. */
const TENS = Float64Array.from({ length: 17 }, (_, i) => Number(`1e${i}`));
