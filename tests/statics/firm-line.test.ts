import { describe, expect, it } from 'vitest';
import { setOutHouse } from '../../lib/setout/house.js';
import { bodyOf } from '../../lib/statics/dome-thrust.js';
import { leastStresses, pressedRings } from '../../lib/statics/firm-line.js';
import { unitLoads } from '../../lib/statics/loads.js';
import { luneOf } from '../../lib/statics/lune.js';
import { pairFactor, pairThrust } from '../../lib/statics/pair.js';
import type { Pair } from '../../lib/statics/pair-programme.js';
import { geometricFactor } from '../../lib/statics/thrust.js';
import { domeOf, houseOf } from '../tools/house.js';
import { goldenLeast, hemisphere } from '../tools/pairs.js';

const T = 0.2;

/** Greatest stress, N over the block that it stands in the middle of, for a crown thrust, its moment and a shear. */
const hardest = ({ halves }: Pair, h: number, k: number, shear: number): number => {
  let most = 0;
  halves.forEach((sections, which) => {
    for (const s of sections) {
      const down = s.weight + (which === 0 ? shear : -shear);
      const out = h + s.push;
      const off = s.moment + s.pushMoment + k - s.middle[0] * down - s.middle[1] * out;
      const size = Math.hypot(...s.half);
      const across = (s.half[0] * down + s.half[1] * out) / size;
      // In half thicknesses from the middle.
      const place = off / (across * size);
      const r = s.middle[0] + place * s.half[0];
      if (r < T) continue;
      const force = Math.hypot(down, out);
      const depth = (1 - Math.abs(place)) * T;
      // Outside the wall, or pulled: the farther, the harder, so that a search finds its way in.
      most = Math.max(most, across > 0 && depth > 0 ? force / (r * depth) : 1e6 * (1 + Math.abs(place)));
    }
  });
  return most;
};

describe('the line of thrust that is least hard', () => {
  it.each([
    [0, 1.25],
    [0.03, 1.15],
    [0.08, 1.05],
  ])(
    'part %f of the weight pushing, has at most %f times the least stress of a search over all lines, and never less',
    (c, over) => {
      const pair = hemisphere(T, c, 30);
      const [found] = leastStresses([{ pair, lines: pairThrust(pair).lines }], { rings: [], thickness: T });
      const through = (shear: number, h: number) => {
        // Through the crown's section, whose middle is 1 high.
        const k = goldenLeast((z) => hardest(pair, h, h * z, shear), 1 - T / 2, 1 + T / 2, 18);
        return hardest(pair, h, h * k, shear);
      };
      const overShear = (shear: number) =>
        through(
          shear,
          goldenLeast((h) => through(shear, h), 0.01, 0.1, 18),
        );
      const least = overShear(c === 0 ? 0 : goldenLeast(overShear, -0.05, 0.05, 18));
      const stress = (found ?? 0) / 1000;
      expect(stress / least).toBeGreaterThan(1 - 2e-3);
      expect(stress / least).toBeLessThan(over);
    },
  );

  it('of several is sought to the end for the hardest alone; the others are no harder', () => {
    const trials = [0.02, 0.08, 0.05].map((c) => {
      const pair = hemisphere(T, c, 60);
      return { pair, lines: pairThrust(pair).lines };
    });
    const shell = { rings: [], thickness: T };
    const all = leastStresses(trials, shell);
    expect(all[1]).toBe(leastStresses(trials.slice(1, 2), shell)[0]);
    for (const one of all) expect(one ?? Number.NaN).toBeLessThanOrEqual(all[1] ?? 0);
    expect(leastStresses([{ pair: hemisphere(T, 2, 20), lines: [[], []] }], shell)).toEqual([null]);
  });
});

describe('closed rings that press themselves', () => {
  const house = houseOf({
    domes: [domeOf({ shape: 'pointed', radius: 2400, rise: 2900, stemWall: 0 })],
    wall: { thickness: 250, renderInside: 0, renderOutside: 0 },
    footing: null,
  });
  const setout = setOutHouse(house);
  const dome = setout.domes[0] as (typeof setout.domes)[number];
  const lune = luneOf(dome, unitLoads(setout, dome), { renderInside: 0, renderOutside: 0, footing: null });
  const body = bodyOf(lune, 'dead', 0, null);
  const half = body.sections.map(({ middle, half, weight, moment }) => ({
    middle,
    half,
    weight,
    moment,
    push: 0,
    pushMoment: 0,
    tied: false,
  }));
  const pair: Pair = { halves: [half, half], tie: null };

  it('hold a pair as they hold one lune, by the programme of one lune', () => {
    const rings = body.sections.filter(({ hoops }) => hoops !== null).map(({ middle }) => middle[1]);
    const sections = body.sections.map((s) => ({
      ...s,
      hoops: s.hoops && ([s.middle[1], s.middle[1]] as const),
    }));
    const one = geometricFactor({ ...body, sections });
    expect(Math.abs(pairFactor({ ...pair, rings }) / one - 1)).toBeLessThan(1e-4);
    expect(pairFactor({ ...pair, rings })).toBeGreaterThan(1.2 * pairFactor(pair));
  });

  it('make a line less hard or leave it; their own hoops count, so that a ring of no area helps nothing', () => {
    const trial = { pair, lines: pairThrust(pair).lines };
    const rings = pressedRings(dome, 0);
    expect(rings.map(({ z }) => z)).toEqual([...rings.map(({ z }) => z)].sort((a, b) => b - a));
    expect(rings).toHaveLength(2);
    const stressWith = (of: typeof rings) => leastStresses([trial], { rings: of, thickness: 250 })[0] ?? Number.NaN;
    expect(stressWith(rings)).toBeLessThan(0.8 * stressWith([]));
    const thin = rings.map((ring) => ({ ...ring, area: 1e-6 }));
    expect(stressWith(thin)).toBeGreaterThanOrEqual(stressWith([]));
  });
});
