import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { castPieces } from '../../lib/masonry/cast-pieces.js';
import { columnRuns } from '../../lib/masonry/column.js';
import { blockBodies } from '../../lib/masonry/cut.js';
import { type BlockCut, blockCuts, CUT_EDGES } from '../../lib/masonry/cuts.js';
import { blockDimensions } from '../../lib/masonry/dimensions.js';
import { cuttersOf, layBlocks } from '../../lib/masonry/lay.js';
import { longerForms } from '../../lib/masonry/longer.js';
import { longerCheck } from '../../lib/masonry/longer-check.js';
import { wetDensity } from '../../lib/masonry/mass.js';
import { formDimensions, mouldDimensions } from '../../lib/masonry/moulds/dimensions.js';
import {
  flatCorners,
  formIn,
  type Head,
  halfWidthAt,
  headAngle,
  headsAngle,
  type PlacedBlock,
  placedBlock,
  placedInCourse,
  placedVolume,
} from '../../lib/masonry/placed.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { pourOf, stopAlong, stopsOf } from '../../lib/masonry/stops.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const planOf = (part: Partial<House>, blocks: Partial<House['blocks']> = {}) => {
  const house = houseOf(part);
  return planMasonry(setOutHouse({ ...house, blocks: { ...house.blocks, ...blocks } }));
};
const small = { domes: [domeOf({ radius: 1800, stemWall: 400 })] };

describe('a block in its place', () => {
  const plan = planOf(small, { bond: 'free' });
  const dome = plan.setout.domes[0] as (typeof plan.setout.domes)[number];
  const laid = layBlocks(plan.setout);

  it('has the sizes and the volume of its mould, less the shrinkage', () => {
    const limits = { faces: 'curved', shrinkage: 0 } as const;
    let foreign = 0;
    for (const { course: index, laid: own } of plan.moulds.courses) {
      const block = laid.blocks.find((b) => b.course === index);
      if (!own || !block) throw new Error('every course has blocks of a mould');
      const size = mouldDimensions(own.mould, limits);
      const d = blockDimensions(plan.setout, dome, block);
      expect(d.intradosLower.chord).toBeCloseTo(size.intrados.edges.lower.chord, 6);
      expect(d.extradosUpper.arc).toBeCloseTo(size.extrados.edges.upper.arc, 6);
      expect(block.volume / size.volume).toBeCloseTo(1, 9);
      // It lies with its middle square to the surface: beds lean as much more as the course's own less the mould's.
      expect(d.upperBedRad - d.lowerBedRad).toBeCloseTo(size.bedAngleRad, 9);
      if (!placedInCourse(plan.setout, dome, dome.courses[index - 1] as never).atHome) foreign++;
    }
    expect(foreign).toBeGreaterThan(1);
  });

  it('is its own mirror image, whichever course it lies in: its heads part it equally', () => {
    for (const course of dome.courses) {
      const { head } = placedInCourse(plan.setout, dome, course);
      const middle = dome[course.part].at((course.bed + course.to) / 2);
      const half = headAngle(head, middle.r, middle.z);
      const block = laid.blocks.find((b) => b.course === course.index);
      if (!block) throw new Error('no block');
      const turn = (2 * Math.PI) / course.count;
      expect((block.startRad + block.endRad) / 2 - course.startRad).toBeCloseTo(
        turn / 2 + turn * (block.number - 1),
        9,
      );
      expect(half).toBeLessThan(turn / 2);
    }
  });

  it('has heads that are planes: angles on circles, widths and the angle between the two tell the same', () => {
    for (const [turnRad, off, rise] of [
      [0.1, 0, 0],
      [0.1, 30, 0.05],
      [0.3, -20, -0.2],
    ] as const) {
      const head: Head = { turnRad, off, rise };
      const block = { head } as PlacedBlock;
      const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
      for (const [distance, z] of [
        [2000, -150],
        [2400, 600],
      ] as const) {
        const x = halfWidthAt(block, distance, z);
        expect(x * c - distance * s).toBeCloseTo(off + rise * z, 9);
        expect(headAngle(head, Math.hypot(x, distance), z)).toBeCloseTo(Math.atan2(x, distance), 12);
      }
      // Outward normals of right and left: (± cos, − sin, − rise).
      const between = Math.acos((-c * c + s * s + rise * rise) / (1 + rise * rise));
      expect(headsAngle(block)).toBeCloseTo(Math.PI - between, 9);
    }
  });

  it('has flat faces whose corners go round it: on chords across its middle plane', () => {
    const [first] = laid.blocks;
    if (first?.part !== 'stem') throw new Error('the first block stands in the stem wall');
    const half = (first.endRad - first.startRad) / 2;
    const own = { ...first, bed: first.bed + 1 };
    // A block that no course has set out fills its own place between upright planes.
    expect(flatCorners(placedBlock(plan.setout, dome, own)).flat()).toEqual(
      [
        [1800, own.bed],
        [2050, own.bed],
        [2050, own.top],
        [1800, own.top],
      ].flatMap(([r, z]) => [expect.closeTo((r as number) * Math.cos(half), 9), expect.closeTo(z as number, 9)]),
    );
  });

  it('has heads at angles that a series gives for small sines as the arc sine does', () => {
    for (const x of [1e-6, 0.01, 0.0499, 0.0501, 0.4]) {
      const head: Head = { turnRad: 0.2, off: 1000 * x, rise: 0 };
      expect(headAngle(head, 1000, 5) - 0.2).toBeCloseTo(Math.asin(x), 15);
    }
  });
});

describe('longer blocks', () => {
  it('have heads of the first mould if any of their places has, and the angle of all', () => {
    // Every other place is of the second mould; the second perpend is left out.
    const [course] = setOutHouse(houseOf()).domes[0]?.courses ?? [];
    if (!course) throw new Error('no course');
    const angles = [1.1, (2 * Math.PI) / 3 - 1.1] as const;
    const ring = { ...course, count: 6, leftOut: [1], mix: { seconds: 3, angles, cast: null } };
    expect(formIn(ring, 1)).toEqual({ second: false, places: 2, angle: expect.closeTo((2 * Math.PI) / 3, 12) });
    expect(formIn(ring, 3)).toEqual({ second: false, places: 1, angle: expect.closeTo(angles[0], 12) });
    expect(formIn(ring, 4)).toEqual({ second: true, places: 1, angle: expect.closeTo(angles[1], 12) });
  });

  it('have a form of their own: as wide as their places less a perpend, beds of the mould or of the course', () => {
    const plan = planOf(
      { domes: [domeOf({ radius: 2400, stemWall: 400 })], openings: [openingOf({ width: 900, height: 1700 })] },
      { shortestPiece: 200, heaviestKg: 40 },
    );
    const laid = layBlocks(plan.setout);
    const forms = longerForms(plan, laid);
    expect(forms.length).toBeGreaterThan(0);
    for (const { domeId, course: index, placed, form, modules } of forms) {
      expect(placedVolume(form)).toBeLessThanOrEqual(placedVolume(placed));
      const dome = plan.setout.domes.find((d) => d.id === domeId) as (typeof plan.setout.domes)[number];
      const course = dome.courses[index - 1] as (typeof dome.courses)[number];
      const d = formDimensions(placed, { faces: 'curved', shrinkage: 0 });
      const pitch = (2 * Math.PI * course.midRadius) / course.count;
      const arc = (d.intrados.edges.middle.arc + d.extrados.edges.middle.arc) / 2;
      expect(Math.abs(arc - (modules * pitch - course.perpend))).toBeLessThan(0.5);
      const single = placedVolume(placedInCourse(plan.setout, dome, course));
      expect(placedVolume(placed) / single).toBeGreaterThan(modules);
    }
  });

  it('are weighed as they leave their forms, fresh, as far as their stop boards', () => {
    const part = {
      domes: [domeOf({ radius: 2400, stemWall: 400 })],
      openings: [openingOf({ width: 900, height: 1700 })],
    };
    const judged = (heaviestKg: number) => {
      const plan = planOf(part, { shortestPiece: 200, heaviestKg, shrinkage: 0.01 });
      const laid = layBlocks(plan.setout);
      const [check, ...others] = longerCheck(plan, laid);
      expect(others).toEqual([]);
      const forms = longerForms(plan, laid);
      const greatest = Math.max(...forms.map(({ form }) => placedVolume(form)));
      // A form is larger than the dry block by the shrinkage, each way.
      const kg = (greatest / 0.99 ** 3 / 1e9) * wetDensity(plan.setout.house.material);
      expect(check?.demand?.value).toBeCloseTo(kg, 9);
      return { check, ids: forms.map(({ id }) => id), kg };
    };
    const heavy = judged(20);
    expect(heavy.kg).toBeGreaterThan(20);
    expect(heavy.check?.state).toBe('attention');
    expect(heavy.ids.some((id) => heavy.check?.advice.includes(id))).toBe(true);
    expect(judged(60).check?.state).toBe('ok');
    const none = planOf(small);
    expect(longerCheck(none, layBlocks(none.setout))).toEqual([]);
  });
});

describe('stop boards', () => {
  const plan = planOf(
    {
      domes: [domeOf({ radius: 2400, stemWall: 400 })],
      openings: [
        openingOf({ width: 900, height: 1700 }),
        openingOf({ id: 'bay', bearingDeg: 60, width: 1200, sill: 500, height: 900, use: 'window' }),
      ],
    },
    { shortestPiece: 200, heaviestKg: 40 },
  );
  const { setout } = plan;
  const laid = layBlocks(setout);
  const stops = [...stopsOf(setout, laid).values()];
  const forms = longerForms(plan, laid);

  it('stand past the cut on every edge, nearest one by what is sawn off', () => {
    expect(stops.length).toBeGreaterThan(3);
    expect(new Set(stops.map(({ keeps }) => keeps)).size).toBe(2);
    const cuts = new Map(blockCuts(setout, laid).map((cut) => [cut.block.mark, cut]));
    for (const stop of stops) {
      const cut = cuts.get(stop.block.mark) as BlockCut;
      // Sizes as cast are larger by the shrinkage; told to half a millimetre.
      const along = stopAlong(stop, setout.house.blocks);
      const spare = CUT_EDGES.map((edge) => along[edge] * (1 - setout.house.blocks.shrinkage) - cut.left[edge]);
      expect(Math.abs(Math.min(...spare) - 10)).toBeLessThan(0.3);
      for (const edge of CUT_EDGES) expect(along[edge] % 0.5).toBe(0);
    }
  });

  it('stand nowhere where a cut leaves an edge within what is sawn off', () => {
    // The door's arch 12 mm lower over the same courses: of one block beside its top it cuts hardly anything.
    const openings = setout.house.openings.map((o) => (o.use === 'door' ? { ...o, height: o.height - 12 } : o));
    const low = { ...setout, arches: setOutHouse({ ...setout.house, openings }).arches };
    const own = layBlocks(low);
    const boards = stopsOf(low, own);
    const spares = blockCuts(low, own).flatMap(({ block, whole, left, keeps }) => {
      const course = setout.domes[0]?.courses[block.course - 1];
      if (!course || formIn(course, block.number).places < 2 || (keeps !== 'start' && keeps !== 'end')) return [];
      const spare = Math.min(...CUT_EDGES.map((edge) => whole[edge] - left[edge]));
      expect(boards.has(block.mark), `${block.mark}, ${spare} mm`).toBe(spare > 10);
      return [spare];
    });
    expect(Math.min(...spares)).toBeGreaterThan(0);
    expect(Math.min(...spares)).toBeLessThan(10);
  });

  it('leave the head kept as it is: the solid reaches over all that is laid, and no point of that lies past the board', () => {
    for (const { block, keeps, placed } of stops) {
      const dome = setout.domes[0] as (typeof setout.domes)[number];
      const whole = placedBlock(setout, dome, block);
      const body = blockBodies(setout, dome, block)(block);
      const cutters = cuttersOf(setout, dome).filter(({ id }) => block.cutBy.includes(id));
      const middle = (block.startRad + block.endRad) / 2;
      for (const i of [0.1, 0.3, 0.5, 0.7, 0.9])
        for (const j of [0.1, 0.5, 0.9]) {
          const column = body(i, j);
          const runs = columnRuns(column, cutters);
          const reach = keeps === 'start' ? runs[runs.length - 1]?.[1] : runs[0]?.[0];
          if (reach === undefined) continue;
          const [r, z] = [column.unit, column.z];
          const turned = headAngle(whole.head, r, z) - headAngle(placed.head, r, z);
          const board = headAngle(whole.head, r, z) - 2 * turned;
          expect(keeps === 'start' ? reach - middle : middle - reach).toBeLessThan(board);
        }
    }
  });

  it('make the form as long as the longest of its blocks, and what is poured less', () => {
    const pour = pourOf(setout, laid);
    for (const { stops: own, form, placed, whole, cut } of forms) {
      const volumes = own.map((stop) => formDimensions(stop.placed, setout.house.blocks).volume);
      for (const [k, { block }] of own.entries()) expect(pour(block)).toBeCloseTo(volumes[k] as number, 3);
      const full = formDimensions(placed, setout.house.blocks).volume;
      const built = formDimensions(form, setout.house.blocks).volume;
      expect(built).toBeCloseTo(own.length < whole + cut ? full : Math.max(...volumes), 3);
    }
    const longer = forms.filter(({ stops: own }) => own.length > 0);
    expect(longer.some(({ form, placed }) => placedVolume(form) < 0.9 * placedVolume(placed))).toBe(true);
  });
});

describe('marks of cast pieces', () => {
  const openings = (bearingDeg: number) => [
    openingOf({ bearingDeg, width: 800, arch: { ring: 150, face: 300, madeAs: 'voussoirs', voussoirs: 7 } }),
    openingOf({
      id: 'eye',
      bearingDeg: 80,
      width: 600,
      sill: 500,
      height: 700,
      arch: { ring: 150, face: 'flush', madeAs: 'voussoirs', voussoirs: 5 },
    }),
  ];
  const piecesOf = (bearingDeg: number) =>
    castPieces(
      setOutHouse(
        houseOf({
          domes: [
            domeOf({ oculus: { radius: 350, curb: 150, upstand: 100 } }),
            domeOf({ id: 'lab', at: [9000, 0], radius: 2200, shape: 'segmental', rise: 1500 }),
          ],
          openings: openings(bearingDeg),
        }),
      ),
    );

  it('are unique, and stay with their volumes when an unrelated opening moves', () => {
    const [here, there] = [piecesOf(180), piecesOf(200)];
    const marks = [...here.arches, ...here.rings].map((p) => p.mark);
    expect(new Set(marks).size).toBe(marks.length);
    expect(here.rings).toEqual(there.rings);
    const eye = (p: typeof here) => p.arches.filter(({ archId }) => archId === 'eye');
    expect(eye(here)).toEqual(eye(there));
  });

  it('are mirror images by pairs about one keystone, of odd number', () => {
    const own = piecesOf(180).arches.filter(({ archId }) => archId === 'entrance');
    expect(own.map((p) => p.mark)).toEqual([1, 2, 3, 4, 5, 6, 7].map((k) => `entrance-v${k}`));
    expect(own.filter(({ kind }) => kind === 'keystone').map((p) => p.mark)).toEqual(['entrance-v4']);
    for (const [k, piece] of own.entries()) {
      const twin = own[own.length - 1 - k] as typeof piece;
      expect([twin.form, twin.volume]).toEqual([piece.form, piece.volume]);
    }
  });
});

describe('rules that leave nothing to choose from', () => {
  it('a block longer than a course: three blocks make the ring, and what they lack is told', () => {
    const plan = planOf(
      { domes: [domeOf({ radius: 500, stemWall: 300 })] },
      { length: 1900, courseHeight: 150, heaviestKg: 400, jointRange: [5, 40] },
    );
    const [first] = plan.courses;
    expect(first?.course.count).toBe(3);
    expect(layBlocks(plan.setout).blocks.filter((b) => b.course === 1)).toHaveLength(3);
    for (const course of plan.moulds.courses) expect(course.laid !== null || course.misfit !== null).toBe(true);
  });

  it('blocks of no mould fill their own place, and nothing is lost', () => {
    const plan = planOf(small, { joint: 7 });
    expect(plan.moulds.courses.every((c) => c.laid === null)).toBe(true);
    for (const dome of plan.setout.domes) for (const course of dome.courses) expect(course.cast).toBeNull();
    expect(layBlocks(plan.setout).reach).toEqual({ beds: 0, faces: 0 });
  });
});
