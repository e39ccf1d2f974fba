import { beforeAll, describe, expect, it } from 'vitest';
import type { Mesh } from '../../lib/documents/mesh.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import { archJoints } from '../../lib/masonry/arch-joints.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { castPieces } from '../../lib/masonry/cast-pieces.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { DEG } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { pieceSolids } from '../../lib/solids/piece-solids.js';
import { domeOf, houseOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { HEADS, openingLike, unionVolume } from './support.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

/** Four heads, barrels and flush ones in turn. */
const openings = HEADS.map((head, i) => {
  const kind = (['barrel', 'flush', 'flush niche', 'barrel niche'] as const)[(i + 3) % 4] as 'barrel';
  const own = openingLike(kind, head, { id: `way${i}`, bearingDeg: 85 * i + 5, sill: i === 0 ? 0 : 400 });
  return { ...own, arch: { ...own.arch, madeAs: 'voussoirs' as const, voussoirs: [9, 7, 5, 3][i] as number } };
});
const HOUSES = {
  'hemisphere with oculus': houseOf({
    domes: [domeOf({ oculus: { radius: 350, curb: 150, upstand: 100 } })],
    openings,
  }),
  'low segmental, its skewback cut': houseOf({
    domes: [domeOf({ shape: 'segmental', rise: 1800, stemWall: 900 })],
    openings,
  }),
  'abutted, with a passage': houseOf({
    domes: [
      domeOf({ radius: 2200 }),
      domeOf({ id: 'lab', shape: 'segmental', radius: 2000, rise: 1300, stemWall: 1100, at: [4100, 600] }),
    ],
    passages: [
      {
        id: 'link',
        between: ['hall', 'lab'],
        width: 900,
        height: 1900,
        head: { shape: 'semicircular', rise: 450 },
        ring: 150,
      },
    ],
  }),
};
const built = new Map<string, ReturnType<typeof build>>();
function build(name: keyof typeof HOUSES) {
  const setout = setOutHouse(HOUSES[name]);
  const pieces = castPieces(setout);
  const laid = layBlocks(setout);
  return { setout, pieces, laid, meshes: pieceSolids(kernel, setout, pieces, { surface: 1 }) };
}
const buildOf = (name: string) => {
  const found = built.get(name) ?? build(name as keyof typeof HOUSES);
  built.set(name, found);
  return found;
};

describe.each(Object.keys(HOUSES))('cast pieces: %s', (name) => {
  it('have marks of their own, are closed, and as large as quadrature finds them', () => {
    const { pieces, meshes } = buildOf(name);
    const rows = [...pieces.arches, ...pieces.rings];
    expect(rows.length).toBeGreaterThan(3);
    expect(new Set(rows.map((p) => p.mark)).size).toBe(rows.length);
    expect(meshes.map((m) => m.name)).toEqual(rows.map((p) => p.mark));
    for (const [k, mesh] of meshes.entries()) {
      expect(auditMesh(mesh), mesh.name).toEqual([]);
      expect(
        meshEuler(mesh).map((p) => p.euler),
        mesh.name,
      ).toEqual([2]);
      expect(Math.abs(meshVolume(mesh) / (rows[k]?.volume as number) - 1), mesh.name).toBeLessThan(5e-3);
    }
  });

  it('overlap neither one another nor the blocks, and with all joints fill the masonry within 1e-6', async () => {
    const { setout, pieces, laid, meshes } = buildOf(name);
    const blocks = blockSolids(kernel, setout, laid.blocks, { surface: 1 });
    // Crown pieces are cast against the last course without a joint: there facets alone decide.
    const own = meshes.filter(
      (_, k) => k < pieces.arches.length || pieces.rings[k - pieces.arches.length]?.kind === 'skewback',
    );
    const all: Mesh[] = [...blocks, ...own];
    const total = all.reduce((sum, m) => sum + meshVolume(m), 0);
    expect((await unionVolume(all)) / total - 1).toBeCloseTo(0, 6);
    const balance = balanceOf(setout, laid, pieces);
    expect(Math.abs(balance.error)).toBeLessThan(1.5e-6);
    expect(balance.pieceJoints).toBeGreaterThan(0);
  });
});

describe('joints of an arch', () => {
  const arch = (k: number) =>
    setOutHouse(HOUSES['hemisphere with oculus']).arches[k] as never as { section: Parameters<typeof archJoints>[0] };

  it('of a semicircle are radii in equal steps, one keystone on the axis: 9 over 180° are 20° each', () => {
    const joints = archJoints(arch(0).section, 9);
    expect(joints.map(({ out }) => Math.atan2(out[1], out[0]) / DEG)).toEqual(
      [0, 20, 40, 60, 80].map((a) => expect.closeTo(a, 9) as number),
    );
  });

  it('of a segmental head start at a skewback on the radius: s 0.9, f 0.2, R = (s²/4 + f²)/(2f)', () => {
    const [first] = archJoints(arch(1).section, 7);
    const radius = (900 * 900) / 4 / (2 * 200) + 100;
    expect(first?.out[0]).toBeCloseTo(450 / radius, 9);
  });

  it('of a pointed head point to the centre of their own side, the last astride the apex', () => {
    const { section } = arch(2);
    const joints = archJoints(section, 5);
    const past = section.arc?.past as number;
    for (const { at, out } of joints) {
      const t = (at[1] - section.springingZ) / (out[1] || 1);
      if (out[1] > 1e-9) expect(at[0] - t * out[0]).toBeCloseTo(-past, 6);
    }
    expect(joints.at(-1)?.at[0]).toBeGreaterThan(0);
  });

  it('of a flat head meet in one point, skewbacks at 60°, the soffit in equal parts', () => {
    const joints = archJoints(arch(3).section, 3);
    expect(Math.atan2(joints[0]?.out[1] as number, joints[0]?.out[0] as number) / DEG).toBeCloseTo(60, 9);
    expect(joints.map(({ at }) => at[0])).toEqual([450, 150].map((u) => expect.closeTo(u, 9) as number));
  });
});

describe('a voussoir against its closed form (Ri 0.5, t 0.15, 9 over 180°, derived)', () => {
  it('has the face of a sector, 0.0301069 m², between joints without mortar', () => {
    // Far from the axis a flush wall is nearly flat: the volume over its depth comes to the face.
    const opening = openingLike('barrel', { shape: 'semicircular', rise: 500 }, { width: 1000, height: 1500, sill: 0 });
    const house = houseOf({
      domes: [domeOf({ radius: 3000, stemWall: 2600 })],
      openings: [{ ...opening, arch: { ring: 150, face: 2000, madeAs: 'voussoirs', voussoirs: 9 } }],
    });
    const thin = { ...house, blocks: { ...house.blocks, joint: 1e-6 } };
    const { arches } = castPieces(setOutHouse(thin));
    const key = arches.find((p) => p.kind === 'keystone');
    // The inner end is the intrados: at |u| its distance from the axis is √(R² − u²), near R − u²/2R.
    const mean = 5250 - 3000 + 200 ** 2 / 12 / 6000;
    expect((key?.volume as number) / 1e6 / mean).toBeCloseTo(0.0301069, 5);
    expect(arches).toHaveLength(9);
  });
});
