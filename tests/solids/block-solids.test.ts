import { beforeAll, describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import type { Mesh } from '../../lib/documents/mesh.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import type { Block } from '../../lib/masonry/block.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { DEG } from '../../lib/math/vec.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { spanPoint } from '../../lib/setout/span.js';
import { blockGrid, gridFaces, gridMesh, gridOutline, stationPlacer } from '../../lib/solids/block-grid.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { centroid, faceArea, HEADS, KINDS, M3, openingLike, unionVolume } from './support.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

const FACES = ['bed-lower', 'bed-upper', 'extrados', 'intrados', 'perpend-end', 'perpend-start'];
const blockOf = (part: Partial<Block>): Block => ({
  mark: 'hall-1-1',
  domeId: 'hall',
  course: 1,
  number: 1,
  part: 'shell',
  bed: 0,
  top: 300,
  startRad: 0,
  endRad: 0.2,
  cutBy: [],
  seed: null,
  ...part,
});

describe('sector blocks of a spherical shell, 2.5 m inside, 0.3 m thick (derived; volume and centroid in closed form)', () => {
  const house = houseOf({ domes: [domeOf({ radius: 2500, stemWall: 0 })], footing: null, slab: null });
  const setout = setOutHouse({ ...house, wall: { ...house.wall, thickness: 300 } });
  const dome = setout.domes[0] as (typeof setout.domes)[number];
  const rise = 6.4863;
  // Bed elevation and head angle in degrees; distance of the centroid from the axis and its height in metres.
  const ROWS = [
    [10, 11.1059, 2.579762, 0.607394],
    [30, 12.9258, 2.216188, 1.45348],
    [40, 14.8404, 1.929908, 1.816464],
    [50, 18.0651, 1.584808, 2.124256],
    [60, 24.0124, 1.191211, 2.367503],
    [70, 37.4961, 0.760521, 2.538815],
  ] as const;

  it.each(ROWS)('bed at %d°: 0.045024 m3', (bed, turn, rho, height) => {
    const block = blockOf({
      bed: 2500 * bed * DEG,
      top: 2500 * (bed + rise) * DEG,
      startRad: 40 * DEG,
      endRad: (40 + turn) * DEG,
    });
    const off = (surface: number) => {
      const mesh = gridMesh(block.mark, blockGrid(setout, dome, block, { faces: 'curved', surface }));
      expect(auditMesh(mesh)).toEqual([]);
      return mesh;
    };
    const exact = (turn * DEG * (2.8 ** 3 - 2.5 ** 3) * (Math.sin((bed + rise) * DEG) - Math.sin(bed * DEG))) / 3;
    expect(exact).toBeCloseTo(0.045024, 5);
    const short = [4, 1, 0.25].map((surface) => exact - meshVolume(off(surface)) * M3);
    for (const [i, s] of short.entries()) if (i > 0) expect(Math.abs(s)).toBeLessThan(Math.abs(short[i - 1] as number));
    expect(Math.abs(short[2] as number) / exact).toBeLessThan(1e-3);
    const [x, y, z] = centroid(off(0.05));
    expect(Math.hypot(x, y) / 1000).toBeCloseTo(rho, 3);
    expect(z / 1000).toBeCloseTo(height, 3);
    // Clockwise from north: the block's middle bears 40° and half its head angle.
    expect(Math.atan2(x, y) / DEG).toBeCloseTo(40 + turn / 2, 3);
  });

  it('an uncut block names its six faces, each of the right size', () => {
    const block = blockOf({ bed: 1000, top: 1300, startRad: 0, endRad: 0.2 });
    const mesh = gridMesh(block.mark, blockGrid(setout, dome, block, { faces: 'curved', surface: 0.05 }));
    const near = (name: string, exact: number) => expect(faceArea(mesh, name) / exact - 1).toBeCloseTo(0, 3);
    const [low, high] = [1000 / 2500, 1300 / 2500];
    const zone = (R: number) => 0.2 * R * R * (Math.sin(high) - Math.sin(low));
    const cone = (angle: number) => (0.2 / 2) * (2800 ** 2 - 2500 ** 2) * Math.cos(angle);
    near('intrados', zone(2500));
    near('extrados', zone(2800));
    near('bed-lower', cone(low));
    near('bed-upper', cone(high));
    const sector = ((high - low) / 2) * (2800 ** 2 - 2500 ** 2);
    near('perpend-start', sector);
    near('perpend-end', sector);
    // The start is on the plane x = 0, due north.
    expect([...mesh.faceNames].sort()).toEqual(FACES);
  });

  it('flat faces: eight corners on the surfaces, twelve triangles, all six faces plane', () => {
    const block = blockOf({ bed: 1000, top: 1300, startRad: 0.1, endRad: 0.3 });
    const mesh = gridMesh(block.mark, blockGrid(setout, dome, block, { faces: 'flat', surface: 1 }));
    expect(auditMesh(mesh)).toEqual([]);
    expect(mesh.positions).toHaveLength(24);
    expect(mesh.faceOf).toHaveLength(12);
    for (let v = 0; v < 24; v += 3) {
      const radius = Math.hypot(...mesh.positions.slice(v, v + 3));
      expect(Math.min(Math.abs(radius - 2500), Math.abs(radius - 2800))).toBeLessThan(1e-9);
    }
    // A hexahedron's volume by its own middle section: ∫ of trapezoids across the chord, exact for plane faces.
    const [t, c] = [Math.tan(0.1), Math.cos(0.1)];
    const corner = (angle: number, R: number) => [R * Math.cos(angle) * c, R * Math.sin(angle)] as const;
    const quad = [corner(0.4, 2500), corner(0.4, 2800), corner(0.52, 2800), corner(0.52, 2500)];
    let exact = 0;
    for (const [i, [p0, q0]] of quad.entries()) {
      const [p1, q1] = quad[(i + 1) % 4] as (typeof quad)[number];
      // ∮ p² dq = 2 ∫∫ p dp dq, and the run at distance p is 2 p tan(half).
      exact += t * ((p0 * p0 + p0 * p1 + p1 * p1) / 3) * (q1 - q0);
    }
    expect(meshVolume(mesh) / exact - 1).toBeCloseTo(0, 12);
  });

  it('the kernel bends the same block as the analytic mesh, faces and all', () => {
    const block = blockOf({ bed: 2000, top: 2300, startRad: 3, endRad: 3.5 });
    for (const faces of ['curved', 'flat'] as const) {
      const grid = blockGrid(setout, dome, block, { faces, surface: 1 });
      const analytic = gridMesh('block', grid);
      const bent = kernel.scope((scope) =>
        scope.mesh('block', scope.bend('block', gridOutline(grid), grid.facets, stationPlacer(grid), gridFaces(grid))),
      );
      expect(meshVolume(bent) / meshVolume(analytic) - 1).toBeCloseTo(0, 10);
      for (const face of FACES) expect(faceArea(bent, face) / faceArea(analytic, face) - 1).toBeCloseTo(0, 10);
    }
  });
});

/**
 * The last course up to which flat beds keep clear of each other: a bed's middle stands off its cone by
 * r (1 − cos(half head angle)) · sin(elevation), and the next course's corners, half a block on, come within a joint.
 */
function lastFitting(setout: HouseSetout): number {
  const dome = setout.domes[0] as DomeSetout;
  const tight = dome.courses.find(({ part, to, count }) => {
    const { normalRad } = dome[part].at(to);
    const outer = spanPoint(dome[part], to, dome.thickness)[0];
    return outer * (1 - Math.cos(Math.PI / count)) * Math.sin(normalRad) > setout.house.blocks.joint;
  });
  return tight ? tight.index : Infinity;
}

describe('blocks of a house', () => {
  const four = KINDS.map((kind, i) =>
    openingLike(kind, HEADS[i] as never, { id: `way${i}`, bearingDeg: 85 * i + 5, sill: i === 0 ? 0 : 400 }),
  );
  const houses: Record<string, House> = {
    hemisphere: houseOf({ openings: four }),
    'low segmental': houseOf({ domes: [domeOf({ shape: 'segmental', rise: 1800, stemWall: 900 })], openings: four }),
    'pointed, away from the origin': houseOf({
      domes: [domeOf({ shape: 'pointed', rise: 4000, at: [7000, -4000] })],
      openings: four,
    }),
    'flat faces': houseOf({ openings: four, blocks: { ...houseOf().blocks, faces: 'flat' } }),
  };

  it.each(Object.entries(houses))(
    '%s: closed, single, named, apart from each other and from the arches',
    async (_, house) => {
      const setout = setOutHouse(house);
      const { blocks } = layBlocks(setout);
      const meshes = blockSolids(kernel, setout, blocks, { surface: 4 });
      expect(meshes.map((m) => m.name)).toEqual(blocks.map((b) => b.mark));
      expect(new Set(blocks.flatMap((b) => b.cutBy))).toEqual(new Set(four.map((o) => o.id)));
      for (const [i, mesh] of meshes.entries()) {
        expect(auditMesh(mesh)).toEqual([]);
        expect(meshEuler(mesh).map((piece) => piece.euler)).toEqual([2]);
        const cuts = (blocks[i] as Block).cutBy.map((id) => `cut:${id}`);
        for (const face of mesh.faceNames) expect([...FACES, ...cuts]).toContain(face);
      }
      const total = (list: readonly Mesh[]) => list.reduce((sum, m) => sum + meshVolume(m), 0);
      const fitting = house.blocks.faces === 'flat' ? lastFitting(setout) : Infinity;
      const laid = meshes.filter((_, k) => (blocks[k] as Block).course <= fitting);
      expect(laid.length).toBeGreaterThan(300);
      // Crown pieces are cast against the last course without a joint: there facets alone decide.
      const { parts } = houseSolids(kernel, setout, { surface: 4 });
      const arches = parts.filter((p) => p.name.startsWith('arch:') || p.name.endsWith(':skewback'));
      const all = [...laid, ...arches];
      expect((await unionVolume(all)) / total(all) - 1).toBeCloseTo(0, 6);
    },
  );

  it.each(Object.entries(houses))('%s: volumes come to those found by quadrature', (_, house) => {
    const setout = setOutHouse(house);
    const { blocks } = layBlocks(setout);
    const meshes = blockSolids(kernel, setout, blocks, { surface: 0.5 });
    for (const [i, block] of blocks.entries()) {
      expect(Math.abs(meshVolume(meshes[i] as Mesh) / block.volume - 1), block.mark).toBeLessThan(1e-2);
    }
    const sum = meshes.reduce((total, mesh) => total + meshVolume(mesh), 0);
    expect(sum / blocks.reduce((total, block) => total + block.volume, 0) - 1).toBeCloseTo(0, 2);
  });

  it('a cut stops at the sill of a flush opening, and stands a joint off the arch', () => {
    const way = openingLike('flush', HEADS[3] as never, { bearingDeg: 0, sill: 400, width: 900 });
    const setout = setOutHouse(houseOf({ openings: [way] }));
    const { blocks } = layBlocks(setout);
    const cut = blockSolids(kernel, setout, blocks).filter((_, i) => (blocks[i] as Block).cutBy.length > 0);
    const half = 450 + 150 + 10;
    let touching = 0;
    for (const mesh of cut) {
      for (let v = 0; v < mesh.positions.length; v += 3) {
        const [x, , z] = mesh.positions.slice(v, v + 3) as unknown as [number, number, number];
        const inside = Math.abs(x) < half - 1e-6 && z > 400 + 1e-6 && z < 400 + 1100 + 150 + 10 - 1e-6;
        expect(inside, `${mesh.name} at ${x}, ${z}`).toBe(false);
        if (Math.abs(Math.abs(x) - half) < 1e-6 && z > 400) touching++;
      }
    }
    expect(touching).toBeGreaterThan(0);
  });

  it('says which block it is when a cut leaves nothing', () => {
    const setout = setOutHouse(houseOf({ openings: [openingOf({ bearingDeg: 0 })] }));
    const gone = blockOf({ mark: 'hall-2-9', bed: 0, top: 100, startRad: -0.05, endRad: 0.05, cutBy: ['entrance'] });
    expect(() => blockSolids(kernel, setout, [gone])).toThrow(/hall-2-9: .* left nothing/);
  });
});
