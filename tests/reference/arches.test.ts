import { describe, expect, it } from 'vitest';
import { archEnvelope } from '../../lib/masonry/envelope.js';
import { integrateSoftEnds } from '../../lib/math/quadrature.js';
import { type SectionSpec, sectionOf, sectionOutline } from '../../lib/math/section.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

// Arch geometry by closed forms (segmental R = (s²/4 + f²)/2f; pointed two-centre rise √(s r − s²/4)),
// evaluated by an independent script.
const headOnly = (width: number, shape: SectionSpec['head']['shape'], rise: number) =>
  sectionOf({ width, height: rise, sill: 0, head: { shape, rise } });
const areaUnder = (section: ReturnType<typeof sectionOf>): number =>
  integrateSoftEnds((z) => 2 * section.halfWidthAt(z), section.springingZ, section.crownZ, 32) / 1e6;
const arcLength = (section: ReturnType<typeof sectionOf>): number =>
  sectionOutline(section).reduce((sum, p) => sum + (p.kind === 'arc' ? p.radius * (p.end - p.start) : 0), 0) / 1000;

describe('heads', () => {
  it.each([
    [1000, 250, 0.625, 1.159119, 0.174725],
    [900, 450, 0.45, 1.413717, 0.318086],
    [1200, 200, 1.0, 1.287002, 0.163501],
    [3000, 1000, 1.625, 3.822017, 2.167889],
  ])('segmental, span %d rise %d', (width, rise, radius, length, area) => {
    const section = headOnly(width, 'segmental', rise);
    expect((section.arc?.radius as number) / 1000).toBeCloseTo(radius, 9);
    expect(arcLength(section)).toBeCloseTo(length, 6);
    expect(areaUnder(section)).toBeCloseTo(area, 5);
  });

  it.each([
    [Math.SQRT1_2, 0.25, 1.846439, 0.515638],
    [0.866025, 0.5, 2.094395, 0.614185],
    [1.0, 0.75, 2.318238, 0.698899],
  ])('pointed, span 1, rise %f m', (rise, past, length, area) => {
    const section = headOnly(1000, 'pointed', rise * 1000);
    expect((section.arc?.past as number) / 1000).toBeCloseTo(past, 5);
    expect(arcLength(section)).toBeCloseTo(length, 5);
    expect(areaUnder(section)).toBeCloseTo(area, 5);
  });
});

describe('a tunnel through a shell', () => {
  it('upper half tunnel r 0.5 at springing level through 2.5 to 2.8 removes 0.11888090 m3', () => {
    // (π/3) [(Re³ − (Re² − a²)^1.5) − (Ri³ − (Ri² − a²)^1.5)]
    const house = setOutHouse(
      houseOf({
        wall: { thickness: 300, renderInside: 0, renderOutside: 0 },
        domes: [domeOf({ radius: 2500, stemWall: 0 })],
        openings: [
          openingOf({ width: 1000, height: 500, arch: { ring: 200, face: 'flush', madeAs: 'cast', voussoirs: null } }),
        ],
      }),
    );
    const arch = house.arches[0] as (typeof house.arches)[number];
    expect(archEnvelope(arch).voidInShell / 1e9).toBeCloseTo(0.1188809, 7);
  });

  it('door, half width 0.45, straight jambs to 1.2, flat head, removes 0.33806967 m3 of the same shell', () => {
    const house = setOutHouse(
      houseOf({
        wall: { thickness: 300, renderInside: 0, renderOutside: 0 },
        domes: [domeOf({ radius: 2500, stemWall: 0 })],
        openings: [openingOf({ width: 900, height: 1200, head: { shape: 'flat', rise: 0 } })],
      }),
    );
    expect(archEnvelope(house.arches[0] as (typeof house.arches)[number]).voidInShell / 1e9).toBeCloseTo(0.33806967, 6);
  });
});
