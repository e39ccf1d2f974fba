import { describe, expect, it } from 'vitest';
import { GRAVITY } from '../../lib/base/units.js';
import type { House } from '../../lib/description/house.js';
import { auditTable } from '../../lib/documents/table-audit.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { staticsChecks } from '../../lib/statics/checks.js';
import { staticsOf } from '../../lib/statics/statics.js';
import { structuralCheckTable, structureTable } from '../../lib/tables/structure.js';
import { domeOf, houseOf, MATERIAL, openingOf } from '../tools/house.js';

const made = (part: Partial<House> = {}) => {
  const setout = setOutHouse(houseOf(part));
  const statics = staticsOf(setout);
  return { setout, statics, table: structureTable(setout, statics), checks: staticsChecks(setout, statics) };
};

describe('the structural summary', () => {
  // Ri 2.5, Re 2.8 m, 8 kN/m3: 106.0099 kN, least thrust 3.12823 kN per radian, at 2.65 m 1.18046 kN/m (derived).
  const eight = 8000 / GRAVITY;
  const worked: Partial<House> = {
    wall: { thickness: 300, renderInside: 0, renderOutside: 0 },
    domes: [domeOf({ radius: 2500, stemWall: 0 })],
    material: { ...MATERIAL, dryDensity: eight, mortarDensity: eight },
    footing: null,
    tie: 'none',
  };

  it('tells weight and thrust of the worked dome', () => {
    const [row] = made(worked).table.rows;
    expect(row?.masonry).toBeCloseTo(106.0099, 4);
    expect(row?.thrust).toBeCloseTo(1.18046, 3);
    expect(row).toMatchObject({ dome: 'hall', tie: 'none', line: null, soil: null, load: 'dead' });
  });

  it('prints feet in pounds of force: 106.0099 kN are 23 832 lbf, 1.18046 kN/m are 80.9 lbf/ft', () => {
    const { table } = made({ ...worked, units: 'ft' });
    expect(table.columns.find((c) => c.key === 'masonry')?.unit).toBe('lbf');
    expect(table.rows[0]?.masonry).toBeCloseTo(106_009.9 / 4.4482216152605, 1);
    expect(table.rows[0]?.thrust).toBeCloseTo(80.89, 1);
  });

  it('says where a tie lies, and that a crossed one is none; is fit to print', () => {
    const tie = { level: 1000, bars: 2, diameter: 10, yieldMpa: 500, bondMpa: null, lap: null } as const;
    const { table } = made({ openings: [openingOf()], tie });
    expect(table.rows[0]?.tie).toBe('2 bars of 10 mm, 1.00 m above the floor: NO CLOSED HOOP');
    expect(made({ tie: { ...tie, bars: 1, level: 'footing' } }).table.rows[0]?.tie).toBe(
      '1 bar of 10 mm, in the footing',
    );
    expect(() => auditTable(table)).not.toThrow();
    expect(table.notes?.join(' ')).toContain('licensed engineer');
  });

  it('tells what the site’s loads are judged without, and nothing where it has none', () => {
    const noted = (site: Partial<House['site']>, part: Partial<House> = worked) =>
      made({ ...part, site: { ...houseOf().site, ...site } }).table.notes?.find((note) =>
        note.startsWith('Not covered'),
      );
    expect(noted({})).toBeUndefined();
    expect(noted({ seismicCoefficient: 0.02 })).toContain('EN 1998-1, 4.3.3.5.2');
    expect(noted({ seismicCoefficient: 0.02, seismicVertical: 0.05 })).toContain('whole upright part');
    expect(noted({ seismicCoefficient: 0.02, seismicVertical: 0.05, combinations: 'ASCE 7' })).toBeUndefined();
    const asce = noted({ seismicCoefficient: 0.02, windKpa: 0.2, snowKpa: 0.5, combinations: 'ASCE 7' });
    for (const part of ['Ev of ASCE 7-16', 'case B', 'drifted snow together with wind']) expect(asce).toContain(part);
    expect(noted({ windKpa: 0.2, windCoefficients: [0.8, -1.2, 0] }, { domes: [domeOf()] })).not.toContain(
      'for want of',
    );
    // Only a hemisphere on the ground has known coefficients.
    expect(noted({ windKpa: 0.2 })).not.toContain('for want of `site.wind');
    const onWall = { domes: [domeOf({ stemWall: 500 })] };
    expect(noted({ windKpa: 0.2 }, onWall)).toContain('all wind on hall for want of `site.wind-coefficients`');
  });

  it('tells the soil’s pressure where it is greatest, under a jamb', () => {
    const { table, statics } = made({ openings: [openingOf()] });
    const { pressureKpa, jambKpa } = statics.domes[0]?.footing ?? {};
    expect(jambKpa).toBeGreaterThan(1.1 * (pressureKpa ?? 0));
    expect(table.rows[0]?.soil).toBeCloseTo(jambKpa ?? 0, 9);
  });

  it('lists every check of the statics, the worst first, with what to change', () => {
    const { checks } = made({ material: { ...MATERIAL, compressiveStrengthMpa: 0 } });
    const table = structuralCheckTable(checks, 'm');
    expect(table.rows).toHaveLength(checks.length);
    expect(table.rows[0]).toMatchObject({
      state: 'fails',
      check: 'The strength of the blocks is known from test cubes.',
    });
    const states = table.rows.map((r) => ['fails', 'attention', 'ok'].indexOf(String(r.state)));
    expect(states).toEqual([...states].sort());
    for (const row of table.rows) expect(row.state === 'ok' || row.change !== '').toBe(true);
    expect(() => auditTable(table)).not.toThrow();
  });
});
