/**
 * Keeps what was made of some content, so that it needn't be made again of the same: for houses that are built again
 * and again while they change a little.
 */
export class Memory {
  private kept = new Map<string, object>();
  private asked = new Map<string, object>();

  /**
   * What was made of this content, or what `make` makes of it now.
   * @param content tells all that it is made of, and what it is; what is made must never change
   */
  recall<T extends object>(content: string, make: () => T): T {
    const known = this.asked.get(content) ?? this.kept.get(content) ?? make();
    this.asked.set(content, known);
    return known as T;
  }

  /** Lets go of what wasn't asked for since the last call: a memory holds one house, not all that there were. */
  turn(): void {
    this.kept = this.asked;
    this.asked = new Map();
  }
}
