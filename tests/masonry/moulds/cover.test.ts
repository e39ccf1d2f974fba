import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { members } from '../../../lib/masonry/moulds/bits.js';
import { leastCover } from '../../../lib/masonry/moulds/cover.js';
import { type Reach, stabLine } from '../../../lib/masonry/moulds/stab.js';

const SEED = { seed: 20260504, numRuns: 400 };

/** Every choice of sets in turn. */
function bruteLeast(sets: readonly (readonly number[])[], wanted: ReadonlySet<number>): number {
  let best = sets.length;
  for (let choice = 0; choice < 1 << sets.length; choice++) {
    const taken = sets.filter((_, k) => (choice >> k) & 1);
    if (taken.length >= best) continue;
    const held = new Set(taken.flat());
    if ([...wanted].every((e) => held.has(e))) best = taken.length;
  }
  return best;
}

const systems = fc
  .integer({ min: 1, max: 9 })
  .chain((size) =>
    fc.tuple(
      fc.constant(size),
      fc.array(fc.uniqueArray(fc.nat(size - 1), { maxLength: 5 }), { minLength: 1, maxLength: 10 }),
    ),
  );

describe('the least cover', () => {
  it('is as small as every choice tried in turn finds, and covers', () => {
    fc.assert(
      fc.property(systems, ([size, sets]) => {
        const wanted = new Set(sets.flat());
        const cover = leastCover(sets, size);
        expect(cover.proven).toBe(true);
        expect(cover.chosen).toHaveLength(bruteLeast(sets, wanted));
        expect(cover.atLeast).toBe(cover.chosen.length);
        expect(new Set(cover.chosen.flatMap((k) => sets[k] as number[]))).toEqual(wanted);
        expect(cover.unmet).toEqual(Array.from({ length: size }, (_, e) => e).filter((e) => !wanted.has(e)));
      }),
      SEED,
    );
  });

  it('cut short, still covers, and its lower bound holds', () => {
    let short = 0;
    fc.assert(
      fc.property(systems, ([size, sets]) => {
        const least = bruteLeast(sets, new Set(sets.flat()));
        const cover = leastCover(sets, size, 0);
        expect(cover.chosen.length).toBeGreaterThanOrEqual(least);
        expect(cover.atLeast).toBeLessThanOrEqual(least);
        expect(new Set(cover.chosen.flatMap((k) => sets[k] as number[]))).toEqual(new Set(sets.flat()));
        if (!cover.proven) short++;
      }),
      SEED,
    );
    expect(short).toBeGreaterThan(0);
  });

  it('refutes what no two sets that share nothing can tell', () => {
    // Pairs of a ring of five: any two elements at distance 2 are apart, yet three pairs are needed.
    const ring = [0, 1, 2, 3, 4].map((k) => [k, (k + 1) % 5]);
    expect(leastCover(ring, 5)).toMatchObject({ proven: true, atLeast: 3 });
  });

  it('handles more elements than one word holds', () => {
    const sets = Array.from({ length: 50 }, (_, k) => [2 * k, 2 * k + 1, (2 * k + 2) % 100]);
    expect(leastCover(sets, 100).chosen).toHaveLength(50);
  });
});

describe('points of a line', () => {
  it('fit every set of items that any point fits, and no others', () => {
    const reach = fc.record({ item: fc.nat(5), low: fc.nat(12), length: fc.nat(6) });
    fc.assert(
      fc.property(fc.array(reach, { maxLength: 12 }), (raw) => {
        const reaches = raw.map(({ item, low, length }): Reach => ({ item, low, high: low + length }));
        const fits = (at: number) => [
          ...new Set(reaches.filter((r) => r.low <= at && at <= r.high).map((r) => r.item)),
        ];
        const stabs: { at: number; items: number[]; number: number }[] = [];
        stabLine(reaches, 6, (at, items, number) => stabs.push({ at, items: members(items), number }));
        for (const { at, items, number } of stabs) {
          expect(items).toEqual(fits(at).sort((a, b) => a - b));
          expect(number).toBe(items.length);
        }
        for (let at = 0; at <= 18; at++) {
          const here = fits(at);
          expect(here.length === 0 || stabs.some((s) => here.every((item) => s.items.includes(item)))).toBe(true);
        }
      }),
      SEED,
    );
  });
});
