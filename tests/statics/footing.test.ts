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
