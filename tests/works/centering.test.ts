import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDescription } from '../../lib/description/read.js';
import { type HeadArc, sectionOf } from '../../lib/math/section.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { centresOf, ribArc } from '../../lib/works/centering.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const arcOf = (width: number, shape: 'semicircular' | 'segmental' | 'pointed', rise: number) => {
  const section = sectionOf({ width, height: rise + 1000, sill: 0, head: { shape, rise } });
  return [section.arc as HeadArc, section.springingZ] as const;
};
const DEG = Math.PI / 180;

describe('rib arcs against closed forms of the arch (span, rise, radius, half angle, length)', () => {
  it.each([
    [1000, 250, 625, 53.130102, 1159.119],
    [900, 450, 450, 90, 1413.717],
    [1200, 200, 1000, 36.869898, 1287.002],
    [3000, 1000, 1625, 67.380135, 3822.017],
  ])('segmental, span %d rise %d', (span, rise, radius, half, length) => {
    const rib = ribArc(...arcOf(span, 'segmental', rise), 0);
    expect(rib.radius).toBeCloseTo(radius, 6);
    expect(rib.angleRad / DEG / 2).toBeCloseTo(half, 5);
    expect(rib.length).toBeCloseTo(length, 2);
    expect(rib.chord).toBeCloseTo(span, 6);
    expect(rib.rise).toBeCloseTo(rise, 6);
  });

  it.each([
    [1000 * Math.SQRT1_2, 70.528779, 1846.439],
    [866.0254, 60, 2094.395],
    [1000, 53.130102, 2318.238],
  ])('pointed, span 1000 rise %f: two arcs', (rise, angle, length) => {
    const rib = ribArc(...arcOf(1000, 'pointed', rise), 0);
    expect(rib.pieces).toBe(2);
    expect(rib.angleRad / DEG).toBeCloseTo(angle, 4);
    expect(2 * rib.length).toBeCloseTo(length, 2);
    expect(rib.chord).toBeCloseTo(Math.hypot(500, rise), 4);
  });

  it('tube: its outside touches the lagging, so its centre line lies lagging and half a tube inside', () => {
    const rib = ribArc(...arcOf(900, 'semicircular', 450), 20 + 13.5);
    expect(rib.radius).toBeCloseTo(416.5, 9);
    expect(rib.length).toBeCloseTo(Math.PI * 416.5, 6);
    expect(rib.chord).toBeCloseTo(833, 6);
    expect(rib.rise).toBeCloseTo(416.5, 6);
  });
});

describe('centerings of a house', () => {
  const centres = centresOf(
    setOutHouse(
      houseOf({
        domes: [domeOf({ radius: 3000 })],
        openings: [
          openingOf({ id: 'round', width: 1000 }),
          openingOf({
            id: 'lintel',
            bearingDeg: 90,
            width: 800,
            height: 600,
            sill: 900,
            use: 'window',
            head: { shape: 'flat', rise: 0 },
          }),
          openingOf({
            id: 'lancet',
            bearingDeg: 270,
            width: 700,
            height: 1000,
            sill: 700,
            use: 'window',
            head: { shape: 'pointed', rise: 600 },
          }),
        ],
      }),
    ),
  );
  const of = (id: string) => centres.find((c) => c.id === id) as (typeof centres)[number];

  it('ribs stand no further apart than asked, from end to end of the soffit', () => {
    for (const { ribs, spacing, depth } of centres) {
      expect(spacing).toBeLessThanOrEqual(500);
      expect((ribs - 1) * spacing).toBeCloseTo(depth, 6);
      expect(ribs).toBeGreaterThanOrEqual(2);
    }
  });

  it('a rib and its lagging fill the soffit', () => {
    expect(of('round').ribWidth).toBeCloseTo(960, 6);
    expect(of('round').ribRise).toBeCloseTo(480, 6);
    expect(of('lintel')).toMatchObject({ board: null, tube: null, ribWidth: 800, ribRise: -20 });
    // Pointed: r − 20 about the same centres.
    const r = (600 ** 2 + 350 ** 2) / 700;
    expect(of('lancet').ribRise).toBeCloseTo(Math.sqrt((r - 20) ** 2 - (r - 350) ** 2), 6);
  });

  it('strips side by side cover the soffit and reach from the room to the face', () => {
    for (const { id, strips, rise } of centres) {
      const covered = strips.reduce((sum, s) => sum + s.pieces * s.width, 0);
      // Half a turn, straight, and two arcs about centres past the axis by radius less half the width.
      const lancet = (600 ** 2 + 350 ** 2) / 700;
      const soffit = { round: 500 * Math.PI, lintel: 800, lancet: 2 * lancet * Math.acos((lancet - 350) / lancet) }[id];
      expect(covered, id).toBeCloseTo(soffit as number, 6);
      for (const s of strips) expect(s.width).toBeLessThanOrEqual(50);
      for (const { at, length } of strips) {
        // The face stands 300 mm beyond the extrados at the springing: 3000 + 250 + 300.
        const reach = 3550 - Math.sqrt(3000 ** 2 - Math.max(0, at[1] - 600) ** 2 - at[0] ** 2);
        expect(length).toBeGreaterThan(reach - 1);
        expect(length).toBeLessThan(reach + 30);
      }
      expect(rise).toBeGreaterThanOrEqual(0);
    }
  });

  it('the family house has one for every opening, niche and passage', () => {
    const house = setOutHouse(readDescription(readFileSync('samples/family-house.yaml', 'utf8'), 'family-house.yaml'));
    const all = centresOf(house);
    expect(all).toHaveLength(house.arches.length + house.passages.length);
    for (const { depth, strips } of all) {
      expect(depth).toBeGreaterThan(0);
      expect(strips.length).toBeGreaterThan(1);
    }
  });
});
