import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Cutter, sectionCutter, shellCutter } from '../../lib/masonry/cutter.js';
import { type HeadShape, sectionOf } from '../../lib/math/section.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf } from '../tools/house.js';

const JOINT = 10;
const RING = 150;
const share = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);
const between = (low: number, high: number) => share.map((at) => low + (high - low) * at);

/** A cutter, and whether a point of the plan about the dome's own axis is taken at a height: by the shape itself. */
interface Shape {
  readonly cutter: Cutter;
  takes(x: number, y: number, z: number): boolean;
}

const RISES: Readonly<Record<HeadShape, number>> = { semicircular: 450, segmental: 200, pointed: 700, flat: 0 };

/** A window 900 mm wide, its ring's foot 150 mm under its sill. */
const window = fc
  .record({
    shape: fc.constantFrom<HeadShape>('semicircular', 'segmental', 'pointed', 'flat'),
    bearing: between(0, 2 * Math.PI),
  })
  .map(({ shape, bearing }): Shape => {
    const section = sectionOf({ width: 900, height: 1500, sill: 600, head: { shape, rise: RISES[shape] } });
    const cutter = sectionCutter({ id: 'bay', bearingRad: bearing, section, ring: RING, baseZ: 450 }, JOINT);
    const [c, s] = [Math.cos(bearing), Math.sin(bearing)];
    return {
      cutter,
      takes: (x, y, z) => {
        const [u, v] = [x * c - y * s, x * s + y * c];
        return v > 0 && Math.abs(u) < section.halfWidthAt(z, RING + JOINT, 450);
      },
    };
  });

/** A hemisphere of 3 m inside on a stem wall of 0.6 m, its axis from 1.5 to 5.6 m away. */
const neighbour = fc
  .record({ bearing: between(0, 2 * Math.PI), away: between(1500, 5600) })
  .map(({ bearing, away }) => {
    const [hall] = setOutHouse(houseOf({ domes: [domeOf()] })).domes;
    if (!hall) throw new Error('no dome');
    const at = [away * Math.sin(bearing), away * Math.cos(bearing)] as const;
    return {
      cutter: shellCutter(hall, at, JOINT),
      takes: (x: number, y: number, z: number) => {
        const radius = 3250 > z - 600 ? (z <= 600 ? 3250 : Math.sqrt(3250 ** 2 - (z - 600) ** 2)) + JOINT : 0;
        return Math.hypot(x - at[0], y - at[1]) < radius;
      },
    };
  });

const radii = between(1200, 3000);
const heights = between(0, 2600);

describe.each([
  ['an opening', window],
  ['an earlier dome', neighbour],
] as const)('what %s takes', (_, shapes) => {
  it('round a circle is the angle that its spread tells', () => {
    fc.assert(
      fc.property(shapes, radii, heights, ({ cutter, takes }, r, z) => {
        const half = cutter.spreadAt(r, z);
        const wrong: number[] = [];
        for (let k = -90; k < 90; k++) {
          const turn = ((k + 0.5) * Math.PI) / 90;
          const bearing = cutter.bearingRad + turn;
          const taken = takes(r * Math.sin(bearing), r * Math.cos(bearing), z);
          if (taken !== Math.abs(turn) < half && Math.abs(Math.abs(turn) - half) > 1e-6) wrong.push(turn);
        }
        expect(wrong).toEqual([]);
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it('of a straight level line is the stretch that its chord tells', () => {
    fc.assert(
      fc.property(shapes, radii, between(0, 2 * Math.PI), heights, ({ cutter, takes }, p, foot, z) => {
        const [from, to] = cutter.chordAt(p, foot, z) ?? [0, 0];
        const [c, s] = [Math.cos(foot), Math.sin(foot)];
        const wrong: number[] = [];
        // As far as blocks reach, clockwise from the foot.
        for (let x = -600; x <= 600; x += 25) {
          const taken = takes(p * s + x * c, p * c - x * s, z);
          if (taken !== (x > from && x < to) && Math.min(Math.abs(x - from), Math.abs(x - to)) > 1e-3) wrong.push(x);
        }
        expect(wrong).toEqual([]);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('over ranges is never less nor more than their bounds, which meet where the ranges close', () => {
    fc.assert(
      fc.property(shapes, radii, radii, heights, heights, ({ cutter }, r0, r1, z0, z1) => {
        const [narrow, wide, low, high] = [Math.min(r0, r1), Math.max(r0, r1), Math.min(z0, z1), Math.max(z0, z1)];
        const spreads: number[] = [];
        for (let i = 0; i <= 6; i++)
          for (let j = 0; j <= 6; j++)
            spreads.push(cutter.spreadAt(narrow + ((wide - narrow) * i) / 6, low + ((high - low) * j) / 6));
        const [least, most] = cutter.spreadsIn([narrow, wide], [low, high]);
        expect(Math.min(...spreads)).toBeGreaterThanOrEqual(least - 1e-12);
        expect(Math.max(...spreads)).toBeLessThanOrEqual(most + 1e-12);
        // A dome whose axis lies inside an earlier one, where a spread passes a right angle, is refused.
        const seen = spreads.filter((spread) => spread < Math.PI / 2);
        expect(Math.max(0, ...seen)).toBeLessThanOrEqual(cutter.widestSpread(narrow, low) + 1e-12);
        const own = cutter.spreadAt(r0, z0);
        expect(cutter.spreadsIn([r0, r0], [z0, z0])).toEqual([expect.closeTo(own, 9), expect.closeTo(own, 9)]);
      }),
      { seed: 5, numRuns: 150 },
    );
  });
});
