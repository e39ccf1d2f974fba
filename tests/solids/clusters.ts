import type { Head, House, Opening, Passage } from '../../lib/description/house.js';
import type { Mesh } from '../../lib/documents/mesh.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { openingLike } from './support.js';

/** Houses of several domes for tests, in millimetres. */

type Part<T> = { readonly [K in keyof T]?: T[K] };

export function passageOf(between: readonly [string, string], part: Part<Passage> = {}): Passage {
  const width = part.width ?? 1000;
  const head: Head = part.head ?? { shape: 'semicircular', rise: width / 2 };
  return { id: `${between[0]}-${between[1]}`, between, width, height: 1600, ring: 200, ...part, head };
}

const SIDE: Partial<Opening> = { in: 'b', use: 'window', sill: 600, height: 1000, width: 900 };

/** Layouts that differ in how their rooms, passages and walls hang together. */
export const LAYOUTS: Readonly<Record<string, Part<House>>> = {
  'two that abut, alike and in line with the axes': {
    domes: [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [5400, 0] })],
    passages: [passageOf(['a', 'b'])],
  },
  'two that abut without a way between them': {
    domes: [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [4000, 3600], radius: 2500 })],
    openings: [openingOf({ in: 'a', bearingDeg: 250 })],
  },
  'two apart with a passage': {
    domes: [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [0, -7000] })],
    passages: [passageOf(['b', 'a'])],
    openings: [openingOf({ in: 'a', bearingDeg: 90 }), openingOf({ id: 'other', in: 'b', bearingDeg: 270 })],
  },
  'two that stand alone': { domes: [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [9000, 1000] })] },
  'deep abutment with arches beside it': {
    domes: [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [3600, 0], shape: 'pointed', radius: 2600, rise: 3600 })],
    openings: [
      openingOf({ id: 'north', in: 'b', bearingDeg: 20, width: 900, height: 1800 }),
      openingOf({ ...SIDE, id: 'south', bearingDeg: 160, arch: { ...openingOf().arch, face: 'flush' } }),
    ],
  },
  'low dome deep in another, whose wall stands beside the way to its door': {
    domes: [
      domeOf({ id: 'a' }),
      domeOf({ id: 'b', at: [3300, 0], shape: 'segmental', radius: 2600, rise: 1700, stemWall: 0 }),
    ],
    openings: [openingOf({ in: 'b', bearingDeg: 0, width: 900, height: 1200, head: { shape: 'flat', rise: 0 } })],
  },
  'three in a row, the last cut on both sides': {
    domes: [
      domeOf({ id: 'a', at: [-5200, 0] }),
      domeOf({ id: 'c', at: [5000, 800] }),
      domeOf({ id: 'b', shape: 'segmental', radius: 2600, rise: 1700 }),
    ],
    passages: [passageOf(['a', 'b']), passageOf(['b', 'c'], { head: { shape: 'pointed', rise: 700 } })],
    openings: [openingLike('barrel', { shape: 'flat', rise: 0 }, { in: 'b', bearingDeg: 180 })],
  },
  'three that abut one another': {
    domes: [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [5400, 0] }), domeOf({ id: 'c', at: [2700, 4676] })],
  },
  'three in a ring of passages': {
    domes: [domeOf({ id: 'a' }), domeOf({ id: 'b', at: [7200, 0] }), domeOf({ id: 'c', at: [3600, 6235] })],
    passages: [passageOf(['a', 'b']), passageOf(['b', 'c']), passageOf(['c', 'a'])],
    openings: [openingOf({ in: 'a', bearingDeg: 230 })],
  },
  'four about a court': {
    domes: (['a', 'b', 'c', 'd'] as const).map((id, k) =>
      domeOf({ id, at: [k === 0 || k === 3 ? 0 : 5600, k > 1 ? 5600 : 0] }),
    ),
    passages: [passageOf(['a', 'b']), passageOf(['b', 'c']), passageOf(['c', 'd']), passageOf(['d', 'a'])],
    openings: [openingOf({ in: 'a', bearingDeg: 225 }), openingOf({ id: 'court-door', in: 'c', bearingDeg: 225 })],
  },
  'two with oculi and niches': {
    domes: [
      domeOf({ id: 'a', oculus: { radius: 350, curb: 150, upstand: 100 } }),
      domeOf({
        id: 'b',
        at: [5000, 1500],
        shape: 'elliptical',
        rise: 2300,
        oculus: { radius: 300, curb: 150, upstand: 0 },
      }),
    ],
    passages: [passageOf(['a', 'b'], { head: { shape: 'segmental', rise: 200 } })],
    openings: [
      openingLike('flush niche', { shape: 'pointed', rise: 700 }, { in: 'a', bearingDeg: 300 }),
      openingLike('barrel niche', { shape: 'flat', rise: 0 }, { id: 'shelf', in: 'b', bearingDeg: 120 }),
    ],
  },
};

/** A row of abutting domes, each with a door and a window, each joined to the one before. */
export function rowOf(count: number): House {
  const at = (k: number) => [k * 5400, (k % 2) * 300] as const;
  const ids = Array.from({ length: count }, (_, k) => `d${k}`);
  return houseOf({
    domes: ids.map((id, k) => domeOf({ id, at: at(k), radius: k % 2 ? 2400 : 2700 })),
    passages: ids.slice(1).map((id, k) => passageOf([`d${k}`, id], { height: 1800 })),
    openings: ids.flatMap((id) => [
      openingOf({ id: `${id}-door`, in: id, height: 2000 }),
      openingLike('flush', { shape: 'segmental', rise: 200 }, { id: `${id}-light`, in: id, bearingDeg: 0, sill: 700 }),
    ]),
  });
}

/** Width of the strips in which a mesh's triangles are looked up. */
const STRIP = 200;

/** Tells whether points lie inside a closed mesh, by how often an upright line meets it above them. */
export function insideOf({ positions, triangles }: Mesh): (x: number, y: number, z: number) => boolean {
  const at = (t: number, corner: number, axis: number) =>
    positions[3 * (triangles[3 * t + corner] as number) + axis] as number;
  const strips = new Map<number, number[]>();
  for (let t = 0; t < triangles.length / 3; t++) {
    const [a, b, c] = [at(t, 0, 0), at(t, 1, 0), at(t, 2, 0)];
    for (let k = Math.floor(Math.min(a, b, c) / STRIP); k <= Math.floor(Math.max(a, b, c) / STRIP); k++) {
      const strip = strips.get(k);
      if (strip) strip.push(t);
      else strips.set(k, [t]);
    }
  }
  return (x, y, z) => {
    let above = 0;
    for (const t of strips.get(Math.floor(x / STRIP)) ?? []) {
      const [ax, ay] = [at(t, 0, 0) - x, at(t, 0, 1) - y];
      const [bx, by] = [at(t, 1, 0) - x, at(t, 1, 1) - y];
      const [cx, cy] = [at(t, 2, 0) - x, at(t, 2, 1) - y];
      const [u, v, w] = [bx * cy - by * cx, cx * ay - cy * ax, ax * by - ay * bx];
      const total = u + v + w;
      if (total === 0 || !((u >= 0 && v >= 0 && w >= 0) || (u <= 0 && v <= 0 && w <= 0))) continue;
      if ((u * at(t, 0, 2) + v * at(t, 1, 2) + w * at(t, 2, 2)) / total > z) above++;
    }
    return above % 2 === 1;
  };
}
