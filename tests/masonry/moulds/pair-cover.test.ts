import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bitsOf } from '../../../lib/masonry/moulds/bits.js';
import { fewestSets, leastSets, type PairSets } from '../../../lib/masonry/moulds/pair-cover.js';

interface System {
  readonly size: number;
  /** For each set and element: 0 apart, 1 touches, 2 holds alone. */
  readonly marks: readonly (readonly number[])[];
  /** For each pair of sets whether they get on. */
  readonly likes: readonly (readonly boolean[])[];
}

const systems = fc.record({ size: fc.integer({ min: 1, max: 6 }), count: fc.integer({ min: 1, max: 8 }) }).chain(
  ({ size, count }): fc.Arbitrary<System> =>
    fc.record({
      size: fc.constant(size),
      marks: fc.array(fc.array(fc.constantFrom(0, 0, 1, 1, 2), { minLength: size, maxLength: size }), {
        minLength: count,
        maxLength: count,
      }),
      likes: fc.array(fc.array(fc.boolean(), { minLength: count, maxLength: count }), {
        minLength: count,
        maxLength: count,
      }),
    }),
);

const getOn = ({ likes }: System, a: number, b: number): boolean => likes[Math.min(a, b)]?.[Math.max(a, b)] === true;

function holds(system: System, chosen: readonly number[], e: number): boolean {
  const marks = chosen.map((x) => system.marks[x]?.[e] as number);
  if (marks.includes(2)) return true;
  return chosen.some((a, i) =>
    chosen.some((b, j) => i < j && (marks[i] as number) > 0 && (marks[j] as number) > 0 && getOn(system, a, b)),
  );
}

/** Every choice in turn; all elements that any choice holds are wanted. */
function brute(system: System): { wanted: number[]; least: number } {
  const all = system.marks.map((_, k) => k);
  const elements = Array.from({ length: system.size }, (_, e) => e);
  const wanted = elements.filter((e) => holds(system, all, e));
  let least = all.length;
  for (let choice = 0; choice < 1 << all.length; choice++) {
    const chosen = all.filter((k) => (choice >> k) & 1);
    if (chosen.length < least && wanted.every((e) => holds(system, chosen, e))) least = chosen.length;
  }
  return { wanted, least };
}

const setsOf = (system: System, wanted: readonly number[]): PairSets => {
  const part = (marks: readonly number[], from: number) =>
    bitsOf(
      marks.flatMap((mark, e) => (mark >= from ? [e] : [])),
      system.size,
    );
  return {
    size: system.size,
    wanted: bitsOf(wanted, system.size),
    alone: system.marks.map((marks) => part(marks, 2)),
    touch: system.marks.map((marks) => part(marks, 1)),
    together: (a, b) => getOn(system, a, b),
    outdoes: () => false,
  };
};

describe('sets that hold an element alone or two together', () => {
  it('are as few as every choice tried in turn finds', () => {
    let pairs = 0;
    fc.assert(
      fc.property(systems, (system) => {
        const { wanted, least } = brute(system);
        const sets = setsOf(system, wanted);
        const all = system.marks.map((_, k) => k);
        expect(leastSets(sets, all.length, 1e6).atLeast).toBe(least);
        const { chosen } = fewestSets(sets, all, 0, 1e6);
        expect(chosen).toHaveLength(least);
        for (const e of wanted) {
          expect(holds(system, chosen, e)).toBe(true);
          if (chosen.every((x) => system.marks[x]?.[e] !== 2)) pairs++;
        }
      }),
      { seed: 20260504, numRuns: 400 },
    );
    expect(pairs).toBeGreaterThan(20);
  });

  it('cut short, still hold all, with a bound below them', () => {
    let short = 0;
    fc.assert(
      fc.property(systems, (system) => {
        const { wanted, least } = brute(system);
        const sets = setsOf(system, wanted);
        const all = system.marks.map((_, k) => k);
        const { atLeast } = leastSets(sets, all.length, 1);
        const { chosen } = fewestSets(sets, all, atLeast, 1);
        expect(atLeast).toBeLessThanOrEqual(least);
        expect(chosen.length).toBeGreaterThanOrEqual(least);
        expect(wanted.every((e) => holds(system, chosen, e))).toBe(true);
        if (atLeast < chosen.length) short++;
      }),
      { seed: 20260504, numRuns: 200 },
    );
    expect(short).toBeGreaterThan(0);
  });
});
