import { hypot } from '../../math/elementary.js';
import type { Vec2, Vec3 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';

/** Places along the edges of a clear space that are held against those of another, to begin with. */
const SAMPLES = 12;
/** Nearer ones are then sought around, in steps that end at this share of its height. */
const NARROWEST_STEP = 1e-5;
const AROUND = [-1, 0, 1];

/** Wall between two clear spaces of a dome, at its narrowest on the intrados; mm of the house. */
export interface Pier {
  readonly between: readonly [string, string];
  readonly width: number;
}

/** Piers narrower than `least`. */
export function narrowPiers({ arches, passages, domes }: HouseSetout, least: number): Pier[] {
  return domes.flatMap((dome) => {
    const ways = [
      ...arches.filter((arch) => arch.dome.id === dome.id),
      ...passages.flatMap((p) => {
        const end = p.domes.findIndex((d) => d.id === dome.id);
        const turn = end === 0 ? 1 : -1;
        if (end < 0) return [];
        return [{ id: p.id, section: p.section, clearHalfAt: p.clearHalfAt, ...turned(p.along, turn) }];
      }),
    ].map((way) => ({ id: way.id, rim: rimOf(dome, way) }));
    return ways.flatMap((one, i) =>
      ways.slice(i + 1).flatMap((other): Pier[] => {
        const width = rimsApart(one.rim, other.rim, least);
        return width < least ? [{ between: [one.id, other.id], width }] : [];
      }),
    );
  });
}

const turned = (along: Vec2, turn: number): { along: Vec2; across: Vec2 } => ({
  along: [turn * along[0], turn * along[1]],
  across: [turn * along[1], -turn * along[0]],
});

/** Both edges of a clear space on the intrados: their points at a height between `low` and `high`. */
interface Rim {
  readonly low: number;
  readonly high: number;
  at(z: number): readonly Vec3[];
}

function rimOf(
  dome: DomeSetout,
  way: {
    readonly along: Vec2;
    readonly across: Vec2;
    readonly section: { readonly sill: number; readonly crownZ: number };
    clearHalfAt(z: number): number;
  },
): Rim {
  return {
    low: way.section.sill,
    high: way.section.crownZ,
    at(z) {
      const half = way.clearHalfAt(z);
      const r = dome.radiusAt(z);
      if (!(r > half)) return [];
      const v = Math.sqrt(r * r - half * half);
      return [half, -half].map(
        (u): Vec3 => [
          dome.at[0] + v * way.along[0] + u * way.across[0],
          dome.at[1] + v * way.along[1] + u * way.across[1],
          z,
        ],
      );
    },
  };
}

const apart = (a: Vec3, b: Vec3): number => hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Least distance of two rims, from the nearest of the samples on; those that are surely `enough` apart aren't sought. */
function rimsApart(one: Rim, other: Rim, enough: number): number {
  const heightsOf = ({ low, high }: Rim) =>
    Array.from({ length: SAMPLES + 1 }, (_, k) => low + ((high - low) * k) / SAMPLES);
  const gapAt = (z: Vec2): number => {
    let gap = Number.POSITIVE_INFINITY;
    for (const a of one.at(z[0])) for (const b of other.at(z[1])) gap = Math.min(gap, apart(a, b));
    return gap;
  };
  let gap = Number.POSITIVE_INFINITY;
  let place: Vec2 = [one.low, other.low];
  const look = (z: Vec2): boolean => {
    const found = gapAt(z);
    if (!(found < gap)) return false;
    [gap, place] = [found, z];
    return true;
  };
  for (const a of heightsOf(one)) for (const b of heightsOf(other)) look([a, b]);
  if (gap - longestStep(one, heightsOf(one)) - longestStep(other, heightsOf(other)) > enough) return gap;
  const within = ({ low, high }: Rim, z: number) => Math.min(high, Math.max(low, z));
  for (let step = 1 / SAMPLES; step > NARROWEST_STEP; ) {
    const [a, b] = place;
    const [up, aside] = [step * (one.high - one.low), step * (other.high - other.low)];
    let nearer = false;
    for (const i of AROUND)
      for (const j of AROUND) nearer = look([within(one, a + i * up), within(other, b + j * aside)]) || nearer;
    if (!nearer) step /= 2;
  }
  return gap;
}

/** The farthest that a rim runs from one of some heights to the next. */
const longestStep = (rim: Rim, heights: readonly number[]): number =>
  Math.max(
    ...heights.slice(1).flatMap((z, k) => {
      const below = rim.at(heights[k] as number);
      return rim.at(z).map((p, side) => apart(p, below[side] ?? p));
    }),
  );
