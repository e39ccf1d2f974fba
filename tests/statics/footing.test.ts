import { describe, expect, it } from 'vitest';
import type { House, Passage } from '../../lib/description/house.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { footingChecks, footingConcreteChecks } from '../../lib/statics/checks/footing.js';
import { staticsOf } from '../../lib/statics/statics.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const FLAT = { shape: 'flat', rise: 0 } as const;
const studied = (part: Partial<House>) => {
  const setout = setOutHouse(houseOf(part));
  return { setout, statics: staticsOf(setout) };
};

describe('the concrete of a footing', () => {
  const { setout, statics } = studied({});
  const made = (house: Partial<House>, passages: Partial<typeof setout> = {}) =>
    footingConcreteChecks({ ...setout, ...passages, house: { ...setout.house, ...house } }, statics.domes);

  it('is deep enough at twice what it stands out of the wall: 250 mm for 500 under 250', () => {
    const at = (depth: number) => made({ footing: { width: 500, depth } }).find((c) => c.id === 'footing-projection');
    expect(at(250)).toMatchObject({ state: 'ok', ratio: 1, demand: { value: 250 } });
    expect(at(249)?.state).toBe('attention');
    expect(at(200)?.ratio).toBeCloseTo(1.25, 12);
  });

  it('spans under the widest way that reaches the floor, passages among them', () => {
    const door = openingOf({ width: 1000, head: FLAT });
    const window = openingOf({
      id: 'bay',
      use: 'window',
      bearingDeg: 60,
      width: 1600,
      sill: 900,
      height: 900,
      head: FLAT,
    });
    const head = { shape: 'semicircular', rise: 650 } as const;
    const link: Passage = { id: 'link', between: ['hall', 'lab'], width: 1300, height: 2000, head, ring: 200 };
    const domes = [domeOf(), domeOf({ id: 'lab', at: [9000, 0] })];
    const span = (part: Partial<House>) => {
      const ways = setOutHouse(houseOf({ domes, ...part }));
      const steel = made({}, { arches: ways.arches, passages: ways.passages }).find((c) => c.id === 'footing-steel');
      return steel?.demand?.inputs['widest opening L (mm)'];
    };
    expect(span({ openings: [door, window] })).toBe(1000);
    expect(span({ openings: [door, window], passages: [link] })).toBe(1300);
    expect(span({ openings: [window] })).toBeUndefined();
  });
});

it('steel in a footing pulls no more than the thrust, so that the soil never bears more for it', () => {
  const openings = [openingOf()];
  const tie = { level: 'footing', bars: 2, diameter: 10, yieldMpa: 500, bondMpa: null, lap: null } as const;
  const [bare, tied] = [null, tie].map((one) => studied({ openings, tie: one }).statics.domes[0]);
  expect(tied?.thrust.line.at(-1)?.horizontal).toBeCloseTo(0, 9);
  expect(tied?.footing?.thrust).toBe(0);
  expect(tied?.footing?.pressureKpa).toBeLessThanOrEqual(bare?.footing?.pressureKpa ?? 0);
});

describe('the soil under a footing', () => {
  const { setout, statics } = studied({});
  const [dome, found] = [setout.domes[0], statics.domes[0]];
  if (!dome || !found?.footing) throw new Error('the house has a footing');
  const { thrust, lineLoad, pressureKpa } = found.footing;
  const checks = (site: Partial<House['site']>) => {
    const { house } = setout;
    const all = footingChecks({ ...setout, house: { ...house, site: { ...house.site, ...site } } }, dome, found);
    return (id: string) => all.find((c) => c.id === `${id}.hall`);
  };

  it('holds it by friction where that is at least thrust over load', () => {
    const needed = (thrust ?? 0) / lineLoad;
    expect(needed).toBeGreaterThan(0.05);
    const at = (soilFriction: number) => checks({ soilFriction })('footing-sliding');
    expect(at(needed * 1.001)).toMatchObject({ state: 'ok', demand: { value: needed } });
    expect(at(needed * 0.999)?.state).toBe('fails');
    expect(at(2 * needed)?.ratio).toBeCloseTo(0.5, 12);
  });

  it('bears it where it may bear at least the pressure', () => {
    const at = (share: number) => checks({ bearingCapacityKpa: (pressureKpa ?? 0) * share })('bearing');
    expect(at(1.001)?.state).toBe('ok');
    expect(at(0.999)?.state).toBe('fails');
    expect(at(2)?.ratio).toBeCloseTo(0.5, 12);
  });
});

describe('the width that is told where the soil bears too little', () => {
  const openings = [openingOf({ width: 1000, height: 1800, head: FLAT })];
  const under = (bearingCapacityKpa: number, width: number) => {
    const { setout, statics } = studied({
      openings,
      footing: { width, depth: 400 },
      site: { ...houseOf().site, bearingCapacityKpa },
    });
    const [dome, found] = [setout.domes[0], statics.domes[0]];
    if (!dome || !found) throw new Error('the house has a dome');
    return (id: string) => footingChecks(setout, dome, found).find((c) => c.id === `${id}.hall`);
  };
  const told = (advice = '') => Number(/at least ([\d.]+) m/.exec(advice)?.[1]) * 1000;

  it.each([0.95, 0.7, 0.4])('is enough for %f of the pressure, the weight of the wider footing with it', (share) => {
    const soil = (under(1000, 500)('bearing')?.demand?.value ?? 0) * share;
    const found = under(soil, 500)('bearing');
    expect(found?.state).toBe('fails');
    expect(under(soil, told(found?.advice))('bearing')?.state).toBe('ok');
  });

  it('is none that nobody would build: over 5 m that is said instead', () => {
    const advices = [40, 20, 12, 10].map((kpa) => under(kpa, 500)('bearing')?.advice ?? '');
    const widths = advices.map(told);
    expect(widths.filter((width) => width > 5000)).toEqual([]);
    expect(Number.isNaN(widths[0])).toBe(false);
    expect(advices[3]).toContain('No sensible width of the footing does, since it would be over 5.00 m');
  });

  it('is none where the footing alone is more than the soil bears: 2400 kg/m3 by 0.4 m are 9.41 kPa', () => {
    expect(told(under(15, 500)('bearing')?.advice)).toBeGreaterThan(1000);
    expect(under(9.4, 500)('bearing')?.advice).toContain('No wider footing helps');
  });
});

describe('the soil under jambs', () => {
  const SITE = { ...houseOf().site, bearingCapacityKpa: 1000 };
  const loadOf = (part: Partial<House>) => studied({ site: SITE, ...part }).statics.domes[0]?.footing;
  const ARCH = openingOf().arch;
  // The middle of the wall.
  const R = 3125;
  const half = (width: number) => Math.asin(width / 2 / R) * R;

  it('bears half of the opening on the ring’s width, spread at 45 degrees through the footing, besides the wall', () => {
    // Jambs of 200 mm, a footing 400 deep: on 200 + 2 · 400. The void is as wide at the floor as at 0.6 m.
    const door = openingOf({ width: 1000, height: 500, head: FLAT, arch: { ...ARCH, ring: 200 } });
    const found = loadOf({ openings: [door], footing: { width: 500, depth: 400 } });
    const times = 1 + half(1000) / (200 + 2 * 400);
    expect(found?.jamb).toMatchObject({ of: ['entrance'], length: 1000 });
    expect(found?.jamb?.times).toBeCloseTo(times, 9);
    expect(found?.jambKpa).toBeCloseTo(((found?.pressureKpa ?? 0) * times) / (found?.gathering ?? 0), 9);
  });

  it('two jambs add up where their lengths meet, and not where they just don’t', () => {
    const at = (gap: number) => {
      // From the middle of one opening to the next: both halves and the pier.
      const apart = ((2 * half(800) + gap) / R) * (180 / Math.PI);
      const one = { width: 800, height: 500, head: FLAT, arch: { ...ARCH, ring: 150 } } as const;
      const openings = [
        openingOf({ ...one, bearingDeg: 90 }),
        openingOf({ ...one, id: 'next', bearingDeg: 90 + apart }),
      ];
      return loadOf({ openings, footing: { width: 500, depth: 300 } })?.jamb;
    };
    const alone = half(800) / (150 + 600);
    expect(at(2 * 450 + 1)?.times).toBeCloseTo(1 + alone, 9);
    expect(at(2 * 450 - 1)?.times).toBeCloseTo(1 + 2 * alone, 9);
    expect(at(2 * 450 - 1)?.of).toEqual(['entrance', 'next']);
  });

  it('wall that goes on under a flush window spreads it as well; without openings there is none', () => {
    const window = openingOf({
      use: 'window',
      sill: 300,
      height: 250,
      width: 1000,
      head: FLAT,
      arch: { ...ARCH, ring: 200, face: 'flush' },
    });
    expect(loadOf({ openings: [window] })?.jamb?.length).toBeCloseTo(200 + 2 * (400 + 300), 9);
    expect(loadOf({ openings: [] })?.jamb).toBeNull();
  });

  it('is judged: the width that is asked for suffices, a twentieth less doesn’t', () => {
    const openings = [openingOf({ width: 1200 })];
    const checked = (width: number, bearingCapacityKpa: number | null) => {
      const { setout, statics } = studied({
        openings,
        footing: { width, depth: 400 },
        site: { ...SITE, bearingCapacityKpa },
      });
      const [dome, found] = [setout.domes[0], statics.domes[0]];
      if (!dome || !found) throw new Error('the house has a dome');
      return { check: footingChecks(setout, dome, found).find((c) => c.id === 'jamb-bearing.hall'), found };
    };
    const { check, found } = checked(500, 1000);
    const kpa = found.footing?.jambKpa ?? 0;
    expect(check).toMatchObject({ state: 'ok', demand: { value: kpa } });
    expect(check?.statement).toContain('entrance');
    expect(checked(500, kpa * 0.8).check?.state).toBe('fails');
    const asked = 1000 * Number(/([\d.]+) m/.exec(checked(500, kpa * 0.8).check?.advice ?? '')?.[1]);
    expect(checked(asked, kpa * 0.8).check?.state).toBe('ok');
    expect(checked(0.95 * asked, kpa * 0.8).check?.state).toBe('fails');
    expect(checked(500, null).check).toMatchObject({ state: 'attention' });
    expect(checked(500, null).check?.advice).toContain('site.bearing-capacity');
  });
});
