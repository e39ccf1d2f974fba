import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Limits, maximise as maximiseFlat } from '../../lib/math/linear-programme.js';

interface Limit {
  readonly of: readonly number[];
  readonly most: number;
}

const flat = (limits: readonly Limit[]): Limits => ({
  count: limits.length,
  of: Float64Array.from(limits.flatMap(({ of }) => of)),
  most: Float64Array.from(limits, ({ most }) => most),
});
const maximise = (objective: readonly number[], limits: readonly Limit[], start?: readonly number[]) =>
  maximiseFlat(objective, flat(limits), start);

const limit = (of: readonly number[], most: number): Limit => ({ of, most });
const along = (of: readonly number[], at: readonly number[]) =>
  of.reduce((sum, v, k) => sum + v * (at[k] as number), 0);

/** Every corner of the region, by solving each set of as many limits as there are unknowns. */
function bestCorner(objective: readonly number[], limits: readonly Limit[]): number | null {
  let best: number | null = null;
  const choose = (from: number, chosen: readonly Limit[]): void => {
    if (chosen.length === objective.length) {
      const at = solve(chosen);
      if (!at || limits.some(({ of, most }) => along(of, at) > most + 1e-7)) return;
      best = Math.max(best ?? Number.NEGATIVE_INFINITY, along(objective, at));
      return;
    }
    for (let i = from; i < limits.length; i++) choose(i + 1, [...chosen, limits[i] as Limit]);
  };
  choose(0, []);
  return best;
}

function solve(limits: readonly Limit[]): number[] | null {
  const n = limits.length;
  const m = limits.map(({ of, most }) => [...of, most]);
  for (let k = 0; k < n; k++) {
    const pivot = m.slice(k).reduce((a, b) => (Math.abs(b[k] as number) > Math.abs(a[k] as number) ? b : a));
    if (Math.abs(pivot[k] as number) < 1e-9) return null;
    m.splice(m.indexOf(pivot), 1);
    m.splice(k, 0, pivot);
    for (const row of m) {
      if (row === pivot) continue;
      const rate = (row[k] as number) / (pivot[k] as number);
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - rate * (pivot[j] as number);
    }
  }
  return m.map((row, k) => (row[n] as number) / (row[k] as number));
}

describe('linear programmes', () => {
  it('a textbook one: 3x + 5y with x <= 4, 2y <= 12, 3x + 2y <= 18 is 36 at (2, 6)', () => {
    // Hillier & Lieberman, Introduction to Operations Research, ch. 3 (from memory).
    const found = maximise(
      [3, 5],
      [limit([1, 0], 4), limit([0, 2], 12), limit([3, 2], 18), limit([-1, 0], 0), limit([0, -1], 0)],
    );
    expect(found).toMatchObject({ kind: 'found', value: 36, at: [2, 6] });
    // The second and third limit hold it.
    expect(found.kind === 'found' && [...found.held].sort()).toEqual([1, 2]);
  });

  it('has no optimum where nothing meets the limits, and where nothing bounds it', () => {
    expect(maximise([1], [limit([1], 1), limit([-1], -2)]).kind).toBe('none');
    expect(maximise([1, 0], [limit([0, 1], 1), limit([0, -1], 1)]).kind).toBe('none');
  });

  it('refuses limits without a coefficient for each unknown', () => {
    expect(() => maximise([1, 1], [limit([1], 1)])).toThrow(RangeError);
  });

  it('agrees with the best of all corners', () => {
    const whole = fc.integer({ min: -6, max: 6 });
    const programme = fc.integer({ min: 2, max: 4 }).chain((n) =>
      fc.record({
        objective: fc.array(whole, { minLength: n, maxLength: n }),
        limits: fc.array(fc.tuple(fc.array(whole, { minLength: n, maxLength: n }), fc.integer({ min: -3, max: 20 })), {
          minLength: 0,
          maxLength: 6,
        }),
      }),
    );
    fc.assert(
      fc.property(programme, ({ objective, limits }) => {
        // A box about the origin keeps every programme bounded.
        const box = objective.flatMap((_, k) =>
          [1, -1].map((sign) =>
            limit(
              objective.map((_c, j) => (j === k ? sign : 0)),
              10,
            ),
          ),
        );
        const all = [...limits.map(([of, most]) => limit(of, most)), ...box];
        const best = bestCorner(objective, all);
        const found = maximise(objective, all);
        if (found.kind === 'none') {
          expect(best).toBeNull();
          return;
        }
        expect(found.value).toBeCloseTo(best ?? Number.NaN, 6);
        for (const { of, most } of all) expect(along(of, found.at)).toBeLessThan(most + 1e-7);
        // The same from wherever the search starts.
        const start = objective.map((_, k) => (7 * k + all.length) % all.length);
        for (const from of [start, found.held]) {
          const again = maximise(objective, all, from);
          expect(again.kind === 'found' && again.value).toBeCloseTo(best ?? Number.NaN, 6);
        }
      }),
      { seed: 6, numRuns: 400 },
    );
  });
});
