import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { staticsChecks } from '../../lib/statics/checks.js';
import { combinationsWith } from '../../lib/statics/combinations.js';
import { bodyOf } from '../../lib/statics/dome-thrust.js';
import { NO_WEIGHT, sumWeights, type Weights } from '../../lib/statics/layers.js';
import { unitLoads } from '../../lib/statics/loads.js';
import { luneOf } from '../../lib/statics/lune.js';
import { staticsOf } from '../../lib/statics/statics.js';
import { geometricFactor } from '../../lib/statics/thrust.js';
import { drift, earthquake, type Standing, wind } from '../../lib/statics/unsymmetrical.js';
import { domeOf, houseOf } from '../tools/house.js';

const made = (site: Partial<House['site']>, part: Partial<House> = {}): House => {
  const bare = houseOf({
    domes: [domeOf({ stemWall: 0 })],
    wall: { thickness: 450, renderInside: 0, renderOutside: 0 },
    footing: null,
    ...part,
  });
  return { ...bare, site: { ...bare.site, ...site } };
};
const under = (load: string, site: Partial<House['site']>, part: Partial<House> = {}) => {
  const dome = staticsOf(setOutHouse(made(site, part))).domes[0];
  return dome?.oneSided.find((found) => found.load === load);
};
/** A dome of masonry that doesn't crush. */
const standingOf = (house: House): Standing => {
  const setout = setOutHouse(house);
  const dome = setout.domes[0] as (typeof setout.domes)[number];
  const lune = luneOf(dome, unitLoads(setout, dome), { renderInside: 0, renderOutside: 0, footing: null });
  return { lune, tie: null, cutZ: 0, strengthMpa: null, friction: 0.4 };
};

describe('combinations of loads from one side', () => {
  // EN 1990:2002, Tables A1.1, A1.2(A) and (B), 6.4.3.4; ASCE 7-16, 2.3.1 and 2.3.6 (all from memory).
  it.each([
    // Dead load that helps is 1.0 (0.9) whatever else acts: light masonry under much snow needs it.
    ['EN 1990', 'drifted snow', ['0.9 0 1.5', '1 0 1.5', '1.35 0 1.5']],
    ['ASCE 7', 'drifted snow', ['1.2 0 1.6']],
    ['EN 1990', 'wind', ['0.9', '1', '1.35'].flatMap((g) => [`${g} 0 1.5`, `${g} 1.05 1.5`, `${g} 1.5 0.9`])],
    ['EN 1990', 'earthquake', ['1 0 1', '1 0.2 1']],
    ['ASCE 7', 'wind', ['0.9 0 1', '1.2 0 1', '1.2 0.5 1', '1.2 1.6 0.5']],
    ['ASCE 7', 'earthquake', ['0.9 0 1', '1.2 0 1', '1.2 0.2 1']],
  ] as const)('%s, %s: dead load, snow and the load times their factors', (standard, load, factors) => {
    const all = combinationsWith(standard, load, true);
    expect(all.map(({ dead, snow, load }) => `${dead} ${snow} ${load}`).sort()).toEqual([...factors].sort());
    for (const { source } of all) expect(source).toContain(standard);
    expect(combinationsWith(standard, load, false)).toEqual(all.filter(({ snow }) => snow === 0));
  });

  it('without snow are the dead load under a load as many times greater, where nothing crushes', () => {
    const standing = standingOf(made({}));
    const { site } = made({});
    const american = { ...site, combinations: 'ASCE 7' } as const;
    const coefficients = [0.8, -1.2, 0] as const;
    for (const [found, shares] of [
      [wind(standing, { ...site, windKpa: 0.15 }, coefficients), { '1.35': 1.5, '1.0': 1.5, '0.9': 1.5 }],
      [drift(standing, { ...site, snowKpa: 0.6 }), { '1.35': 1.5, '1.0': 1.5, '0.9': 1.5 }],
      [earthquake(standing, 0.04, american), { '1.2': 1, '0.9': 1 }],
    ] as const) {
      const borne = found.combined.map((one) => (one.borne ?? 0) * (one.load / one.dead));
      expect(found.combined.map(({ dead, load }) => [dead, load])).toEqual(
        Object.entries(shares).map(([dead, load]) => [Number(dead), load]),
      );
      expect(borne[0]).toBeGreaterThan(0.5);
      for (const one of borne) expect(Math.abs(one / (borne[0] ?? 0) - 1), found.load).toBeLessThan(1e-6);
    }
  });

  it('an earthquake’s upright part presses and lifts the dead load, but not what pushes', () => {
    // ASCE 7-16, 2.3.6 and 12.4.2.2: (1.2 + 0.2 SDS) D, (0.9 − 0.2 SDS) D; EN 1998-1, 4.3.3.5.2 (4): both signs.
    const deads = (standard: House['site']['combinations']) =>
      combinationsWith(standard, 'earthquake', true, 0.15).map(({ dead, snow }) => `${dead.toFixed(2)} ${snow}`);
    expect(deads('ASCE 7').sort()).toEqual(['0.75 0', '1.35 0', '1.35 0.2']);
    expect(deads('EN 1990').sort()).toEqual(['0.85 0', '0.85 0.2', '1.15 0', '1.15 0.2']);
    expect(combinationsWith('EN 1990', 'wind', true, 0.15)).toEqual(combinationsWith('EN 1990', 'wind', true));
    // Lifted by 0.15 the rest bears 0.85 of the push, where nothing crushes.
    const house = made({ seismicVertical: 0.15 });
    const standing = standingOf(house);
    const [still] = earthquake(standing, 0.04, { ...house.site, seismicVertical: null }).combined;
    const lifted = earthquake(standing, 0.04, house.site).combined.find(({ dead }) => dead < 1);
    expect((lifted?.borne ?? 0) / (still?.borne ?? 0)).toBeCloseTo(0.85, 6);
    expect(lifted?.formula).toBe('G + E − Ev');
  });

  it('of an earthquake shake the snow that lies there as if it were so much more wall', () => {
    const house = made({ snowKpa: 8, combinations: 'EN 1990' });
    const standing = standingOf(house);
    const share = (of: Weights): Weights => ({ weight: of.weight / 5, moment: of.moment / 5, height: of.height / 5 });
    const { lune } = standing;
    const laden = {
      ...lune,
      sections: lune.sections.map((s) => ({ ...s, dead: sumWeights(s.dead, share(s.snow)), snow: NO_WEIGHT })),
    };
    const together = earthquake(standing, 0.04, house.site).combined.find((one) => one.snow === 0.2);
    const alone = earthquake({ ...standing, lune: laden }, 0.04, house.site).combined[0];
    expect(together?.borne).toBeGreaterThan(1);
    expect(together?.borne).toBeCloseTo(alone?.borne ?? 0, 6);
  });

  it.each(['hemisphere', 'pointed'] as const)(
    'with hardly any wind, a %s dome with an oculus is one lune whose crown pushes inside the curb',
    (shape) => {
      const house = made(
        { windKpa: 1e-9, windCoefficients: [0.8, -1.2, 0], snowKpa: 2 },
        { domes: [domeOf({ shape, rise: 3900, stemWall: 0, oculus: { radius: 350, curb: 150, upstand: 50 } })] },
      );
      const setout = setOutHouse(house);
      const dome = setout.domes[0] as (typeof setout.domes)[number];
      const lune = luneOf(dome, unitLoads(setout, dome), { renderInside: 0, renderOutside: 0, footing: null });
      // Cut to half its thickness the curb pushes in the middle half of its face.
      const [[low, high], [from, to]] = [lune.crown(1), lune.crown(0.5)];
      expect([from, to].map((z) => (z - low) / (high - low))).toEqual([0.25, 0.75].map((at) => expect.closeTo(at, 9)));
      const factored = geometricFactor(bodyOf(lune, 'dead', Number.POSITIVE_INFINITY, null));
      const found = under('wind', house.site, { domes: house.domes });
      expect(Math.abs((found?.factor ?? 0) / factored - 1)).toBeLessThan(1e-4);
    },
  );

  it('are judged by the least of them, and never ok', () => {
    const site = { windKpa: 0.1, seismicCoefficient: 0.02, snowKpa: 0.5 };
    const checks = (part: Partial<House['site']>) => {
      const setout = setOutHouse(made({ ...site, ...part }));
      const statics = staticsOf(setout);
      const found = staticsChecks(setout, statics);
      return { statics: statics.domes[0], check: (id: string) => found.find((check) => check.id === id) };
    };
    const calm = checks({});
    for (const [id, load] of [
      ['drift-combined.hall', 'drifted snow'],
      ['wind-combined.hall', 'wind'],
      ['earthquake-combined.hall', 'earthquake'],
    ]) {
      const told = calm.check(id as string);
      expect(told?.state, id).toBe('attention');
      const borne =
        calm.statics?.oneSided.find((one) => one.load === load)?.combined.map((one) => one.borne ?? 0) ?? [];
      expect(told?.capacity?.value).toBe(Math.min(...borne));
      expect(told?.ratio).toBeCloseTo(1 / Math.min(...borne), 12);
      expect(told?.source).toContain('EN 1990');
    }
    expect(calm.check('earthquake-combined.hall')?.advice).toContain('upright part');
    // Each load can be worked out again from what is told beside it.
    const inputs = (id: string, of = calm) => of.check(id)?.capacity?.inputs;
    expect(inputs('wind.hall')).toMatchObject({ 'wind pressure (kPa)': 0.1 });
    expect(Object.values(inputs('wind-combined.hall') ?? {})).toContain('0.8, -1.2, 0');
    expect(inputs('earthquake.hall')).toMatchObject({ 'seismic coefficient (1)': 0.02 });
    const upright = inputs('earthquake-combined.hall', checks({ seismicVertical: 0.1 }));
    expect(upright).toMatchObject({ 'its upright part, Ev over the dead load (1)': 0.1 });
    expect(upright?.['rings that may press, height (m)']).toMatch(/^[\d.]+, [\d.]+$/);
    const stormy = checks({ windKpa: 3, combinations: 'ASCE 7' });
    expect(stormy.check('wind-combined.hall')).toMatchObject({ state: 'fails' });
    expect(stormy.check('wind-combined.hall')?.source).toContain('ASCE 7-16, 2.3.1');
  });

  it('tell what limits the line keeps within, and what holds the load from growing', () => {
    const told = (part: Partial<House>) => {
      const setout = setOutHouse(made({ seismicCoefficient: 0.02 }, part));
      return staticsChecks(setout, staticsOf(setout)).find(({ id }) => id === 'earthquake-combined.hall');
    };
    const firm = told({});
    expect(firm?.statement).toContain('within the wall, its strength and the friction of its joints under earthquake');
    expect(firm?.state).toBe('attention');
    // Blocks that a line must spare fail, though the wall alone would hold one; so do joints that are too smooth.
    const { material } = made({});
    const soft = told({ material: { ...material, compressiveStrengthMpa: 0.02 } });
    expect(soft?.state).toBe('fails');
    expect(soft?.advice).toContain('stronger blocks');
    const smooth = told({ material: { ...material, friction: 0.2 } });
    expect(smooth?.state).toBe('fails');
    expect(told({ material: { ...material, friction: 0.27 } })?.capacity?.inputs['held by']).toContain('friction');
    const unknown = told({ material: { ...material, compressiveStrengthMpa: null, dryDensity: 200 } });
    expect(unknown?.statement).not.toContain('strength');
    expect(unknown?.advice).toContain('material.compressive-strength');
  });
});
