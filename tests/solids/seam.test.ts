import { beforeAll, describe, expect, it } from 'vitest';
import type { Dome } from '../../lib/description/house.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshBounds, meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { withCaps } from '../../lib/solids/cap.js';
import { domeFacets, wholeWall } from '../../lib/solids/dome-outlines.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { areaOf } from '../../lib/solids/outline.js';
import { busyHeight, partedAt, seamHeight } from '../../lib/solids/seam.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { passageOf } from './clusters.js';
import { faceArea } from './support.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

const OCULUS = { radius: 350, curb: 150, upstand: 100 };
const DOMES: Readonly<Record<string, Dome>> = {
  hemisphere: domeOf(),
  'low, with an oculus': domeOf({ shape: 'segmental', rise: 1700, oculus: OCULUS }),
  'pointed, away from the origin': domeOf({ shape: 'pointed', rise: 4200, at: [5432.1, -7654.3] }),
  'catenary, without stem wall': domeOf({ shape: 'catenary', rise: 3300, stemWall: 0 }),
};

describe.each(Object.entries(DOMES))('%s', (_, dome) => {
  const setout = setOutHouse(houseOf({ domes: [dome], footing: null, slab: null }));
  const facets = domeFacets(setout.domes[0] as (typeof setout.domes)[number], 8);
  const wall = wholeWall(facets);
  const turned = () =>
    kernel.scope((scope) => scope.mesh('wall', scope.revolve('wall', wall, facets.segments, dome.at)));

  it('is the same solid parted and put together as in one', () => {
    const z = seamHeight(setout, facets) as number;
    expect(z).toBeGreaterThan(dome.stemWall);
    const { below, above } = partedAt(wall, z, 'seam');
    const lower = kernel.scope((scope) => scope.mesh('wall', scope.revolve('wall', below, facets.segments, dome.at)));
    const whole = withCaps(lower, [{ seam: 'seam', at: dome.at, segments: facets.segments, profile: above }]);
    const one = turned();
    expect(auditMesh(whole)).toEqual([]);
    expect(meshEuler(whole).map((p) => p.euler)).toEqual(meshEuler(one).map((p) => p.euler));
    expect(meshVolume(whole) / meshVolume(one) - 1).toBeCloseTo(0, 12);
    expect(whole.faceNames).not.toContain('seam');
    for (const face of one.faceNames) expect(faceArea(whole, face) / faceArea(one, face) - 1).toBeCloseTo(0, 9);
    for (const end of ['min', 'max'] as const)
      for (const axis of [0, 1, 2] as const) {
        expect(meshBounds(whole)[end][axis]).toBeCloseTo(meshBounds(one)[end][axis], 6);
      }
  });

  it('stands a tenth of a chord from every corner, however fine the facets', () => {
    const [placed] = setout.domes as [(typeof setout.domes)[number]];
    for (let surface = 3; surface <= 12; surface++) {
      const fine = domeFacets(placed, surface);
      const z = seamHeight(setout, fine) as number;
      const inner = fine.stations.map((s) => placed.shell.at(s).z);
      const chord = Math.min(...inner.filter((h) => h > z)) - Math.max(...inner.filter((h) => h <= z));
      const gap = Math.min(...wholeWall(fine).points.map(([, h]) => Math.abs(h - z)));
      expect(gap / chord, `${surface} mm`).toBeGreaterThan(0.1 - 1e-9);
      // All of the chord keeps 20 mm from what meets the dome.
      const foot = Math.max(...inner.filter((h) => h <= z));
      expect(foot - busyHeight(setout, placed), `${surface} mm`).toBeGreaterThan(20);
    }
  });

  it('parts an outline in two that make it up', () => {
    const z = seamHeight(setout, facets) as number;
    const { below, above } = partedAt(wall, z, 'seam');
    const rest = areaOf(above.map((corner) => corner.point));
    expect((areaOf(below.points) + rest) / areaOf(wall.points) - 1).toBeCloseTo(0, 12);
    for (const [, height] of below.points) expect(height).toBeLessThanOrEqual(z);
    for (const { point } of above) expect(point[1]).toBeGreaterThanOrEqual(z);
  });
});

describe('the level of a seam', () => {
  const seamOf = (part: Parameters<typeof houseOf>[0], k = 0): number | null => {
    const setout = setOutHouse(houseOf({ domes: [domeOf()], ...part }));
    return seamHeight(setout, domeFacets(setout.domes[k] as (typeof setout.domes)[number], 4));
  };

  it('lies above springing, arches, passages and valleys', () => {
    const alone = seamOf({}) as number;
    expect(alone).toBeGreaterThan(600);
    expect(alone).toBeLessThan(1000);
    expect(seamOf({ openings: [openingOf({ height: 2000 })] })).toBeGreaterThan(2200);
    const domes = [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [5000, 0] })];
    // Circles of 3250 mm whose centres are 5 m apart cross 2077 mm above them.
    for (const k of [0, 1]) {
      const seam = seamOf({ domes }, k) as number;
      expect(seam).toBeGreaterThan(600 + Math.sqrt(3250 ** 2 - 2500 ** 2));
      expect(seam).toBeLessThan(600 + Math.sqrt(3250 ** 2 - 2500 ** 2) + 200);
    }
    const apart = [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [7000, 0] })];
    expect(seamOf({ domes: apart, passages: [passageOf(['a', 'b'])] }, 1)).toBeGreaterThan(1800);
  });

  it('keeps clear of the skewback’s bed, of rings and of where domes meet', () => {
    const busy = (part: Parameters<typeof houseOf>[0], k = 0) => {
      const setout = setOutHouse(houseOf({ domes: [domeOf()], ...part }));
      return busyHeight(setout, setout.domes[k] as (typeof setout.domes)[number]);
    };
    expect(busy({})).toBe(600);
    // The bed is normal to an arc of R = (3² + 1.7²) / 3.4 m whose centre lies R − 1.7 m under the springing.
    const radius = (3000 ** 2 + 1700 ** 2) / 3400;
    const low = domeOf({ shape: 'segmental', rise: 1700 });
    expect(busy({ domes: [low] })).toBeCloseTo(600 + (250 * (radius - 1700)) / radius, 9);
    expect(busy({ openings: [openingOf({ height: 2000 })] })).toBe(2200);
    const domes = [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [5000, 0] })];
    for (const k of [0, 1]) expect(busy({ domes }, k)).toBeCloseTo(600 + Math.sqrt(3250 ** 2 - 2500 ** 2), 6);
  });

  it('is none where an arch reaches the crown', () => {
    const high = openingOf({ height: 3350, arch: { ring: 150, face: 300, madeAs: 'cast', voussoirs: null } });
    expect(seamOf({ openings: [high] })).toBeNull();
    const { whole } = houseSolids(kernel, setOutHouse(houseOf({ openings: [high] })), { surface: 8 });
    expect(auditMesh(whole)).toEqual([]);
  });
});

it('a solid without the seam that a cap belongs on is told', () => {
  const [dome] = setOutHouse(houseOf()).domes;
  const wall = wholeWall(domeFacets(dome as NonNullable<typeof dome>, 20));
  const mesh = kernel.scope((scope) => scope.mesh('wall', scope.revolve('wall', wall, 16, [0, 0])));
  const { above } = partedAt(wall, 1500, 'seam');
  const cap = { seam: 'seam', at: [0, 0], segments: 16, profile: above } as const;
  expect(() => withCaps(mesh, [cap])).toThrow('wall: the kernel left no seam');
});
