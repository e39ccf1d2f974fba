/** Single-sign edits (change, insert, drop, swap of neighbours) that turn `a` into `b`. */
function edits(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const at = (i: number, j: number): number => rows[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          at(i - 1, j) + 1,
          at(i, j - 1) + 1,
          at(i - 1, j - 1) + (same ? 0 : 1),
          swapped ? at(i - 2, j - 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
  }
  return at(a.length, b.length);
}

/** The known name that a mistyped one stands for, or `undefined` when none is near. */
export function nearest(typed: string, known: readonly string[]): string | undefined {
  const near = known
    .map((name) => ({ name, distance: edits(typed.toLowerCase(), name) }))
    .filter(({ name, distance }) => distance <= Math.max(1, Math.floor(name.length / 3)))
    .sort((a, b) => a.distance - b.distance);
  return near[0]?.name;
}

/** `Did you mean build?`, or `otherwise` when nothing is near. */
export function didYouMean(typed: string, known: readonly string[], otherwise: string): string {
  const near = nearest(typed, known);
  return near === undefined ? otherwise : `Did you mean ${near}?`;
}
