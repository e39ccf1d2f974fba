import { beforeAll, describe, expect, it } from 'vitest';
import type { House, ProfileShape } from '../../lib/description/house.js';
import type { Mesh } from '../../lib/documents/mesh.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshBounds, meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import type { Vec2, Vec3 } from '../../lib/math/vec.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { inMaterial } from '../../lib/setout/material.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import { type Kernel, SolidScope } from '../../lib/solids/kernel.js';
import { writeStl } from '../../lib/writers/stl.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { houseTopology } from '../tools/topology.js';
import { connectedRooms, joinedRooms } from './cluster-rooms.js';
import { groundVolume, masonryVolume } from './cluster-volumes.js';
import { insideOf, LAYOUTS, passageOf, rowOf } from './clusters.js';
import { faceArea, HEADS, handles, unionVolume } from './support.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

const sum = (meshes: readonly Mesh[]) => meshes.reduce((total, mesh) => total + meshVolume(mesh), 0);
const solidsOf = (setout: HouseSetout, surface = 20) => houseSolids(kernel, setout, { surface });

/** Closed, with handles and pieces as foretold, parts that fill the whole and overlap in nothing. */
async function expectSound(setout: HouseSetout, surface = 20): Promise<void> {
  const { whole, parts } = solidsOf(setout, surface);
  for (const mesh of [whole, ...parts]) expect(auditMesh(mesh), mesh.name).toEqual([]);
  expect(handles(whole)).toBe(houseTopology(setout).handles);
  expect(meshEuler(whole)).toHaveLength(houseTopology(setout).pieces);
  expect(sum(parts) / meshVolume(whole) - 1).toBeCloseTo(0, 9);
  expect((await unionVolume(parts)) / sum(parts) - 1).toBeCloseTo(0, 6);
}

const GROUNDS = [
  { footing: { width: 500, depth: 400 }, slab: { thickness: 100 } },
  { footing: { width: 500, depth: 400 }, slab: null },
  { footing: null, slab: { thickness: 100 } },
  { footing: null, slab: null },
  { footing: { width: 250, depth: 400 }, slab: { thickness: 100 } },
  { footing: { width: 250, depth: 400 }, slab: null },
  { footing: { width: 500, depth: 200 }, slab: { thickness: 200 } },
  { footing: { width: 500, depth: 200 }, slab: { thickness: 300 } },
] as const;

const SHAPES: readonly ProfileShape[] = ['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical'];
const RISE = { hemisphere: 1, segmental: 0.7, pointed: 1.3, catenary: 1.1, elliptical: 0.8 } as const;
const domeLike = (id: string, shape: ProfileShape, radius: number, at: Vec2) =>
  domeOf({ id, shape, radius, rise: RISE[shape] * radius, at, stemWall: 700 });

describe.each(SHAPES)('a %s dome', (shape) => {
  describe.each(SHAPES)('and a %s dome', (other) => {
    it.each([
      ['abut', 4900],
      ['stand apart', 6200],
    ] as const)('%s, joined by a passage with each head', async (_, distance) => {
      for (const head of HEADS) {
        const later = domeLike('b', other, 2200, [0.8 * distance, 0.6 * distance]);
        const passages = [passageOf(['a', 'b'], { width: 900, height: 1500, head })];
        await expectSound(setOutHouse(houseOf({ domes: [domeLike('a', shape, 2800, [0, 0]), later], passages })));
      }
    });
  });
});

describe.each(Object.entries(LAYOUTS))('%s', (_, layout) => {
  it.each(GROUNDS)('is sound on footing $footing, slab $slab', async (ground) => {
    await expectSound(setOutHouse(houseOf({ ...layout, ...ground })));
  });

  it.each(GROUNDS.slice(0, 4))('is where the set-out house is, on footing $footing, slab $slab', (ground) => {
    const setout = setOutHouse(houseOf({ ...layout, ...ground }));
    const surface = 8;
    const { whole } = solidsOf(setout, surface);
    const inside = insideOf(whole);
    const { min, max } = meshBounds(whole);
    let asked = 0;
    for (let k = 1; k <= 1500; k++) {
      // The additive recurrence of the plastic number's cubic kin spreads points evenly.
      const p = PLASTIC.map((step, i) => {
        const [low, high] = [min[i as 0 | 1 | 2] - 50, max[i as 0 | 1 | 2] + 50];
        return low + (high - low) * ((k * step) % 1);
      }) as unknown as Vec3;
      const held = inMaterial(setout, p);
      if (corners(p, 4 * surface).some((q) => inMaterial(setout, q) !== held)) continue;
      asked++;
      expect(inside(...p), `${p}`).toBe(held);
    }
    expect(asked).toBeGreaterThan(600);
  });

  it('has the volume of its masonry and its ground', () => {
    const masonry = masonryVolume(setOutHouse(houseOf(layout)));
    for (const ground of [GROUNDS[0], GROUNDS[3]]) {
      const setout = setOutHouse(houseOf({ ...layout, ...ground }));
      const exact = masonry + groundVolume(setout);
      const off = (surface: number) => Math.abs(meshVolume(solidsOf(setout, surface).whole) / exact - 1);
      expect(off(8)).toBeLessThan(8e-3);
      expect(off(1)).toBeLessThan(1e-3);
    }
  });

  it('can be written at full size and as a scale model', () => {
    const { whole, parts } = solidsOf(setOutHouse(houseOf(layout)), 4);
    for (const mesh of [whole, ...parts])
      for (const scale of [1, 1 / 50]) expect(writeStl([mesh], { title: 'part', scale }).length).toBeGreaterThan(84);
  });

  it('has rooms that connect where passages join them, and nowhere else', () => {
    const setout = setOutHouse(houseOf(layout));
    expect(connectedRooms(setout, solidsOf(setout).whole)).toEqual(joinedRooms(setout));
  });
});

/** Powers of the reciprocal of the root of x⁴ = x + 1: steps of an even sequence in three directions. */
const PLASTIC = [1, 2, 3].map((k) => 1.2207440846057596 ** -k);

/** The corners of a cube about a point, and its faces' middles. */
const corners = ([x, y, z]: Vec3, reach: number): Vec3[] =>
  [-1, 0, 1].flatMap((i) =>
    [-1, 0, 1].flatMap((j) => [-1, 0, 1].map((k): Vec3 => [x + i * reach, y + j * reach, z + k * reach])),
  );

describe('parts of a cluster', () => {
  const house = houseOf({
    domes: [
      domeOf({ id: 'hall' }),
      domeOf({ id: 'lab', at: [5000, 1000], shape: 'segmental', radius: 2200, rise: 1500 }),
    ],
    passages: [passageOf(['hall', 'lab'], { id: 'link' })],
    openings: [openingOf()],
  });

  it('are named after what they are, footing and slab once for the house', () => {
    expect(solidsOf(setOutHouse(house)).parts.map((p) => p.name)).toEqual([
      'hall:shell',
      'hall:plug',
      'arch:entrance',
      'lab:stem-wall',
      'lab:skewback',
      'lab:shell',
      'lab:plug',
      'passage:link',
      'footing',
      'slab',
    ]);
  });

  it('an earlier dome stays as it is alone, whatever abuts it', () => {
    const shellOf = (part: Partial<House>) =>
      solidsOf(setOutHouse(houseOf({ ...house, passages: [], ...part })), 4).parts.find((p) => p.name === 'hall:shell');
    const alone = meshVolume(shellOf({ domes: house.domes.slice(0, 1) }) as Mesh);
    expect(meshVolume(shellOf({}) as Mesh) / alone - 1).toBeCloseTo(0, 9);
    const turned = shellOf({ domes: [...house.domes].reverse() }) as Mesh;
    expect(meshVolume(turned)).toBeLessThan(0.99 * alone);
  });

  it('a cut shell shows the earlier dome and the passage in the names of its faces', () => {
    const { parts } = solidsOf(setOutHouse(house));
    const lab = parts.find((p) => p.name === 'lab:shell') as Mesh;
    for (const face of ['dome:hall', 'passage:link']) expect(faceArea(lab, face), face).toBeGreaterThan(1e5);
    const vault = parts.find((p) => p.name === 'passage:link') as Mesh;
    expect(new Set(vault.faceNames)).toEqual(new Set(['passage:link', 'vault:link', 'base', 'intrados', 'extrados']));
  });

  it('every triangle of the whole has one of the names that are promised, and no seam is left', () => {
    const { whole } = solidsOf(setOutHouse(house));
    const ways = ['arch:entrance', 'face:entrance', 'opening:entrance', 'passage:link', 'vault:link'];
    const ground = ['floor', 'slab-bottom', 'footing-side', 'footing-top', 'footing-bottom'];
    expect([...whole.faceNames].sort()).toEqual(['extrados', 'intrados', ...ways, ...ground].sort());
  });

  it('jambs and vault of a passage between apart domes have the size of their figures', () => {
    const link = passageOf(['a', 'b'], { id: 'link', head: { shape: 'flat', rise: 0 } });
    const domes = [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [8000, 0] })];
    const { parts } = solidsOf(setOutHouse(houseOf({ domes, passages: [link] })), 1);
    const vault = parts.find((p) => p.name === 'passage:link') as Mesh;
    // Between the two cylinders up to the springing, and the vault's slab above them.
    const wall = (u: number) => 8000 - 2 * Math.sqrt(3000 ** 2 - u ** 2);
    const steps = 200;
    let jambs = 0;
    for (let k = 0; k < steps; k++) jambs += (2 * 200 * 600 * wall(500 + (200 * (k + 0.5)) / steps)) / steps;
    const low = faceArea(vault, 'base');
    expect(low / (jambs / 600) - 1).toBeCloseTo(0, 3);
    expect(meshVolume(vault)).toBeGreaterThan(jambs);
  });
});

describe('effort', () => {
  /** Triangles that all booleans of a house take in. */
  function work(house: House): number {
    const setout = setOutHouse(house);
    const steps = ['union', 'subtract', 'intersect'] as const;
    const methods = steps.map((step) => SolidScope.prototype[step]);
    const sizeOf = (solid: unknown) => (solid as { body: { numTri(): number } }).body.numTri();
    let triangles = 0;
    for (const [i, step] of steps.entries()) {
      const method = methods[i] as (...args: unknown[]) => unknown;
      const counted = function (this: SolidScope, ...args: unknown[]) {
        for (const solid of args.slice(1).flat()) triangles += sizeOf(solid);
        return method.apply(this, args);
      };
      Object.assign(SolidScope.prototype, { [step]: counted });
    }
    try {
      houseSolids(kernel, setout, { surface: 10 });
    } finally {
      for (const [i, step] of steps.entries()) Object.assign(SolidScope.prototype, { [step]: methods[i] });
    }
    return triangles;
  }

  it('grows no faster than the number of domes in a row', () => {
    const counts = [2, 4, 8, 16].map((count) => work(rowOf(count)) / count);
    for (const [i, perDome] of counts.entries())
      expect(perDome, `${2 ** (i + 1)} domes`).toBeLessThan(1.25 * (counts[0] as number));
  });
});
