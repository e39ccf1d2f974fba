import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { auditSheet } from '../../lib/documents/sheet.js';
import { houseSheets } from '../../lib/drawings/sheets/house-sheets.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { clashesOf } from '../drawings/reading.js';
import { missingOn } from '../drawings/required.js';
import { clusters } from './clusters.js';
import { houses } from './houses.js';

const SEED = 20260611;
/** The sheets that the house's own views stand on. */
const CORE = { sheet: null, scale: null, sheets: ['plan', 'elevations', 'sections', 'openings'] } as const;

describe('sheets of random houses', () => {
  it.each<[string, fc.Arbitrary<House>, number]>([
    ['one dome', houses, 120],
    ['several domes', clusters, 8],
  ])(
    'are sound and can be read, tell all that their views require, and leave out no view or schedule: %s',
    (_, arbitrary, numRuns) => {
      fc.assert(
        fc.property(fc.noBias(arbitrary), (house) => {
          const setout = setOutHouse(house);
          const { sheets } = houseSheets(setout, undefined, CORE);
          expect(sheets.flatMap(auditSheet)).toEqual([]);
          const views = sheets.flatMap((s) => s.views.map((v) => v.view));
          expect(views.length).toBeGreaterThanOrEqual(6);
          expect(missingOn(sheets, setout)).toEqual([]);
          expect(views.filter((v) => !v.id.startsWith('opening')).flatMap(clashesOf)).toEqual([]);
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
