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
  readonly samples: readonly { readonly z: number; readonly points: readonly Vec3[] }[];
  /** The farthest that it runs from one sample to the next. */
  readonly step: number;
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
  const { sill: low, crownZ: high } = way.section;
  const at = (z: number): Vec3[] => {
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
  };
  const samples = Array.from({ length: SAMPLES + 1 }, (_, k) => {
    const z = low + ((high - low) * k) / SAMPLES;
    return { z, points: at(z) };
  });
  const steps = samples.slice(1).flatMap(({ points }, k) => {
    const below = samples[k]?.points ?? [];
    return points.map((p, side) => apart(p, below[side] ?? p));
  });
  return { low, high, samples, step: Math.max(...steps), at };
}

const apart = (a: Vec3, b: Vec3): number => hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

const pointsApart = (one: readonly Vec3[], other: readonly Vec3[]): number =>
  Math.min(...one.flatMap((a) => other.map((b) => apart(a, b))));

/** Least distance of two rims, from the nearest of the samples on; those that are surely `enough` apart aren't sought. */
function rimsApart(one: Rim, other: Rim, enough: number): number {
  let gap = Number.POSITIVE_INFINITY;
  let place: Vec2 = [one.low, other.low];
  const take = (found: number, z: Vec2): boolean => {
    if (!(found < gap)) return false;
    [gap, place] = [found, z];
    return true;
  };
  for (const a of one.samples) for (const b of other.samples) take(pointsApart(a.points, b.points), [a.z, b.z]);
  if (gap - one.step - other.step > enough) return gap;
  const within = ({ low, high }: Rim, z: number) => Math.min(high, Math.max(low, z));
  for (let step = 1 / SAMPLES; step > NARROWEST_STEP; ) {
    const [a, b] = place;
    let nearer = false;
    for (const i of AROUND) {
      const u = within(one, a + i * step * (one.high - one.low));
      const own = one.at(u);
      for (const j of AROUND) {
        const v = within(other, b + j * step * (other.high - other.low));
        nearer = take(pointsApart(own, other.at(v)), [u, v]) || nearer;
      }
    }
    if (!nearer) step /= 2;
  }
  return gap;
}
