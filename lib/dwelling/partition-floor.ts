import { CUT_BESIDE, CUT_POINT } from '../base/tolerances.js';
import { circleEdge, loopsArea } from '../math/curves.js';
import type { Disc } from '../math/discs.js';
import { bordersOf, regionOf } from '../math/planar.js';
import { length2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { inPlanOf, partitionOutline, partitionsOf } from '../setout/partition.js';

/**
 * What partitions take of a dome's floor inside `room` and outside `taken`, exactly, mm²; where two cross it counts once.
 * Their doorways are no floor either: the net area of ISO 9836 leaves out recesses for doors (from memory).
 */
export function partitionFloor(setout: HouseSetout, dome: DomeSetout, room: Disc, taken: readonly Disc[]): number {
  const walls = partitionsOf(setout).filter((wall) => wall.dome === dome);
  if (walls.length === 0 || !(room.radius > 0)) return 0;
  const inDisc = ({ centre, radius }: Disc, p: Vec2) => length2(sub2(p, centre)) < radius;
  const onWall = (p: Vec2) => walls.some((wall) => inPlanOf(wall, p));
  const labelAt = (p: Vec2) =>
    inDisc(room, p) && !taken.some((disc) => inDisc(disc, p)) && onWall(p) ? ('wall' as const) : null;
  const edges = [...walls.flatMap(partitionOutline), ...[room, ...taken].map((d) => circleEdge(d.centre, d.radius))];
  const borders = bordersOf(edges, labelAt, { tolerance: CUT_POINT, beside: CUT_BESIDE });
  return loopsArea(regionOf(borders, () => true, CUT_POINT));
}
