import fc from 'fast-check';
import type { House } from '../../lib/description/house.js';
import type { Description } from '../../lib/description/schema.js';
import { profileOf } from '../../lib/math/profile.js';
import { alongBearing, bearingOf, cross2, DEG, dot2, sub2, turnSigned, type Vec2 } from '../../lib/math/vec.js';
import { HEADS, SHAPES, tryHouse } from './houses.js';

/**
 * Random clusters of two to four domes, built so that most are valid: each dome after the first abuts an earlier
 * one or stands beside it, with or without a passage. Every choice is a number that can shrink.
 */
const LINKS = [
  'abut',
  'abut',
  'abut and join',
  'abut and join',
  'abut and join',
  'join',
  'join',
  'stand apart',
] as const;
const KINDS = ['door', 'barrel window', 'flush window', 'vent', 'flush niche', 'barrel niche'] as const;

/** Even over the whole range: a `double` would nearly always be next to 0. */
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

const domeSeed = fc.record({
  shape: fc.constantFrom(...SHAPES),
  radius: share,
  rise: share,
  stem: fc.oneof(fc.constant(0), share, share),
  oculus: fc.option(fc.record({ radius: share, curb: share, upstand: share }), { freq: 2 }),
  openings: fc.array(openingSeed, { minLength: 0, maxLength: 4 }),
  parent: share,
  turn: share,
  link: fc.constantFrom(...LINKS),
  near: share,
  passage: fc.record({ head: fc.constantFrom(...HEADS), width: share, height: share, rise: share, ring: share }),
});

const clusterSeed = fc.record({
  domes: fc.array(domeSeed, { minLength: 2, maxLength: 4 }),
  spread: share,
  start: share,
  thickness: share,
  courseHeight: share,
  length: share,
  joint: share,
  /** Whether the one that the others were set beside is listed last, so that it gives way to them. */
  reversed: fc.boolean(),
  slab: fc.boolean(),
  footing: fc.boolean(),
  ground: share,
  flat: fc.integer({ min: 0, max: 5 }),
});

type Seed<T> = T extends fc.Arbitrary<infer U> ? U : never;
type DomeSeed = Seed<typeof domeSeed>;
type OpeningSeed = Seed<typeof openingSeed>;

/** A dome that has its place. */
interface Placed {
  readonly id: string;
  readonly seed: DomeSeed;
  readonly at: Vec2;
  readonly radius: number;
  readonly rise: number;
  readonly stem: number;
  readonly outside: number;
  readonly parent: Placed | null;
}

function riseOf(shape: (typeof SHAPES)[number], radius: number, at: number): number {
  switch (shape) {
    case 'hemisphere':
      return radius;
    case 'segmental':
      return mm(radius * 0.6, radius * 0.97, at);
    case 'pointed':
      return mm(radius * 1.03, radius * 1.6, at);
    case 'catenary':
      return mm(radius * 0.8, radius * 1.5, at);
    case 'elliptical':
      return mm(radius * 0.7, radius * 1.4, at);
  }
}

const SHORTEST_PIECE = 120;

function placeDomes(seed: Seed<typeof clusterSeed>, thickness: number): Placed[] {
  const placed: Placed[] = [];
  const parents = seed.domes.map((d, k) => (k === 0 ? -1 : Math.min(k - 1, Math.floor(d.parent * k))));
  seed.domes.forEach((dome, k) => {
    const radius = mm(1500, 3200, dome.radius);
    const outside = radius + thickness;
    const parent = placed[parents[k] as number] ?? null;
    placed.push({
      id: `d${k}`,
      seed: dome,
      at: parent ? beside(seed, parents, placed, k, outside, thickness) : [mm(-4000, 4000, seed.start), 0],
      radius,
      rise: riseOf(dome.shape, radius, dome.rise),
      stem: mm(0, 1500, dome.stem),
      outside,
      parent,
    });
  });
  return placed;
}

/** Children of one dome spread about it, away from its own parent. */
function beside(
  seed: Seed<typeof clusterSeed>,
  parents: readonly number[],
  placed: readonly Placed[],
  k: number,
  outside: number,
  thickness: number,
): Vec2 {
  const parent = placed[parents[k] as number] as Placed;
  const children = parents.flatMap((p, i) => (p === parents[k] ? [i] : []));
  const { near, link, turn } = seed.domes[k] as DomeSeed;
  const step = parent.parent ? 120 : children.length === 2 ? between(62, 180, seed.spread) : 120;
  const home = parent.parent ? bearingOf(sub2(parent.at, parent.parent.at)) / DEG : between(0, 360, seed.start);
  const first = parent.parent ? -(step * (children.length - 1)) / 2 : 0;
  const bearing = home + first + step * children.indexOf(k) + between(-12, 12, turn);
  const sum = parent.outside + outside;
  const distance = link.startsWith('abut')
    ? sum - thickness - SHORTEST_PIECE - 1 - 0.75 * near * Math.min(parent.outside, outside)
    : sum + between(200, 1800, near);
  const along = alongBearing(bearing * DEG);
  return [Math.round(parent.at[0] + along[0] * distance), Math.round(parent.at[1] + along[1] * distance)];
}

/** The height up to which something of this width fits a dome well, its ring included. */
function heightLimit({ seed, radius, rise, stem }: Placed, width: number, ring: number): number {
  const profile = profileOf({ shape: seed.shape, radius, rise });
  return stem + profile.heightAt(Math.min(radius * 0.93, width / 2 + ring + radius * 0.3)) - ring;
}

function headOf(shape: (typeof HEADS)[number], width: number, height: number, at: number) {
  if (shape === 'segmental') return { shape, rise: mm(width * 0.1, Math.min(width * 0.49, height * 0.9), at) };
  if (shape === 'pointed')
    return { shape, rise: mm(width * 0.55, Math.max(width * 0.56, Math.min(width * 1.1, height * 0.9)), at) };
  return shape;
}

type Passages = NonNullable<Description['passages']>;
type Openings = NonNullable<Description['openings']>;

function passagesOf(domes: readonly Placed[]): Passages {
  return domes.flatMap((dome, k) => {
    const { link, passage, near } = dome.seed;
    if (!dome.parent || !link.endsWith('join')) return [];
    const ring = mm(80, 200, passage.ring);
    const width = mm(500, Math.min(1100, Math.min(dome.radius, dome.parent.radius) * 0.5), passage.width);
    const limit = Math.min(heightLimit(dome, width, ring), heightLimit(dome.parent, width, ring));
    const height = mm(limit * 0.6, limit * 0.95, passage.height);
    const ends: [string, string] = near < 0.5 ? [dome.id, dome.parent.id] : [dome.parent.id, dome.id];
    return [
      { id: `p${k}`, between: ends, width, height, head: headOf(passage.head, width, height, passage.rise), ring },
    ];
  });
}

/** What stands in a dome's wall already: a bearing, radians, and half the angle that it takes. */
interface Taken {
  readonly bearing: number;
  readonly half: number;
}

const halfAngle = (half: number, { radius }: Placed) => Math.asin(Math.min(1, half / (radius * 0.75)));

function openingsOf(dome: Placed, domes: readonly Placed[], passages: Passages, thickness: number): Openings {
  const taken: Taken[] = passages
    .filter((p) => p.between.includes(dome.id))
    .map((p) => {
      const other = domes.find((d) => d !== dome && p.between.includes(d.id)) as Placed;
      const half = (p.width as number) / 2 + (p.ring as number);
      return { bearing: bearingOf(sub2(other.at, dome.at)), half: halfAngle(half, dome) };
    });
  return dome.seed.openings.flatMap((seed, k) => {
    const opening = sizedOpening(dome, seed, thickness);
    const half = (opening.width as number) / 2 + (opening.arch?.ring as number);
    const face = opening.arch?.face === 'flush' ? 0 : (opening.arch?.face as number);
    const reach = dome.outside + face + (opening.use === 'door' ? 910 : 310);
    for (let step = 0; step < 24; step++) {
      const bearing = ((Math.round(between(0, 360, seed.turn) + step * 15) % 360) * DEG) as number;
      const own = halfAngle(half + SHORTEST_PIECE / 2, dome);
      const free =
        taken.every((t) => Math.abs(turnSigned(t.bearing - bearing)) > t.half + own) &&
        domes.every((d) => d === dome || clearOf(dome, bearing, half, reach, d));
      if (!free) continue;
      taken.push({ bearing, half: own });
      return [{ ...opening, id: `${dome.id}-o${k}`, bearing: bearing / DEG }];
    }
    return [];
  });
}

/** Whether a strip out from a dome's wall stays clear of another dome. */
function clearOf(dome: Placed, bearing: number, half: number, reach: number, other: Placed): boolean {
  const along = alongBearing(bearing);
  const away = sub2(other.at, dome.at);
  const [u, v] = [cross2(along, away), dot2(along, away)];
  const nearestU = Math.min(half, Math.max(-half, u));
  const nearestV = Math.min(reach, Math.max(dome.radius * 0.7, v));
  return Math.hypot(u - nearestU, v - nearestV) > other.outside + SHORTEST_PIECE + 20;
}

function sizedOpening(dome: Placed, seed: OpeningSeed, thickness: number): Openings[number] {
  const { kind } = seed;
  const ring = mm(80, 200, seed.ring);
  const wished = mm(300, Math.min(1200, dome.radius * 0.4), seed.width);
  const sill = kind === 'door' ? 0 : mm(200, 800, seed.sill);
  const limit = heightLimit(dome, wished, ring) - sill;
  const height = mm(Math.min(350, limit), Math.max(350, limit * 0.92), seed.height);
  // A head never rises more than the whole opening.
  const width = Math.min(wished, Math.floor(1.6 * height));
  const niche = kind.endsWith('niche');
  const flush = kind.startsWith('flush') || kind === 'vent';
  return {
    id: '',
    in: dome.id,
    bearing: 0,
    use: niche ? 'niche' : kind === 'door' || kind === 'vent' ? kind : 'window',
    width,
    height,
    sill,
    head: headOf(seed.head, width, height, seed.rise),
    arch: { ring, face: flush ? 'flush' : mm(60, 600, seed.depth) },
    ...(niche ? { depth: flush ? mm(30, thickness - 60, seed.depth) : mm(60, thickness, seed.depth) } : {}),
  };
}

function descriptionOf(seed: Seed<typeof clusterSeed>): Description {
  const thickness = mm(150, 300, seed.thickness);
  const domes = placeDomes(seed, thickness);
  const passages = passagesOf(domes);
  const listed = seed.reversed ? domes.toReversed() : domes;
  return {
    format: 1,
    units: 'mm',
    site: { ground: -mm(0, 250, seed.ground) },
    wall: { thickness },
    blocks: {
      'course-height': mm(200, 350, seed.courseHeight),
      length: mm(300, 600, seed.length),
      joint: mm(6, 14, seed.joint),
      'shortest-piece': SHORTEST_PIECE,
      faces: seed.flat === 0 ? 'flat' : 'curved',
      heaviest: '200 kg',
    },
    domes: listed.map(({ id, at, radius, rise, stem, seed: dome }) => ({
      id,
      at: [...at] as [number, number],
      radius,
      profile: dome.shape === 'hemisphere' ? ('hemisphere' as const) : { shape: dome.shape, rise },
      'stem-wall': stem < 200 ? 0 : stem,
      ...(dome.oculus
        ? {
            oculus: {
              radius: mm(150, radius * 0.16, dome.oculus.radius),
              curb: mm(80, 200, dome.oculus.curb),
              upstand: mm(0, 200, dome.oculus.upstand),
            },
          }
        : {}),
    })),
    openings: domes.flatMap((dome) => openingsOf(dome, domes, passages, thickness)),
    passages,
    ...(seed.footing ? { footing: { width: thickness + 200 } } : { footing: 'none' as const }),
    ...(seed.slab ? {} : { slab: 'none' as const }),
  };
}

/** Descriptions as they are made, for telling what the rules have against them. */
export const clusterDescriptions: fc.Arbitrary<Description> = clusterSeed.map(descriptionOf);

/** The house of each seed, or `null` where the rules refuse it. */
export const clusterAttempts: fc.Arbitrary<House | null> = clusterDescriptions.map(tryHouse);

/** Valid random clusters. */
export const clusters: fc.Arbitrary<House> = clusterAttempts.filter((house) => house !== null);

/** Whether any two domes of a house overlap, so that one abuts the other. */
export function abuts(house: House): boolean {
  const { thickness } = house.wall;
  return house.domes.some((one, i) =>
    house.domes
      .slice(i + 1)
      .some(
        (other) =>
          Math.hypot(one.at[0] - other.at[0], one.at[1] - other.at[1]) < one.radius + other.radius + 2 * thickness,
      ),
  );
}
