import { describe, expect, it } from 'vitest';
import { flatBlock } from '../../lib/masonry/column.js';
import { SLIVER_RUN } from '../../lib/masonry/cut.js';
import { leastLap } from '../../lib/masonry/laps.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { wholeVolume } from '../../lib/masonry/measure.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const lay = (openings: Parameters<typeof houseOf>[0] = {}) => layBlocks(setOutHouse(houseOf(openings)));

describe('laying blocks', () => {
  it('gives every block a mark of its own, dome-course-number', () => {
    const marks = lay({ openings: [openingOf()] }).blocks.map((b) => b.mark);
    expect(new Set(marks).size).toBe(marks.length);
    for (const mark of marks) expect(mark).toMatch(/^hall-\d+-\d+[a-z]?$/);
  });

  it('numbers clockwise from the first block past bearing 0', () => {
    const ring = lay().blocks.filter((b) => b.course === 2);
    expect(ring[0]?.startRad).toBeGreaterThan(0);
    expect(ring[0]?.startRad).toBeLessThan((2 * Math.PI) / ring.length);
    for (const [k, b] of ring.entries()) expect(b.number).toBe(k + 1);
  });

  it('keeps marks and volumes of blocks away from an opening that moves', () => {
    const at = (bearingDeg: number) =>
      lay({ openings: [openingOf(), openingOf({ id: 'bay', bearingDeg, sill: 900, height: 900 })] });
    const [here, there] = [at(60), at(75)];
    const far = (house: typeof here) =>
      house.blocks.filter((b) => b.startRad > 2.2).map((b) => [b.mark, b.volume.toFixed(3), b.cutBy.join()]);
    expect(far(here)).toEqual(far(there));
    expect(far(here).length).toBeGreaterThan(300);
  });

  it('leaves a joint of the asked thickness between neighbours at mid-thickness', () => {
    const house = setOutHouse(houseOf());
    const dome = house.domes[0] as (typeof house.domes)[number];
    const { blocks } = layBlocks(house);
    for (const course of dome.courses) {
      const ring = blocks.filter((b) => b.course === course.index);
      expect(ring).toHaveLength(course.count);
      const gap = (ring[1]?.startRad as number) - (ring[0]?.endRad as number);
      expect(gap * course.midRadius).toBeCloseTo(10, 9);
    }
  });

  it('removes blocks inside an arch and cuts those at its edge', () => {
    const { blocks } = lay({ openings: [openingOf()] });
    const first = blocks.filter((b) => b.course === 1);
    expect(first.filter((b) => b.cutBy.includes('entrance'))).toHaveLength(2);
    const whole = first.find((b) => b.cutBy.length === 0)?.volume as number;
    for (const b of first.filter((c) => c.cutBy.length > 0)) {
      expect(b.volume).toBeLessThan(whole);
      expect(b.longestRun).toBeGreaterThanOrEqual(SLIVER_RUN);
    }
  });

  it('divides a block that a narrow vent goes through into two pieces with marks of their own', () => {
    const vent = openingOf({
      id: 'vent',
      use: 'vent',
      bearingDeg: 12,
      width: 100,
      height: 600,
      sill: 0,
      head: { shape: 'flat', rise: 0 },
      arch: { ring: 40, face: 'flush', madeAs: 'cast', voussoirs: null },
    });
    const house = houseOf({ openings: [vent] });
    const { blocks } = layBlocks(setOutHouse({ ...house, blocks: { ...house.blocks, length: 900, heaviestKg: 60 } }));
    const pieces = blocks.filter((b) => b.course === 1 && b.cutBy.length > 0);
    expect(pieces.map((b) => b.mark)).toEqual(['hall-1-1a', 'hall-1-1b']);
    expect(pieces[0]?.seed).not.toEqual(pieces[1]?.seed);
    for (const piece of pieces) expect(piece.seed).not.toBeNull();
    const whole = blocks.find((b) => b.course === 1 && b.cutBy.length === 0)?.volume as number;
    // The vent, its jambs and two joints take about 200 mm of some 900 mm.
    const left = pieces.reduce((sum, b) => sum + b.volume, 0);
    expect(left / whole).toBeGreaterThan(0.7);
    expect(left / whole).toBeLessThan(0.8);
  });

  it('measures flat-faced blocks as the polyhedron of their eight corners', () => {
    // Prismatoid of two trapezoids in the upright perpend planes: on the stem wall a straight prism.
    const half = 0.06;
    const trapezoid = ((3250 ** 2 - 3000 ** 2) * Math.sin(2 * half)) / 2;
    const corner = (r: number, z: number) => [r * Math.cos(half), z] as const;
    const corners = [corner(3000, 10), corner(3250, 10), corner(3250, 250), corner(3000, 250)] as const;
    const volume = wholeVolume(flatBlock(corners, 0, (distance) => distance * Math.tan(half)));
    expect(volume / (trapezoid * 240)).toBeCloseTo(1, 9);
  });
});

describe('courses', () => {
  it('have equal arcs at mid-thickness, nearest to the asked height', () => {
    const house = setOutHouse(
      houseOf({
        domes: [domeOf({ shape: 'elliptical', rise: 2300, oculus: { radius: 350, curb: 150, upstand: 100 } })],
      }),
    );
    const dome = house.domes[0] as (typeof house.domes)[number];
    const shell = dome.courses.filter((c) => c.part === 'shell');
    const arcs = shell.map(
      (c) => c.to - c.from + 125 * (dome.shell.at(c.to).normalRad - dome.shell.at(c.from).normalRad),
    );
    const total = arcs.reduce((a, b) => a + b, 0);
    for (const arc of arcs) expect(arc).toBeCloseTo(total / shell.length, 6);
    const miss = (count: number) => Math.abs(total / count - 250);
    expect(miss(shell.length)).toBeLessThanOrEqual(Math.min(miss(shell.length - 1), miss(shell.length + 1)));
    // 600 mm of stem wall: two courses of 300 and three of 200 are as near to 250; the lighter blocks win.
    expect(dome.courses.filter((c) => c.part === 'stem')).toHaveLength(3);
    expect(shell[shell.length - 1]?.to).toBeCloseTo(dome.curb?.bedS as number, 9);
    expect(dome.shell.at(dome.curb?.bedS as number).r).toBeCloseTo(500, 6);
  });

  it('stop where a block would be narrower than the shortest piece; the plug goes on from there', () => {
    const house = setOutHouse(houseOf());
    const dome = house.domes[0] as (typeof house.domes)[number];
    const last = dome.courses[dome.courses.length - 1] as (typeof dome.courses)[number];
    expect(dome.plug?.bedS).toBe(last.to);
    expect((2 * Math.PI * dome.shell.at(last.to).r) / last.count - 10).toBeGreaterThanOrEqual(120);
  });
});

describe('laps', () => {
  // Best least lap between rings of n and m equal blocks: π r / lcm(n, m), from the perpends' common lattice.
  it.each([
    [12, 12, 12],
    [12, 6, 12],
    [12, 9, 36],
    [14, 11, 154],
  ])('rings of %d and %d blocks lap at most π r / %d', (n, m, lcm) => {
    const course = (count: number, startRad: number) => ({
      index: 1,
      part: 'shell' as const,
      from: 0,
      bed: 0,
      to: 1,
      count,
      startRad,
      leftOut: [],
      perpend: 10,
      midRadius: 1000,
      cast: null,
      mix: null,
    });
    let best = 0;
    const steps = 2 * lcm * 8;
    for (let k = 0; k < steps; k++) {
      best = Math.max(best, leastLap(course(n, 0), course(m, (2 * Math.PI * k) / steps)));
    }
    expect(best).toBeCloseTo((Math.PI * 1000) / lcm, 6);
  });
});
