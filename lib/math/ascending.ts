/** Runs of so many are put in order by insertion, then merged. */
const RUN = 8;

/**
 * A list in ascending order of its keys, equals as they were: for lists of some hundred that are put in order many
 * thousand times, where a comparison is best no call.
 */
export function ascending<T>(list: readonly T[], keys: Float64Array): T[] {
  const n = list.length;
  let order = Uint32Array.from(keys, (_, k) => k);
  for (let from = 0; from < n; from += RUN) {
    const end = Math.min(from + RUN, n);
    for (let k = from + 1; k < end; k++) {
      const key = keys[k] as number;
      let at = k;
      for (; at > from && (keys[order[at - 1] as number] as number) > key; at--) order[at] = order[at - 1] as number;
      order[at] = k;
    }
  }
  let spare = new Uint32Array(n);
  for (let width = RUN; width < n; width *= 2) {
    for (let from = 0; from < n; from += 2 * width) {
      const middle = Math.min(from + width, n);
      const end = Math.min(middle + width, n);
      let [a, b] = [from, middle];
      for (let at = from; at < end; at++) {
        const second =
          a >= middle || (b < end && (keys[order[b] as number] as number) < (keys[order[a] as number] as number));
        spare[at] = order[second ? b++ : a++] as number;
      }
    }
    [order, spare] = [spare, order];
  }
  return Array.from(order, (k) => list[k] as T);
}
