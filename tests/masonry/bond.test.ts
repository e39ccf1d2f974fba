import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { bondHouse } from '../../lib/masonry/bond/bond.js';
import type { CourseBond } from '../../lib/masonry/bond/dome.js';
import { mergeShort } from '../../lib/masonry/bond/merge.js';
import { bestStart, type StartProblem, startCost, weighed } from '../../lib/masonry/bond/starts.js';
import { lapBound, leastLap } from '../../lib/masonry/laps.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const bonded = (part: Partial<House> = {}, blocks: Partial<House['blocks']> = {}) => {
  const house = houseOf(part);
  return bondHouse(setOutHouse({ ...house, blocks: { ...house.blocks, ...blocks } }));
};
const windows = [
  openingOf(),
  openingOf({ id: 'bay', bearingDeg: 65, use: 'window', sill: 700, height: 1000, width: 1200 }),
  openingOf({ id: 'eye', bearingDeg: 300, use: 'window', sill: 900, height: 700, width: 600 }),
];

describe('banded bond', () => {
  it('keeps the number of blocks over bands and drops by a half or a third', () => {
    const { courses } = bonded({ domes: [domeOf({ radius: 4000, stemWall: 900 })] });
    const drops = courses.slice(1).map((c, k) => c.course.count / (courses[k] as CourseBond).course.count);
    for (const drop of drops) expect([1, 1 / 2, 2 / 3].some((d) => Math.abs(d - drop) < 1e-12)).toBe(true);
    const changes = drops.filter((d) => d < 1).length;
    expect(changes).toBeGreaterThan(0);
    expect(changes).toBeLessThan(courses.length / 3);
  });

  it('laps half a block where nothing is cut, and as far as the lattice allows where the number drops', () => {
    const { courses } = bonded();
    for (const { lap, lapBound: bound } of courses.slice(1)) expect(lap).toBeCloseTo(bound as number, 6);
    expect(courses.reduce((n, c) => n + c.lines, 0)).toBe(0);
  });

  it('keeps blocks between the shortest piece and the heaviest block', () => {
    const { setout } = bonded();
    const { blocks } = layBlocks(setout);
    for (const b of blocks) expect((b.volume / 1e9) * 779.6).toBeLessThanOrEqual(20);
    const narrow = bonded({}, { heaviestKg: 14 }).courses;
    expect((narrow[0] as CourseBond).course.count).toBeGreaterThan((bonded().courses[0] as CourseBond).course.count);
  });
});

describe('free bond', () => {
  it('needs fewer moulds than the banded and pays with laps', () => {
    const setout = setOutHouse(houseOf({ domes: [domeOf({ radius: 2200, stemWall: 400 })] }));
    const [banded, free] = [planMasonry(setout, 'banded'), planMasonry(setout, 'free')];
    expect(free.moulds.proven).toBe(true);
    expect(free.moulds.moulds.length).toBe(free.moulds.atLeast);
    expect(free.moulds.moulds.length).toBeLessThan(banded.moulds.moulds.length);
    const shortLaps = ({ courses }: typeof free) => courses.reduce((n, c) => n + c.shortLaps, 0);
    expect(shortLaps(free)).toBeGreaterThan(shortLaps(banded));
    expect(free.courses.reduce((n, c) => n + c.lines, 0)).toBe(0);
    for (const { course, lap, lapBound: bound } of free.courses) {
      // Least laps over whole rings, whose perpends share a lattice, never pass the bound.
      if (lap !== null && course.leftOut.length === 0) expect(lap).toBeLessThanOrEqual((bound as number) + 1e-6);
    }
  });
});

describe('the start of a ring', () => {
  const problem = (part: Partial<StartProblem>): StartProblem => ({
    ring: { count: 24, mix: null },
    radius: 2000,
    joint: 10,
    shortestPiece: 120,
    heaviestKg: 20,
    kgPerRadian: 60,
    leastLap: 80,
    spans: [],
    below: [],
    lines: [],
    home: 0,
    ...part,
  });

  it('is at least as good as any of many tried between', () => {
    const bearing = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    const input = fc.record({
      count: fc.integer({ min: 6, max: 40 }),
      lower: fc.integer({ min: 6, max: 40 }),
      below: bearing,
      openings: fc.array(fc.record({ at: bearing, half: fc.double({ min: 0.05, max: 0.4, noNaN: true }) }), {
        maxLength: 3,
      }),
      kgPerRadian: fc.double({ min: 20, max: 140, noNaN: true }),
    });
    fc.assert(
      fc.property(input, ({ count, lower, below, openings, kgPerRadian }) => {
        const sorted = [...openings].sort((a, b) => a.at - b.at);
        const spans = sorted.map(({ at, half }, k) => {
          const next = sorted[k + 1] ?? { at: (sorted[0]?.at ?? 0) + 2 * Math.PI, half: sorted[0]?.half ?? 0 };
          return { from: at + half, to: next.at - next.half, fromRadius: 1990, toRadius: 2010 };
        });
        const perpends = Array.from({ length: lower }, (_, k) => below + (2 * Math.PI * k) / lower);
        const p = problem({
          ring: { count, mix: null },
          kgPerRadian,
          spans: spans.filter(({ from, to }) => to > from),
          below: perpends,
          lines: perpends.slice(0, 2),
        });
        const best = weighed(startCost(p, bestStart(p)));
        for (let k = 0; k < 200; k++) {
          expect(best).toBeLessThanOrEqual(weighed(startCost(p, (2 * Math.PI * k) / count / 200)) + 1e-5);
        }
      }),
      { seed: 3, numRuns: 150 },
    );
  });

  it('keeps to half a block on when nothing is cut', () => {
    const module = (2 * Math.PI) / 24;
    const below = Array.from({ length: 24 }, (_, k) => k * module);
    expect(bestStart(problem({ below, home: module / 2 }))).toBeCloseTo(module / 2, 12);
  });

  it('makes short pieces one with their neighbours, unless that is too heavy', () => {
    const rules = problem({});
    const module = (2 * Math.PI) / 24;
    // 50 mm from the cut to the first perpend, and a whole number of blocks from there.
    const from = module - 55 / 2000;
    const spans = [{ from, to: 9 * module + 5 / 2000, fromRadius: 2000, toRadius: 2000 }];
    const light = mergeShort(rules, 0, spans);
    expect(light).toMatchObject({ leftOut: [1], short: [] });
    expect(light.shortest).toBeGreaterThan(500);
    const heavy = mergeShort({ ...rules, kgPerRadian: 80 }, 0, spans);
    expect(heavy.leftOut).toEqual([]);
    expect(heavy.short[0]?.length).toBeCloseTo(50, 9);
    expect(heavy.short[0]?.togetherKg).toBeGreaterThan(20);
  });
});

describe('a bonded house', () => {
  const house = bonded({ openings: windows });
  const laid = layBlocks(house.setout);

  it('has no piece beside an opening that is shorter than the shortest piece', () => {
    expect(house.courses.flatMap((c) => c.pieces.short)).toEqual([]);
    const cut = laid.blocks.filter((b) => b.cutBy.length > 0);
    expect(Math.min(...cut.map((b) => b.longestRun))).toBeGreaterThan(120 - 1e-6);
    // The set-out's own bond has short ones.
    const plain = layBlocks(setOutHouse(houseOf({ openings: windows }))).blocks;
    expect(Math.min(...plain.map((b) => b.longestRun))).toBeLessThan(120 - 1e-6);
  });

  it('lays merged pieces as one block, with a mark of its own', () => {
    const merged = house.courses.filter((c) => c.course.leftOut.length > 0);
    expect(merged.length).toBeGreaterThan(0);
    const marks = laid.blocks.map((b) => b.mark);
    expect(new Set(marks).size).toBe(marks.length);
    for (const { course } of merged) {
      const own = laid.blocks.filter((b) => b.course === course.index);
      for (const k of course.leftOut) expect(own.some((b) => b.number === k + 1)).toBe(false);
    }
  });

  it('loses no masonry, whatever the bond', () => {
    for (const bond of ['banded', 'free'] as const) {
      const { setout } = planMasonry(setOutHouse(houseOf({ openings: windows })), bond);
      const balance = balanceOf(setout, layBlocks(setout));
      expect(Math.abs(balance.error)).toBeLessThan(1e-6);
    }
  });

  it('keeps every mark and place of another dome when an opening moves', () => {
    const at = (bearingDeg: number) =>
      layBlocks(
        bonded({
          domes: [domeOf(), domeOf({ id: 'lab', at: [9000, 0], radius: 2200 })],
          openings: [openingOf({ bearingDeg }), openingOf({ id: 'side', in: 'lab', width: 800, bearingDeg: 200 })],
        }).setout,
      ).blocks;
    const lab = (blocks: ReturnType<typeof at>) =>
      blocks.filter((b) => b.domeId === 'lab').map((b) => [b.mark, b.startRad, b.endRad, b.volume]);
    const [here, there] = [at(180), at(195)];
    expect(lab(here)).toEqual(lab(there));
    // In its own dome, blocks keep their numbers: the rings have as many as before.
    const counts = (blocks: typeof here) => blocks.filter((b) => b.domeId === 'hall' && b.course > 12).length;
    expect(counts(here)).toBe(counts(there));
  });

  it('says which piece stays short, by how much, and what it would weigh', () => {
    const { courses } = bonded(
      { openings: windows },
      { heaviestKg: 18.5, shortestPiece: 190, length: 380, leastLap: 150 },
    );
    const short = courses.flatMap((c) => c.pieces.short);
    expect(short.length).toBeGreaterThan(0);
    for (const { length, togetherKg } of short) {
      expect(length).toBeLessThan(190);
      if (togetherKg !== null) expect(togetherKg).toBeGreaterThan(18.5);
    }
  });
});

describe('the bound of laps', () => {
  it('is π r / lcm(n, m) and is reached by the start that a bond has where nothing is cut', () => {
    expect(lapBound(12, 9, 1000)).toBeCloseTo((Math.PI * 1000) / 36, 9);
    const { courses } = bonded();
    for (const [k, { course }] of courses.slice(1).entries()) {
      const below = (courses[k] as CourseBond).course;
      expect(leastLap(below, course)).toBeCloseTo(lapBound(below.count, course.count, course.midRadius), 6);
    }
  });
});
