import { describe, expect, it } from 'vitest';
import { expandDimension } from '../../lib/documents/dimensioning.js';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { boxCorners } from '../../lib/documents/expansion.js';
import { partitionPlans, partitionWords } from '../../lib/drawings/partitions.js';
import { planDraft } from '../../lib/drawings/plan.js';
import { sectionDraft } from '../../lib/drawings/section.js';
import { sectionPlane } from '../../lib/drawings/section-plane.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { partitionsOf, topOf } from '../../lib/setout/partition.js';
import { partitionArea } from '../../lib/setout/partition-face.js';
import { domeOf, houseOf } from '../tools/house.js';

const wall = { in: 'hall', from: [-3000, 500], to: [3000, 500], thickness: 100, height: 2200, door: null } as const;
const only = (part: object = {}) => setOutHouse(houseOf({ partitions: [{ ...wall, ...part }] }));

describe('partitions', () => {
  it('have the face that geometry gives: under the dome, less the door', () => {
    // The plane y = 500 cuts the hemisphere of radius 3000 on a stem wall of 600 in a half circle of radius
    // sqrt(3000² - 500²) on the same springing; its area below 2200 mm, in closed form.
    const r = Math.sqrt(3000 ** 2 - 500 ** 2);
    const h = 1600;
    const segment = h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r);
    const wanted = 2 * r * 600 + segment;
    const house = only();
    const [set] = partitionsOf(house);
    if (!set) throw new Error('one partition');
    expect(partitionArea(house, set) / wanted).toBeCloseTo(1, 8);
    const withDoor = only({ door: { at: 2990, width: 810, height: 2000 } });
    const [cut] = partitionsOf(withDoor);
    if (!cut) throw new Error('one partition');
    expect((partitionArea(house, set) - partitionArea(withDoor, cut)) / (810 * 2000)).toBeCloseTo(1, 9);
  });

  it('have the face of very many strips where an earlier dome, an oculus or a low roof over the door cuts them', () => {
    const hall = domeOf({ id: 'lab', at: [4800, 0], radius: 2400 });
    const open = domeOf({ stemWall: 600, oculus: { radius: 400, curb: 150, upstand: 100 } });
    const parts = [
      { from: [-2800, 300], to: [2900, 250], height: null, door: { at: 4300, width: 900, height: 2000 } },
      { from: [-900, -2500], to: [1700, 2300], height: 2600, door: { at: 4000, width: 700, height: 1900 } },
      { from: [-1500, 0], to: [1500, 30], height: 3700, door: null },
    ] as const;
    for (const part of parts) {
      const house = setOutHouse(houseOf({ domes: [hall, open], openings: [], partitions: [{ ...wall, ...part }] }));
      const [set] = partitionsOf(house);
      if (!set) throw new Error('one partition');
      const strips = 400_000;
      let sum = 0;
      for (let i = 0; i < strips; i++) {
        const t = (set.length * (i + 0.5)) / strips;
        const top = topOf(house, set, [part.from[0] + t * set.along[0], part.from[1] + t * set.along[1]]);
        const inDoor = part.door !== null && Math.abs(t - part.door.at) < part.door.width / 2;
        sum += (Math.max(0, top - (inDoor ? part.door.height : 0)) * set.length) / strips;
      }
      expect(partitionArea(house, set) / sum).toBeCloseTo(1, 5);
    }
  });

  it('are told by compass points from the axis, never by less than nothing', () => {
    const words = partitionWords(only({ from: [-1500, 500], to: [1500, -250] }), 'metric').join(' ');
    expect(words).toContain('from 1500 west, 500 north of the axis to 1500 east, 250 south');
  });

  it('stand on the plan with their mark, and in a section as thick and as high as they are', () => {
    const wordsOf = (house: ReturnType<typeof only>) =>
      planDraft(house)
        .draw(50)
        .layout.primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : []));
    const house = only({ from: [-1500, 500], to: [1500, 500] });
    expect(wordsOf(house)).toContain('P1');
    expect(wordsOf(only({ from: [500, -1500], to: [500, 1500] }))).toContain('P1');
    const section = sectionDraft(house, sectionPlane(house, { bearingDeg: 0 })).draw(50).layout.primitives;
    const boxes = section.flatMap((p) => {
      if (p.kind !== 'path' || p.layer !== 'cut' || !p.closed) return [];
      const at = p.segments.flatMap((s) => (s.kind === 'line' ? [s.from] : []));
      const [xs, zs] = [at.map((q) => q[0]), at.map((q) => q[1])];
      return [[Math.min(...xs), Math.max(...xs), Math.max(...zs)]];
    });
    expect(
      boxes.some(
        ([a, b, top]) => Math.abs((b as number) - (a as number) - 100) < 0.1 && Math.abs((top as number) - 2200) < 0.1,
      ),
    ).toBe(true);
  });

  it('have their length beside them on a dome’s axis lines too, its number clear of the lines that cross', () => {
    for (const [from, to] of [
      [
        [0, -1500],
        [0, 1500],
      ],
      [
        [-2900, 0],
        [2900, 0],
      ],
      [
        [0, -900],
        [0, 2900],
      ],
    ] as const) {
      const { layout } = planDraft(only({ from, to, height: null })).draw(50);
      const [told] = layout.primitives.flatMap((p) =>
        p.kind === 'dimension' && p.type === 'aligned' && String(p.from) === String(from) ? [p] : [],
      );
      if (!told) throw new Error(`no dimension from ${from} to ${to}`);
      const { measure, texts } = expandDimension(told, 50, 'metric');
      expect(measure).toBeCloseTo(Math.hypot(to[0] - from[0], to[1] - from[1]), 9);
      const corners = texts.flatMap(boxCorners);
      for (const axis of [0, 1] as const) {
        const sides = corners.map((p) => Math.sign(p[axis]));
        expect(new Set(sides).size, `number across axis ${axis}`).toBe(1);
      }
    }
  });

  it('end on the plan where the dome, or an earlier one, cuts them off: low and high, at every angle to it', () => {
    const hall = { id: 'lab', at: [4800, 0], radius: 2400 } as const;
    for (const height of [900, 1400, null])
      for (const turn of [0, 7, 33, 61, 90, 155])
        for (const reach of [2700, 2850, 2930, 2990, 3200]) {
          const [x, y] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
          const part = { from: [-0.4 * reach * x, -0.4 * reach * y], to: [reach * x, reach * y], height } as const;
          for (const domes of [[domeOf()], [domeOf(), domeOf(hall)], [domeOf(hall), domeOf()]]) {
            const house = setOutHouse(houseOf({ domes, partitions: [{ ...wall, ...part }] }));
            const view = {
              id: 'plan',
              title: 'Plan',
              scale: 50,
              units: 'mm',
              primitives: partitionPlans(house, 1200),
            } as const;
            expect(view.primitives.length).toBeGreaterThan(0);
            expect(auditView(view as never), JSON.stringify({ part, domes: domes.length })).toEqual([]);
          }
        }
  });

  it('show beyond a section’s plane, as high as they are, with their door, and hide what lies behind', () => {
    const seen = (house: ReturnType<typeof only>) =>
      sectionDraft(house, sectionPlane(house, { bearingDeg: 90 })).draw(50).layout.primitives;
    // Looking north along a wall that stands across the room: every bed joint of the shell below its top is behind it.
    const part = { from: [-2000, 500], to: [2000, 500], door: { at: 2000, width: 800, height: 2000 } };
    const primitives = seen(only(part));
    const lines = primitives.flatMap((p) =>
      p.kind === 'path' && p.layer === 'visible' ? p.segments.flatMap((e) => (e.kind === 'line' ? [e] : [])) : [],
    );
    const length = (holds: (e: (typeof lines)[number]) => boolean) =>
      lines.filter(holds).reduce((sum, e) => sum + Math.hypot(e.to[0] - e.from[0], e.to[1] - e.from[1]), 0);
    const level = (z: number, half: number) =>
      length((e) => [e.from, e.to].every(([x, y]) => Math.abs(y - z) < 0.5 && Math.abs(x) < half));
    const upright = (x: number) =>
      length((e) => Math.abs(e.from[0] - e.to[0]) < 0.5 && Math.abs(Math.abs(e.from[0]) - x) < 0.5);
    expect(level(2200, 2001)).toBeCloseTo(4000, -1);
    expect(level(2000, 401)).toBeCloseTo(800, -1);
    expect(upright(2000) / 2).toBeCloseTo(2200, -1);
    expect(upright(400) / 2).toBeCloseTo(2000, -1);
    // Seen along, it is a figure as wide as it is thick, closed at its top.
    const beyond = only({ ...part, from: [500, 500] });
    const ends = sectionDraft(beyond, sectionPlane(beyond, { bearingDeg: 180 })).draw(50).layout.primitives;
    const across = ends.flatMap((p) =>
      p.kind === 'path' && p.layer === 'visible'
        ? p.segments.filter((e) => e.kind === 'line' && Math.abs(e.from[1] - 2200) + Math.abs(e.to[1] - 2200) < 1)
        : [],
    );
    expect(across.map((e) => (e.kind === 'line' ? Math.abs(e.to[0] - e.from[0]) : 0))).toContainEqual(
      expect.closeTo(100, 0),
    );
    const behind = (all: typeof primitives) =>
      all.flatMap((p) =>
        p.kind === 'path' && p.layer === 'joint'
          ? p.segments.filter((e) => {
              const x = e.kind === 'line' ? (e.from[0] + e.to[0]) / 2 : 0;
              const z = e.kind === 'line' ? (e.from[1] + e.to[1]) / 2 : 0;
              return Math.abs(x) > 450 && Math.abs(x) < 1950 && z > 50 && z < 2150;
            })
          : [],
      ).length;
    // The bed joints reach right across the room where nothing stands before them.
    const reach = (all: typeof primitives) =>
      all
        .flatMap((p) => (p.kind === 'path' && p.layer === 'joint' ? p.segments : []))
        .filter((e) => e.kind === 'line' && e.from[1] < 2150 && e.from[1] > 50 && Math.abs(e.to[0] - e.from[0]) > 1000)
        .length;
    expect(behind(primitives)).toBe(0);
    expect(reach(primitives)).toBe(0);
    expect(reach(seen(setOutHouse(houseOf({ partitions: [] }))))).toBeGreaterThan(3);
  });
});
