import type { Opening, Room } from '../description/house.js';
import { pointApart, segmentsApart } from '../description/rules/runs.js';
import { commonArea, type Disc } from '../math/discs.js';
import { length2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout } from '../setout/house.js';
import { partitionsOf } from '../setout/partition.js';
import { areaOf, type ClearSize, clearRectangle, clearWidthAt, glazedArea } from './clear.js';
import { partitionFloor } from './partition-floor.js';
import { BATH_HEADROOM, EGRESS_DOOR, ESCAPE, FULL_HEADROOM, LEAST_HEADROOM } from './rules.js';

/** One described room: it is its dome, or shares it. Areas m2, lengths mm, to the finished faces. */
export interface RoomSizes {
  readonly room: Room;
  /** Other rooms described in the same dome; no walls between them are known. */
  readonly sharedWith: readonly string[];
  /** Without what partitions stand on. */
  readonly floor: number;
  /** The same under at least 5 ft, 6 ft 8 in and 7 ft. */
  readonly low: number;
  readonly bath: number;
  readonly full: number;
  /** Least width of the dome's floor under 5 ft and more, as if no partitions stood in it. */
  readonly width: number;
  /** Marks of the partitions in its dome, which that width leaves out. */
  readonly partitions: readonly string[];
  readonly highest: number;
  /** Inside the frames of windows; the oculus isn't counted. */
  readonly glazing: number;
  /** Clear rectangles of windows, vents and doors. */
  readonly air: number;
  /** Ids of doors to the outside and egress windows. */
  readonly escapes: readonly string[];
}

/** Clear sizes of an opening inside its frame; lengths mm, areas m2. */
export interface OpeningSizes {
  readonly id: string;
  readonly domeId: string;
  readonly use: Opening['use'];
  readonly frame: number;
  readonly clear: ClearSize;
  /** Beside the open leaf at the height asked of an egress door. */
  readonly atDoorHeight: number;
  readonly glazing: number;
}

/** Sizes that rules of a dwelling ask for. */
export interface Dwelling {
  readonly rooms: readonly RoomSizes[];
  readonly openings: readonly OpeningSizes[];
  /** Least distance of the finished walls from the plot's edge; `null` without a plot. */
  readonly fromEdge: number | null;
}

/** Clear sizes, headroom, light, air and setback of a house; information, judged by `dwellingChecks`. */
export function dwellingOf(setout: HouseSetout): Dwelling {
  const openings = setout.arches.filter((a) => a.opening.use !== 'niche').map(openingSizes);
  return {
    rooms: setout.house.rooms.flatMap((room) => {
      const dome = setout.domes.find((d) => d.id === room.in);
      return dome ? [roomSizes(setout, room, dome, openings)] : [];
    }),
    openings,
    fromEdge: fromEdge(setout),
  };
}

function openingSizes({ id, section, opening }: ArchSetout): OpeningSizes {
  const clear = { section, frame: opening.frame };
  return {
    id,
    domeId: opening.in,
    use: opening.use,
    frame: opening.frame,
    clear: clearRectangle(clear, opening.use === 'egress window' ? ESCAPE.width : 0),
    atDoorHeight: clearWidthAt(clear, EGRESS_DOOR.height),
    glazing: opening.use === 'window' || opening.use === 'egress window' ? glazedArea(clear) : 0,
  };
}

function roomSizes(setout: HouseSetout, room: Room, dome: DomeSetout, openings: readonly OpeningSizes[]): RoomSizes {
  const taken = earlierDiscs(setout, dome);
  const radius = (z: number) => finishedRadius(setout, dome, z);
  const areaUnder = (z: number) => areaAt(setout, dome, z);
  const own = openings.filter((o) => o.domeId === dome.id);
  const sum = (of: (o: OpeningSizes) => number) => own.reduce((all, o) => all + of(o), 0);
  return {
    room,
    sharedWith: setout.house.rooms.filter((r) => r.in === room.in && r.id !== room.id).map((r) => r.id),
    floor: areaUnder(0),
    low: areaUnder(LEAST_HEADROOM),
    bath: areaUnder(BATH_HEADROOM),
    full: areaUnder(FULL_HEADROOM),
    width: leastWidth(dome, radius(LEAST_HEADROOM), taken),
    partitions: partitionsOf(setout).flatMap((wall) => (wall.dome === dome ? [wall.mark] : [])),
    highest: dome.crownZ - setout.house.wall.renderInside,
    glazing: sum((o) => o.glazing),
    air: sum((o) => areaOf(o.clear)),
    escapes: own.filter((o) => o.use === 'door' || o.use === 'egress window').map((o) => o.id),
  };
}

/** Floor of all domes inside the finished walls, partitions taken off, whether a room is described there or not; m2. */
export const floorArea = (setout: HouseSetout): number =>
  setout.domes.reduce((sum, dome) => sum + areaAt(setout, dome, 0), 0);

function areaAt(setout: HouseSetout, dome: DomeSetout, z: number): number {
  const disc: Disc = { centre: dome.at, radius: finishedRadius(setout, dome, z) };
  const taken = earlierDiscs(setout, dome);
  const whole = Math.PI * disc.radius * disc.radius - commonArea(disc, taken);
  return (whole - partitionFloor(setout, dome, disc, taken)) / 1e6;
}

function finishedRadius(setout: HouseSetout, dome: DomeSetout, z: number): number {
  const r = dome.radiusAt(z, -setout.house.wall.renderInside);
  return Number.isNaN(r) ? 0 : Math.max(r, 0);
}

/** Earlier domes stand in the room; they lean away, so what they leave at the floor is left above too. */
const earlierDiscs = (setout: HouseSetout, dome: DomeSetout): Disc[] =>
  earlierThan(setout, dome).map((other) => ({
    centre: other.at,
    radius: other.outerRadiusAt(0) + setout.house.wall.renderOutside,
  }));

/** Across a circle, less what others take of it on the line between the centres. */
function leastWidth(dome: DomeSetout, radius: number, taken: readonly Disc[]): number {
  const left = taken.map((d) => radius + length2(sub2(d.centre, dome.at)) - d.radius);
  return Math.max(0, Math.min(2 * radius, ...left));
}

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
