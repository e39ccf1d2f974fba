import { beforeAll, describe, expect, it } from 'vitest';
import type { Dome } from '../../lib/description/house.js';
import type { Mesh } from '../../lib/documents/mesh.js';
import { meshVolume } from '../../lib/documents/mesh-measure.js';
import { catenaryParameter } from '../../lib/math/profile-catenary.js';
import { sectionOf } from '../../lib/math/section.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { type DomeFacets, domeFacets, filledTo } from '../../lib/solids/dome-outlines.js';
import { disc } from '../../lib/solids/ground-bodies.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel, SolidScope } from '../../lib/solids/kernel.js';
import { areaOf } from '../../lib/solids/outline.js';
import { sectionPolygon } from '../../lib/solids/sections.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { faceArea, M2, M3, trianglesOf } from './support.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

const NONE = { footing: null, slab: null, openings: [] } as const;
const SURFACES = [8, 4, 2, 1] as const;

const facetsOf = (dome: Dome, surface: number): DomeFacets => {
  const setout = setOutHouse(houseOf({ ...NONE, domes: [dome] }));
  return domeFacets(setout.domes[0] as never, surface);
};

/** The room under a dome's intrados as a solid. */
const room = (dome: Dome, surface: number, more?: (scope: SolidScope, facets: DomeFacets) => Mesh): Mesh => {
  const facets = facetsOf(dome, surface);
  return kernel.scope(
    (scope) =>
      more?.(scope, facets) ??
      scope.mesh('room', scope.revolve('room', filledTo(facets, 0, 0, 'intrados'), facets.segments, [0, 0])),
  );
};

/** Below the exact value at every tolerance, nearer with each, and by about half as much as before. */
function expectFromBelow(exact: number, values: readonly number[]): void {
  const short = values.map((v) => exact - v);
  for (const s of short) expect(s).toBeGreaterThan(0);
  for (let i = 1; i < short.length; i++) {
    expect((short[i] as number) / (short[i - 1] as number)).toBeGreaterThan(0.35);
    expect((short[i] as number) / (short[i - 1] as number)).toBeLessThan(0.65);
  }
  expect((short.at(-1) as number) / exact).toBeLessThan(2e-3);
}

/** Volume and curved area of a revolved catenary, closed forms in m. */
function catenaryForms(r: number, f: number): { volume: number; area: number } {
  const a = catenaryParameter(r, f);
  const [c, s] = [Math.cosh(r / a), Math.sinh(r / a)];
  // By parts: ∫ x² sinh(x/a) dx and ∫ x cosh(x/a) dx from 0 to r.
  return {
    volume: Math.PI * (a * r * r * c - 2 * a * a * r * s + 2 * a ** 3 * (c - 1)),
    area: 2 * Math.PI * (a * r * s - a * a * (c - 1)),
  };
}

const FIGURES = [
  {
    name: 'spherical cap, R 2.5, h 1: V = πh²(3R − h)/3, A = 2πRh (Bronshtein and Semendyayev, from memory)',
    dome: domeOf({ shape: 'segmental', radius: 2000, rise: 1000, stemWall: 0 }),
    volume: 6.806784,
    area: 15.707963,
  },
  {
    name: 'half sphere, R 2.5: V = 2πR³/3, A = 2πR² (the same)',
    dome: domeOf({ radius: 2500, stemWall: 0 }),
    volume: 32.724923,
    area: 39.269908,
  },
  {
    name: 'offset arc, R 2.5, centre 0.5 past the axis (derived: V and A of an arc revolved about a line off its centre)',
    dome: domeOf({ shape: 'pointed', radius: 2000, rise: 2449.489742783178, stemWall: 0 }),
    volume: 19.260591,
    area: 27.720951,
  },
  {
    name: 'catenary, r 3, f 3.2 (derived by parts)',
    dome: domeOf({ shape: 'catenary', radius: 3000, rise: 3200, stemWall: 0 }),
    ...catenaryForms(3, 3.2),
  },
  {
    name: 'half ellipsoid of revolution, a 3, b 2: V = 2πa²b/3, A of the oblate (the same)',
    dome: domeOf({ shape: 'elliptical', radius: 3000, rise: 2000, stemWall: 0 }),
    volume: (2 / 3) * Math.PI * 9 * 2,
    area: (() => {
      const e = Math.sqrt(1 - 4 / 9);
      return Math.PI * 9 * (1 + ((1 - e * e) / e) * Math.atanh(e));
    })(),
  },
] as const;

describe.each(FIGURES)('$name', ({ dome, volume, area }) => {
  it('encloses less than the exact volume, nearer and nearer', () => {
    expectFromBelow(
      volume,
      SURFACES.map((s) => meshVolume(room(dome, s)) * M3),
    );
  });

  it('has less than the exact curved area, nearer and nearer', () => {
    expectFromBelow(
      area,
      SURFACES.map((s) => faceArea(room(dome, s), 'intrados') * M2),
    );
  });
});

describe('drilled and pierced bodies', () => {
  it('napkin ring: half of 33.510322 m3 is left of a 2.5 m sphere bored by 1.5 m (πh³/6, h = 4; derived)', () => {
    const drilled = SURFACES.map((surface) => {
      const mesh = room(domeOf({ radius: 2500, stemWall: 0 }), surface, (scope, facets) => {
        const ball = scope.revolve('ball', filledTo(facets, 0, 0, 'intrados'), facets.segments, [0, 0]);
        const names = { bottom: 'bore', side: 'bore', top: 'bore' };
        const bore = scope.revolve('bore', disc(1500, -100, 3000, names), facets.segments, [0, 0]);
        return scope.mesh('ring', scope.subtract('ring', ball, [bore]));
      });
      return meshVolume(mesh) * M3;
    });
    const exact = 33.510322 / 2;
    for (const [i, v] of drilled.entries())
      expect(Math.abs(v / exact - 1)).toBeLessThan((SURFACES[i] as number) * 1e-3);
  });

  const thick = houseOf(NONE).wall;
  /** What one flush opening takes from a half-spherical shell, 2.5 m inside, 0.3 m thick. */
  const removed = (opening: ReturnType<typeof openingOf>, surface: number) => {
    const base = {
      ...NONE,
      wall: { ...thick, thickness: 300 },
      domes: [domeOf({ radius: 2500, stemWall: 0 })],
    };
    const volume = (openings: readonly ReturnType<typeof openingOf>[]) =>
      meshVolume(houseSolids(kernel, setOutHouse(houseOf({ ...base, openings })), { surface }).whole) * M3;
    return volume([]) - volume([opening]);
  };
  const flush = { ring: 150, face: 'flush', madeAs: 'cast', voussoirs: null } as const;

  it('semicircular tunnel of 0.5 m at springing level takes 0.11888090 m3 (derived, see the formula)', () => {
    // (π/3) [(Re³ − (Re² − a²)^1.5) − (Ri³ − (Ri² − a²)^1.5)]
    const [a, Ri, Re] = [0.5, 2.5, 2.8];
    const cap = (R: number) => R ** 3 - (R * R - a * a) ** 1.5;
    const exact = (Math.PI / 3) * (cap(Re) - cap(Ri));
    expect(exact).toBeCloseTo(0.1188809, 7);
    const tunnel = openingOf({
      sill: 0,
      height: 500,
      width: 1000,
      head: { shape: 'semicircular', rise: 500 },
      arch: flush,
    });
    for (const surface of [4, 1, 0.25]) expect(removed(tunnel, surface)).toBeCloseTo(exact, surface < 1 ? 4 : 2);
    expect(Math.abs(removed(tunnel, 0.25) / exact - 1)).toBeLessThan(1e-3);
  });

  it('door 0.9 m wide, 1.2 m high with upright jambs takes 0.33806967 m3 (derived by quadrature)', () => {
    const door = openingOf({ sill: 0, height: 1200, width: 900, head: { shape: 'flat', rise: 0 }, arch: flush });
    expect(Math.abs(removed(door, 0.5) / 0.33806967 - 1)).toBeLessThan(1e-3);
  });
});

describe('arch sections', () => {
  // Derived: circular segments, and r² acos(c/r) − c h for two centres.
  it.each([
    { shape: 'segmental', width: 1000, rise: 250, area: 0.174725 },
    { shape: 'semicircular', width: 900, rise: 450, area: 0.318086 },
    { shape: 'segmental', width: 1200, rise: 200, area: 0.163501 },
    { shape: 'pointed', width: 1000, rise: 866.0254037844386, area: 0.614185 },
    { shape: 'pointed', width: 1000, rise: 1000, area: 0.698899 },
  ] as const)('$shape, $width by $rise: chords lie inside and converge', ({ shape, width, rise, area }) => {
    const section = sectionOf({ width, height: rise, sill: 0, head: { shape, rise } });
    const chords = (sagitta: number) =>
      areaOf(sectionPolygon(section, 0, 0, sagitta, { bottom: 'a', sides: 'b' }).points) * M2;
    expect(chords(5)).toBeLessThan(area);
    expect(chords(0.5)).toBeGreaterThan(chords(5));
    expect(chords(0.01)).toBeLessThanOrEqual(area + 1e-6);
    expect(chords(0.01)).toBeGreaterThan(area * (1 - 1e-4));
  });
});

describe('a facet stays within the tolerance of its surface', () => {
  const shapes: readonly Dome[] = [
    domeOf(),
    domeOf({ shape: 'segmental', rise: 1700 }),
    domeOf({ shape: 'pointed', rise: 4100 }),
  ];
  it.each(shapes)('$profile.shape', (dome) => {
    const surface = 3;
    const setout = setOutHouse(houseOf({ domes: [dome], openings: [openingOf()] }));
    const { profile, springingZ, springingRadius, thickness } = setout.domes[0] as (typeof setout.domes)[number];
    const { whole } = houseSolids(kernel, setout, { surface });
    const [centreR, centreH] = (profile.arc as NonNullable<typeof profile.arc>).centre;
    const radius = (profile.arc as NonNullable<typeof profile.arc>).radius;
    /** Distance of a point from the surface of revolution `offset` outside the intrados. */
    const away = (x: number, y: number, z: number, offset: number) => {
      const r = Math.hypot(x, y);
      const onWall = Math.abs(r - springingRadius - offset);
      if (z <= springingZ) return onWall;
      const onArc = Math.abs(Math.hypot(r - centreR, z - springingZ - centreH) - radius - offset);
      return Math.min(onArc, onWall);
    };
    let greatest = 0;
    for (const { corners, face } of trianglesOf(whole)) {
      if (face !== 'intrados' && face !== 'extrados') continue;
      for (const weights of [
        [1, 1, 1],
        [1, 1, 0],
        [0, 1, 1],
        [1, 0, 1],
        [2, 1, 1],
      ] as const) {
        const total = weights[0] + weights[1] + weights[2];
        const at = (k: 0 | 1 | 2) =>
          corners.reduce((sum, corner, i) => sum + corner[k] * (weights[i] as number), 0) / total;
        greatest = Math.max(greatest, away(at(0), at(1), at(2), face === 'extrados' ? thickness : 0));
      }
    }
    expect(greatest).toBeLessThanOrEqual(surface);
    // The tolerance is used, not beaten by a wide margin.
    expect(greatest).toBeGreaterThan(surface * 0.6);
  });
});
