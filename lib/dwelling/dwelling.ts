import { pointApart, segmentsApart } from '../math/segments.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { areaAt } from './floor.js';
import { type OpeningSizes, openingSizes } from './opening-sizes.js';
import { type RoomSizes, roomFloorIn, roomPlaces, roomSizes } from './rooms.js';

/** Sizes that rules of a dwelling ask for. */
export interface Dwelling {
  readonly rooms: readonly RoomSizes[];
  readonly openings: readonly OpeningSizes[];
  /** Floor of all rooms, each place counted once; m2. */
  readonly roomFloor: number;
  /** Least distance of the finished walls from the plot's edge; `null` without a plot. */
  readonly fromEdge: number | null;
}

/** Clear sizes, headroom, light, air and setback of a house; information, judged by `dwellingChecks`. */
export function dwellingOf(setout: HouseSetout): Dwelling {
  const openings = setout.arches.filter((a) => a.opening.use !== 'niche').map(openingSizes);
  const places = roomPlaces(setout);
  return {
    rooms: places.map((place) => roomSizes(setout, place, places, openings)),
    openings,
    roomFloor: setout.domes.reduce((sum, dome) => sum + roomFloorIn(setout, dome, places), 0),
    fromEdge: fromEdge(setout),
  };
}

/** Floor of all domes inside the finished walls, partitions taken off, whether a room is described there or not; m2. */
export const floorArea = (setout: HouseSetout): number =>
  setout.domes.reduce((sum, dome) => sum + areaAt(setout, dome, 0), 0);

/** The rules of the description keep the house on the plot; this tells how far it is from the edge. */
function fromEdge(setout: HouseSetout): number | null {
  const { site, wall } = setout.house;
  const { plot } = site;
  if (plot === null) return null;
  const sides = plot.map((a, i) => [a, plot[(i + 1) % plot.length] as Vec2] as const);
  let least = Number.MAX_VALUE;
  for (const [a, b] of sides) {
    for (const dome of setout.domes) least = Math.min(least, pointApart(dome.at, a, b) - dome.outerRadiusAt(0));
    for (const dome of setout.domes) {
      for (const arch of archesOf(setout, dome)) {
        const corners = faceCorners(arch);
        if (corners) least = Math.min(least, segmentsApart(corners[0], corners[1], a, b));
      }
    }
  }
  return least - wall.renderOutside;
}

/** Both ends of a barrel's flat face in plan; `null` of a flush arch. */
function faceCorners({ dome, along, across, faceV, ring, section }: ArchSetout): readonly [Vec2, Vec2] | null {
  if (faceV === null) return null;
  const half = section.width / 2 + ring;
  const at = (u: number): Vec2 => [
    dome.at[0] + faceV * along[0] + u * across[0],
    dome.at[1] + faceV * along[1] + u * across[1],
  ];
  return [at(-half), at(half)];
}
