import { SIGHT_CHANGE, SIGHT_STEP } from '../base/tolerances.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { cos } from '../math/elementary.js';
import { length2, perp2, scale2, sub2, type Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { earlierThan, type HouseSetout } from '../setout/house.js';
import { edgeFeature, type Feature } from './feature.js';

/** Lines along which later domes meet the outsides of the earlier ones that they abut: valleys outside, corners in the room. */
export function valleys(house: HouseSetout): Feature[] {
  return house.domes.flatMap((later) =>
    earlierThan(house, later).flatMap((earlier) => {
      const extrados = (z: number) => earlier.outerRadiusAt(z);
      return [
        ...meeting(earlier, later, extrados, (z) => later.outerRadiusAt(z)),
        ...meeting(earlier, later, extrados, (z) => later.radiusAt(z)),
      ];
    }),
  );
}

/** A valley on the roof: its highest place, and both its ends where it meets the ground. */
export interface Valley {
  readonly top: Vec3;
  readonly low: readonly Vec3[];
}

/** Valleys between the outsides of domes that abut: in plan each is straight, highest in its middle. */
export const outsideValleys = (house: HouseSetout): Valley[] =>
  house.domes.flatMap((later) =>
    earlierThan(house, later).flatMap((earlier): Valley[] => {
      const halves = meeting(
        earlier,
        later,
        (z) => earlier.outerRadiusAt(z),
        (z) => later.outerRadiusAt(z),
      );
      const points = halves.flatMap(({ curve }) => (curve.kind === 'free' ? [curve.at(0), curve.at(1)] : []));
      if (points.length === 0) return [];
      const top = points.reduce((a, b) => (b[2] > a[2] ? b : a));
      const lowest = Math.min(...points.map((p) => p[2]));
      return [{ top, low: points.filter((p) => p[2] < lowest + SIGHT_CHANGE) }];
    }),
  );

/** Where two surfaces of revolution about upright axes cross, by their radii at each height. */
function meeting(
  one: DomeSetout,
  other: DomeSetout,
  radius: (z: number) => number,
  otherRadius: (z: number) => number,
): Feature[] {
  const between = sub2(other.at, one.at);
  const d = length2(between);
  const along = scale2(between, 1 / d);
  const across = perp2(along);
  const squareAt = (z: number): { v: number; square: number } => {
    const [a, b] = [radius(z), otherRadius(z)];
    const v = (d * d + a * a - b * b) / (2 * d);
    return { v, square: a * a - v * v };
  };
  const top = Math.min(one.topZ, other.topZ);
  const turns = [one, other].flatMap((dome) => [
    dome.springingZ,
    dome.skewback?.shoulderZ ?? 0,
    dome.skewback?.bed[1] ?? 0,
    dome.curb?.bedOuter[1] ?? 0,
    dome.curb?.topZ ?? 0,
  ]);
  const stops = [0, ...turns.filter((z) => z > 0 && z < top), top].sort((a, b) => a - b);
  const near = (a: number, b: number) => Math.abs(a - b) < SIGHT_CHANGE / 100;
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i] as number;
    if (to - from < SIGHT_CHANGE) return [];
    const samples = Math.max(8, Math.ceil((to - from) / SIGHT_STEP));
    return rangesWhere((z) => squareAt(z).square > 0, from, to, samples, near).flatMap(([low, high]) =>
      [1, -1].map((side) => {
        // Where the circles only touch, the half chord runs like a square root: bent, the parameter is smooth there.
        const at = (t: number): Vec3 => {
          const z = low + ((high - low) * (1 - cos(Math.PI * t))) / 2;
          const { v, square } = squareAt(z);
          const u = side * Math.sqrt(Math.max(0, square));
          return [one.at[0] + v * along[0] + u * across[0], one.at[1] + v * along[1] + u * across[1], z];
        };
        return edgeFeature({ kind: 'free', at, from: 0, to: 1 });
      }),
    );
  });
}
