import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import type { LaidHouse } from '../../lib/masonry/block.js';
import { bondHouse } from '../../lib/masonry/bond/bond.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import type { Intervals } from '../../lib/math/intervals.js';
import { earlierThan, type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { inMaterial, levelMaterial } from '../../lib/setout/material.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { nodeKernel } from '../tools/kernel.js';
import { houseTopology } from '../tools/topology.js';
import { abuts, clusterAttempts, clusters } from './clusters.js';
import { courtyardsOf, expectedHandles } from './clusters-handles.js';
import { HEADS, SHAPES } from './houses.js';

const SEED = 20260611;
const RUNS = 200;
const POINTS = 120;

/** What must hold of every cluster. */
function holds(kernel: Kernel, setout: HouseSetout, laid: LaidHouse): void {
  expect(Math.abs(balanceOf(setout, laid).error)).toBeLessThan(1e-4);
  passagesComeOut(setout);
  linesAgree(setout);
  solidsClose(kernel, setout);
}

/** House and parts are closed; parts share nothing and leave nothing out; the house has the pieces and handles that its rooms and ways tell, counted twice. */
function solidsClose(kernel: Kernel, setout: HouseSetout): void {
  const { whole, parts } = houseSolids(kernel, setout, { surface: 8 });
  for (const mesh of [whole, ...parts]) expect(auditMesh(mesh), mesh.name).toEqual([]);
  expect(parts.reduce((sum, part) => sum + meshVolume(part), 0) / meshVolume(whole)).toBeCloseTo(1, 6);
  const surfaces = meshEuler(whole);
  const topology = houseTopology(setout);
  expect(surfaces).toHaveLength(topology.pieces);
  expect(surfaces.reduce((sum, piece) => sum + 1 - piece.euler / 2, 0)).toBe(topology.handles);
  expect(courtyardsOf(setout) ?? topology.courtyards).toBe(topology.courtyards);
  expect(topology.handles).toBe(expectedHandles(setout.house, topology.courtyards));
}

/** Points spread over the house lie in material or not, whichever line is followed through them. */
function linesAgree(setout: HouseSetout): void {
  const { domes } = setout;
  for (let k = 1; k <= POINTS; k++) {
    // Steps that never repeat: fractions of the golden ratio, of the square roots of 2 and 3.
    const dome = domes[k % domes.length] as (typeof domes)[number];
    const reach = dome.springingRadius + 2 * dome.thickness;
    const turn = 2 * Math.PI * ((k * Math.SQRT2) % 1);
    // Most points near the wall.
    const radius = reach * (1 - 0.3 * ((k * Math.sqrt(3)) % 1));
    const [x, y] = [dome.at[0] + radius * Math.cos(turn), dome.at[1] + radius * Math.sin(turn)];
    const z = -300 + (dome.topZ + 300) * ((k * 0.618034) % 1);
    const upright = inMaterial(setout, [x, y, z]);
    const holds = (line: Intervals) => line.some(([from, to]) => from < 0 && to > 0);
    expect(holds(levelMaterial(setout, z, [x, y], [1, 0])), `${x} ${y} ${z} eastward`).toBe(upright);
    expect(holds(levelMaterial(setout, z, [x, y], [0, 1])), `${x} ${y} ${z} northward`).toBe(upright);
  }
}

/** Every line of a passage runs through masonry from one room to the other, and ends before both axes. */
function passagesComeOut({ passages }: HouseSetout): void {
  for (const { topZ, distance, outerHalfAt, stretchAt } of passages)
    for (let z = 0; z <= topZ; z += topZ / 40)
      for (let share = -1; share <= 1; share += 0.25) {
        const [from, to] = stretchAt(share * outerHalfAt(z), z);
        expect(to - from).toBeGreaterThan(0);
        expect(from).toBeGreaterThan(0);
        expect(to).toBeLessThan(distance);
      }
}

/** What the clusters show, each thing counted once a house. */
function featuresOf(house: House, setout: HouseSetout): string[] {
  const vaults = [...house.openings, ...house.passages];
  return [
    ...new Set([
      ...house.domes.map((d) => d.profile.shape),
      ...vaults.map((v) => `${v.head.shape} head`),
      ...house.openings.map((o) => o.use),
      ...(abuts(house) ? ['abutment'] : []),
      ...(house.passages.length > 0 ? ['passage'] : []),
      ...(setout.domes.some((dome) => earlierThan(setout, dome).length > 1) ? ['dome between others'] : []),
      `${house.domes.length} domes`,
    ]),
  ];
}

describe('random clusters', () => {
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await nodeKernel();
  });

  it('the generator seldom makes a cluster that the rules refuse', () => {
    const made = fc.sample(fc.noBias(clusterAttempts), { seed: SEED, numRuns: 300 });
    expect(made.filter((h) => h !== null).length / made.length).toBeGreaterThan(0.7);
  }, 120_000);

  it(`${RUNS} clusters, seed ${SEED}: masonry balances, passages come out, lines agree, solids close`, () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(fc.noBias(clusters), (house) => {
        const setout = bondHouse(setOutHouse(house)).setout;
        for (const feature of featuresOf(house, setout)) seen.set(feature, (seen.get(feature) ?? 0) + 1);
        holds(kernel, setout, layBlocks(setout));
      }),
      { seed: SEED, numRuns: RUNS, endOnFailure: true },
    );
    const least = (feature: string, part: number) =>
      expect(seen.get(feature) ?? 0, feature).toBeGreaterThanOrEqual(RUNS * part);
    for (const shape of SHAPES) least(shape, 0.25);
    for (const head of HEADS) least(`${head} head`, 0.25);
    for (const use of ['door', 'window', 'vent', 'niche']) least(use, 0.25);
    for (const count of [2, 3, 4]) least(`${count} domes`, 0.2);
    least('abutment', 0.25);
    least('passage', 0.25);
    least('dome between others', 0.03);
  }, 1_800_000);
});
