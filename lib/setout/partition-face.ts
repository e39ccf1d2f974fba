import { edgeEnd, edgeStart } from '../math/curves.js';
import { square } from '../math/elementary.js';
import { integrateSoftEnds } from '../math/quadrature.js';
import { cross2, dot2, sub2, type Vec2 } from '../math/vec.js';
import { earlierThan, type HouseSetout } from './house.js';
import {
  goingThrough,
  inPartition,
  inPlanOf,
  type PartitionSetout,
  partitionOutline,
  placeInPartition,
  topOf,
} from './partition.js';

/**
 * Face of a partition without its door, mm²: along its centre line, less what partitions described earlier take out of
 * its body, by the thickness. So all faces by their thicknesses are what is built, and nothing counts twice.
 */
export function partitionArea(house: HouseSetout, wall: PartitionSetout): number {
  const through = goingThrough(house, wall);
  return (
    wholeFace(house, wall) - (through.length > 0 ? takenVolume(house, wall, through) / wall.partition.thickness : 0)
  );
}

function wholeFace(house: HouseSetout, wall: PartitionSetout): number {
  const { door } = wall.partition;
  const standing = (t: number) => {
    const top = topOf(house, wall, placeInPartition(wall, t, 0));
    return door && Math.abs(t - door.at) < door.width / 2 ? Math.max(0, top - door.height) : top;
  };
  const doorway = door ? [door.at - door.width / 2, door.at + door.width / 2] : [];
  const levels = door ? [door.height] : [];
  return alongWall(wall, [...doorway, ...roofBreaks(house, wall, 0, levels)], standing);
}

/** Volume in which a partition's body lies within others, mm³: exactly where the roof doesn't cut them off, else by quadrature. */
function takenVolume(house: HouseSetout, wall: PartitionSetout, through: readonly PartitionSetout[]): number {
  const half = wall.partition.thickness / 2;
  const outline = through.flatMap(partitionOutline);
  const sides = [...partitionOutline(wall), ...outline].map((e): [Local, Local] => [
    inPartition(wall, edgeStart(e)),
    inPartition(wall, edgeEnd(e)),
  ]);
  const heights = through.map(({ partition }) => partition.height ?? Number.POSITIVE_INFINITY);
  const under = (p: Vec2): number => {
    const highest = Math.max(0, ...heights.filter((_, k) => inPlanOf(through[k] as PartitionSetout, p)));
    return Math.min(highest, topOf(house, wall, p));
  };
  const levels = heights.filter(Number.isFinite);
  const across = (off: number): number => {
    const met = sides.flatMap(([a, b]) =>
      a.off > off === b.off > off ? [] : [at(a, b, (off - a.off) / (b.off - a.off)).t],
    );
    return alongWall(wall, [...met, ...roofBreaks(house, wall, off, levels)], (t) =>
      under(placeInPartition(wall, t, off)),
    );
  };
  const breaks = [...sides.map(([a]) => a.off), ...meetings(sides)].filter((off) => Math.abs(off) < half);
  return overPanels([-half, ...breaks, half], across);
}

type Local = ReturnType<typeof inPartition>;

const at = (a: Local, b: Local, s: number): Local => ({ t: a.t + s * (b.t - a.t), off: a.off + s * (b.off - a.off) });

/** How far aside two sides cross each other. */
function meetings(sides: readonly (readonly [Local, Local])[]): number[] {
  return sides.flatMap(([a, b], i) =>
    sides.slice(i + 1).flatMap(([c, d]) => {
      const [one, other]: [Vec2, Vec2] = [
        [b.t - a.t, b.off - a.off],
        [d.t - c.t, d.off - c.off],
      ];
      const turn = cross2(one, other);
      const s = cross2([c.t - a.t, c.off - a.off], other) / turn;
      return s > 0 && s < 1 ? [at(a, b, s).off] : [];
    }),
  );
}

const alongWall = ({ length }: PartitionSetout, breaks: readonly number[], f: (t: number) => number): number =>
  overPanels([0, ...breaks.filter((t) => t > 0 && t < length), length], f);

function overPanels(breaks: readonly number[], f: (x: number) => number): number {
  const sorted = [...breaks].sort((a, b) => a - b);
  let sum = 0;
  for (let k = 0; k + 1 < sorted.length; k++)
    sum += integrateSoftEnds(f, sorted[k] as number, sorted[k + 1] as number, 24);
  return sum;
}

/** Where along a line beside its centre line a partition's height changes its law: at walls, at the bore, and where the roof comes down to its head or to a level. */
function roofBreaks(house: HouseSetout, wall: PartitionSetout, off: number, levels: readonly number[]): number[] {
  const { partition, dome, along } = wall;
  const { height } = partition;
  const from = placeInPartition(wall, 0, off);
  const crossing = (centre: Vec2, radius: number): number[] => {
    const away = sub2(centre, from);
    const [t, aside] = [dot2(away, along), cross2(along, away)];
    const half = square(radius) - square(aside);
    return half > 0 ? [t - Math.sqrt(half), t + Math.sqrt(half)] : [];
  };
  const cut = [height, ...levels].filter((z) => z !== null).map((z) => dome.radiusAt(z));
  return [
    ...[dome.springingRadius, dome.curb?.clearRadius ?? 0, ...cut].flatMap((radius) => crossing(dome.at, radius)),
    ...earlierThan(house, dome).flatMap((d) => crossing(d.at, d.outerRadiusAt(0))),
  ];
}
