import { beforeAll, describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import type { Mesh } from '../../lib/documents/mesh.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import type { Block } from '../../lib/masonry/block.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { writeStl } from '../../lib/writers/stl.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { LAYOUTS, passageOf } from './clusters.js';
import { faceArea, unionVolume } from './support.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

const FACES = ['bed-lower', 'bed-upper', 'extrados', 'intrados', 'perpend-end', 'perpend-start'];
const total = (meshes: readonly Mesh[]) => meshes.reduce((sum, mesh) => sum + meshVolume(mesh), 0);

const layout = (name: string) => houseOf(LAYOUTS[name] as Partial<House>);
const HOUSES: Readonly<Record<string, House>> = {
  'two that abut, alike': layout('two that abut, alike and in line with the axes'),
  'deep abutment with arches': layout('deep abutment with arches beside it'),
  'three in a row': layout('three in a row, the last cut on both sides'),
  'three that abut one another': layout('three that abut one another'),
  'two apart with a passage': layout('two apart with a passage'),
  'flat faces': {
    ...layout('two that abut without a way between them'),
    blocks: { ...houseOf().blocks, faces: 'flat', length: 300 },
  },
};

describe.each(Object.entries(HOUSES))('%s', (_, house) => {
  const setout = setOutHouse(house);
  const { blocks } = layBlocks(setout);
  const surface = 4;

  it('blocks are closed, single and named, and cut by what the table says', () => {
    const meshes = blockSolids(kernel, setout, blocks, { surface });
    expect(meshes.map((m) => m.name)).toEqual(blocks.map((b) => b.mark));
    for (const [i, mesh] of meshes.entries()) {
      expect(auditMesh(mesh), mesh.name).toEqual([]);
      expect(meshEuler(mesh).map((piece) => piece.euler)).toEqual([2]);
      const cuts = (blocks[i] as Block).cutBy.map((id) => `cut:${id}`);
      for (const face of mesh.faceNames) expect([...FACES, ...cuts]).toContain(face);
    }
    for (const scale of [1, 1 / 50]) expect(writeStl(meshes, { title: 'blocks', scale }).length).toBeGreaterThan(84);
  });

  it('blocks keep off one another, arches, passages and the earlier domes', async () => {
    const meshes = blockSolids(kernel, setout, blocks, { surface });
    const { parts } = houseSolids(kernel, setout, { surface });
    // Flat beds of the higher courses cross one another.
    const laid = house.blocks.faces === 'flat' ? meshes.filter((_, i) => (blocks[i] as Block).course < 6) : meshes;
    const ways = parts.filter((p) => /^(arch|passage):|:skewback$/.test(p.name));
    const all = [...laid, ...ways];
    expect((await unionVolume(all)) / total(all) - 1).toBeCloseTo(0, 5);
    // A dome's own shell holds its blocks; none of a later dome's may enter it.
    const [first] = setout.domes;
    const shell = parts.filter((p) => p.name === `${first?.id}:shell`);
    const others = laid.filter((mesh) => !mesh.name.startsWith(`${first?.id}-`));
    expect((await unionVolume([...shell, ...others])) / total([...shell, ...others]) - 1).toBeCloseTo(0, 6);
  });

  it('volumes come to those found by quadrature', () => {
    const meshes = blockSolids(kernel, setout, blocks, { surface: 0.5 });
    for (const [i, block] of blocks.entries())
      expect(Math.abs(meshVolume(meshes[i] as Mesh) / block.volume - 1), block.mark).toBeLessThan(2e-2);
    expect(total(meshes) / blocks.reduce((sum, block) => sum + block.volume, 0) - 1).toBeCloseTo(0, 3);
  });
});

describe('a cut along an earlier dome', () => {
  const house = houseOf({
    domes: [domeOf({ id: 'hall' }), domeOf({ id: 'lab', at: [0, 5000], radius: 2400 })],
    passages: [passageOf(['hall', 'lab'], { id: 'link' })],
  });
  const setout = setOutHouse(house);
  const { blocks } = layBlocks(setout);
  const surface = 2;

  it('stands a joint off its outside, at the same height', () => {
    const meshes = blockSolids(kernel, setout, blocks, { surface });
    const cut = meshes.filter((_, i) => (blocks[i] as Block).cutBy.includes('hall'));
    expect(cut.length).toBeGreaterThan(20);
    let along = 0;
    for (const mesh of cut) {
      for (let v = 0; v < mesh.positions.length; v += 3) {
        const [x, y, z] = mesh.positions.subarray(v, v + 3) as unknown as [number, number, number];
        const off = Math.hypot(x, y) - (setout.domes[0]?.outerRadiusAt(z) as number);
        expect(off, `${mesh.name} at ${x}, ${y}, ${z}`).toBeGreaterThan(10 - surface);
        if (off < 10 + surface) along++;
      }
      expect(faceArea(mesh, 'cut:hall')).toBeGreaterThan(0);
    }
    expect(along).toBeGreaterThan(3 * cut.length);
  });

  it('leaves the earlier dome as it was laid alone', () => {
    const alone = setOutHouse(houseOf({ domes: house.domes.slice(0, 1) }));
    const marks = new Map(layBlocks(alone).blocks.map((b) => [b.mark, b]));
    const own = blocks.filter((b) => b.domeId === 'hall' && !b.cutBy.includes('link'));
    const meshes = blockSolids(kernel, setout, own, { surface });
    const before = blockSolids(
      kernel,
      alone,
      own.map((b) => marks.get(b.mark) as Block),
      { surface },
    );
    expect(own.length).toBeGreaterThan(300);
    expect(meshes).toEqual(before);
  });

  it('a passage stands a joint off the blocks on both its sides', () => {
    const meshes = blockSolids(kernel, setout, blocks, { surface });
    const half = 500 + 200 + 10;
    let touching = 0;
    for (const mesh of meshes.filter((_, i) => (blocks[i] as Block).cutBy.includes('link'))) {
      for (let v = 0; v < mesh.positions.length; v += 3) {
        const [x, , z] = mesh.positions.subarray(v, v + 3) as unknown as [number, number, number];
        if (z < 1000) expect(Math.abs(x), mesh.name).toBeGreaterThan(half - 1e-6);
        if (Math.abs(Math.abs(x) - half) < 1e-6) touching++;
      }
    }
    expect(touching).toBeGreaterThan(20);
  });

  it('says what is missing when a block is cut by something that the house does not have', () => {
    const block = { ...(blocks[0] as Block), mark: 'hall-1-1', cutBy: ['shed'] };
    expect(() => blockSolids(kernel, setout, [block])).toThrow(/hall-1-1 is cut by shed, which the house/);
  });

  it('says which block it is when an earlier dome leaves nothing', () => {
    const gone = blocks.find((b) => b.domeId === 'lab' && b.course === 3) as Block;
    const inside = {
      ...gone,
      mark: 'lab-3-99',
      startRad: Math.PI - 0.05,
      endRad: Math.PI + 0.05,
      cutBy: ['hall'],
    };
    expect(() => blockSolids(kernel, setout, [inside])).toThrow(/lab-3-99: .* left nothing/);
  });

  it('openings near the abutment are cut as well', () => {
    const window = openingOf({
      id: 'light',
      in: 'lab',
      bearingDeg: 95,
      use: 'window',
      sill: 600,
      height: 900,
      width: 700,
    });
    const both = layBlocks(setOutHouse({ ...house, openings: [window] })).blocks;
    expect(new Set(both.flatMap((b) => b.cutBy))).toEqual(new Set(['hall', 'link', 'light']));
  });
});
