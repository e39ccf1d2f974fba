import { describe, expect, it } from 'vitest';
import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const shapes = [
  domeOf({ shape: 'hemisphere' }),
  domeOf({ shape: 'segmental', rise: 1800 }),
  domeOf({ shape: 'pointed', rise: 3800 }),
  domeOf({ shape: 'catenary', rise: 3200 }),
  domeOf({ shape: 'elliptical', rise: 2300 }),
];
const oculus = { radius: 350, curb: 150, upstand: 100 };

describe('balance of the masonry', () => {
  for (const dome of shapes) {
    for (const crown of [null, oculus]) {
      it(`${dome.profile.shape}, ${crown ? 'oculus' : 'crown plug'}: parts fill the envelope where nothing is cut`, () => {
        const house = setOutHouse(houseOf({ domes: [{ ...dome, oculus: crown }] }));
        const balance = balanceOf(house, layBlocks(house));
        expect(Math.abs(balance.error)).toBeLessThan(1e-6);
        expect(balance.blocks / balance.envelope).toBeGreaterThan(0.75);
      });
      it(`${dome.profile.shape}, ${crown ? 'oculus' : 'crown plug'}: and with cuts`, () => {
        const house = setOutHouse(
          houseOf({
            domes: [{ ...dome, oculus: crown }],
            openings: [
              openingOf({ bearingDeg: 180, height: 1700, width: 900 }),
              openingOf({
                id: 'bay',
                bearingDeg: 90,
                use: 'window',
                sill: 500,
                height: 800,
                width: 1100,
                head: { shape: 'segmental', rise: 250 },
              }),
              openingOf({
                id: 'eye',
                bearingDeg: 0,
                use: 'window',
                sill: 500,
                height: 900,
                width: 700,
                head: { shape: 'pointed', rise: 600 },
                arch: { ring: 150, face: 'flush', madeAs: 'cast', voussoirs: null },
              }),
              openingOf({
                id: 'shelf',
                bearingDeg: 270,
                use: 'niche',
                sill: 500,
                height: 600,
                width: 500,
                depth: 150,
                head: { shape: 'flat', rise: 0 },
                arch: { ring: 100, face: 'flush', madeAs: 'cast', voussoirs: null },
              }),
            ],
          }),
        );
        const started = performance.now();
        const laid = layBlocks(house);
        const t1 = performance.now();
        const balance = balanceOf(house, laid);
        console.log(
          dome.profile.shape,
          !!crown,
          balance.error,
          laid.blocks.length,
          laid.blocks.filter((b) => b.cutBy.length).length,
          laid.slivers.length,
          (t1 - started).toFixed(0),
          (performance.now() - t1).toFixed(0),
        );
        expect(Math.abs(balance.error)).toBeLessThan(1e-4);
      });
    }
  }
});
