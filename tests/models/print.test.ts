import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { House, Print } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshBounds, meshVolume } from '../../lib/documents/mesh-measure.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { assemble } from '../../lib/models/print/assemble.js';
import { bedJoints } from '../../lib/models/print/bands.js';
import { cutPieces, loosePeg } from '../../lib/models/print/pieces.js';
import { narrowPiers } from '../../lib/models/print/piers.js';
import { type PrintPlan, planPrint, workableScale } from '../../lib/models/print/plan.js';
import { type PrintModel, type PrintPart, printModel } from '../../lib/models/print/print-model.js';
import { plateScenes } from '../../lib/models/print/scenes.js';
import { partTable } from '../../lib/models/print/tables.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { setOutHouse } from '../../lib/setout/house.js';
import type { Solid, SolidScope } from '../../lib/solids/kernel.js';
import { outlineOf } from '../../lib/solids/outline.js';
import { writeStl } from '../../lib/writers/stl.js';
import { writeThreeMf } from '../../lib/writers/threemf.js';
import { readByAdmesh } from '../readers/admesh.js';
import { sliceBySlic3r } from '../readers/slicer.js';
import { readByLib3mf, requireSchema } from '../readers/threemf.js';
import { passageOf } from '../solids/clusters.js';
import { domeOf, houseOf, openingOf, PRINT } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { thicknessOf } from './thickness.js';

const kernel = await nodeKernel();
const FLUSH = { ring: 200, face: 'flush', madeAs: 'cast', voussoirs: null } as const;
const sample = (name: string, print: Partial<Print> = {}): House => {
  const house = readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), name);
  return { ...house, print: { ...house.print, ...print } };
};
const planOf = (house: House): PrintPlan => {
  const { plan, obstacles } = planPrint(planMasonry(setOutHouse(house)).setout);
  if (!plan) throw new Error(obstacles.map((o) => o.message).join('; '));
  return plan;
};

/** Two domes that abut, with a way between them and openings of both kinds. */
const PAIR = houseOf({
  domes: [domeOf({ id: 'a', radius: 2000 }), domeOf({ id: 'b', at: [3500, 0], radius: 1700 })],
  passages: [passageOf(['a', 'b'], { width: 900 })],
  openings: [
    openingOf({ in: 'a', bearingDeg: 200, height: 1900 }),
    openingOf({ id: 'bay', in: 'b', bearingDeg: 40, use: 'window', sill: 700, height: 900, arch: FLUSH }),
  ],
  print: { ...PRINT, scale: 50, bed: [220, 220, 30] },
});

/**
 * Four domes at their own scale; one small, thin and with fine joints; one cut into pieces, in plan and in height; two
 * domes and a roof in layers; one with its roof fixed.
 */
const CASES: readonly (readonly [name: string, house: House])[] = [
  ['family house', sample('family-house')],
  ['thin', sample('garden-studio', { scale: 180 })],
  ['in pieces', sample('creek-cabin', { scale: 32, bed: [200, 200, 60] })],
  ['in layers', PAIR],
  ['fixed', sample('low-store', { scale: 100, roof: 'fixed' })],
];
const models = new Map(CASES.map(([name, house]) => [name, printModel(kernel, planOf(house))]));
const model = (name: string): PrintModel => models.get(name) as PrintModel;

describe.each(CASES)('the printed model, %s', (name, { print }) => {
  test('every part and the whole are closed, for us and for admesh', () => {
    const { parts, whole } = model(name);
    for (const mesh of [...parts.map((p) => p.mesh), whole]) {
      expect(auditMesh(mesh), mesh.name).toEqual([]);
      const {
        disconnected,
        degenerate,
        backwardsEdges,
        facetsReversed,
        parts: pieces,
        volume,
      } = readByAdmesh(writeStl([mesh], { title: name }));
      expect({ disconnected, degenerate, backwardsEdges, facetsReversed, pieces }, mesh.name).toEqual({
        disconnected: 0,
        degenerate: 0,
        backwardsEdges: 0,
        facetsReversed: 0,
        pieces: 1,
      });
      expect(volume / meshVolume(mesh)).toBeCloseTo(1, 3);
    }
  });

  test('no wall is thinner than the printer makes it', async () => {
    for (const { name: part, mesh } of model(name).parts) {
      const { rays, least, at } = await thicknessOf(mesh, 2500);
      expect(rays).toBeGreaterThan(Math.min(20, mesh.triangles.length / 6));
      expect(least, `${part} near ${at}`).toBeGreaterThanOrEqual(print.thinnest - 1e-3);
    }
  });

  test('parts lie on the bed, apart from each other, and on as many plates as are told', () => {
    const { parts, places, plates } = model(name);
    for (const { mesh, size } of parts) {
      const { min, max } = meshBounds(mesh);
      expect(Math.max(...min.map(Math.abs))).toBeLessThan(1e-4);
      expect(max[2]).toBeLessThanOrEqual(print.bed[2]);
      expect([...size]).toEqual([...max]);
    }
    expect(places).toHaveLength(parts.reduce((n, part) => n + part.count, 0));
    const boxes = places.map(({ part, plate, at, turned }) => {
      const [w, d] = (parts[part] as PrintPart).size;
      return { plate, from: at, to: [at[0] + (turned ? d : w), at[1] + (turned ? w : d)] as const };
    });
    for (const [i, a] of boxes.entries()) {
      expect(a.to[0]).toBeLessThanOrEqual(print.bed[0] + 1e-6);
      expect(a.to[1]).toBeLessThanOrEqual(print.bed[1] + 1e-6);
      for (const b of boxes.slice(i + 1)) {
        const beside = [0, 1].some((k) => a.to[k as 0] <= b.from[k as 0] || b.to[k as 0] <= a.from[k as 0]);
        expect(beside || a.plate !== b.plate).toBe(true);
      }
    }
    expect(Math.max(...boxes.map((b) => b.plate))).toBe(plates);
  });

  test('each plate as 3MF: by the schema, and as lib3mf reads it', () => {
    const { parts } = model(name);
    let read = 0;
    for (const scene of plateScenes(model(name))) {
      const bytes = writeThreeMf(scene);
      requireSchema(bytes);
      const { unit, warnings, objects, items } = readByLib3mf(bytes);
      expect({ unit, warnings }).toEqual({ unit: 1, warnings: 0 });
      for (const object of objects) {
        expect(object).toMatchObject({ valid: true, sound: true });
        const part = parts.find((p) => p.name === object.name);
        expect(object.triangles).toBe((part?.mesh.triangles.length ?? 0) / 3);
        for (const k of [0, 1, 2] as const) expect(object.high?.[k]).toBeCloseTo(part?.size[k] ?? 0, 3);
      }
      read += items.length;
    }
    expect(read).toBe(model(name).places.length);
  });
});

/** A peg alone, from just above its joint to its end, taken from what it stands on by a box round it. */
function pegOf(scope: SolidScope, standing: Solid, [x, y]: readonly [number, number], z: number, { sizes }: PrintPlan) {
  const r = sizes.peg.across;
  const corners = [
    [x - r, y - r],
    [x + r, y - r],
    [x + r, y + r],
    [x - r, y + r],
  ] as const;
  const box = scope.slab('box', outlineOf(['box', corners]), [z + 0.1 * sizes.scale, z + sizes.peg.length]);
  return scope.intersect('peg', [standing, box]);
}

describe('pegs', () => {
  test('a roof sits on its pegs with the clearance asked for', () => {
    const plan = planOf(sample('family-house'));
    const { scale } = plan.sizes;
    kernel.scope((scope) => {
      const { base, roofs } = assemble(scope, plan);
      expect(roofs).toHaveLength(4);
      const [standing] = base as [Solid];
      for (const { dome, layers } of roofs) {
        const [roof] = layers as [Solid];
        const { level, pegs } = plan.domes[dome] as (typeof plan.domes)[number];
        if (!level || !pegs) throw new Error('no roof');
        expect(pegs.at.length).toBe(3);
        for (const middle of pegs.at) {
          const alone = pegOf(scope, standing, middle, level.z, plan);
          expect(scope.between(alone, roof, 10 * scale) / scale).toBeCloseTo(0.15, 3);
        }
      }
    });
  });

  test('what is too high is parted at joints, and each layer sits on pegs with the clearance asked for', () => {
    const plan = planOf(PAIR);
    const { scale } = plan.sizes;
    expect(plan.baseCuts.length).toBeGreaterThan(0);
    kernel.scope((scope) => {
      const { base, roofs } = assemble(scope, plan);
      const stacks = [
        { layers: base, cuts: plan.baseCuts },
        ...roofs.map(({ dome, layers }) => ({ layers, cuts: plan.domes[dome]?.roofCuts ?? [] })),
      ];
      for (const { layers, cuts } of stacks) {
        expect(layers).toHaveLength(cuts.length + 1);
        for (const [i, { z, joint, pegs }] of cuts.entries()) {
          const dome = plan.setout.domes.find(({ id }) => id === joint.dome) as DomeSetout;
          expect(
            bedJoints(dome, plan.sizes).some((bed) => Math.abs(bed.z - z) < 1e-3 && bed.course === joint.course),
          ).toBe(true);
          const places = pegs.flatMap((own) => own?.at ?? []);
          expect(places.length).toBeGreaterThanOrEqual(3);
          for (const middle of places) {
            const alone = pegOf(scope, layers[i] as Solid, middle, z, plan);
            expect(scope.between(alone, layers[i + 1] as Solid, 10 * scale) / scale).toBeCloseTo(0.15, 3);
          }
        }
      }
    });
    const told = partTable(model('in layers')).notes?.join(' ');
    expect(told).toContain(`above course ${plan.baseCuts[0]?.joint.course} of ${plan.baseCuts[0]?.joint.dome}`);
  });

  test('loose pegs fit both sides of a cut with the clearance asked for', () => {
    const plan = planOf(sample('creek-cabin', { scale: 32, bed: [200, 200, 200], clearance: 0.2 }));
    const { sizes } = plan;
    const s = sizes.scale;
    kernel.scope((scope) => {
      const outline = outlineOf([
        'box',
        [
          [-40 * s, 0],
          [40 * s, 0],
          [40 * s, 30 * s],
          [-40 * s, 30 * s],
        ],
      ]);
      const line = { normal: [1, 0], offset: 0 } as const;
      const side = { hull: outline.points, cut: null };
      const tree = { hull: outline.points, cut: { line, sides: [side, side] as const } };
      const block = { solid: scope.slab('box', outline, [0, 8 * s]), faces: [] };
      const { pieces, pegs } = cutPieces(scope, block, tree, [line], sizes);
      expect(pieces).toHaveLength(2);
      expect(pegs.length).toBeGreaterThanOrEqual(2);
      for (const { at } of pegs) {
        const move = [at[0], at[1], at[2] - sizes.peg.across / 2] as const;
        const placed = scope.moved(loosePeg(scope, sizes), { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], move });
        for (const { solid } of pieces) expect(scope.between(placed, solid, 10 * s) / s).toBeCloseTo(0.2, 3);
      }
    });
  });

  test('pieces of a cut house come with their loose pegs', () => {
    const { parts } = model('in pieces');
    expect(parts.filter((p) => p.kind === 'base').length).toBeGreaterThan(1);
    expect(parts.find((p) => p.kind === 'peg')?.count).toBeGreaterThanOrEqual(2);
  });
});

describe('a Debian slicer', () => {
  // Every part of a model of four domes.
  const { parts } = printModel(kernel, planOf(sample('family-house')));
  test.each(parts.map((part) => [part.name, part] as const))(
    'slices %s without repair, with about the filament told',
    (_, part) => {
      const { filament, layers, said } = sliceBySlic3r(writeStl([part.mesh], { title: part.name }), [220, 220], 0.3);
      expect(said).not.toMatch(/repair|not manifold|open edge/i);
      expect(layers).toBeGreaterThan(part.size[2] / 0.3 - 2);
      expect(filament / (part.filament / 1000)).toBeGreaterThan(0.75);
      expect(filament / (part.filament / 1000)).toBeLessThan(1.33);
    },
    180_000,
  );
});

describe('what cannot be printed', () => {
  const setout = (print: Partial<Print>) =>
    setOutHouse(houseOf({ domes: [domeOf()], openings: [openingOf()], print: { ...PRINT, ...print } }));
  const codes = (print: Partial<Print>) => planPrint(setout(print)).obstacles.map((o) => o.code);

  test('a wall thinner than the nozzle, and the nearest scale that works', () => {
    expect(codes({ scale: 1000 })).toContain('nozzle');
    const scale = workableScale(setout({ scale: 1000 })) as number;
    expect(scale).toBeLessThan(1000);
    expect(250 / scale).toBeGreaterThanOrEqual(0.4);
    expect(planPrint(setout({ scale })).plan).not.toBeNull();
  });

  test('a bed smaller than a block, and the nearest scale that works', () => {
    expect(codes({ scale: 5, bed: [60, 60, 60] })).toEqual(expect.arrayContaining(['bed', 'height']));
    const scale = workableScale(setout({ scale: 5, bed: [60, 60, 60] })) as number;
    expect(scale).toBeGreaterThan(5);
    expect(planPrint(setout({ scale, bed: [60, 60, 60] })).plan).not.toBeNull();
    expect(workableScale(setout({ scale: 5, bed: [20, 20, 20], nozzle: 5 }))).toBeNull();
  });

  test('a pier that is thinner than a wall may be', () => {
    const pair = [openingOf({ id: 'a', bearingDeg: 170 }), openingOf({ id: 'b', bearingDeg: 197 })];
    const house = houseOf({ openings: pair, print: { ...PRINT, scale: 500 } });
    const { obstacles } = planPrint(setOutHouse(house));
    expect(obstacles.map((o) => o.code)).toContain('pier');
  });

  test('a pier is as wide as its narrowest place, which lies at no step of either opening', () => {
    // Jambs and a round head pass each other at different heights, so that evenly spaced places miss one another.
    const high = openingOf({ id: 'a', bearingDeg: 180, width: 900, height: 1500, sill: 700 });
    const low = openingOf({ id: 'b', bearingDeg: 206, width: 600, height: 700, sill: 0 });
    const house = setOutHouse(houseOf({ domes: [domeOf({ stemWall: 600 })], openings: [high, low] }));
    const points = house.arches.map(({ section, along, across, dome }) =>
      Array.from(
        { length: 1500 },
        (_, k) => section.sill + ((section.crownZ - section.sill) * (k + 0.5)) / 1500,
      ).flatMap((z) =>
        [-1, 1].map((side) => {
          const u = side * section.halfWidthAt(z);
          const v = Math.sqrt(dome.radiusAt(z) ** 2 - u * u);
          return [v * along[0] + u * across[0], v * along[1] + u * across[1], z] as const;
        }),
      ),
    ) as [(readonly [number, number, number])[], (readonly [number, number, number])[]];
    let narrowest = Number.POSITIVE_INFINITY;
    for (const [x, y, z] of points[0])
      for (const [a, b, c] of points[1]) narrowest = Math.min(narrowest, (x - a) ** 2 + (y - b) ** 2 + (z - c) ** 2);
    const width = Math.sqrt(narrowest);
    const found = narrowPiers(house, width + 1)[0]?.width ?? 0;
    expect(found).toBeLessThanOrEqual(width);
    expect(found).toBeGreaterThan(width - 0.3);
    expect(narrowPiers(house, width - 1)).toEqual([]);
  });
});

describe('roofs', () => {
  test('come off above all openings, and above the level asked for where it is higher', () => {
    const above = (roof: Print['roof']) =>
      planOf(houseOf({ openings: [openingOf()], print: { ...PRINT, roof } })).domes[0]?.level?.z ?? 0;
    // Door 2200 mm high with a ring of 200 mm, and the thinnest wall above it.
    expect(above('above openings')).toBeGreaterThanOrEqual(2400 + 60);
    expect(above(2900)).toBeGreaterThanOrEqual(2900);
    expect(above(100)).toBe(above('above openings'));
    expect(above('fixed')).toBe(0);
  });
});
