import type { HouseSetout } from '../setout/house.js';

/**
 * The same house, whose domes remember their radii by height where these take a search each time, as those of a
 * chain's or an ellipse's offset do: a level line asks for one height over and over.
 */
export function remembering(house: HouseSetout): HouseSetout {
  const domes = house.domes.map((dome) => {
    if (dome.profile.arc) return dome;
    const inner = new Map<number, Map<number, number>>();
    const outer = new Map<number, number>();
    return {
      ...dome,
      radiusAt(z: number, offset = 0): number {
        const known = inner.get(offset) ?? new Map<number, number>();
        inner.set(offset, known);
        return remembered(known, z, () => dome.radiusAt(z, offset));
      },
      outerRadiusAt: (z: number): number => remembered(outer, z, () => dome.outerRadiusAt(z)),
    };
  });
  return { ...house, domes };
}

function remembered(known: Map<number, number>, z: number, find: () => number): number {
  const before = known.get(z);
  if (before !== undefined) return before;
  const value = find();
  known.set(z, value);
  return value;
}
