import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judged } from '../../lib/deliver/judged.js';
import { study } from '../../lib/deliver/study.js';
import type { House } from '../../lib/description/house.js';
import { houseReport } from '../../lib/report/house-report.js';
import { writeHtml } from '../../lib/writers/html.js';
import { houses } from './houses.js';

const SEED = 20260504;
const RUNS = 25;

const USES = ['habitable', 'kitchen', 'bath', 'storage', 'other'] as const;

/** With rooms, loads and a plot, so that every kind of check is made. */
const lived = (house: House, n: number): House => ({
  ...house,
  rooms: [{ id: 'room', in: 'dome', use: USES[n % USES.length] ?? 'other', name: 'Room', at: null }],
  site: {
    ...house.site,
    snowKpa: n % 3 === 0 ? null : n / 4,
    seismicCoefficient: n % 4 === 0 ? null : 0.05,
    bearingCapacityKpa: 100,
    plot: [
      [-2e4, -2e4],
      [2e4, -2e4],
      [2e4, 2e4],
      [-2e4, 2e4],
    ],
    setback: 3000,
  },
  openings: house.openings.map((o, k) => (k === 0 && o.use === 'window' ? { ...o, use: 'egress window' as const } : o)),
  material: { ...house.material, friction: (n % 6) / 10 },
});

/** Every number of a value, by its path. */
function* numbers(value: unknown, path = ''): Generator<readonly [string, number]> {
  if (typeof value === 'number') yield [path, value];
  else if (value !== null && typeof value === 'object')
    for (const [key, part] of Object.entries(value)) yield* numbers(part, `${path}/${key}`);
}

describe('checks of random houses', () => {
  it(`${RUNS} houses, seed ${SEED}: no number is missing, infinite or negative where it is a ratio`, () => {
    const states = new Set<string>();
    fc.assert(
      fc.property(fc.noBias(houses), fc.integer({ min: 0, max: 11 }), (house, n) => {
        const known = study(lived(house, n));
        const verdict = judged(known);
        for (const check of verdict.checks) {
          states.add(check.state);
          for (const [path, value] of numbers(check)) expect(Number.isFinite(value), `${check.id}${path}`).toBe(true);
          if (check.ratio !== undefined) expect(check.ratio, check.id).toBeGreaterThanOrEqual(0);
          if (check.state !== 'ok') expect(check.advice, check.id).not.toBe('');
          expect(check.source, check.id).not.toBe('');
        }
        for (const [path, value] of numbers([known.laying, known.dwelling]))
          expect(Number.isFinite(value), path).toBe(true);
        const page = new TextDecoder().decode(writeHtml(houseReport(known.setout, known.statics, verdict)));
        expect(page).not.toMatch(/NaN|Infinity|undefined|\[object/);
      }),
      { seed: SEED, numRuns: RUNS, endOnFailure: true },
    );
    expect(states).toEqual(new Set(['ok', 'attention', 'fails']));
  }, 120_000);
});
