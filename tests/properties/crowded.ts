import fc from 'fast-check';
import type { House } from '../../lib/description/house.js';
import { tryHouse } from './houses.js';

const HEADS = ['semicircular', 'flat', { shape: 'segmental' }, { shape: 'pointed' }] as const;
const share = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);
const mm = (low: number, high: number, at: number) => Math.round(low + (high - low) * at);

/** A small dome with as many and as large openings as its turn holds: arches meet nearly, little wall is left. */
export const crowdedHouses: fc.Arbitrary<House> = fc
  .record({
    radius: share,
    rise: share,
    stem: fc.oneof(fc.constant(0), share),
    thickness: share,
    ring: share,
    start: share,
    openings: fc.array(fc.record({ width: share, height: share, sill: share, head: fc.constantFrom(...HEADS) }), {
      minLength: 3,
      maxLength: 7,
    }),
  })
  .map(({ openings, ...seed }) => {
    const radius = mm(1000, 2400, seed.radius);
    const rise = mm(radius * 0.8, radius * 1.4, seed.rise);
    const [stem, thickness, ring] = [mm(0, 1200, seed.stem), mm(150, 300, seed.thickness), mm(80, 160, seed.ring)];
    const widest = 2 * radius * Math.sin((Math.PI / openings.length) * 0.95) - 2 * ring;
    return tryHouse({
      format: 1,
      units: 'mm',
      wall: { thickness },
      blocks: { 'course-height': 220, length: 350, 'shortest-piece': 80, 'least-lap': 40, heaviest: '200 kg' },
      domes: [
        {
          id: 'dome',
          at: [0, 0],
          radius,
          profile: seed.rise < 0.3 ? 'hemisphere' : { shape: 'elliptical', rise },
          'stem-wall': stem,
        },
      ],
      openings: openings.map(({ width, height, sill, head }, k) => {
        const clear = Math.max(200, mm(widest * 0.8, widest, width));
        const above = sill < 0.6 ? 0 : mm(200, 800, sill);
        const taken = (clear / 2 + ring) / radius;
        const top = stem + rise * Math.sqrt(Math.max(0.1, 1 - taken * taken)) - ring - above;
        return {
          id: `o${k}`,
          in: 'dome',
          bearing: (360 * (seed.start + k / openings.length)) % 360,
          use: above === 0 ? ('door' as const) : ('window' as const),
          width: clear,
          height: Math.max(300, mm(top * 0.7, top, height)),
          sill: above,
          head: typeof head === 'string' ? head : { ...head, rise: mm(clear * 0.2, clear * 0.49, height) },
          arch: { ring, face: 'flush' as const },
        };
      }),
    });
  })
  .filter((house) => house !== null);
