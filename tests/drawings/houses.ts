import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { Head, Opening, ProfileShape } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { clusters } from '../properties/clusters.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const SAMPLES = new URL('../../samples/', import.meta.url);

/** All sample houses by name. */
export function samples(): [string, HouseSetout][] {
  const files = readdirSync(SAMPLES).filter((f) => f.endsWith('.yaml') && !f.endsWith('.keeps.yaml'));
  return files.map((f) => [f, setOutHouse(readDescription(readFileSync(new URL(f, SAMPLES), 'utf8'), f))]);
}

/** Random clusters of a seed. */
export const randomClusters = (count: number, seed: number): [string, HouseSetout][] =>
  fc
    .sample(clusters, { numRuns: count, seed })
    .map((house, i) => [
      `random ${seed}-${i}: ${house.domes.map((d) => d.profile.shape).join(', ')}`,
      setOutHouse(house),
    ]);

const { site } = houseOf();
const flush: Opening['arch'] = { ring: 150, face: 'flush', madeAs: 'cast', voussoirs: null };
const heads: readonly Head[] = [
  { shape: 'semicircular', rise: 400 },
  { shape: 'segmental', rise: 180 },
  { shape: 'pointed', rise: 650 },
  { shape: 'flat', rise: 0 },
];
const shapes: readonly (readonly [ProfileShape, number])[] = [
  ['hemisphere', 3000],
  ['segmental', 2300],
  ['pointed', 3900],
  ['catenary', 3300],
  ['elliptical', 2500],
];

/** Houses that between them have every profile with every head, turned openings, niches, oculi, and what may lack. */
export function variety(): [string, HouseSetout][] {
  const mixed = shapes.flatMap(([shape, rise], i) =>
    heads.map((head, j): [string, HouseSetout] => {
      const bearing = [0, 359.9, 45, 123.4, 270][(i + j) % 5] as number;
      const wide = { width: 800, head };
      return [
        `${shape}, ${head.shape}, ${bearing}`,
        setOutHouse(
          houseOf({
            domes: [
              domeOf({
                shape,
                rise,
                stemWall: [0, 600, 1100][(i + j) % 3] as number,
                oculus: j % 2 === 0 ? { radius: 350, curb: 150, upstand: 100 } : null,
              }),
            ],
            openings: [
              openingOf({ ...wide, bearingDeg: bearing, height: 1900 }),
              openingOf({
                ...wide,
                id: 'light',
                bearingDeg: (bearing + 100.5) % 360,
                use: 'window',
                height: 1000,
                sill: 800,
                arch: flush,
              }),
              openingOf({
                ...wide,
                id: 'bay',
                bearingDeg: (bearing + 190) % 360,
                use: 'window',
                height: 900,
                sill: 700,
              }),
              openingOf({
                ...wide,
                id: 'shelf',
                bearingDeg: (bearing + 270) % 360,
                use: 'niche',
                height: 700,
                sill: 1300,
                depth: 120,
                arch: flush,
              }),
            ],
          }),
        ),
      ];
    }),
  );
  return [
    ...mixed,
    ['no openings', setOutHouse(houseOf())],
    ['no footing, no slab', setOutHouse(houseOf({ footing: null, slab: null, openings: [openingOf()] }))],
    ['no footing', setOutHouse(houseOf({ footing: null, openings: [openingOf({ bearingDeg: 30 })] }))],
    ['no slab', setOutHouse(houseOf({ slab: null, openings: [openingOf({ bearingDeg: 30 })] }))],
    ['ground level with the floor', setOutHouse(houseOf({ site: { ...site, ground: 0 }, openings: [openingOf()] }))],
    ['ground above the floor', setOutHouse(houseOf({ site: { ...site, ground: 300, northDeg: 350 } }))],
    [
      'niche in a barrel, in feet',
      setOutHouse(
        houseOf({
          units: 'ft',
          openings: [openingOf({ id: 'seat', use: 'niche', bearingDeg: 77, sill: 450, height: 1300, depth: 400 })],
        }),
      ),
    ],
    [
      'two domes',
      setOutHouse(
        houseOf({
          domes: [
            domeOf(),
            domeOf({ id: 'lab', at: [7000, 1500], radius: 2200, shape: 'pointed', rise: 2900, stemWall: 300 }),
          ],
          openings: [
            openingOf(),
            openingOf({
              id: 'lab-light',
              in: 'lab',
              bearingDeg: 120,
              use: 'window',
              height: 1000,
              sill: 900,
              arch: flush,
            }),
          ],
        }),
      ),
    ],
  ];
}
