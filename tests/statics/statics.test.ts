import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { staticsChecks } from '../../lib/statics/checks.js';
import { bodyOf, domeThrust } from '../../lib/statics/dome-thrust.js';
import { unitLoads } from '../../lib/statics/loads.js';
import { type Lune, luneOf } from '../../lib/statics/lune.js';
import { pairFactor } from '../../lib/statics/pair.js';
import type { PairSection } from '../../lib/statics/pair-programme.js';
import { staticsOf } from '../../lib/statics/statics.js';
import { geometricFactor } from '../../lib/statics/thrust.js';
import { type PlacedTie, placeTie } from '../../lib/statics/tie.js';
import { drift, earthquake } from '../../lib/statics/unsymmetrical.js';
import { cutLevel } from '../../lib/statics/voids.js';
import { clusters } from '../properties/clusters.js';
import { houses, SHAPES } from '../properties/houses.js';
import { domeOf, houseOf, MATERIAL, openingOf } from '../tools/house.js';

const checksOf = (house: House) => {
  const setout = setOutHouse(house);
  return staticsChecks(setout, staticsOf(setout));
};
const check = (house: House, id: string) => checksOf(house).find((c) => c.id === id);
const TIE = { level: 'above openings', bars: 2, diameter: 10, yieldMpa: 500, bondMpa: 2.3, lap: 710 } as const;
const { site } = houseOf();

/** Paths of everything in plain data that is no finite number. */
function unfit(data: unknown, path = ''): string[] {
  if (typeof data === 'number') return Number.isFinite(data) ? [] : [path];
  if (data === null || typeof data !== 'object') return [];
  return Object.entries(data).flatMap(([key, value]) => unfit(value, `${path}/${key}`));
}

const luneFor = (house: House, sections?: number, tieZ?: number): Lune => {
  const setout = setOutHouse(house);
  const dome = setout.domes[0] as (typeof setout.domes)[number];
  return luneOf(dome, unitLoads(setout, dome), {
    renderInside: house.wall.renderInside,
    renderOutside: house.wall.renderOutside,
    footing: setout.footings[0] ?? null,
    ...(sections === undefined ? {} : { sections }),
    ...(tieZ === undefined ? {} : { tieZ }),
  });
};
const RISES = { hemisphere: 3000, segmental: 1800, pointed: 4200, catenary: 3200, elliptical: 2200 } as const;

describe('weights', () => {
  it.each(SHAPES)('%s: lunes weigh what level slices do, within 1e-9, with stem wall and curb', (shape) => {
    for (const oculus of [null, { radius: 350, curb: 150, upstand: 50 }]) {
      const house = houseOf({ domes: [domeOf({ shape, rise: RISES[shape], oculus })] });
      const [dome] = staticsOf(setOutHouse(house)).domes;
      expect(Math.abs(dome?.weights.balance ?? 1)).toBeLessThan(1e-9);
    }
  });

  it('render of a hemisphere is 2π (R³ − r³)/3 on each side; snow its share of the plan', () => {
    const house = houseOf({
      domes: [domeOf({ stemWall: 0 })],
      site: { ...site, snowKpa: 2 },
      wall: { thickness: 250, renderInside: 15, renderOutside: 20 },
    });
    const [dome] = staticsOf(setOutHouse(house)).domes;
    const layer = (from: number, to: number) => ((2 * Math.PI) / 3) * (to ** 3 - from ** 3);
    const volume = layer(2.985, 3) + layer(3.25, 3.27);
    expect(dome?.weights.render).toBeCloseTo(volume * 1.9 * 9.80665, 9);
    // 0.8 of the ground's on the plan where the slope is at most 60 degrees.
    expect(dome?.weights.snow).toBeCloseTo(1.6 * Math.PI * (3.27 * Math.sin(Math.PI / 3)) ** 2, 9);
  });

  it('a footing weighs its ring', () => {
    const [dome] = staticsOf(setOutHouse(houseOf({ domes: [domeOf({ stemWall: 0 })] }))).domes;
    expect(dome?.weights.footing).toBeCloseTo(2 * Math.PI * 3.125 * 0.5 * 0.4 * 2.4 * 9.80665, 6);
  });
});

/** Masonry that neither crushes nor slides. */
const RIGID = { strengthMpa: null, friction: 100 };

describe('thrust of domes', () => {
  it.each(SHAPES)('%s: twice the sections move the factor by less than 1e-4', (shape) => {
    const house = houseOf({ domes: [domeOf({ shape, rise: RISES[shape], stemWall: 400 })] });
    const [one, two] = [undefined, 480].map((n) => geometricFactor(bodyOf(luneFor(house, n), 'dead', 0, null)));
    expect(Math.abs((one as number) / (two as number) - 1)).toBeLessThan(1e-4);
  });

  it.each(SHAPES)('%s: so it is with a tie, and under loads from one side', (shape) => {
    const house = houseOf({
      domes: [domeOf({ shape, rise: RISES[shape], stemWall: 900 })],
      openings: [openingOf()],
      site: { ...site, snowKpa: 1, seismicCoefficient: 0.02 },
      tie: TIE,
    });
    const setout = setOutHouse(house);
    const dome = setout.domes[0] as (typeof setout.domes)[number];
    const cutZ = cutLevel(setout, dome);
    const tie = placeTie(setout, dome, cutZ) as PlacedTie;
    const [one, two] = [undefined, 480].map((n) => {
      const lune = luneFor(house, n, tie.z);
      return {
        even: geometricFactor(bodyOf(lune, 'dead and snow', cutZ, tie)),
        drift: drift({ lune, tie, cutZ: 0, ...RIGID }, house.site).factor,
        earthquake: earthquake({ lune, tie, cutZ: 0, ...RIGID }, 0.02, house.site).factor,
      };
    }) as unknown as [Record<string, number>, Record<string, number>];
    for (const load of Object.keys(one)) {
      expect(Math.abs((one[load] as number) / (two[load] as number) - 1), load).toBeLessThan(1e-4);
    }
  });

  it('so it is for a tall pointed dome that an earthquake fells, whose wall is made thicker to stand', () => {
    // By a programme of its own in another language (HiGHS, 1600 sections): 0.583356.
    const house = houseOf({
      domes: [domeOf({ shape: 'pointed', radius: 2000, rise: 3600, stemWall: 400 })],
      wall: { thickness: 250, renderInside: 0, renderOutside: 0 },
      footing: { width: 500, depth: 400 },
      material: { ...MATERIAL, dryDensity: 700, mortarDensity: 700 },
    });
    for (const sections of [undefined, 400]) {
      const { factor } = earthquake(
        { lune: luneFor(house, sections), tie: null, cutZ: 0, ...RIGID },
        0.1 / 0.9,
        house.site,
      );
      expect(Math.abs(factor / 0.583356 - 1)).toBeLessThan(1e-4);
    }
  });

  it('the region method and the linear programme of a pair of halves agree', () => {
    fc.assert(
      fc.property(houses, (house) => {
        const lune = luneFor(house);
        const body = bodyOf(lune, 'dead', Number.POSITIVE_INFINITY, null);
        const sections = body.sections.filter((_, i) => i % 3 === 0 || i > lune.sections.length - 8);
        const half = sections.map((s): PairSection => ({ ...s, push: 0, pushMoment: 0, tied: false }));
        const crownOnly = {
          // The pair may push at any height of the crown.
          sections,
          crown: () => [-1e4, 1e4] as const,
        };
        const [region, pair] = [geometricFactor(crownOnly), pairFactor({ halves: [half, half], tie: null })];
        expect(Math.abs(region - pair)).toBeLessThan(1e-4 * Math.max(1, pair));
      }),
      { seed: 3, numRuns: 6 },
    );
  });

  it('a closed tie over the openings raises the factor; one that crosses a door holds nothing', () => {
    const house = houseOf({ openings: [openingOf()], site: { ...site, snowKpa: 1 } });
    const untied = check(house, 'thrust.hall')?.capacity?.value as number;
    const tied = checksOf({ ...house, tie: TIE });
    expect(tied.find((c) => c.id === 'thrust.hall')?.capacity?.value).toBeGreaterThan(untied * 1.2);
    expect(tied.find((c) => c.id === 'tie.hall')?.state).toBe('ok');
    expect(tied.find((c) => c.id === 'tie-lap.hall')?.state).toBe('ok');
    const crossing = checksOf({ ...house, tie: { ...TIE, level: 1000 } });
    expect(crossing.find((c) => c.id === 'tie.hall')).toMatchObject({ state: 'fails' });
    expect(crossing.find((c) => c.id === 'tie.hall')?.advice).toContain('entrance');
    expect(crossing.find((c) => c.id === 'thrust.hall')?.capacity?.value).toBeCloseTo(untied, 9);
    expect(check({ ...house, tie: { ...TIE, lap: 300 } }, 'tie-lap.hall')?.state).toBe('fails');
    expect(check({ ...house, tie: { ...TIE, bars: 1, diameter: 4, yieldMpa: 200 } }, 'tie.hall')?.state).toBe('fails');
    expect(check(house, 'tie.hall')?.advice).toContain('`tie`');
    expect(check({ ...house, tie: 'none' }, 'tie.hall')).toBeUndefined();
    expect(check(house, 'buttress.hall')).toBeUndefined();
  });

  it('without a tie the thrust that buttresses must take is told along the foot', () => {
    const house = houseOf({ domes: [domeOf({ stemWall: 0 })], tie: 'none', footing: null });
    const setout = setOutHouse(house);
    const [found] = staticsOf(setout).domes;
    const told = check(house, 'buttress.hall');
    expect(told).toMatchObject({ state: 'attention', demand: { unit: 'kN/m' } });
    // All along the foot, at the middle of a wall of 250 mm on 3 m, it is the thrust of the whole turn.
    expect((told?.demand?.value as number) * 3.125).toBeCloseTo(found?.thrust.least as number, 9);
    expect(told?.advice).toContain('buttresses');
    expect(check({ ...house, wall: { ...house.wall, thickness: 60 } }, 'buttress.hall')).toBeUndefined();
  });

  it('rings are closed above everything that cuts them, and a dome so cut is an estimate', () => {
    const house = houseOf({ openings: [openingOf()], domes: [domeOf({ stemWall: 0 })] });
    expect(cutLevel(setOutHouse(house), setOutHouse(house).domes[0] as never)).toBe(2400);
    const thick = { ...house, wall: { thickness: 600, renderInside: 0, renderOutside: 0 }, footing: null };
    expect(check(thick, 'thrust.hall')).toMatchObject({ state: 'attention' });
    expect(check({ ...thick, openings: [] }, 'thrust.hall')).toMatchObject({ state: 'ok' });
    expect(check(thick, 'shell-theory.hall')?.statement).toContain('2.40 m');
  });

  it('gives a line of thrust from the crown to the footing, inside the wall', () => {
    const [dome] = staticsOf(setOutHouse(houseOf({ domes: [domeOf({ stemWall: 0 })] }))).domes;
    const line = dome?.thrust.line ?? [];
    expect(line[0]?.z).toBeGreaterThan(2900);
    expect(line.at(-1)?.z).toBe(-400);
    for (const p of line) expect(p.place > 0 && p.place < 1).toBe(true);
    expect(dome?.shell.points.length).toBeGreaterThan(50);
  });
});

describe('input that is wrong or missing', () => {
  it('no strength is asked for; none at all fails, in words', () => {
    const without = houseOf({
      domes: [domeOf({ stemWall: 0 })],
      material: { ...MATERIAL, compressiveStrengthMpa: null },
    });
    expect(check(without, 'block-strength')).toMatchObject({ state: 'attention' });
    expect(check(without, 'block-strength')?.advice).toContain('material.compressive-strength');
    expect(check(without, 'wall-stress.hall')?.state).toBe('attention');
    const zero = houseOf({ material: { ...MATERIAL, compressiveStrengthMpa: 0 } });
    expect(check(zero, 'block-strength')).toMatchObject({ state: 'fails' });
    expect(unfit(checksOf(zero))).toEqual([]);
  });

  it.each([250, 1900])('a density of %d kg/m3 fails, in words', (dryDensity) => {
    const house = houseOf({ material: { ...MATERIAL, dryDensity, compressiveStrengthMpa: null } });
    expect(check(house, 'dry-density')).toMatchObject({ state: 'fails' });
    expect(check(house, 'dry-density')?.statement).toContain('300 and 1800');
    expect(unfit(checksOf(house))).toEqual([]);
  });

  it('snow of 1 MPa fails without a NaN', () => {
    const house = houseOf({ site: { ...site, snowKpa: 1000 } });
    const checks = checksOf(house);
    expect(checks.find((c) => c.id === 'wall-stress.hall')?.state).toBe('fails');
    expect(unfit(checks)).toEqual([]);
  });

  it('a shell with no thrust inside says what to change', () => {
    const house = houseOf({
      domes: [domeOf({ radius: 4000, stemWall: 3000 })],
      wall: { thickness: 60, renderInside: 0, renderOutside: 0 },
    });
    const found = check(house, 'thrust.hall');
    expect(found).toMatchObject({ state: 'fails' });
    expect(found?.advice).toContain('thicker wall');
    expect(found?.advice).toContain('No thrust fits');
    // What hangs on a line of thrust is neither well nor left out.
    for (const id of ['bearing', 'footing-sliding', 'joint-sliding', 'wall-stress', 'piers']) {
      const told = check({ ...house, openings: [openingOf()] }, `${id}.hall`);
      expect(told?.advice, id).toContain('change the wall first');
      expect(told?.state, id).toBe('attention');
    }
    expect(unfit(checksOf(house))).toEqual([]);
  });

  it('a crown so low that its thrust is more than its weight slides on joints however rough', () => {
    const text = [
      'format: 1',
      'units: m',
      'project: { title: Low crown }',
      'wall: { thickness: 0.3, render-inside: 0, render-outside: 0 }',
      'blocks: { course-height: 0.25, length: 0.4 }',
      'domes: [{ id: hall, at: [0, 0], radius: 3, profile: { shape: segmental, rise: 0.5 }, stem-wall: 0 }]',
      'tie: none',
      'footing: none',
    ].join('\n');
    const house = readDescription(text, 'low-crown.yaml');
    const [dome] = staticsOf(setOutHouse(house)).domes;
    // It would stand by its shape, but on its level bed no friction up to 1 holds it.
    expect(dome?.thrust.factor).toBeGreaterThan(1);
    const weight = ((dome?.weights.masonry ?? 0) + (dome?.weights.render ?? 0)) / (2 * Math.PI);
    expect((dome?.thrust.least ?? 0) / weight).toBeGreaterThan(1);
    expect(dome?.thrust.friction).toBeNull();
    expect(check(house, 'joint-sliding.hall')).toMatchObject({ state: 'fails' });
    expect(check(house, 'joint-sliding.hall')?.advice).toMatch(
      /^Not even joints as rough as 1 hold it\. A closed ring tie/,
    );
    // A tie takes the thrust off that bed.
    const tied = readDescription(
      text.replace('tie: none', 'tie: { level: 0 m, bars: 2, diameter: 12 mm }'),
      'tied.yaml',
    );
    expect(check(tied, 'joint-sliding.hall')?.demand?.value).toBeLessThan(1);
  });

  it('loads, soil and coefficients that lack are asked for by name', () => {
    const asked = checksOf(houseOf({ site: { ...site, windKpa: 0.6 } }))
      .filter((c) => c.state === 'attention')
      .map((c) => c.advice)
      .join(' ');
    for (const key of ['snow', 'wind-coefficients', 'seismic-coefficient', 'bearing-capacity', 'soil-friction'])
      expect(asked).toContain(`site.${key}`);
    const onGround = houseOf({ domes: [domeOf({ stemWall: 0 })], site: { ...site, windKpa: 0.6 } });
    expect(check(onGround, 'wind.hall')?.capacity?.value).toBeGreaterThan(0);
  });

  it('estimates from one side are never ok', () => {
    const house = houseOf({
      domes: [domeOf({ stemWall: 0 })],
      wall: { thickness: 900, renderInside: 0, renderOutside: 0 },
      site: { ...site, snowKpa: 0.1, windKpa: 0.1, seismicCoefficient: 0.01 },
    });
    const states = ['drift.hall', 'wind.hall', 'earthquake.hall'].map((id) => check(house, id)?.state);
    expect(states).toEqual(['attention', 'attention', 'attention']);
    // ASCE 7 has a second case of wind on domes, which isn't computed.
    const other = check({ ...house, site: { ...house.site, combinations: 'ASCE 7' } }, 'wind.hall');
    expect(other?.source).toContain('case A');
    expect(other?.advice).toContain('Case B');
    expect(check(house, 'wind.hall')?.advice).not.toContain('Case B');
  });
});

describe('heads of niches', () => {
  const niche = (depth: number, face: number | 'flush') =>
    openingOf({
      id: 'shelf',
      use: 'niche',
      bearingDeg: 90,
      sill: 600,
      height: 1000,
      depth,
      arch: { ring: 150, face, madeAs: 'cast', voussoirs: null },
    });

  it('bear what the wall brings, on their own depth alone', () => {
    const headOf = (depth: number, face: number | 'flush') =>
      staticsOf(setOutHouse(houseOf({ openings: [niche(depth, face)] }))).heads[0];
    const [shallow, deep] = [headOf(100, 'flush'), headOf(350, 300)];
    expect(shallow).toMatchObject({ id: 'shelf', of: 'niche' });
    // The wall's load is the same; the ring's own weight and the wall above it follow the depth.
    expect(shallow?.arch?.weight).toBeLessThan(deep?.arch?.weight as number);
    expect(shallow?.arch?.weight).toBeGreaterThan(0.8 * (deep?.arch?.weight as number));
    const found = check(houseOf({ openings: [niche(100, 'flush')] }), 'arch.shelf');
    expect(found?.statement).toContain('niche shelf');
    expect(found?.capacity?.inputs.load).toContain('depth of the niche');
  });

  it('are lintels where they are flat', () => {
    const flat = { ...niche(100, 'flush'), head: { shape: 'flat', rise: 0 } as const };
    expect(check(houseOf({ openings: [flat] }), 'lintel.shelf')).toMatchObject({ state: 'attention' });
  });
});

describe('every house', () => {
  const loaded = (house: House): House => ({
    ...house,
    site: {
      ...house.site,
      snowKpa: 1,
      windKpa: 0.6,
      windCoefficients: [0.8, -1.4, -0.1],
      seismicCoefficient: 0.1,
      bearingCapacityKpa: 100,
      soilFriction: 0.35,
    },
    tie: house.footing ? { ...TIE, level: 'footing' } : TIE,
  });
  const holds = (house: House) => {
    for (const one of [house, loaded(house)]) {
      const setout = setOutHouse(one);
      const statics = staticsOf(setout);
      const checks = staticsChecks(setout, statics);
      expect(unfit(statics)).toEqual([]);
      expect(unfit(checks)).toEqual([]);
      expect(JSON.parse(JSON.stringify(statics))).toEqual(statics);
      expect(new Set(checks.map((c) => c.id)).size).toBe(checks.length);
      for (const c of checks) expect(c.state === 'ok' || c.advice !== '', c.id).toBe(true);
      for (const { weights } of statics.domes) expect(Math.abs(weights.balance)).toBeLessThan(1e-9);
    }
  };

  it('of one dome has finite results, told once each', () => {
    fc.assert(fc.property(houses, holds), { seed: 8, numRuns: 12 });
  });

  it('of several domes too', () => {
    fc.assert(fc.property(clusters, holds), { seed: 8, numRuns: 3 });
  });

  it('is judged alike every time', () => {
    const text = readFileSync(new URL('../../samples/garden-studio.yaml', import.meta.url), 'utf8');
    const house = readDescription(text, 'garden-studio.yaml');
    expect(checksOf(house)).toEqual(checksOf(house));
    expect(domeThrust(luneFor(house), 0, null).factor).toBeGreaterThan(1);
  });
});
