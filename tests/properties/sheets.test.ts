import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { auditSheet } from '../../lib/documents/sheet.js';
import { houseSheets } from '../../lib/drawings/sheets/house-sheets.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { clusters } from './clusters.js';
import { houses } from './houses.js';

const SEED = 20260611;

describe('sheets of random houses', () => {
  it.each<[string, fc.Arbitrary<House>, number]>([
    ['one dome', houses, 24],
    ['several domes', clusters, 4],
  ])(
    'are sound, and no view or schedule is left out: %s',
    (_, arbitrary, numRuns) => {
      fc.assert(
        fc.property(fc.noBias(arbitrary), (house) => {
          const setout = setOutHouse(house);
          const { sheets } = houseSheets(setout);
          expect(sheets.flatMap(auditSheet)).toEqual([]);
          expect(sheets.flatMap((s) => s.views).length).toBeGreaterThanOrEqual(6);
          const words = sheets.flatMap((s) => s.paper.flatMap((p) => (p.kind === 'text' ? [p.text] : [])));
          for (const { opening } of setout.arches) expect(words).toContain(opening.id);
          for (const dome of setout.domes) expect(words).toContain(dome.id);
        }),
        { seed: SEED, numRuns, endOnFailure: true },
      );
    },
    600_000,
  );
});
