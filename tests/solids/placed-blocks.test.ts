import { beforeAll, describe, expect, it } from 'vitest';
import type { Mesh } from '../../lib/documents/mesh.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import type { LaidBlock } from '../../lib/masonry/block.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { courseTable } from '../../lib/tables/courses.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { unionVolume } from './support.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

const openings = [
  openingOf({ bearingDeg: 180, height: 1700, width: 900 }),
  openingOf({ id: 'bay', bearingDeg: 65, use: 'window', sill: 500, height: 900, width: 1100 }),
];
const DOMES = {
  hemisphere: domeOf({ radius: 2400, stemWall: 500, oculus: { radius: 350, curb: 150, upstand: 100 } }),
  'low segmental': domeOf({ radius: 2400, shape: 'segmental', rise: 1500, stemWall: 800 }),
  elliptical: domeOf({ radius: 2400, shape: 'elliptical', rise: 1900, stemWall: 500, at: [5000, -2000] }),
};
const CASES = (Object.keys(DOMES) as (keyof typeof DOMES)[]).flatMap((name) =>
  (['banded', 'free'] as const).map((bond) => ({ name, bond })),
);
const built = new Map<string, ReturnType<typeof build>>();
function build(name: keyof typeof DOMES, bond: 'banded' | 'free') {
  const house = houseOf({ domes: [DOMES[name]], openings });
  // Wide laps make some pieces one with their neighbours.
  const plan = planMasonry(setOutHouse({ ...house, blocks: { ...house.blocks, bond, heaviestKg: 40 } }));
  const laid = layBlocks(plan.setout);
  return { plan, laid, meshes: blockSolids(kernel, plan.setout, laid.blocks, { surface: 1 }) };
}
const buildOf = ({ name, bond }: (typeof CASES)[number]) => {
  const key = `${name} ${bond}`;
  const found = built.get(key) ?? build(name, bond);
  built.set(key, found);
  return found;
};

/** Corners of one face of a mesh, each once, the lowest first and of one height the innermost. */
function cornersOf({ positions, triangles, faceOf, faceNames }: Mesh, face: string, at: readonly [number, number]) {
  const own = new Set<number>();
  for (const [t, f] of faceOf.entries())
    if (faceNames[f] === face) for (let c = 0; c < 3; c++) own.add(triangles[3 * t + c] as number);
  return [...own]
    .map((v) => [...positions.slice(3 * v, 3 * v + 3)] as unknown as readonly [number, number, number])
    .map(([x, y, z]) => ({ x, y, z, r: Math.hypot(x - at[0], y - at[1]) }))
    .sort((a, b) => Math.round((a.z - b.z) * 1e4) || a.r - b.r);
}

describe.each(CASES)('$name, $bond: blocks as their moulds make them', (which) => {
  it('are closed and single, and reach into no neighbour, arch or skewback', async () => {
    const { plan, laid, meshes } = buildOf(which);
    expect(plan.moulds.moulds.length).toBeLessThan(plan.moulds.courses.length);
    for (const mesh of meshes) {
      expect(auditMesh(mesh), mesh.name).toEqual([]);
      expect(meshEuler(mesh).map((piece) => piece.euler)).toEqual([2]);
    }
    const { parts } = houseSolids(kernel, plan.setout, { surface: 1 });
    const all = [...meshes, ...parts.filter((p) => /^arch:|:skewback$/.test(p.name))];
    const total = all.reduce((sum, mesh) => sum + meshVolume(mesh), 0);
    expect((await unionVolume(all)) / total - 1).toBeCloseTo(0, 6);
    const volumes = laid.blocks.reduce((sum, b) => sum + b.volume, 0);
    expect(meshes.reduce((sum, mesh) => sum + meshVolume(mesh), 0) / volumes - 1).toBeCloseTo(0, 2.5);
  });

  it('have the joints, the reach of the beds and the miss of the faces that the table of courses tells, within 0.1 mm', () => {
    const { plan, laid } = buildOf(which);
    const dome = plan.setout.domes[0] as (typeof plan.setout.domes)[number];
    const { rows } = courseTable(plan, laid);
    let [compared, foreign] = [0, 0];
    for (const course of dome.courses) {
      const row = rows.find((r) => r.course === course.index) as (typeof rows)[number];
      const own = (b: LaidBlock) =>
        b.course === course.index && b.cutBy.length === 0 && b.endRad - b.startRad < (2 * Math.PI) / course.count;
      const first = laid.blocks.findIndex((b, k) => {
        const next = laid.blocks[k + 1];
        return own(b) && next !== undefined && own(next) && next.number === b.number + 1;
      });
      if (first < 0) continue;
      const pair = laid.blocks.slice(first, first + 2);
      // Fine enough to have the middles of the edges among the corners of facets.
      const [left, right] = blockSolids(kernel, plan.setout, pair, { surface: 0.05 }) as [Mesh, Mesh];
      const ends = cornersOf(left, 'perpend-end', dome.at);
      const starts = cornersOf(right, 'perpend-start', dome.at);
      const joints = ends.map((p, k) => {
        const q = starts[k] as (typeof starts)[number];
        return Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z);
      });
      expect(Math.abs(Math.min(...joints) - (row['perpend-least'] as number)), left.name).toBeLessThan(0.1);
      expect(Math.abs(Math.max(...joints) - (row['perpend-most'] as number)), left.name).toBeLessThan(0.1);
      const span = dome[course.part];
      const over = (face: string, s: number, side: 1 | -1) => {
        const { r, z, normal } = span.at(s);
        return cornersOf(left, face, dome.at).map((p) => side * ((p.z - z) * normal[0] - (p.r - r) * normal[1]));
      };
      const reach = [...over('bed-lower', course.bed, -1), ...over('bed-upper', course.to, 1)];
      expect(Math.abs(Math.max(...reach) - (row['bed-over'] as number)), left.name).toBeLessThan(0.1);
      expect(Math.abs(-Math.min(...reach) - (row['bed-under'] as number)), left.name).toBeLessThan(0.1);
      const misses = [
        ...cornersOf(left, 'intrados', dome.at).map((p) => Math.abs(p.r - dome.radiusAt(p.z)) * cosAt(span, course)),
      ];
      expect(Math.max(...misses)).toBeLessThan((row['face-miss'] as number) + 0.1);
      compared++;
      if ((row['bed-over'] as number) + (row['bed-under'] as number) > 0.05) foreign++;
    }
    expect(compared).toBeGreaterThan(dome.courses.length * 0.7);
    expect(foreign).toBeGreaterThanOrEqual(which.bond === 'free' ? 2 : 0);
  });

  it('and their joints fill the masonry, each volume by itself', () => {
    const { plan, laid } = buildOf(which);
    expect(Math.abs(balanceOf(plan.setout, laid).error)).toBeLessThan(2e-6);
    if (which.bond === 'free') expect(laid.reach.beds).not.toBe(0);
  });
});

/** Turns a level distance into one along the normal. */
const cosAt = (span: { at(s: number): { normal: readonly [number, number] } }, course: { bed: number; to: number }) =>
  span.at((course.bed + course.to) / 2).normal[0];
