import type { Room } from '../description/house.js';
import { loopsArea } from '../math/curves.js';
import type { Disc } from '../math/discs.js';
import { areaInDisc, type Loops, loopsApart, withinLoops } from '../math/loops.js';
import { monotoneRoot } from '../math/roots.js';
import { alongBearing, length2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { partitionsOf } from '../setout/partition.js';
import { areaOf } from './clear.js';
import { areaAt, closedOff, finishedRadius, floorAt } from './floor.js';
import type { OpeningSizes } from './opening-sizes.js';
import { BATH_HEADROOM, FULL_HEADROOM, LEAST_HEADROOM } from './rules.js';

/** One described room: its dome, or a part of it that partitions close off. Areas m2, lengths mm, to the finished faces. */
export interface RoomSizes {
  readonly room: Room;
  /** Other rooms described in the same floor: no partition closes them off from it. */
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
  /** Whether it is a part of its dome alone. */
  readonly part: boolean;
  readonly highest: number;
  /** Inside the frames of windows; the oculus isn't counted. */
  readonly glazing: number;
  /** Clear rectangles of windows, vents and doors. */
  readonly air: number;
  /** Ids of doors to the outside and egress windows. */
  readonly escapes: readonly string[];
}

/** A room in its dome, and the part of the floor that it is; `null`: all of it. */
export interface RoomPlace {
  readonly room: Room;
  readonly dome: DomeSetout;
  readonly part: Loops | null;
}

/** Every room in its dome, in the order of the description. */
export function roomPlaces(setout: HouseSetout): RoomPlace[] {
  return setout.house.rooms.flatMap((room) => {
    const dome = setout.domes.find((d) => d.id === room.in);
    if (!dome) return [];
    const floor = floorAt(setout, dome, 0);
    return [{ room, dome, part: room.at && floor.walls.length > 0 ? closedOff(floor, room.at) : null }];
  });
}

/** Whether two rooms have floor in common. */
const shareFloor = (one: RoomPlace, other: RoomPlace): boolean =>
  one.dome === other.dome && (one.part === null || other.part === null || withinLoops(one.part, other.room.at as Vec2));

/** Floor of the rooms in a dome, each place counted once, m2. */
export function roomFloorIn(setout: HouseSetout, dome: DomeSetout, places: readonly RoomPlace[]): number {
  const own = places.filter((place) => place.dome === dome);
  if (own.length === 0) return 0;
  if (own.some(({ part }) => part === null)) return areaAt(setout, dome, 0);
  const first = own.filter((place, i) => !own.slice(0, i).some((before) => shareFloor(before, place)));
  return first.reduce((sum, { part }) => sum + loopsArea(part as Loops) / 1e6, 0);
}

/** Sizes of a room among all others. */
export function roomSizes(
  setout: HouseSetout,
  place: RoomPlace,
  places: readonly RoomPlace[],
  openings: readonly OpeningSizes[],
): RoomSizes {
  const { room, dome, part } = place;
  const radius = (z: number) => finishedRadius(setout, dome, z);
  const areaUnder = (z: number) =>
    part ? areaInDisc(part, { centre: dome.at, radius: radius(z) }) / 1e6 : areaAt(setout, dome, z);
  const own = openings.filter((o) => o.domeId === dome.id && (!part || withinLoops(part, justInside(setout, dome, o))));
  const sum = (of: (o: OpeningSizes) => number) => own.reduce((all, o) => all + of(o), 0);
  return {
    room,
    sharedWith: places.filter((other) => other !== place && shareFloor(place, other)).map((other) => other.room.id),
    floor: areaUnder(0),
    low: areaUnder(LEAST_HEADROOM),
    bath: areaUnder(BATH_HEADROOM),
    full: areaUnder(FULL_HEADROOM),
    width: leastWidth(dome, radius(LEAST_HEADROOM), floorAt(setout, dome, 0).taken),
    partitions: partitionsOf(setout).flatMap((wall) => (wall.dome === dome ? [wall.mark] : [])),
    part: part !== null,
    highest: highestOver(setout, dome, part),
    glazing: sum((o) => o.glazing),
    air: sum((o) => areaOf(o.clear)),
    escapes: own.filter((o) => o.use === 'door' || o.use === 'egress window').map((o) => o.id),
  };
}

/** Highest point over a part of a floor: over its place nearest to the axis. */
function highestOver(setout: HouseSetout, dome: DomeSetout, part: Loops | null): number {
  const crown = dome.crownZ - setout.house.wall.renderInside;
  if (!part || withinLoops(part, dome.at)) return crown;
  const nearest = loopsApart(part, dome.at);
  return monotoneRoot((z) => finishedRadius(setout, dome, z) - nearest, 0, crown);
}

/** A place on the floor before the middle of an opening. */
function justInside(setout: HouseSetout, dome: DomeSetout, { bearingRad }: OpeningSizes): Vec2 {
  const [x, y] = alongBearing(bearingRad);
  const out = finishedRadius(setout, dome, 0) - BEFORE_WALL;
  return [dome.at[0] + out * x, dome.at[1] + out * y];
}

/** Less than any partition keeps from an opening's middle, mm. */
const BEFORE_WALL = 10;

/** Across a circle, less what others take of it on the line between the centres. */
function leastWidth(dome: DomeSetout, radius: number, taken: readonly Disc[]): number {
  const left = taken.map((d) => radius + length2(sub2(d.centre, dome.at)) - d.radius);
  return Math.max(0, Math.min(2 * radius, ...left));
}
