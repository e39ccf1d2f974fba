import { describe, expect, it } from 'vitest';
import { setoutChecks } from '../../lib/deliver/checks.js';
import { checkHouse } from '../../lib/deliver/package.js';
import type { House } from '../../lib/description/house.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { houseOf } from '../tools/house.js';

const check = (id: string, part: Partial<House> = {}) =>
  setoutChecks(setOutHouse(houseOf(part))).find((c) => c.id === id);
const { site } = houseOf();

describe('checks of the set-out', () => {
  it('ask for the frost depth, and hold the footing against it', () => {
    expect(check('footing-frost')?.advice).toContain('site.frost-depth');
    // 400 mm under the floor is 250 mm under ground that lies 150 mm lower.
    expect(check('footing-frost', { site: { ...site, frostDepth: 250 } })?.state).toBe('ok');
    expect(check('footing-frost', { site: { ...site, frostDepth: 260 } })?.state).toBe('fails');
    expect(check('footing-frost', { footing: null })).toBeUndefined();
  });

  it('tell at which scale the wall can be printed', () => {
    expect(check('print-thickness')?.state).toBe('ok');
    const thin = check('print-thickness', {
      print: {
        scale: 500,
        bed: [220, 220, 250],
        thinnest: 1.2,
        nozzle: 0.4,
        clearance: 0.15,
        roof: 'above openings',
        looseBlocks: null,
      },
    });
    expect(thin?.state).toBe('attention');
    // 250 mm at 1:208 is 1.202 mm.
    expect(thin?.advice).toContain('1:208');
  });

  it('never say that a house stands', () => {
    const { checks } = checkHouse(houseOf());
    expect(checks.find((c) => c.id === 'laying.hall')?.state).toBe('attention');
    expect(checkHouse(houseOf()).cautions.length).toBeGreaterThan(4);
  });
});
