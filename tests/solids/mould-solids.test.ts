import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDescription } from '../../lib/description/read.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import { mouldDimensions } from '../../lib/masonry/moulds/dimensions.js';
import { castShape, LINING } from '../../lib/masonry/moulds/shape.js';
import { blockAtHome } from '../../lib/masonry/placed.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { mouldBlock, mouldLining } from '../../lib/solids/mould-solids.js';
import { auditStl, writeStl } from '../../lib/writers/stl.js';
import { readByAdmesh } from '../readers/admesh.js';
import { domeOf, houseOf } from '../tools/house.js';

const family = readDescription(readFileSync('samples/family-house.yaml', 'utf8'), 'family-house.yaml');
const flat = houseOf({ domes: [domeOf()], blocks: { ...houseOf().blocks, faces: 'flat' } });
const cases = [
  ['curved', family],
  ['flat', flat],
] as const;

describe.each(cases)('solids of moulds with %s faces', (_, house) => {
  const { moulds } = planMasonry(setOutHouse(house)).moulds;
  const shapes = moulds
    .filter((_, i) => i % 4 === 0)
    .map(({ id, mould }) => ({ id, mould, shape: castShape(blockAtHome(mould), house.blocks) }));
  const shrunk = (1 - house.blocks.shrinkage) ** 3;

  it('are closed, and the block is the mould’s volume less the shrinkage', () => {
    for (const { id, mould, shape } of shapes) {
      const block = mouldBlock(id, shape, { surface: 0.03 });
      const { volume } = mouldDimensions(mould, house.blocks);
      expect(auditMesh(block), id).toEqual([]);
      expect(meshVolume(block) / (volume * shrunk), id).toBeCloseTo(1, 4);
      expect(meshEuler(block).map((p) => p.euler)).toEqual([2]);
    }
  });

  it('the lining holds the block as cast, and is as thick as it says', () => {
    for (const { id, mould, shape } of shapes) {
      const lining = mouldLining(id, shape, { surface: 0.03 });
      expect(auditMesh(lining), id).toEqual([]);
      expect(meshEuler(lining).map((p) => p.euler)).toEqual([2]);
      // Its skin without the rim, closed by the struck plane, is the outside less the inside.
      const { volume } = mouldDimensions(mould, house.blocks);
      expect(insideOf(lining) / volume, id).toBeCloseTo(1, 4);
      const { intrados, extrados, thickness } = mouldDimensions(mould, house.blocks);
      const along = house.blocks.faces === 'flat' ? 'chord' : 'arc';
      const run = (edge: 'lower' | 'middle' | 'upper') => intrados.edges[edge][along] + extrados.edges[edge][along];
      const faces = (run('middle') * (intrados.height + extrados.height)) / 2;
      const beds = (thickness * (run('lower') + run('upper'))) / 2;
      const head = (thickness * (intrados.height + extrados.height)) / 2;
      const sheet = (faces + beds + head) * LINING;
      expect(meshVolume(lining) / sheet, id).toBeGreaterThan(1);
      expect(meshVolume(lining) / sheet, id).toBeLessThan(1.12);
    }
  });
});

it('admesh reads block and lining as one closed part each, of the volumes that we tell', () => {
  const { moulds } = planMasonry(setOutHouse(family)).moulds;
  for (const { id, mould } of moulds.filter((_, i) => i % 16 === 0)) {
    const shape = castShape(blockAtHome(mould), family.blocks);
    const { volume } = mouldDimensions(mould, family.blocks);
    const dry = volume * (1 - family.blocks.shrinkage) ** 3;
    for (const [mesh, wanted] of [
      [mouldBlock(id, shape), dry],
      [mouldLining(id, shape), meshVolume(mouldLining(id, shape))],
    ] as const) {
      const bytes = writeStl([mesh], { title: id });
      expect(auditStl(bytes).faulty).toEqual([]);
      const read = readByAdmesh(bytes);
      expect(read).toMatchObject({ disconnected: 0, parts: 1, degenerate: 0, backwardsEdges: 0, facetsReversed: 0 });
      expect(read.volume / wanted).toBeCloseTo(1, 3);
    }
  }
});

/** Volume within the inner faces, closed by the plane of the struck head: the faces come inside out. */
function insideOf(lining: ReturnType<typeof mouldLining>): number {
  const half = lining.positions.length / 6;
  const point = (v: number) => [0, 1, 2].map((i) => lining.positions[3 * v + i] as number) as [number, number, number];
  // Any point of the plane serves as the tip of all tetrahedra: the plane itself then adds nothing.
  const tip = point(0);
  let six = 0;
  for (let t = 0; t < lining.triangles.length; t += 3) {
    const corners = [0, 1, 2].map((i) => lining.triangles[t + i] as number);
    const rim = lining.faceNames[lining.faceOf[t / 3] as number] === 'rim';
    if (rim || corners.some((v) => v >= half)) continue;
    const [a, b, c] = corners.map((v) => point(v).map((x, i) => x - (tip[i] as number))) as [
      number[],
      number[],
      number[],
    ];
    const [ax, ay, az] = a as [number, number, number];
    const [bx, by, bz] = b as [number, number, number];
    const [cx, cy, cz] = c as [number, number, number];
    six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return -six / 6;
}
