import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Problem } from '../../lib/base/problems.js';
import { houseFrom } from '../../lib/description/read.js';
import { bodyOf } from '../../lib/description/rules/body.js';
import { PROFILE_SHAPES } from '../../lib/description/schema/domes.js';
import { HEAD_SHAPES } from '../../lib/description/schema/openings.js';
import type { Description } from '../../lib/description/schema.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { codesOf, passage, problemsOf, withDomes } from './helpers.js';

const mm = (min: number, max: number) => fc.integer({ min, max });
const RISE = {
  hemisphere: [1, 1],
  segmental: [0.5, 0.95],
  pointed: [1.05, 1.8],
  catenary: [0.6, 1.6],
  elliptical: [0.6, 1.6],
};

const domes = (id: string) =>
  fc
    .record({
      shape: fc.constantFrom(...PROFILE_SHAPES),
      part: mm(0, 1000),
      radius: mm(1500, 3500),
      stem: fc.constantFrom(0, 500, 1200),
      oculus: fc.option(fc.record({ radius: mm(200, 400), curb: mm(80, 250), upstand: mm(0, 300) }), {
        nil: undefined,
      }),
    })
    .map(({ shape, part, radius, stem, oculus }): Description['domes'][number] => {
      const [low, high] = RISE[shape] as [number, number];
      const rise = Math.round(radius * (low + (part / 1000) * (high - low)));
      return { id, radius, profile: { shape, rise }, 'stem-wall': stem, oculus };
    });

const withIn = (problems: readonly Problem[], code: string): Problem | undefined =>
  problems.find((p) => p.code === code);
/** The lengths in metres that a text names. */
const metres = (text: string): number[] => [...text.matchAll(/([\d.]+) m\b/g)].map((m) => Number(m[1]));
const degrees = (text: string): number => Number(/Turn it ([\d.]+) deg/.exec(text)?.[1]);

describe('bodies of domes, as rules see them', () => {
  test('have the outside that is set out, and a crown no smaller than plug or curb (seed 21)', () => {
    fc.assert(
      fc.property(domes('hall'), mm(150, 350), mm(180, 350), (dome, thickness, height) => {
        const description: Description = {
          format: 1,
          units: 'mm',
          wall: { thickness },
          blocks: { 'course-height': height },
          domes: [dome],
          footing: 'none',
        };
        if (problemsOf(description).length > 0) return;
        const house = houseFrom(description);
        const [setout] = setOutHouse(house).domes;
        const [value] = house.domes;
        if (!setout || !value) throw new Error('no dome');
        const body = bodyOf({ path: [], value }, 0, house.wall, house.blocks);
        for (let z = 0; z < setout.topZ + 300; z += 83)
          expect(body.outerRadiusAt(z).toFixed(6)).toBe(setout.outerRadiusAt(z).toFixed(6));
        const bed = setout.shell.at(setout.curb?.bedS ?? setout.plug?.bedS ?? setout.shell.length);
        expect(bed.z).toBeGreaterThanOrEqual(body.crown.fromZ - 1e-6);
        expect(bed.r + thickness * Math.cos(bed.normalRad)).toBeLessThanOrEqual(body.crown.radius + 1e-6);
      }),
      { seed: 21, numRuns: 200 },
    );
  });
});

describe('two domes', () => {
  const pair = (east: number) => withDomes(`{ id: lab, radius: 2, stem-wall: 0.3, at: [${east}, 0] }`);

  test.each([0.2, 1, 3.2, 5.2, 5.6])('%d m apart are mended by the distances that are named', (east) => {
    const [problem] = problemsOf(pair(east));
    const [gap, least, most] = metres(problem?.mend ?? '') as [number, number, number];
    expect(least).toBeLessThan(most);
    expect(most).toBeLessThan(gap);
    for (const good of [gap, least, most, (least + most) / 2, gap + 5]) expect(codesOf(pair(good))).toEqual([]);
    for (const bad of [gap - 0.01, least - 0.01, most + 0.01]) expect(codesOf(pair(bad))).not.toEqual([]);
  });

  test('in feet and inches too', () => {
    const feet = (at: string) =>
      `format: 1\nunits: ft\ndomes: [{ id: hall, radius: 10, stem-wall: 2 }, { id: lab, radius: 7, stem-wall: 1, at: [${at}, 0] }]`;
    const [problem] = problemsOf(feet('18'));
    const named = [...(problem?.mend ?? '').matchAll(/\d+'-[\d /]+"/g)].map((m) => m[0]);
    expect(named).toHaveLength(3);
    for (const at of named) expect(codesOf(feet(at))).toEqual([]);
  });

  test.each(['', ', oculus: { radius: 0.4, curb: 0.15 }'])(
    'of which the later would stand over the crown of the lower, earlier one (%s)',
    (oculus) => {
      const tall = (east: number, stem: number) =>
        `format: 1\ndomes: [{ id: hall, radius: 3, stem-wall: 0.6${oculus} }, { id: tower, radius: 3, stem-wall: ${stem}, at: [${east}, 0] }]`;
      const [problem] = problemsOf(tall(3.4, 3.5));
      expect(problem?.code).toBe('overlap-too-deep');
      expect(problem?.message).toContain(`"tower" comes too near to the ${oculus ? 'curb' : 'crown plug'} of "hall"`);
      const [, least] = metres(problem?.mend ?? '') as [number, number];
      expect(codesOf(tall(least, 3.5))).toEqual([]);
      expect(codesOf(tall(least - 0.01, 3.5))).toEqual(['overlap-too-deep']);
      // As low as its neighbour, it has leant away at that height.
      expect(codesOf(tall(3.4, 0.6))).toEqual([]);
    },
  );

  test('a large dome that abuts a small one', () => {
    expect(codesOf(withDomes('{ id: barn, radius: 5, stem-wall: 0.6, at: [7.5, 0] }'))).toEqual([]);
  });
});

describe('clusters that only look wrong', () => {
  const lab = '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [5, 0] }';
  test.each([
    [
      'three domes that abut one another, each joined to each',
      withDomes(
        '{ id: east, radius: 3, stem-wall: 0.6, at: [5, 0] }, { id: north, radius: 3, stem-wall: 0.6, at: [2.5, 4.33] }',
        `passages: [${passage('east')}, ${passage('north', 'width: 0.9, height: 1.9', 'up')}, { id: over, between: [north, east], width: 0.9, height: 1.9 }]`,
      ),
    ],
    [
      'a window beside an abutment',
      withDomes(lab, 'openings: [{ id: bay, in: hall, bearing: 45, width: 0.8, height: 1 }]'),
    ],
    [
      'a vent above an abutment, in a wall that leans away',
      withDomes(
        '{ id: lab, radius: 2, profile: { shape: segmental, rise: 1 }, at: [4.5, 0] }',
        'openings: [{ id: high, in: hall, bearing: 90, use: vent, width: 0.2, height: 0.2, sill: 2, arch: { ring: 0.1 } }]',
      ),
    ],
    [
      'doors that face one another over a yard',
      withDomes(
        '{ id: lab, radius: 3, stem-wall: 0.6, at: [9, 0] }',
        'openings: [{ id: a, in: hall, bearing: 90, use: door, width: 0.9, height: 2 }, { id: b, in: lab, bearing: 270, use: door, width: 0.9, height: 2 }]',
      ),
    ],
    [
      'a low passage that runs under the view of a high window',
      withDomes(
        '{ id: north, radius: 2, stem-wall: 0.6, at: [5.6, 5] }, { id: south, radius: 2, stem-wall: 0.6, at: [5.6, -5] }',
        'openings: [{ id: high, in: hall, bearing: 90, width: 0.5, height: 0.4, sill: 1.9 }]\npassages: [{ id: long, between: [north, south], width: 0.6, height: 1.2, ring: 0.1 }]',
      ),
    ],
    [
      'a house that just fits its plot',
      'format: 1\nsite: { plot: [[-3.375, -3.375], [3.375, -3.375], [3.375, 3.375], [-3.375, 3.375]] }\ndomes: [{ id: hall, radius: 3 }]',
    ],
  ])('%s', (_name, text) => {
    expect(problemsOf(text)).toEqual([]);
  });
});

describe('openings beside another dome', () => {
  const house = (bearing: number, more = '') =>
    withDomes(
      '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [5, 0] }',
      `openings: [{ id: bay, in: hall, bearing: ${bearing}, width: 0.8, height: 1${more} }]`,
    );

  test.each([
    ['arch', 100, '', 1],
    ['arch', 80, '', -1],
    ['barrel', 110, ', arch: { face: 0.4 }', 1],
    ['barrel', 70, ', arch: { face: 0.4 }', -1],
  ] as const)('turning the %s at %d deg by as much as the mend says lets it stand', (_what, at, more, side) => {
    const problem = withIn(problemsOf(house(at, more)), 'opening-meets-dome');
    const turn = degrees(problem?.mend ?? '');
    expect(problem?.mend).toContain(side > 0 ? ' clockwise' : 'counter-clockwise');
    expect(codesOf(house(at + side * turn, more))).not.toContain('opening-meets-dome');
    expect(codesOf(house(at + side * (turn - 0.3), more))).toContain('opening-meets-dome');
  });

  test('a door is turned until its way is free', () => {
    const door = (bearing: number) =>
      withDomes(
        '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [6.6, 0] }',
        `openings: [{ id: out, in: hall, bearing: ${bearing}, use: door, width: 0.9, height: 2, arch: { face: flush } }]`,
      );
    const turn = degrees(withIn(problemsOf(door(95)), 'opening-blocked')?.mend ?? '');
    expect(turn).toBeGreaterThan(0);
    expect(codesOf(door(95 + turn))).toEqual([]);
    expect(codesOf(door(95 + turn - 0.3))).toEqual(['opening-blocked']);
  });
});

/** Two domes with one opening, and the same as set out without rules. */
const besides = fc.record({
  hall: domes('hall'),
  lab: domes('lab'),
  near: mm(0, 1000),
  first: fc.boolean(),
  bearing: mm(-700, 700),
  width: mm(300, 1100),
  height: mm(500, 1300),
  sill: mm(200, 1200),
  head: fc.constantFrom(...HEAD_SHAPES),
  face: fc.constantFrom('flush' as const, 100, 500),
});

describe('rules against the analytic house', () => {
  const PIECE = 120;
  const JOINT = 10;

  test('an opening is refused when, and only when, it comes near the other dome (seed 22)', () => {
    const count = { refused: 0, through: 0 };
    fc.assert(
      fc.property(besides, ({ hall, lab, near, first, bearing, width, height, sill, head, face }) => {
        const sum = Number(hall.radius) + Number(lab.radius) + 500;
        const at: [number, number] = [0, Math.round(sum - 380 - (near / 1000) * 0.4 * Number(lab.radius))];
        const arch = { ring: 120, face };
        const opening = { id: 'bay', in: 'hall', bearing: bearing / 10, width, height, sill, head, arch, frame: 0 };
        const pair = [hall, { ...lab, at }];
        const description: Description = { format: 1, units: 'mm', domes: first ? pair : pair.reverse() };
        if (problemsOf(description).length > 0) return;
        const codes = codesOf({ ...description, openings: [opening] });
        if (codes.some((code) => code !== 'opening-meets-dome' && code !== 'opening-blocked')) return;
        const setout = setOutHouse(houseFrom({ ...description, domes: [hall], openings: [opening] }));
        const other = setOutHouse(houseFrom(description)).domes.find((d) => d.id === 'lab');
        const [bay] = setout.arches;
        if (!bay || !other) throw new Error('no opening');
        let nearest = Number.POSITIVE_INFINITY;
        for (let z = bay.baseZ; z < bay.topZ; z += 12)
          for (let share = -1; share <= 1; share += 0.1) {
            const u = share * bay.outerHalfAt(z);
            const from = Math.sqrt(bay.dome.radiusAt(z) ** 2 - u * u);
            const to = bay.faceV ?? Math.sqrt(bay.dome.outerRadiusAt(z) ** 2 - u * u);
            for (let k = 0; k <= 10; k++) {
              const v = from + ((to - from) * k) / 10;
              const p = [0, 1].map((i) => (bay.along[i] as number) * v + (bay.across[i] as number) * u);
              const gap = Math.hypot((p[0] as number) - other.at[0], (p[1] as number) - other.at[1]);
              const clear = gap - other.outerRadiusAt(z);
              if (clear < nearest) nearest = clear;
            }
          }
        const refused = codes.includes('opening-meets-dome');
        if (refused) expect(nearest).toBeLessThan(PIECE + JOINT + 15);
        else expect(nearest).toBeGreaterThan(PIECE + JOINT - 15);
        count[refused ? 'refused' : 'through']++;
      }),
      { seed: 22, numRuns: 300 },
    );
    expect(count.refused).toBeGreaterThan(40);
    expect(count.through).toBeGreaterThan(40);
  });

  const three = fc.record({
    hall: domes('hall'),
    lab: domes('lab'),
    third: domes('third'),
    gap: mm(-900, 1500),
    east: mm(-2500, 7500),
    north: mm(2000, 5500),
    order: mm(0, 5),
    width: mm(500, 1000),
    height: mm(900, 1800),
    head: fc.constantFrom(...HEAD_SHAPES),
  });

  test('a passage is refused when, and only when, it comes near a third dome (seed 23)', () => {
    const count = { refused: 0, through: 0 };
    fc.assert(
      fc.property(three, ({ hall, lab, third, gap, east, north, order, width, height, head }) => {
        const outside = (dome: typeof hall) => Number(dome.radius) + 250;
        const distance = Math.round(outside(hall) + outside(lab) + gap);
        const all = [hall, { ...lab, at: [distance, 0] }, { ...third, at: [east, north] }] as const;
        const orders = [
          [0, 1, 2],
          [0, 2, 1],
          [1, 0, 2],
          [1, 2, 0],
          [2, 0, 1],
          [2, 1, 0],
        ] as const;
        const listed = (orders[order] as readonly [number, number, number]).map((k) => all[k as 0 | 1 | 2]);
        const link = { id: 'link', between: ['hall', 'lab'] as [string, string], width, height, head, ring: 120 };
        const description = { format: 1, units: 'mm', domes: listed } as Description;
        if (problemsOf(description).length > 0) return;
        const codes = codesOf({ ...description, passages: [link] });
        if (codes.some((code) => code !== 'passage-crosses-dome' && code !== 'passage-not-through')) return;
        const setout = setOutHouse({
          ...houseFrom(description),
          passages: houseFrom({ ...description, domes: all.slice(0, 2) as Description['domes'], passages: [link] })
            .passages,
        });
        const [way] = setout.passages;
        const [h, l, t] = ['hall', 'lab', 'third'].map((id) => setout.domes.find((d) => d.id === id));
        if (!way || !h || !l || !t) throw new Error('no passage');
        const place = (id: string) => setout.domes.findIndex((d) => d.id === id);
        let nearest = Number.POSITIVE_INFINITY;
        for (let z = 0; z < way.topZ; z += 60)
          for (let share = -1; share <= 1; share += 0.25)
            for (let v = 0; v <= distance; v += 30) {
              const u = share * way.outerHalfAt(z);
              const inside = (dome: typeof h) => Math.hypot(v - dome.at[0], u) < dome.outerRadiusAt(z);
              // A third dome that is listed later has given way to the other two.
              if ([h, l].some((dome) => inside(dome) && place(dome.id) < place('third'))) continue;
              const clear = Math.hypot(v - t.at[0], -u - t.at[1]) - t.outerRadiusAt(z);
              if (clear < nearest) nearest = clear;
            }
        if (codes.length > 0) expect(nearest).toBeLessThan(PIECE + JOINT + 40);
        else expect(nearest).toBeGreaterThan(PIECE + JOINT - 40);
        count[codes.length > 0 ? 'refused' : 'through']++;
      }),
      { seed: 23, numRuns: 500 },
    );
    expect(count.refused).toBeGreaterThan(12);
    expect(count.through).toBeGreaterThan(40);
  });
});
