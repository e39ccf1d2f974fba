import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { THIN_MASONRY } from '../../lib/base/tolerances.js';
import { rayHouse } from '../../lib/drawings/ray-house.js';
import { intersectIntervals } from '../../lib/math/intervals.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { levelMaterial } from '../../lib/setout/material.js';
import { clusters } from '../properties/clusters.js';
import { samples } from './houses.js';
import { randoms } from './oracle.js';

const random = fc
  .sample(clusters, { numRuns: 8, seed: 4711 })
  .map((house, i): [string, HouseSetout] => [`random ${i}`, setOutHouse(house)]);

describe('what is told of a ray from whole walls', () => {
  it.each([...samples(), ...random])('is what following it through the house tells: %s', (_, house) => {
    const next = randoms(house.domes.length);
    const told = { hidden: 0, face: 0, void: 0, free: 0, unknown: 0 };
    const wrong: string[] = [];
    for (let i = 0; i < 40; i++) {
      const turn = next() * 2 * Math.PI;
      const direction: Vec2 = i < 10 ? [0, i % 2 === 0 ? 1 : -1] : [Math.cos(turn), Math.sin(turn)];
      const inWay = rayHouse(house, direction);
      for (let j = 0; j < 25; j++) {
        const dome = house.domes[Math.floor(next() * house.domes.length)];
        if (!dome) throw new Error('a house has domes');
        const reach = dome.springingRadius * 1.2;
        const through: Vec2 = [dome.at[0] + (2 * next() - 1) * reach, dome.at[1] + (2 * next() - 1) * reach];
        const z = next() * dome.topZ;
        const plane = next() < 0.5 ? Number.POSITIVE_INFINITY : next() * 4000 - 1000;
        // Half of the places lie on faces.
        const faces = levelMaterial(house, z, through, direction).flat();
        const t = next() < 0.5 ? (faces[Math.floor(next() * faces.length)] ?? 0) : 0;
        const at: Vec2 = [through[0] + t * direction[0], through[1] + t * direction[1]];
        const exact = levelMaterial(house, z, at, direction);
        const hidden = exact.some(([from, to]) => to > THIN_MASONRY && from < plane) || plane <= THIN_MASONRY;
        const near = exact.some(([from, to]) => to > -THIN_MASONRY && from < THIN_MASONRY);
        const way = inWay(at);
        const quick = way.quickly(z, at, plane);
        told[quick]++;
        const agrees =
          quick === 'unknown' ||
          (quick === 'hidden' && hidden) ||
          (quick === 'face' && !hidden && near) ||
          (quick === 'void' && !hidden && !near) ||
          (quick === 'free' && !hidden);
        if (!agrees) wrong.push(`${quick} at ${at}, ${z} along ${direction}, plane at ${plane}`);
        // What the way leaves out of the house isn't met.
        expect(levelMaterial(way.house, z, at, direction)).toEqual(exact);
        // Nor is what lies beside the stretch that is asked.
        const asked: [number, number] = [-THIN_MASONRY, Math.max(0, plane)];
        const within = levelMaterial(way.house, z, at, direction, asked);
        expect(intersectIntervals(within, [asked])).toEqual(intersectIntervals(exact, [asked]));
      }
    }
    expect(wrong).toEqual([]);
    for (const told1 of [told.hidden, told.face, told.void]) expect(told1).toBeGreaterThan(20);
  });
});
