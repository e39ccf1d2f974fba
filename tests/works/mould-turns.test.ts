import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { castingPlan, daysWith, fewestCopies, leastDays, type TurnRules } from '../../lib/works/mould-turns.js';

/** Whether any plan at all casts it: every way to fill free copies, day by day. */
function possible(demand: readonly number[], copies: readonly number[], days: number, rules: TurnRules): boolean {
  const seen = new Set<string>();
  const from = (day: number, left: readonly number[], used: readonly (readonly number[])[]): boolean => {
    if (left.every((n) => n === 0)) return true;
    if (day > days) return false;
    const key = `${day} ${left} ${JSON.stringify(used)}`;
    if (seen.has(key)) return false;
    seen.add(key);
    // Copies of a kind that are still full on this day.
    const full = copies.map((_, kind) =>
      used.slice(Math.max(0, used.length - rules.period + 1)).reduce((sum, u) => sum + (u[kind] as number), 0),
    );
    const choose = (kind: number, rest: number, picked: readonly number[]): boolean => {
      if (kind === left.length)
        return from(
          day + 1,
          left.map((n, i) => n - (picked[i] as number)),
          [...used, picked.map((n) => Math.ceil(n / rules.turnsPerDay))].slice(-rules.period),
        );
      const most = Math.min(
        rest,
        left[kind] as number,
        ((copies[kind] as number) - (full[kind] as number)) * rules.turnsPerDay,
      );
      for (let n = most; n >= 0; n--) if (choose(kind + 1, rest - n, [...picked, n])) return true;
      return false;
    };
    return choose(0, rules.poursPerDay, []);
  };
  return from(1, demand, []);
}

/** The smallest sum of copies, by trial of all. */
function bruteCopies(demand: readonly number[], days: number, rules: TurnRules): number | null {
  let best: number | null = null;
  const tryAll = (copies: number[]): void => {
    const sum = copies.reduce((a, b) => a + b, 0);
    if (best !== null && sum >= best) return;
    if (copies.length === demand.length) {
      if (possible(demand, copies, days, rules)) best = sum;
      return;
    }
    for (let n = 1; n <= (demand[copies.length] as number); n++) tryAll([...copies, n]);
  };
  tryAll([]);
  return best;
}

const demand = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 3 });
const rules = fc.record({
  poursPerDay: fc.integer({ min: 1, max: 4 }),
  period: fc.integer({ min: 1, max: 3 }),
  turnsPerDay: fc.integer({ min: 1, max: 2 }),
});
const sound = ({ period, turnsPerDay }: TurnRules) => period === 1 || turnsPerDay === 1;

describe('copies of moulds', () => {
  it('are the fewest, by trial of every number of copies and every plan', () => {
    let met = 0;
    let extra = 0;
    fc.assert(
      fc.property(demand, fc.integer({ min: 1, max: 6 }), rules.filter(sound), (pieces, days, r) => {
        const found = fewestCopies(pieces, days, r);
        const brute = bruteCopies(pieces, days, r);
        expect(found === null ? null : found.counts.reduce((a, b) => a + b, 0)).toBe(brute);
        if (found === null) return;
        expect(found.proven).toBe(true);
        met++;
        const turns = (Math.floor((days - 1) / r.period) + 1) * r.turnsPerDay;
        if (brute !== pieces.reduce((sum, n) => sum + Math.ceil(n / turns), 0)) extra++;
      }),
      { seed: 21, numRuns: 250 },
    );
    expect(met).toBeGreaterThan(80);
    // Cases where the day's pours ask for more copies than their turns alone would.
    expect(extra).toBeGreaterThan(1);
  });

  it('least days: as many as the day’s pours allow, and a day fewer can not be met', () => {
    fc.assert(
      fc.property(demand, rules.filter(sound), (pieces, r) => {
        const least = leastDays(pieces, r);
        expect(fewestCopies(pieces, least, r)).not.toBeNull();
        expect(fewestCopies(pieces, least - 1, r)).toBeNull();
      }),
      { seed: 22, numRuns: 100 },
    );
  });
});

describe('the plan', () => {
  it('fills no mould that is full, pours no more than a day allows, casts all in time', () => {
    const many = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 8 });
    const wide = fc.record({
      poursPerDay: fc.integer({ min: 1, max: 30 }),
      period: fc.integer({ min: 1, max: 4 }),
      turnsPerDay: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(many, fc.integer({ min: 0, max: 20 }), wide.filter(sound), (pieces, slack, r) => {
        const days = leastDays(pieces, r) + slack;
        const { counts } = fewestCopies(pieces, days, r) ?? { counts: [] };
        const plan = castingPlan(pieces, counts, days, r);
        expect(plan.length).toBeLessThanOrEqual(days);
        for (const [kind, n] of pieces.entries()) {
          expect(plan.reduce((sum, day) => sum + (day[kind] as number), 0)).toBe(n);
          for (let day = 0; day < plan.length; day++) {
            const full = plan
              .slice(Math.max(0, day - r.period + 1), day + 1)
              .reduce((sum, on) => sum + Math.ceil((on[kind] as number) / r.turnsPerDay), 0);
            expect(full).toBeLessThanOrEqual(counts[kind] as number);
          }
        }
        for (const day of plan) expect(day.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(r.poursPerDay);
      }),
      { seed: 23, numRuns: 150 },
    );
  });

  it('casts in laying order where there is time', () => {
    // Three courses of 4, two pours a day, moulds enough: the first course is done first.
    const r = { poursPerDay: 2, period: 1, turnsPerDay: 1 };
    expect(castingPlan([4, 4, 4], [2, 2, 2], 6, r)).toEqual([
      [2, 0, 0],
      [2, 0, 0],
      [0, 2, 0],
      [0, 2, 0],
      [0, 0, 2],
      [0, 0, 2],
    ]);
    // One mould of each must be filled every day.
    expect(castingPlan([4, 4], [1, 1], 4, r)).toEqual(Array.from({ length: 4 }, () => [1, 1]));
    expect(daysWith([4, 4], [1, 1], r)).toBe(4);
  });
});
