import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Passage } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { chordMarks, datumPegs, groundCircles, type Peg, pegsOf } from '../../lib/works/pegs.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const sample = (name: string): HouseSetout =>
  setOutHouse(readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), `${name}.yaml`));

/** Where two tapes meet: the intersection of two circles, on one side of the line from A to B. */
function meeting(
  [ax, ay]: readonly number[],
  [bx, by]: readonly number[],
  [p, q]: readonly number[],
  side: Peg['side'],
) {
  const [x0, y0, x1, y1] = [ax, ay, bx, by] as [number, number, number, number];
  const base = Math.hypot(x1 - x0, y1 - y0);
  const along = ((p as number) ** 2 - (q as number) ** 2 + base ** 2) / (2 * base);
  const off =
    Math.sqrt(Math.max(0, (p as number) ** 2 - along ** 2)) * (side === 'left' ? 1 : side === 'right' ? -1 : 0);
  const [ux, uy] = [(x1 - x0) / base, (y1 - y0) / base];
  return [x0 + along * ux - off * uy, y0 + along * uy + off * ux] as const;
}

describe('pegs', () => {
  it.each(['garden-studio', 'family-house', 'courtyard-ring', 'creek-cabin'])('%s: tapes give every peg', (name) => {
    const house = sample(name);
    const pegs = pegsOf(house);
    const [a, b] = datumPegs(house);
    expect(new Set(pegs.map((p) => p.name)).size).toBe(pegs.length);
    // Datum pegs stand at lengths that a tape of the house's units shows without a fraction.
    const step = house.house.units === 'ft' ? 152.4 : 100;
    for (const part of [...a, ...b]) expect(Math.abs(part / step - Math.round(part / step))).toBeLessThan(1e-9);
    for (const { name, at, tapes, side } of pegs.slice(2)) {
      const [x, y] = meeting(a, b, tapes, side);
      expect(Math.hypot(x - at[0], y - at[1]), name).toBeLessThan(0.01);
    }
    // Pegs of our own choice leave all on one side, and tapes that cross well.
    for (const { side, crossingDeg } of pegs.slice(2)) {
      expect(side).toBe('left');
      expect(crossingDeg).toBeGreaterThan(25);
    }
  });

  it('check distances agree with the coordinates', () => {
    const pegs = pegsOf(sample('family-house'));
    const at = new Map(pegs.map((p) => [p.name, p.at]));
    for (const peg of pegs)
      for (const { to, distance } of peg.checks) {
        const [x, y] = at.get(to) as readonly [number, number];
        expect(distance).toBeCloseTo(Math.hypot(peg.at[0] - x, peg.at[1] - y), 9);
      }
  });

  it('corners of a flat face: as far from the axis as each other, width and two rings apart', () => {
    const pegs = pegsOf(setOutHouse(houseOf({ openings: [openingOf({ width: 1000 })] })));
    const corner = (side: string) => pegs.find((p) => p.name === `entrance face, outer corner ${side}`) as Peg;
    expect(corner('left').checks[0]?.distance).toBeCloseTo(corner('right').checks[0]?.distance as number, 9);
    expect(corner('right').checks[1]?.distance).toBeCloseTo(1400, 9);
    // Bearing 180: seen from inside looking out, the left is the east.
    expect(corner('left').at[0]).toBeCloseTo(700, 9);
    expect(corner('left').at[1]).toBeCloseTo(-3550, 9);
  });

  it('datum pegs stand 1.5 m clear of footings all round, at the next decimetre', () => {
    // 3 + 0.25 + 0.125 + 1.5 = 4.875 m.
    expect(datumPegs(setOutHouse(houseOf()))).toEqual([
      [-4900, -4900],
      [4900, -4900],
    ]);
    // The footing's corner under a face at 5.25 m: 0.5 + 0.2 + 0.125 aside, 5.375 out; 5.438 + 1.5 m.
    const far = openingOf({ bearingDeg: 90, arch: { ring: 200, face: 2000, madeAs: 'cast', voussoirs: null } });
    expect(datumPegs(setOutHouse(houseOf({ openings: [far] })))[1][0]).toBe(7000);
  });

  it('a passage ends at the room’s wall of each of its domes', () => {
    const domes = [domeOf(), domeOf({ id: 'lab', at: [9000, 0], radius: 2200 })];
    const head = { shape: 'semicircular', rise: 500 } as const;
    const link: Passage = { id: 'link', between: ['hall', 'lab'], width: 1000, height: 2000, head, ring: 200 };
    const pegs = pegsOf(setOutHouse(houseOf({ domes, passages: [link] })));
    const at = (dome: string) => pegs.find((p) => p.name === `link, middle at ${dome}`)?.at;
    expect(at('hall')).toEqual([expect.closeTo(3000, 9), expect.closeTo(0, 9)]);
    expect(at('lab')).toEqual([expect.closeTo(9000 - 2200, 9), expect.closeTo(0, 9)]);
  });

  it('uses pegs that are given', () => {
    const house = houseOf();
    const pegs: [[number, number], [number, number]] = [
      [-8000, -8000],
      [8000, -9000],
    ];
    expect(datumPegs(setOutHouse({ ...house, settingOut: { ...house.settingOut, pegs } }))).toEqual(pegs);
  });
});

describe('bearings by chord', () => {
  const house = setOutHouse(
    houseOf({
      domes: [domeOf({ radius: 3000 })],
      openings: [openingOf({ bearingDeg: 180 }), openingOf({ id: 'bay', bearingDeg: 270, width: 1200 })],
    }),
  );
  const marks = chordMarks(house);

  it('chord and check chord enclose a right angle (Thales), and lie on the circle at their bearing', () => {
    for (const { chord, checkChord, bearingRad, way } of marks) {
      expect(Math.hypot(chord, checkChord)).toBeCloseTo(6000, 6);
      const turn = way === 'clockwise' ? bearingRad : -bearingRad;
      const [x, y] = [3000 * Math.sin(bearingRad), 3000 * Math.cos(bearingRad)];
      expect(chord).toBeCloseTo(Math.hypot(x, y - 3000), 6);
      expect(Math.sin(turn) * (way === 'clockwise' ? 1 : -1)).toBeCloseTo(Math.sin(bearingRad), 9);
    }
  });

  it('jambs are as far apart as the opening is wide', () => {
    const at = (what: string) => marks.find((m) => m.what === `bay, ${what}`)?.bearingRad as number;
    const turn = at('jamb on the right') - at('jamb on the left');
    expect(2 * 3000 * Math.sin(turn / 2)).toBeCloseTo(1200, 6);
    expect(marks.find((m) => m.what === 'bay, middle')?.way).toBe('anticlockwise');
  });
});

describe('circles on the ground', () => {
  it('grow from the trench’s inner edge to its outer one', () => {
    const circles = groundCircles(setOutHouse(houseOf()));
    expect(circles.map((c) => c.radius)).toEqual([2875, 3000, 3250, 3375]);
  });

  it('without footing end with the slab', () => {
    expect(groundCircles(setOutHouse(houseOf({ footing: null }))).at(-1)).toMatchObject({
      what: 'slab, edge',
      radius: 3250,
    });
  });
});
