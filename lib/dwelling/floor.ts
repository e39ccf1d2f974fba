import { CUT_BESIDE, CUT_POINT } from '../base/tolerances.js';
import { circleEdge, type Edge, loopsArea } from '../math/curves.js';
import { commonArea, type Disc } from '../math/discs.js';
import { type Loops, piecesOf, withinLoops } from '../math/loops.js';
import { bordersOf, regionOf } from '../math/planar.js';
import { length2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { earlierThan, type HouseSetout } from '../setout/house.js';
import { inPlanOf, type PartitionSetout, partitionOutline, partitionsOf } from '../setout/partition.js';

/** A dome's floor inside `room` and outside `taken`, with the partitions that stand on it. */
export interface Floor {
  readonly room: Disc;
  readonly taken: readonly Disc[];
  readonly walls: readonly PartitionSetout[];
}

/** Under all that is as high as `z`, mm. */
export const floorAt = (setout: HouseSetout, dome: DomeSetout, z: number): Floor => ({
  room: { centre: dome.at, radius: finishedRadius(setout, dome, z) },
  taken: earlierDiscs(setout, dome),
  walls: partitionsOf(setout).filter((wall) => wall.dome === dome),
});

/** Net floor under all that is as high as `z`, m2. */
export function areaAt(setout: HouseSetout, dome: DomeSetout, z: number): number {
  const floor = floorAt(setout, dome, z);
  const { room, taken } = floor;
  return (Math.PI * room.radius * room.radius - commonArea(room, taken) - partitionFloor(floor)) / 1e6;
}

/** Radius of the finished intrados at a height; 0 over it. */
export function finishedRadius(setout: HouseSetout, dome: DomeSetout, z: number): number {
  const r = dome.radiusAt(z, -setout.house.wall.renderInside);
  return Number.isNaN(r) ? 0 : Math.max(r, 0);
}

/** Earlier domes stand in the room; they lean away, so what they leave at the floor is left above too. */
const earlierDiscs = (setout: HouseSetout, dome: DomeSetout): Disc[] =>
  earlierThan(setout, dome).map((other) => ({
    centre: other.at,
    radius: other.outerRadiusAt(0) + setout.house.wall.renderOutside,
  }));

/**
 * What partitions take of a floor, exactly, mm²; where two cross it counts once. Their doorways are no floor either:
 * the net area of ISO 9836 leaves out recesses for doors (from memory).
 */
function partitionFloor(floor: Floor): number {
  if (floor.walls.length === 0 || !(floor.room.radius > 0)) return 0;
  return loopsArea(regionWhere(edgesOf(floor), (p) => inRoom(floor, p) && onWall(floor, p)));
}

/** The part of a floor that its partitions close off round a place; `null` where that lies on none of it. */
export function closedOff(floor: Floor, place: Vec2): Loops | null {
  const free = regionWhere(edgesOf(floor), (p) => inRoom(floor, p) && !onWall(floor, p));
  return piecesOf(free).find((piece) => withinLoops(piece, place)) ?? null;
}

const regionWhere = (edges: readonly Edge[], holds: (p: Vec2) => boolean): Loops =>
  regionOf(
    bordersOf(edges, (p) => (holds(p) ? 'floor' : null), { tolerance: CUT_POINT, beside: CUT_BESIDE }),
    () => true,
    CUT_POINT,
  );

const edgesOf = ({ room, taken, walls }: Floor): Edge[] => [
  ...walls.flatMap(partitionOutline),
  ...[room, ...taken].map((disc) => circleEdge(disc.centre, disc.radius)),
];

const inDisc = ({ centre, radius }: Disc, p: Vec2): boolean => length2(sub2(p, centre)) < radius;
const inRoom = ({ room, taken }: Floor, p: Vec2): boolean => inDisc(room, p) && !taken.some((disc) => inDisc(disc, p));
const onWall = ({ walls }: Floor, p: Vec2): boolean => walls.some((wall) => inPlanOf(wall, p));
