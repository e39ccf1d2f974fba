import type { Where } from '../../base/problems.js';
import { type Locate, type Path, pathText } from '../problem-list.js';

/** Where keys and values stand in one text. */
export class Places {
  #text = '';
  #starts: readonly number[] = [0];
  readonly #offsets = new Map<string, { key?: number; value: number }>();
  readonly #others = new Map<string, Where>();

  constructor(readonly file: string) {}

  /** Names the text that offsets count in. The parser's own count of lines loses some where it meets errors. */
  read(text: string): void {
    this.#text = text;
    this.#starts = [0, ...[...text.matchAll(/\n/g)].map((end) => end.index + 1)];
  }

  set(path: Path, value: number, key?: number): void {
    this.#offsets.set(pathText(path), key === undefined ? { value } : { key, value });
  }

  /** Says that what stands at a path comes from elsewhere. */
  override(path: Path, where: Where): void {
    const name = pathText(path);
    for (const known of this.#offsets.keys())
      if (known.startsWith(`${name}.`) || known.startsWith(`${name}[`)) this.#offsets.delete(known);
    this.#others.set(name, where);
  }

  at(offset: number): Where {
    const inside = Math.min(offset, this.#text.length);
    let low = 0;
    let high = this.#starts.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((this.#starts[middle] as number) <= inside) low = middle;
      else high = middle;
    }
    return { file: this.file, line: low + 1, column: inside - (this.#starts[low] as number) + 1 };
  }

  /** The path's own place, or that of the nearest thing around it; the top of the file before parsing. */
  readonly locate: Locate = (path, part) => {
    for (let n = path.length; n >= 0; n--) {
      const name = pathText(path.slice(0, n));
      const other = this.#others.get(name);
      if (other) return other;
      const found = this.#offsets.get(name);
      // What is missing in a list's entry or under a key is looked for where that begins.
      if (found) return this.at((part === 'key' || n < path.length ? found.key : undefined) ?? found.value);
    }
    return { file: this.file, line: 1, column: 1 };
  };
}
