import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { readDescription } from '../../lib/description/read.js';
import { meshVolume } from '../../lib/documents/mesh-measure.js';
import { edgeAt, edgeLength } from '../../lib/math/curves.js';
import { type Section, sectionOutline } from '../../lib/math/section.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import type { Kernel } from '../../lib/solids/kernel.js';
import { areasOf, extradosArea, extradosInRoom, intradosArea } from '../../lib/works/areas.js';
import { groundAreas } from '../../lib/works/ground-areas.js';
import { faceArea } from '../solids/support.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';

const sample = (name: string): HouseSetout =>
  setOutHouse(readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), `${name}.yaml`));
const wall = { thickness: 300, renderInside: 0, renderOutside: 0 };
const areaOf = (part: Parameters<typeof domeOf>[0], openings: Parameters<typeof openingOf>[0][] = []) => {
  const house = setOutHouse(houseOf({ wall, domes: [domeOf(part)], openings: openings.map((o) => openingOf(o)) }));
  const [dome] = house.domes;
  if (!dome) throw new Error('no dome');
  return { intrados: intradosArea(house, dome) / 1e6, extrados: extradosArea(house, dome) / 1e6 };
};

let kernel: Kernel;
beforeAll(async () => {
  kernel = await nodeKernel();
});

describe('surfaces against closed forms', () => {
  it('hemisphere 2.5 to 2.8: 2πR² inside and outside', () => {
    const { intrados, extrados } = areaOf({ radius: 2500, stemWall: 0 });
    expect(intrados).toBeCloseTo(39.269908, 6);
    expect(extrados).toBeCloseTo(2 * Math.PI * 2.8 ** 2, 6);
  });

  it('pointed, arc 2.5 with its centre 0.5 past the axis: S = 2πR[R(cos φ0 − cos φ1) − e(φ1 − φ0)], 27.720951', () => {
    const { intrados, extrados } = areaOf({
      shape: 'pointed',
      radius: 2000,
      rise: Math.sqrt(2500 ** 2 - 500 ** 2),
      stemWall: 0,
    });
    expect(intrados).toBeCloseTo(27.720951, 5);
    // Outside the same with R 2.8: the arc runs on to the axis, at sin φ0 = e / R.
    const from = Math.asin(0.5 / 2.8);
    expect(extrados).toBeCloseTo(2 * Math.PI * 2.8 * (2.8 * Math.cos(from) - 0.5 * (Math.PI / 2 - from)), 5);
  });

  it('segmental cap R 2.5, h 1: 2πRh inside; outside down to the shoulder 2π(R + t)(R + t − d), d to the shoulder', () => {
    const { intrados, extrados } = areaOf({ shape: 'segmental', radius: 2000, rise: 1000, stemWall: 0 });
    expect(intrados).toBeCloseTo(15.707963, 6);
    const down = Math.sqrt(2.8 ** 2 - 2.3 ** 2);
    expect(extrados).toBeCloseTo(2 * Math.PI * 2.8 * (2.8 - down) + 2 * Math.PI * 2.3 * (down - 1.5), 6);
  });

  it('upper half tunnel r 0.5 at springing level takes half the cap 2πR(R − √(R² − a²)) of each sphere', () => {
    const arch = { ring: 200, face: 'flush', madeAs: 'cast', voussoirs: null } as const;
    const whole = areaOf({ radius: 2500, stemWall: 0 });
    const cut = areaOf({ radius: 2500, stemWall: 0 }, [{ width: 1000, height: 500, arch }]);
    expect(whole.extrados - cut.extrados).toBeCloseTo(0.79176117 / 2, 5);
    expect(whole.intrados - cut.intrados).toBeCloseTo(Math.PI * 2.5 * (2.5 - Math.sqrt(6)), 5);
  });

  it('takes six times what one door takes where six leave no bearing free', () => {
    const small = { radius: 1500, stemWall: 600 };
    const doors = [0, 60, 120, 180, 240, 300].map((at) => ({ id: `d${at}`, bearingDeg: at, height: 1850, width: 900 }));
    const [whole, one, all] = [[], doors.slice(1, 2), doors].map((some) => areaOf(small, some).intrados);
    expect(Number(whole) - Number(all)).toBeCloseTo(6 * (Number(whole) - Number(one)), 6);
  });
});

describe('each opening and passage by itself, against very many points along its outline', () => {
  /** Along both sides and the top; where the length is negative nothing counts. */
  const byPoints = (section: Section, [grow, from]: readonly [number, number], depth: Depth): number => {
    const points = 1500;
    return sectionOutline(section, grow, from)
      .slice(0, -1)
      .reduce((sum, edge) => {
        for (let k = 0; k < points; k++)
          sum += (Math.max(0, depth(...edgeAt(edge, (k + 0.5) / points))) * edgeLength(edge)) / points;
        return sum;
      }, 0);
  };
  type Depth = (u: number, z: number) => number;
  const at =
    (dome: DomeSetout, offset: number): Depth =>
    (u, z) =>
      Math.sqrt(Math.max(0, dome.radiusAt(z, offset) ** 2 - u * u));

  it.each(['family-house', 'courtyard-ring', 'low-store'])('%s', (name) => {
    const house = sample(name);
    const errors: number[] = [];
    const compare = (part: Partial<HouseSetout>, reveals: number, outside: number | null) => {
      const areas = areasOf({ ...house, domes: [], arches: [], passages: [], ...part });
      errors.push(Math.abs(areas.reveals / reveals - 1));
      if (outside !== null) errors.push(Math.abs(areas.barrels / outside - 1));
    };
    for (const arch of house.arches) {
      const { dome, section, ring, faceV, baseZ, clear } = arch;
      if (clear.kind !== 'through') continue;
      const inner = at(dome, 0);
      const extrados = at(dome, dome.thickness);
      const reveals = byPoints(section, [0, section.sill], (u, z) => (faceV ?? extrados(u, z)) - inner(u, z));
      const own = { arches: [arch] };
      if (faceV === null) compare(own, reveals, null);
      else {
        // The flat face is the outer section less the clear one.
        let face = 0;
        const slices = 20_000;
        for (let k = 0; k < slices; k++) {
          const z = (arch.topZ * (k + 0.5)) / slices;
          face += (2 * (arch.outerHalfAt(z) - arch.clearHalfAt(z)) * arch.topZ) / slices;
        }
        compare(own, reveals, face + byPoints(section, [ring, baseZ], (u, z) => faceV - extrados(u, z)));
      }
    }
    for (const passage of house.passages) {
      const { section, ring, distance, domes } = passage;
      const [one, other] = [at(domes[0], domes[0].thickness), at(domes[1], domes[1].thickness)];
      const reveals = byPoints(section, [0, 0], (u, z) => {
        const [start, end] = passage.stretchAt(u, z);
        return end - start;
      });
      const outside = byPoints(section, [ring, 0], (u, z) => distance - one(u, z) - other(u, z));
      compare({ passages: [passage] }, reveals, outside > 0 ? outside : null);
    }
    expect(errors.length).toBeGreaterThan(0);
    // So near the points themselves come.
    expect(Math.max(...errors)).toBeLessThan(2e-5);
  });
});

describe('surfaces and ground against the solids', () => {
  it.each(['garden-studio', 'pointed-hall', 'low-store', 'family-house'])('%s', (name) => {
    const house = sample(name);
    const { whole, parts } = houseSolids(kernel, house, { surface: 1 });
    const areas = areasOf(house);
    const near = (area: number, mesh: number) => expect(Math.abs(area / mesh - 1)).toBeLessThan(5e-4);
    const curbs = faceArea(whole, 'curb-top') + faceArea(whole, 'curb-side');
    // In solids an extrados keeps its name where it stands in another dome's room.
    const inRooms = house.domes.reduce((sum, dome) => sum + extradosInRoom(house, dome), 0);
    near(areas.intrados - inRooms, faceArea(whole, 'intrados'));
    // Without footing the sides of the slab have the extrados' name too.
    if (house.house.footing) near(areas.extrados + inRooms, faceArea(whole, 'extrados') + curbs);
    const ground = groundAreas(house);
    const part = (id: string) => parts.filter((p) => p.name === id).reduce((sum, p) => sum + meshVolume(p), 0);
    const { footing, slab } = house.house;
    expect(((footing?.depth ?? 0) * ground.footing) / 1e9).toBeCloseTo(part('footing') / 1e9, 2);
    expect(((slab?.thickness ?? 0) * ground.slab) / 1e9).toBeCloseTo(part('slab') / 1e9, 2);
  });

  it('footing ring and slab disc of one dome are exact', () => {
    const ground = groundAreas(setOutHouse(houseOf()));
    expect(ground.footing / 1e6).toBeCloseTo(Math.PI * (3.375 ** 2 - 2.875 ** 2), 9);
    expect(ground.slab / 1e6).toBeCloseTo(Math.PI * 2.875 ** 2, 9);
  });
});
