import { describe, expect, it } from 'vitest';
import { setOutHouse } from '../../lib/setout/house.js';
import { staticsChecks } from '../../lib/statics/checks.js';
import { FACES_ALONE } from '../../lib/statics/line-joints.js';
import { unitLoads } from '../../lib/statics/loads.js';
import { luneOf } from '../../lib/statics/lune.js';
import { holdingPull } from '../../lib/statics/one-sided-pull.js';
import type { Burden, Pair } from '../../lib/statics/pair-programme.js';
import { staticsOf } from '../../lib/statics/statics.js';
import { placeTie } from '../../lib/statics/tie.js';
import { earthquake } from '../../lib/statics/unsymmetrical.js';
import { cutLevel } from '../../lib/statics/voids.js';
import { domeOf, houseOf, MATERIAL, openingOf } from '../tools/house.js';
import { goldenLeast, hemisphere, luneWeight } from '../tools/pairs.js';

const NOTHING: Burden = { weight: 0, moment: 0, push: 0, pushMoment: 0 };
/** Within the faces alone, all loads in the pair. */
const heldAt = (pair: Pair, z: number): number | null => {
  const none = (half: Pair['halves'][0]) => half.map(() => NOTHING);
  return holdingPull({ pair, grows: [none(pair.halves[0]), none(pair.halves[1])] }, FACES_ALONE, z);
};

/** Corners of what is left of a polygon where a x + b y + c >= 0. */
type Point = readonly [number, number];
const clip = (polygon: readonly Point[], a: number, b: number, c: number): Point[] => {
  const at = ([x, y]: Point) => a * x + b * y + c;
  return polygon.flatMap((p, i) => {
    const q = polygon[(i + 1) % polygon.length] as Point;
    const [here, there] = [at(p), at(q)];
    const cut: Point[] = [];
    if (here >= 0) cut.push(p);
    if (here >= 0 !== there >= 0) {
      const k = here / (here - there);
      cut.push([p[0] + k * (q[0] - p[0]), p[1] + k * (q[1] - p[1])]);
    }
    return cut;
  });
};

/** Least crown thrust for a shear S at the crown, by clipping (H, K); infinite where none fits. */
const leastThrust = ({ halves }: Pair, shear: number): number => {
  let left: Point[] = [
    [-10, -10],
    [10, -10],
    [10, 10],
    [-10, 10],
  ];
  halves.forEach((sections, which) => {
    for (const s of sections) {
      if (s.middle[0] - s.half[0] < 0) continue;
      const down = s.weight + (which === 0 ? shear : -shear);
      for (const side of [-1, 1]) {
        const [x, z] = [s.middle[0] + side * s.half[0], s.middle[1] + side * s.half[1]];
        // Moment of all above about (x, z), which turns inward at the outer face and outward at the inner.
        const rest = x * down + z * s.push - s.moment - s.pushMoment;
        left = clip(left, side * z, -side, side * rest);
      }
    }
  });
  return Math.min(Number.POSITIVE_INFINITY, ...left.map(([h]) => h));
};

/** The same with the shear that asks least: the least thrust is convex in it. */
const leastOfAll = (pair: Pair): number => {
  const shears = Array.from({ length: 31 }, (_, i) => (i - 15) / 300);
  const found = shears.map((s) => leastThrust(pair, s));
  const best = shears[found.indexOf(Math.min(...found))] ?? 0;
  return leastThrust(
    pair,
    goldenLeast((shear) => leastThrust(pair, shear), best - 1 / 300, best + 1 / 300, 30),
  );
};

describe('the pull that a ring at the springing must hold', () => {
  it.each([
    // REFERENCE: hemisphere, thrust range, H_min / W by t/R (derived there by another programme).
    [0.1, 0.194598],
    [0.15, 0.161495],
    [0.2, 0.132019],
  ])('under dead load alone is the least thrust of a lune: t/R %f, %f of its weight', (t, share) => {
    const pull = heldAt(hemisphere(t, 0, 300), 0);
    expect(Math.abs((pull ?? 0) / luneWeight(t) / share - 1)).toBeLessThan(5e-4);
  });

  it.each([0.02, 0.05, 0.1])(
    'under a push of %f of the weight is the least thrust of the half that pushes more',
    (c) => {
      // Clipping planes by hand, and a search over the shear at the crown.
      const pair = hemisphere(0.2, c, 60);
      const push = c * luneWeight(0.2);
      const byHand = leastOfAll(pair) + push;
      expect(Math.abs((heldAt(pair, 0) ?? 0) / byHand - 1)).toBeLessThan(1e-5);
      expect(byHand / luneWeight(0.2)).toBeGreaterThan(0.132 + c);
    },
  );

  it('hangs on no section that happens to lie at its height: what is above is held before the ring pulls', () => {
    const { halves, tie } = hemisphere(0.2, 0.05, 60);
    const z = halves[0][35]?.middle[1] ?? 0;
    const holdsAt = (height: number) => {
      const tied = (half: Pair['halves'][0]) => half.map((s) => ({ ...s, tied: s.middle[1] <= height }));
      return heldAt({ halves: [tied(halves[0]), tied(halves[1])], tie }, height) ?? 0;
    };
    expect(holdsAt(z - 1e-9)).toBeGreaterThan(0);
    expect(Math.abs(holdsAt(z) / holdsAt(z - 1e-9) - 1)).toBeLessThan(1e-6);
  });

  // Without the push of their rings these have no thrust that fits.
  it.each([
    ['pointed', 3600, 250, 500],
    ['pointed', 4000, 250, 1500],
    ['hemisphere', 3000, 110, 1200],
  ] as const)(
    'is known wherever one line bears all of the load, closed rings pressing: %s, rise %f',
    (shape, rise, thickness, level) => {
      const house = houseOf({
        domes: [domeOf({ stemWall: 0, shape, rise })],
        wall: { thickness, renderInside: 0, renderOutside: 0 },
        tie: { level, bars: 4, diameter: 20, yieldMpa: 500, bondMpa: null, lap: null },
        material: { ...MATERIAL, compressiveStrengthMpa: 5, friction: 0.8 },
        site: { ...houseOf().site, seismicCoefficient: 0.02 },
      });
      const setout = setOutHouse(house);
      const statics = staticsOf(setout);
      const [one] = statics.domes[0]?.oneSided[0]?.combined ?? [];
      expect(one?.borne).toBeGreaterThanOrEqual(1);
      expect(one?.pull?.holds).toBeGreaterThan(1);
      const told = staticsChecks(setout, statics).find(({ id }) => id === 'tie-one-sided.hall');
      expect(told?.advice).not.toContain('No line');
    },
  );

  it('is none where no thrust fits, however strong it is', () => {
    expect(heldAt(hemisphere(0.06, 0.3), 0)).toBeNull();
  });
});

describe('the least pull with which a thrust fits', () => {
  const house = houseOf({
    domes: [domeOf({ stemWall: 900 })],
    wall: { thickness: 300, renderInside: 0, renderOutside: 0 },
    openings: [openingOf()],
    tie: { level: 'above openings', bars: 2, diameter: 10, yieldMpa: 500, bondMpa: null, lap: null },
  });
  const setout = setOutHouse(house);
  const dome = setout.domes[0] as (typeof setout.domes)[number];
  const cutZ = cutLevel(setout, dome);
  const tie = placeTie(setout, dome, cutZ);
  if (!tie) throw new Error('a bed is left for the tie');
  const lune = luneOf(dome, unitLoads(setout, dome), {
    renderInside: 0,
    renderOutside: 0,
    footing: setout.footings[0] ?? null,
    tieZ: tie.z,
  });

  it('is just enough: with a tie a thousandth weaker no thrust fits, with one as strong it does', () => {
    const shakenWith = (most: number, strengthMpa: number | null, friction: number) =>
      earthquake(
        { lune, tie: { ...tie, strength: most }, cutZ: Number.POSITIVE_INFINITY, strengthMpa, friction },
        0.05,
        house.site,
      ).combined[0];
    // Where no joint crushes or slides, and where joints may.
    const asked = [shakenWith(tie.strength, null, 100), shakenWith(tie.strength, 0.5, 0.3)].map(
      (one) => one?.pull?.fits,
    );
    const [bare, limited] = asked as [number, number];
    expect(bare).toBeGreaterThan(0.5);
    expect(limited).toBeGreaterThan(1.05 * bare);
    for (const [fits, strengthMpa, friction] of [
      [bare, null, 100],
      [limited, 0.5, 0.3],
    ] as const) {
      expect(shakenWith(fits * 1.001, strengthMpa, friction)?.borne).toBeGreaterThanOrEqual(1);
      expect(shakenWith(fits * 0.999, strengthMpa, friction)?.borne ?? 0).toBeLessThan(1);
    }
    // However strong the tie is that stands there.
    expect(shakenWith(0, null, 100)?.pull?.fits).toBeCloseTo(bare, 9);
  });

  it('is judged against what the steel takes: 2 bars of 10 mm, 68.3 kN; an estimate, and never ok', () => {
    const shaken = (part: Partial<typeof house>) => {
      const one = setOutHouse({ ...house, ...part, site: { ...house.site, seismicCoefficient: 0.05 } });
      const statics = staticsOf(one);
      const check = staticsChecks(one, statics).find(({ id }) => id === 'tie-one-sided.hall');
      const pulls = statics.domes[0]?.oneSided.flatMap(({ combined }) => combined.map(({ pull }) => pull)) ?? [];
      return { check, most: Math.max(...pulls.map((p) => Math.max(p?.fits ?? 0, p?.holds ?? 0))) };
    };
    const { check, most } = shaken({});
    expect(check?.capacity?.value).toBeCloseTo((2 * Math.PI * 25 * (500 / 1.15)) / 1000, 9);
    expect(check?.demand?.value).toBeCloseTo(most, 12);
    expect(check?.ratio).toBeCloseTo(most / (check?.capacity?.value ?? 1), 12);
    expect(check).toMatchObject({ state: 'attention' });
    expect(check?.advice).toContain('estimate');
    // Joints that slide under G + E + Ev slide under G + E − Ev as well: no tie helps, and nothing is told to be asked.
    const site = { ...house.site, seismicCoefficient: 0.05, seismicVertical: 0.1 };
    const sliding = setOutHouse({ ...house, site, material: { ...house.material, friction: 0.02 } });
    const none = staticsChecks(sliding, staticsOf(sliding)).find(({ id }) => id === 'tie-one-sided.hall');
    expect(none).toMatchObject({ state: 'attention' });
    expect(none?.demand).toBeUndefined();
    expect(none?.advice).toContain('under G + E + Ev and 1 other combination,');
    // Drifted snow is borne, an earthquake of three times the weight isn't: the pull of the one is no answer for both.
    const torn = setOutHouse({ ...house, site: { ...house.site, snowKpa: 0.3, seismicCoefficient: 3 } });
    const some = staticsChecks(torn, staticsOf(torn)).find(({ id }) => id === 'tie-one-sided.hall');
    expect(some?.demand?.value).toBeGreaterThan(0);
    expect(some?.ratio).toBeUndefined();
    const thin = { ...(house.tie as object), bars: 1, diameter: 4, yieldMpa: 100 } as typeof house.tie;
    const failing = shaken({ tie: thin }).check;
    expect(failing?.state).toBe('fails');
    const bars = Math.ceil((most * 1000) / (100 / 1.15) / (Math.PI * 4));
    expect(failing?.advice).toContain(`${bars} bars`);
  });
});
