import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { houseTopology } from '../tools/topology.js';
import { LAYOUTS, passageOf } from './clusters.js';

/** Counted by hand from the layouts; the solids themselves are held to the same numbers beside the meshes. */
const told = (part: Partial<House>) => houseTopology(setOutHouse(houseOf(part)));
const layout = (name: string) => LAYOUTS[name] as Partial<House>;
const OPEN = { footing: null, slab: null };
const RING = { footing: { width: 500, depth: 400 }, slab: null };

describe('one dome', () => {
  const window = openingOf({ id: 'light', bearingDeg: 0, use: 'window', sill: 600, height: 1000 });
  const niche = openingOf({ id: 'seat', bearingDeg: 90, use: 'niche', sill: 400, height: 900, depth: 300 });
  const oculus = { radius: 350, curb: 150, upstand: 0 };
  it.each([
    ['sealed: a hollow ball', {}, 0, 2],
    ['a door: a bowl', { openings: [openingOf()] }, 0, 1],
    ['a door and a window: a cup with a handle', { openings: [openingOf(), window] }, 1, 1],
    ['a niche is no way through', { openings: [openingOf(), window, niche] }, 1, 1],
    ['an oculus is one', { openings: [openingOf()], domes: [domeOf({ oculus })] }, 1, 1],
    ['open below, a door and a window', { openings: [openingOf(), window], ...RING }, 2, 1],
    ['without footing the door is a notch', { openings: [openingOf(), window], ...OPEN }, 1, 1],
  ] as const)('%s', (_, part, handles, pieces) => {
    expect(told(part)).toEqual({ handles, pieces, courtyards: 0 });
  });
});

describe('clusters', () => {
  it.each([
    ['two that abut, alike and in line with the axes', {}, 0, 2, 0],
    ['two that abut, alike and in line with the axes', RING, 1, 1, 0],
    ['two that abut, alike and in line with the axes', OPEN, 0, 1, 0],
    ['two that abut without a way between them', {}, 0, 2, 0],
    ['two apart with a passage', {}, 1, 1, 0],
    ['two that stand alone', {}, 0, 4, 0],
    ['two that stand alone', RING, 0, 2, 0],
    ['three that abut one another', {}, 0, 4, 0],
    // The ring of rooms and the court within it.
    ['three in a ring of passages', {}, 2, 1, 1],
    // Besides these, the court's own door makes a second way round.
    ['four about a court', {}, 3, 1, 1],
    ['four about a court', RING, 7, 1, 1],
    ['four about a court', OPEN, 1, 1, 1],
    ['two with oculi and niches', {}, 1, 1, 0],
  ] as const)('%s, ground %j', (name, ground, handles, pieces, courtyards) => {
    expect(told({ ...layout(name), ...ground })).toEqual({ handles, pieces, courtyards });
  });

  it('a footing may close a court that the walls leave open', () => {
    const domes = layout('three in a ring of passages').domes ?? [];
    const gaps = domes.map((d) => ({ ...d, at: [d.at[0] * 0.92, d.at[1] * 0.92] as const }));
    expect(told({ domes: gaps, footing: null, slab: null }).courtyards).toBe(0);
    expect(told({ domes: gaps }).courtyards).toBe(1);
    expect(told({ domes: gaps }).pieces).toBe(1 + 3);
  });

  it('a ring of eight with a passage through each wall', () => {
    const ids = Array.from({ length: 8 }, (_, k) => `d${k}`);
    const at = (k: number) => [7000 * Math.cos((k * Math.PI) / 4), 7000 * Math.sin((k * Math.PI) / 4)] as const;
    const domes = ids.map((id, k) => domeOf({ id, at: at(k), radius: 2600 }));
    const passages = ids.map((id, k) => passageOf([id, ids[(k + 1) % 8] as string]));
    const doors = ids.map((id, k) => openingOf({ id: `${id}-door`, in: id, bearingDeg: (450 - 45 * k) % 360 }));
    // Round the ring, round the court, and in and out by each further door.
    expect(told({ domes, passages, openings: doors })).toEqual({ handles: 1 + 1 + 7, pieces: 1, courtyards: 1 });
  });

  it('does not depend on the order of domes, nor on which a passage names first', () => {
    const { domes = [], passages = [], openings = [] } = layout('three in a row, the last cut on both sides');
    const first = told({ domes, passages, openings });
    const turned = passages.map((p) => ({ ...p, between: [p.between[1], p.between[0]] as const }));
    expect(told({ domes: [...domes].reverse(), passages: turned, openings })).toEqual(first);
  });
});
