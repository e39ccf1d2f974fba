import { describe, expect, it } from 'vitest';
import { type Column, type ColumnBody, columnLeft, columnRuns, revolvedBox } from '../../lib/masonry/column.js';
import { blockBodies } from '../../lib/masonry/cut.js';
import { type Cutter, sectionCutter } from '../../lib/masonry/cutter.js';
import { alike, kinksAlong } from '../../lib/masonry/kinks.js';
import { cuttersOf, layBlocks } from '../../lib/masonry/lay.js';
import { cutVolume, wholeVolume } from '../../lib/masonry/measure.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { signChange } from '../../lib/math/roots.js';
import { sectionOf } from '../../lib/math/section.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { stemSpan } from '../../lib/setout/span.js';
import { sampleHouse } from '../tools/built.js';

/** A bath and a kitchen that abut earlier domes, with passages through the common walls. */
const { setout } = planMasonry(setOutHouse(sampleHouse('family-house')));

/** The same by columns alone, as many as it takes: it knows nothing of kinks. */
function byManyColumns(body: ColumnBody, cutters: readonly Cutter[]): number {
  const [rows, depths] = [300, 100];
  let sum = 0;
  for (let a = 0; a < rows; a++) {
    for (let b = 0; b < depths; b++) {
      const column = body((a + 0.5) / rows, (b + 0.5) / depths);
      sum += column.weight * columnLeft(column, cutters);
    }
  }
  return sum / (rows * depths);
}

describe('the volume that cuts leave of a block', () => {
  it('is what very many columns hold, at every place about openings, passages and earlier domes', () => {
    const errors: number[] = [];
    for (const [n, block] of layBlocks(setout).blocks.entries()) {
      // Where two cuts meet within a block is hardest.
      if (block.cutBy.length === 0 || (block.cutBy.length === 1 && n % 5 > 0)) continue;
      const dome = setout.domes.find(({ id }) => id === block.domeId) as DomeSetout;
      const body = blockBodies(setout, dome, block)(block);
      const near = cuttersOf(setout, dome).filter(({ id }) => block.cutBy.includes(id));
      errors.push(Math.abs(cutVolume(body, near) - byManyColumns(body, near)) / wholeVolume(body));
    }
    expect(errors.length).toBeGreaterThan(40);
    expect(Math.max(...errors)).toBeLessThan(1e-4);
    expect(errors.reduce((all, e) => all + e, 0) / errors.length).toBeLessThan(1e-5);
  });

  it('and the longest run of what is left is that of very many lines at mid-thickness', () => {
    const misses: number[] = [];
    for (const block of layBlocks(setout).blocks) {
      // Of a block in two pieces each has its own.
      if (block.cutBy.length === 0 || block.seed) continue;
      const dome = setout.domes.find(({ id }) => id === block.domeId) as DomeSetout;
      const body = blockBodies(setout, dome, block)(block);
      const near = cuttersOf(setout, dome).filter(({ id }) => block.cutBy.includes(id));
      let longest = 0;
      for (let k = 0; k <= 400; k++) {
        const column = body(k / 400, 0.5);
        for (const [from, to] of columnRuns(column, near)) longest = Math.max(longest, (to - from) * column.unit);
      }
      misses.push(Math.abs(block.longestRun - longest));
    }
    expect(misses.length).toBeGreaterThan(100);
    expect(Math.max(...misses)).toBeLessThan(0.3);
  });

  it('is exact beside a flat head: ∫ 2 r asin(w / r) dr in closed form', () => {
    const half = 500;
    const section = sectionOf({ width: 2 * half, height: 2000, sill: 0, head: { shape: 'flat', rise: 0 } });
    const cutter = sectionCutter({ id: 'door', bearingRad: 0.05, section, ring: 0, baseZ: 0 }, 0);
    const [inner, outer] = [2400, 2650];
    const body = revolvedBox(stemSpan(inner, 600), [0, 600], [0, outer - inner], [-Math.PI, Math.PI]);
    const primitive = (r: number) => r * r * Math.asin(half / r) + half * Math.sqrt(r * r - half * half);
    const left = Math.PI * (outer ** 2 - inner ** 2) - (primitive(outer) - primitive(inner));
    expect(cutVolume(body, [cutter]) / (600 * left)).toBeCloseTo(1, 9);
  });
});

describe('kinks along a line of columns', () => {
  const section = sectionOf({ width: 900, height: 1500, sill: 0, head: { shape: 'semicircular', rise: 450 } });
  const round = sectionCutter({ id: 'door', bearingRad: 0, section, ring: 150, baseZ: 0 }, 10);
  // Upright column of a wall past the crown of the ring, which lies 160 over the clear height of 1500.
  const at = (t: number) => 1500 + 300 * t;
  const line = (bearing: readonly [number, number]) => {
    const body = revolvedBox(stemSpan(3000, 2400), [1500, 1800], [0, 250], bearing);
    return (t: number) => body(t, 0);
  };
  /** Where the ring's outer half width is `half`. */
  const heightOf = (half: number) => 1050 + Math.sqrt(610 * 610 - half * half);

  it('lie where a cut begins, and where it passes each end of the run soon after', () => {
    const { breaks } = kinksAlong(line([-0.03, 0.05]), [round], 6);
    const found = breaks.slice(1, -1).map(at);
    const expected = [heightOf(3000 * Math.sin(0.05)), heightOf(3000 * Math.sin(0.03)), 1660];
    expect(found.length).toBe(3);
    for (const [k, z] of expected.entries()) expect(found[k]).toBeCloseTo(z, 2);
  });

  it('are told apart by kind: which end passes which', () => {
    const kinksOf = (bearing: readonly [number, number]) => kinksAlong(line(bearing), [round], 6).kinks;
    const kinks = kinksOf([-0.03, 0.05]);
    expect(alike(kinks, kinksOf([-0.031, 0.05]))).toBe(true);
    expect(alike(kinks, kinksOf([-0.03, 0.3]))).toBe(false);
    // Both ends of the run are passed, but in the other order: by different ends of the cut.
    expect(alike(kinks, kinksOf([-0.05, 0.03]))).toBe(true);
  });

  it('lie where two cuts meet', () => {
    const other = sectionCutter({ id: 'window', bearingRad: 0.2, section, ring: 150, baseZ: 0 }, 10);
    const { breaks } = kinksAlong(line([-0.5, 0.8]), [round, other], 6);
    expect(breaks.slice(1, -1).map(at)[0]).toBeCloseTo(heightOf(3000 * Math.sin(0.1)), 2);
  });
});

describe('kinks within one step of the scan', () => {
  const cutter = { heights: [] as number[] } as unknown as Cutter;
  /** Columns from 0 to 1 of which `cut` takes a part at each place along the line. */
  const cutAlong = (cut: (t: number) => readonly [number, number] | null) => (t: number) =>
    ({ z: 0, weight: 1, low: 0, high: 1, unit: 1, cut: () => cut(t) }) as unknown as Column;

  it('are found where two ends touch and part again', () => {
    const dip = (t: number) => 0.999 + 5 * (t - 0.46) ** 2;
    const { breaks } = kinksAlong(
      cutAlong((t) => [0.5, dip(t)]),
      [cutter],
      6,
    );
    const half = Math.sqrt(0.001 / 5);
    expect(breaks.length).toBe(4);
    expect(breaks[1]).toBeCloseTo(0.46 - half, 5);
    expect(breaks[2]).toBeCloseTo(0.46 + half, 5);
  });

  it('are found where a cut begins and soon takes the whole', () => {
    const spread = (t: number) => 3 * Math.sqrt(t - 0.55);
    const { breaks } = kinksAlong(
      cutAlong((t) => (t > 0.55 ? [0.4 - spread(t), 0.4 + spread(t)] : null)),
      [cutter],
      6,
    );
    const expected = [0, 0.55, 0.55 + (0.4 / 3) ** 2, 0.55 + (0.6 / 3) ** 2, 1];
    expect(breaks.length).toBe(expected.length);
    for (const [k, at] of expected.entries()) expect(breaks[k]).toBeCloseTo(at, 5);
  });
});

describe('a change of sign', () => {
  it('is found between two known values, to the step asked for', () => {
    const cubic = (x: number) => x ** 3 - 2;
    expect(signChange(cubic, [0, -2], [2, 6], 1e-9)).toBeCloseTo(2 ** (1 / 3), 8);
    const root = (x: number) => Math.sqrt(1 - x) - 0.01;
    expect(signChange(root, [0, 0.99], [1, -0.01], 1e-9)).toBeCloseTo(0.9999, 8);
  });
});
