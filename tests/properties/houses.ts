import fc from 'fast-check';
import { DescriptionError } from '../../lib/base/problems.js';
import type { House } from '../../lib/description/house.js';
import { houseFrom } from '../../lib/description/read.js';
import type { Description } from '../../lib/description/schema.js';
import { profileOf } from '../../lib/math/profile.js';

/** Random one-dome houses, built so that most are valid; every choice is a number that can shrink. */
export const SHAPES = ['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical'] as const;
export const HEADS = ['semicircular', 'segmental', 'pointed', 'flat'] as const;
const KINDS = ['door', 'barrel window', 'flush window', 'vent', 'flush niche', 'barrel niche'] as const;

/** Whole millionths: a uniform double is drawn by its bits, which puts nearly all of them next to 0. */
const share = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1_000_000);
const between = (low: number, high: number, at: number) => low + (high - low) * at;
/** Whole millimetres, as people write them. */
const mm = (low: number, high: number, at: number) => Math.round(between(low, high, at));

const openingSeed = fc.record({
  head: fc.constantFrom(...HEADS),
  kind: fc.constantFrom(...KINDS),
  turn: share,
  width: share,
  height: share,
  sill: share,
  rise: share,
  ring: share,
  depth: share,
});

const houseSeed = fc.record({
  shape: fc.constantFrom(...SHAPES),
  radius: share,
  rise: share,
  stem: fc.oneof(fc.constant(0), share),
  thickness: share,
  courseHeight: share,
  length: share,
  joint: share,
  oculus: fc.option(fc.record({ radius: share, curb: share, upstand: share }), { freq: 1 }),
  slab: fc.boolean(),
  footing: fc.boolean(),
  ground: share,
  flat: fc.integer({ min: 0, max: 4 }),
  openings: fc.array(openingSeed, { minLength: 0, maxLength: 5 }),
  start: share,
});

type Seed<T> = T extends fc.Arbitrary<infer U> ? U : never;

function riseOf(shape: (typeof SHAPES)[number], radius: number, at: number): number {
  switch (shape) {
    case 'hemisphere':
      return radius;
    case 'segmental':
      return mm(radius * 0.45, radius * 0.97, at);
    case 'pointed':
      return mm(radius * 1.03, radius * 1.8, at);
    case 'catenary':
      return mm(radius * 0.6, radius * 1.6, at);
    case 'elliptical':
      return mm(radius * 0.55, radius * 1.5, at);
  }
}

function descriptionOf(seed: Seed<typeof houseSeed>): Description {
  const radius = mm(1600, 4200, seed.radius);
  const rise = riseOf(seed.shape, radius, seed.rise);
  const stem = mm(0, 1400, seed.stem);
  const thickness = mm(150, 350, seed.thickness);
  const count = seed.openings.length;
  return {
    format: 1,
    units: 'mm',
    site: { ground: -mm(0, 250, seed.ground) },
    wall: { thickness },
    blocks: {
      'course-height': mm(180, 350, seed.courseHeight),
      length: mm(300, 600, seed.length),
      joint: mm(6, 14, seed.joint),
      faces: seed.flat === 0 ? 'flat' : 'curved',
      heaviest: '200 kg',
    },
    domes: [
      {
        id: 'dome',
        at: [mm(-5000, 5000, seed.start), mm(-4000, 9000, seed.radius)],
        radius,
        profile: seed.shape === 'hemisphere' ? 'hemisphere' : { shape: seed.shape, rise },
        'stem-wall': stem,
        ...(seed.oculus
          ? {
              oculus: {
                radius: mm(150, radius * 0.16, seed.oculus.radius),
                curb: mm(80, 200, seed.oculus.curb),
                upstand: mm(0, 200, seed.oculus.upstand),
              },
            }
          : {}),
      },
    ],
    openings: seed.openings.map((o, k) => {
      const ring = mm(80, 220, o.ring);
      const width = mm(300, Math.min(1500, radius * 0.42), o.width);
      const sill = o.kind === 'door' ? 0 : mm(200, 900, o.sill);
      const profile = profileOf({ shape: seed.shape, radius, rise });
      // High enough that the crown of the ring stays where the dome is still twice as wide as the opening.
      const limit = stem + profile.heightAt(Math.min(radius * 0.93, width / 2 + ring + radius * 0.3)) - ring - sill;
      const height = mm(Math.min(350, limit), Math.max(350, limit * 0.92), o.height);
      const head =
        o.head === 'segmental'
          ? { shape: o.head, rise: mm(width * 0.1, Math.min(width * 0.49, height * 0.9), o.rise) }
          : o.head === 'pointed'
            ? {
                shape: o.head,
                rise: mm(width * 0.55, Math.max(width * 0.56, Math.min(width * 1.1, height * 0.9)), o.rise),
              }
            : o.head;
      const niche = o.kind.endsWith('niche');
      const flush = o.kind.startsWith('flush') || o.kind === 'vent';
      return {
        id: `o${k}`,
        in: 'dome',
        bearing: (((between(0, 360, seed.start) + (360 / count) * (k + 0.3 * o.turn)) * 100) % 36000) / 100,
        use: niche
          ? ('niche' as const)
          : o.kind === 'door'
            ? ('door' as const)
            : o.kind === 'vent'
              ? ('vent' as const)
              : ('window' as const),
        width,
        height,
        sill,
        head,
        arch: { ring, face: flush ? ('flush' as const) : mm(60, 700, o.depth) },
        ...(niche ? { depth: flush ? mm(30, thickness - 60, o.depth) : mm(60, thickness, o.depth) } : {}),
      };
    }),
    ...(seed.footing ? { footing: { width: thickness + 200 } } : { footing: 'none' as const }),
    ...(seed.slab ? {} : { slab: 'none' as const }),
  };
}

/** The house of a description, or `null` where its rules refuse it. */
export function tryHouse(description: Description): House | null {
  try {
    return houseFrom(description);
  } catch (error) {
    if (error instanceof DescriptionError) return null;
    throw error;
  }
}

/** Sizes as people write them: steps of 100 mm and 15 degrees make levels and lines coincide. */
function rounded(value: unknown, key = ''): unknown {
  if (typeof value === 'number') {
    if (key === 'bearing') return (Math.round(value / 15) * 15) % 360;
    return ['radius', 'rise', 'stem-wall', 'width', 'height', 'sill', 'face'].includes(key)
      ? Math.round(value / 100) * 100
      : value;
  }
  if (Array.isArray(value)) return value.map((item) => rounded(item, key));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, rounded(v, k)]));
}

/** Valid random houses in round sizes. */
export const roundHouses: fc.Arbitrary<House> = houseSeed
  .map((seed) => rounded(descriptionOf(seed)) as Description)
  .map(tryHouse)
  .filter((house) => house !== null);

/** Valid random houses. */
export const houses: fc.Arbitrary<House> = houseSeed
  .map(descriptionOf)
  .map(tryHouse)
  .filter((house) => house !== null);

/** The share of seeds that make valid houses, for telling a generator gone lame. */
export const attempts: fc.Arbitrary<House | null> = houseSeed.map(descriptionOf).map(tryHouse);
