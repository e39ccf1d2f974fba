import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';

/** Openings that are made alike: one elevation tells of all of them. */
export interface OpeningType {
  /** O1, O2 ... in the order of the description. */
  readonly mark: string;
  readonly arches: readonly ArchSetout[];
}

/** Openings by type: of one use, size, sill, head, ring, face and frame. */
export function openingTypes(house: HouseSetout): OpeningType[] {
  const groups = new Map<string, ArchSetout[]>();
  for (const arch of house.arches) {
    const { id: _, in: __, bearingDeg: ___, ...like } = arch.opening;
    const key = JSON.stringify(like);
    groups.set(key, [...(groups.get(key) ?? []), arch]);
  }
  return [...groups.values()].map((arches, i) => ({ mark: `O${i + 1}`, arches }));
}

/** Type of an opening. */
export const typeOf = (house: HouseSetout, id: string): string =>
  openingTypes(house).find((t) => t.arches.some((a) => a.id === id))?.mark ?? '';
