import { describe, expect, it } from 'vitest';
import { balanceOf } from '../../../lib/masonry/balance.js';
import { bestStart, type StartProblem, startCost, weighed } from '../../../lib/masonry/bond/starts.js';
import { castCount } from '../../../lib/masonry/cast.js';
import { layBlocks } from '../../../lib/masonry/lay.js';
import { formNames, longerForms } from '../../../lib/masonry/longer.js';
import { fitLimits } from '../../../lib/masonry/moulds/limits.js';
import { searchMixed } from '../../../lib/masonry/moulds/mix-search.js';
import { type Placement, placeBlock } from '../../../lib/masonry/moulds/place.js';
import type { RingOfTwo } from '../../../lib/masonry/moulds/ring-of-two.js';
import { searchMoulds } from '../../../lib/masonry/moulds/search.js';
import { type Site, siteOf } from '../../../lib/masonry/moulds/site.js';
import type { Mould } from '../../../lib/masonry/moulds/window.js';
import { planMasonry } from '../../../lib/masonry/plan.js';
import { turnSigned } from '../../../lib/math/vec.js';
import { type Course, isSecond, perpendBearings, placeAngle, turnTo } from '../../../lib/setout/courses.js';
import { setOutHouse } from '../../../lib/setout/house.js';
import { blockGrid, gridMesh } from '../../../lib/solids/block-grid.js';
import { domeOf, houseOf, openingOf } from '../../tools/house.js';
import { carried, headPoints } from './solid-joints.js';

const OCULUS = { radius: 350, curb: 150, upstand: 100 };
const hall = houseOf({ domes: [domeOf({ radius: 2000, stemWall: 400, oculus: OCULUS })] });
const limits = fitLimits(hall.blocks);
const sites = setOutHouse(hall).domes.flatMap((d) => d.courses.map((c) => siteOf(d, c)));
const spread = Array.from({ length: 30 }, (_, k) => 20 + k);
const placesFrom = (from: number, count: number) =>
  sites.slice(from, from + 4).map((site) => ({ site, counts: [count], ideal: count, spread }));

describe('two moulds in one ring', () => {
  const rings = [
    ...[34, 36].flatMap((count) =>
      [2, 5].flatMap((from) => {
        const plan = searchMixed(placesFrom(from, count), limits);
        return plan.mixes.flat().map((mix) => ({ ...mix, plan }));
      }),
    ),
  ];

  it('close it, with one perpend in the middle of all heads', () => {
    expect(rings.length).toBeGreaterThan(3);
    for (const { shares, count, ring } of rings) {
      expect(shares[0] + shares[1]).toBe(count);
      expect(shares[0]).toBeGreaterThanOrEqual(shares[1]);
      expect(shares[0] * ring.angles[0] + shares[1] * ring.angles[1]).toBeCloseTo(2 * Math.PI, 12);
    }
  });

  it('keep every joint between their solids in the range, and those are the joints told', () => {
    for (const { moulds, shares, ring, plan } of rings) {
      const pair = moulds.map((k) => plan.moulds[k] as Mould) as [Mould, Mould];
      const joints = neighbours(ring, pair);
      const met = shares[0] > shares[1] ? [...joints.alike, ...joints.unlike] : joints.unlike;
      // A point of one solid stands a hair off the other's: their beds may be moved apart.
      expect(Math.abs(Math.min(...met) - ring.joints[0])).toBeLessThan(0.1);
      expect(Math.abs(Math.max(...met) - ring.joints[1])).toBeLessThan(0.1);
      expect(ring.joints[0]).toBeGreaterThanOrEqual(limits.thin);
      expect(ring.joints[1]).toBeLessThanOrEqual(limits.thick);
      for (const { bedOver, bedUnder, faceMiss } of ring.placements) {
        expect(2 * faceMiss).toBeLessThanOrEqual(limits.faceStep);
        expect(bedOver).toBeLessThanOrEqual((limits.joint - limits.thin) / 2);
        expect(bedUnder).toBeLessThanOrEqual((limits.thick - limits.joint) / 2);
      }
    }
  });
});

/** Gaps of facing heads, corner by corner, each half from the plane between them. */
function neighbours({ placements, angles }: RingOfTwo, moulds: readonly [Mould, Mould]) {
  const halves = moulds.map((mould, k) => {
    const angle = angles[k as 0 | 1] / 2;
    return headPoints(mould).map((point) => {
      const [x, y] = carried(point, placements[k as 0 | 1]);
      return y * Math.sin(angle) - x * Math.cos(angle);
    });
  }) as [number[], number[]];
  return {
    alike: halves[0].map((h) => 2 * h),
    unlike: halves[0].map((h, i) => h + (halves[1][i] as number)),
  };
}

describe('the search with two moulds in a course', () => {
  it('never needs more than without, and tells a bound that no more than reaches', () => {
    for (const [from, count] of [
      [2, 36],
      [5, 34],
      [7, 30],
    ] as const) {
      const places = placesFrom(from, count);
      const [plain, mixed] = [searchMoulds(places, limits), searchMixed(places, limits)];
      expect(mixed.moulds.length).toBeLessThanOrEqual(plain.moulds.length);
      expect(mixed.atLeast).toBeLessThanOrEqual(mixed.moulds.length);
      expect(mixed.proven).toBe(mixed.atLeast === mixed.moulds.length);
      for (const [k, fits] of mixed.fits.entries())
        expect(fits.length + (mixed.mixes[k]?.length ?? 0)).toBeGreaterThan(0);
    }
  });

  it('proves what trying many moulds of the family finds too: none of them alone, no two of them do', () => {
    const count = 34;
    const places = placesFrom(5, count);
    expect(searchMoulds(places, limits).moulds).toHaveLength(4);
    expect(searchMixed(places, limits)).toMatchObject({ proven: true, atLeast: 3, moulds: { length: 3 } });
    const own = places.map(({ site }) => site);
    const tried = own.flatMap((parent) =>
      trial(parent).flatMap((mould) => {
        const points = headPoints(mould);
        const angles = own.map((site) => anglesIn(mould, points, site));
        return angles.some((range) => range !== null) ? [angles] : [];
      }),
    );
    expect(tried.length).toBeGreaterThan(300);
    const turn = 2 * Math.PI;
    const alone = (m: (typeof tried)[number], s: number) => {
      const range = m[s];
      return range && count * range[0] <= turn && turn <= count * range[1];
    };
    const together = (a: (typeof tried)[number], b: (typeof tried)[number], s: number) => {
      const [one, other] = [a[s], b[s]];
      if (!one || !other) return false;
      for (let k = 1; k < count; k++) {
        if (k * one[0] + (count - k) * other[0] > turn || k * one[1] + (count - k) * other[1] < turn) continue;
        return true;
      }
      return false;
    };
    let best = 0;
    for (const [i, a] of tried.entries())
      for (const b of tried.slice(i)) {
        const held = own.filter((_, s) => alone(a, s) || alone(b, s) || together(a, b, s)).length;
        best = Math.max(best, held);
      }
    expect(best).toBe(own.length - 1);
  });
});

/** Moulds of one parent: widths in steps of 4 mm, tapers of half a millimetre. */
function trial(parent: Site): Mould[] {
  const { midRadius, to, bed } = parent.course;
  return Array.from({ length: 45 }, (_, k) => 220 + 4 * k).flatMap((width) =>
    [-2, -1, 0, 1, 2].map((notch) => ({ parent, slope: width / 2 / midRadius, lean: (notch * 0.5) / 2 / (to - bed) })),
  );
}

/** Angles of places in which the solids of a mould keep the joints, from those of two places near by; a little wider than that. */
function anglesIn(mould: Mould, points: ReturnType<typeof headPoints>, site: Site): readonly [number, number] | null {
  const width = 2 * mould.slope * mould.parent.course.midRadius;
  const { midRadius } = site.course;
  const joints = (angle: number): readonly [number, number] | null => {
    const placement = placeBlock(mould.parent, site, (2 * Math.PI) / angle, limits);
    const halves = points.map((point) => {
      const [x, y] = carried(point, placement as Placement);
      return 2 * (y * Math.sin(angle / 2) - x * Math.cos(angle / 2));
    });
    return [Math.min(...halves), Math.max(...halves)];
  };
  const [a, b] = [(width + limits.thin) / midRadius, (width + limits.thick) / midRadius];
  if (!placeBlock(mould.parent, site, (2 * Math.PI) / b, limits)) return null;
  const [near, far] = [joints(a), joints(b)] as const;
  if (!near || !far) return null;
  const where = (value: number, k: 0 | 1) => a + ((value - near[k]) / (far[k] - near[k])) * (b - a);
  const [low, high] = [where(limits.thin, 0), where(limits.thick, 1)];
  const slack = 0.2 / midRadius;
  return low > high ? null : [low - slack, high + slack];
}

describe('a house with two moulds in a course', () => {
  const openings = [
    openingOf({ bearingDeg: 180, height: 1700, width: 900 }),
    openingOf({ id: 'bay', bearingDeg: 70, sill: 500, height: 800, width: 1100, use: 'window' }),
  ];
  const blocks = { ...hall.blocks, mouldsInCourse: 2 };
  const plan = planMasonry(setOutHouse({ ...hall, openings, blocks }));
  const { setout } = plan;
  const [dome] = setout.domes as [(typeof setout.domes)[number]];
  const laid = layBlocks(setout);
  const mixed = dome.courses.filter((course) => course.mix !== null);

  it('has fewer moulds', () => {
    const plain = planMasonry(setOutHouse({ ...hall, openings }));
    expect(plan.moulds.moulds.length).toBeLessThan(plain.moulds.moulds.length);
    expect(mixed.length).toBeGreaterThan(1);
    expect(plain.setout.domes.every(({ courses }) => courses.every(({ mix }) => mix === null))).toBe(true);
  });

  it('spreads the fewer evenly, and its places close the ring', () => {
    for (const course of mixed) {
      const places = Array.from({ length: course.count }, (_, k) => isSecond(course, k));
      expect(places.filter(Boolean)).toHaveLength(course.mix?.seconds as number);
      // Of any two stretches of one length, round the ring, one has at most one more of them.
      for (let length = 1; length < course.count; length++) {
        const sums = places.map((_, k) => {
          let sum = 0;
          for (let i = 0; i < length; i++) if (places[(k + i) % course.count]) sum++;
          return sum;
        });
        expect(Math.max(...sums) - Math.min(...sums)).toBeLessThanOrEqual(1);
      }
      expect(turnTo(course, course.count)).toBeCloseTo(2 * Math.PI, 12);
      const bearings = perpendBearings(course);
      expect(bearings[0]).toBeGreaterThanOrEqual(0);
      expect(bearings[0]).toBeLessThan(placeAngle(course, -1));
    }
  });

  it('loses no masonry: blocks and joints fill the envelope', () => {
    expect(Math.abs(balanceOf(setout, laid).error)).toBeLessThan(1e-6);
  });

  it('counts every block to the mould that it is cast in', () => {
    const formOf = formNames(plan);
    for (const { id, courses } of plan.moulds.moulds) {
      const own = new Set(laid.blocks.filter((b) => formOf(b) === id).map((b) => `${b.course} ${b.number}`));
      const counted = courses.map(({ course, second }) => {
        const { whole, cut } = castCount(laid, dome.id, dome.courses[course - 1] as Course, second?.id === id);
        return whole + cut;
      });
      expect(counted.reduce((a, b) => a + b, 0)).toBe(own.size);
    }
    for (const { course, modules, id } of longerForms(plan, laid)) {
      const block = laid.blocks.find((b) => formOf(b) === id);
      expect(block?.course).toBe(course);
      expect(modules).toBeGreaterThan(1);
    }
  });

  it('leaves between the solids of neighbours the perpends that the table tells', () => {
    for (const { course: index, laid: mould, second } of plan.moulds.courses) {
      if (!second || !mould) continue;
      const course = dome.courses[index - 1] as Course;
      const own = laid.blocks.filter((b) => b.course === index && b.cutBy.length === 0);
      const gaps = new Map<string, number[]>();
      for (const block of own) {
        const next = own.find((b) => b.number === (block.number % course.count) + 1);
        const kind = `${isSecond(course, block.number - 1)} ${next && isSecond(course, next.number - 1)}`;
        if (!next || gaps.has(kind)) continue;
        const at = course.startRad + turnTo(course, block.number);
        const [before, after] = [cornersFrom(block, at, 1), cornersFrom(next, at, -1)];
        gaps.set(
          kind,
          before.map((gap, k) => gap + (after[k] as number)),
        );
        expect(course.midRadius * turnSigned(next.startRad - block.endRad)).toBeCloseTo(mould.perpend, 1);
      }
      expect(gaps.size).toBeGreaterThan(1);
      const all = [...gaps.values()].flat();
      // The table takes the middles of edges too.
      expect(Math.min(...all)).toBeGreaterThan(mould.joints[0] - 0.1);
      expect(Math.max(...all)).toBeLessThan(mould.joints[1] + 0.1);
      expect(Math.min(Math.min(...all) - mould.joints[0], mould.joints[1] - Math.max(...all))).toBeLessThan(0.1);
    }
  });

  /** How far the four corners of a head lie from the upright plane through the axis at a bearing: the second head's before it, the first's past it. */
  function cornersFrom(block: (typeof laid.blocks)[number], bearing: number, side: 1 | -1): number[] {
    const grid = blockGrid(setout, dome, block, { faces: 'curved', surface: 1 });
    const { positions } = gridMesh('', grid);
    const [high, wide] = [grid.intrados.length, grid.facets + 1];
    return [0, 1].flatMap((depth) =>
      [0, high - 1].map((i) => {
        const at = 3 * ((depth * high + i) * wide + (side > 0 ? wide - 1 : 0));
        const [x, y] = [positions[at] as number, positions[at + 1] as number];
        return side * (y * Math.sin(bearing) - x * Math.cos(bearing));
      }),
    );
  }
});

describe('the start of a ring of unequal places', () => {
  it('is at least as good as any of many tried between', () => {
    const angles = [0.31, (2 * Math.PI - 13 * 0.31) / 9] as const;
    const ring = { count: 22, mix: { seconds: 9, angles } };
    for (const [shift, lower] of [
      [0.1, 22],
      [0.05, 17],
      [0.2, 30],
    ] as const) {
      const below = Array.from({ length: lower }, (_, k) => shift + (2 * Math.PI * k) / lower);
      const problem: StartProblem = {
        ring,
        radius: 2000,
        joint: 10,
        shortestPiece: 120,
        heaviestKg: 60,
        kgPerRadian: 90,
        leastLap: 80,
        spans: [
          { from: 0.4, to: 2.9, fromRadius: 1990, toRadius: 2010 },
          { from: 3.3, to: 6.5, fromRadius: 1990, toRadius: 2010 },
        ],
        below,
        lines: below.slice(0, 2),
        home: 0.1,
      };
      const best = weighed(startCost(problem, bestStart(problem)));
      const last = placeAngle(ring, -1);
      for (let k = 0; k < 400; k++)
        expect(best).toBeLessThanOrEqual(weighed(startCost(problem, (last * k) / 400)) + 1e-5);
    }
  });
});
