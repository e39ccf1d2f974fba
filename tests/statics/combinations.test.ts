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
import { earthquake } from '../../lib/statics/unsymmetrical.js';
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
  const one = dome?.oneSided.find((found) => found.load === load);
  return {
    factor: one?.factor ?? Number.NaN,
    with: Object.fromEntries((one?.combined ?? []).map((c) => [c.formula, c.factor])),
  };
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

  it('without snow are the dead load under a load as many times greater', () => {
    const q = 0.15;
    const european = under('wind', { windKpa: q }).with;
    expect(Object.keys(european)).toHaveLength(3);
    for (const [formula, share] of [
      ['1.0 G + 1.5 W', 1.5],
      ['0.9 G + 1.5 W', 1.5 / 0.9],
      ['1.35 G + 1.5 W', 1.5 / 1.35],
    ] as const) {
      const alone = under('wind', { windKpa: q * share }).factor;
      expect(Math.abs((european[formula] ?? 0) / alone - 1), formula).toBeLessThan(1e-4);
    }
    const drifted = under('drifted snow', { snowKpa: 0.6 }).with;
    for (const [formula, share] of [
      ['1.35 G + 1.5 S', 1.5 / 1.35],
      ['0.9 G + 1.5 S', 1.5 / 0.9],
    ] as const) {
      const alone = under('drifted snow', { snowKpa: 0.6 * share }).factor;
      expect(Math.abs((drifted[formula] ?? 0) / alone - 1), formula).toBeLessThan(1e-4);
    }
    const shaken = under('earthquake', { seismicCoefficient: 0.04, combinations: 'ASCE 7' }).with;
    for (const [formula, share] of [
      ['1.2 D + 1.0 E', 1 / 1.2],
      ['0.9 D + 1.0 E', 1 / 0.9],
    ] as const) {
      const alone = under('earthquake', { seismicCoefficient: 0.04 * share }).factor;
      expect(Math.abs((shaken[formula] ?? 0) / alone - 1), formula).toBeLessThan(1e-4);
    }
  });

  it('of an earthquake shake the snow that lies there as if it were so much more wall', () => {
    const house = made({ snowKpa: 8, combinations: 'EN 1990' });
    const setout = setOutHouse(house);
    const dome = setout.domes[0] as (typeof setout.domes)[number];
    const lune = luneOf(dome, unitLoads(setout, dome), { renderInside: 0, renderOutside: 0, footing: null });
    const share = (of: Weights): Weights => ({ weight: of.weight / 5, moment: of.moment / 5, height: of.height / 5 });
    const laden = {
      ...lune,
      sections: lune.sections.map((s) => ({ ...s, dead: sumWeights(s.dead, share(s.snow)), snow: NO_WEIGHT })),
    };
    const together = earthquake({ lune, tie: null, cutZ: 0 }, 0.04, house.site).combined.find(
      (one) => one.snow === 0.2,
    );
    expect(together?.factor).toBeGreaterThan(1);
    expect(together?.factor).toBeCloseTo(earthquake({ lune: laden, tie: null, cutZ: 0 }, 0.04, house.site).factor, 6);
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
      const factored = (dead: number, snow: number) => {
        const body = bodyOf(lune, 'dead', Number.POSITIVE_INFINITY, null);
        const sections = body.sections.map((section, i) => {
          const s = lune.sections[i] as (typeof lune.sections)[number];
          const weight = dead * s.dead.weight + snow * s.snow.weight;
          return { ...section, weight, moment: dead * s.dead.moment + snow * s.snow.moment };
        });
        return geometricFactor({ ...body, sections });
      };
      const found = under('wind', house.site, { domes: house.domes });
      expect(Math.abs(found.factor / factored(1, 0) - 1)).toBeLessThan(1e-4);
      expect(Math.abs((found.with['1.35 G + 1.5 S + 1.5 · 0.6 W'] ?? 0) / factored(1.35, 1.5) - 1)).toBeLessThan(1e-4);
    },
  );

  it('are judged by the least of them, and never ok', () => {
    const site = { windKpa: 0.1, seismicCoefficient: 0.02, snowKpa: 0.5 };
    const checks = (part: Partial<House['site']>) => {
      const setout = setOutHouse(made({ ...site, ...part }));
      const statics = staticsOf(setout);
      const found = staticsChecks(setout, statics);
      return (id: string) => found.find((check) => check.id === id);
    };
    const calm = checks({});
    for (const id of ['drift-combined.hall', 'wind-combined.hall', 'earthquake-combined.hall']) {
      const told = calm(id);
      expect(told?.state, id).toBe('attention');
      const factors = Object.entries(told?.capacity?.inputs ?? {}).filter(([key]) => key.startsWith('factor under'));
      expect(told?.capacity?.value).toBe(Math.min(...factors.map(([, factor]) => Number(factor))));
      expect(told?.source).toContain('EN 1990');
    }
    expect(calm('earthquake-combined.hall')?.advice).toContain('upright part');
    const stormy = checks({ windKpa: 3, combinations: 'ASCE 7' });
    expect(stormy('wind-combined.hall')).toMatchObject({ state: 'fails' });
    expect(stormy('wind-combined.hall')?.source).toContain('ASCE 7-16, 2.3.1');
  });
});
