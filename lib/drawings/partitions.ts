import { formatLength, type WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { CUT_BESIDE, CUT_POINT } from '../base/tolerances.js';
import type { AlignedDimension, PlainPrimitive, Primitive } from '../documents/drawing.js';
import { arcEdge, circleEdge, type Edge, lineEdge } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { atan2 } from '../math/elementary.js';
import { bordersOf, regionOf } from '../math/planar.js';
import { sub2, type Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import {
  goingThrough,
  inPartition,
  inPlanOf,
  onPartition,
  type PartitionSetout,
  partitionOutline,
  partitionsOf,
  placeInPartition,
  roomHeight,
  runningInto,
  topOf,
} from '../setout/partition.js';
import { TEXT } from './foot-blocks.js';
import type { Layout } from './layout.js';
import { loopOf } from './paths.js';
import { type CutPlane, onPlane } from './slice-upright.js';
import { placeWords } from './words.js';

const rectangleOf = (wall: PartitionSetout, from: number, to: number): Edge[] => {
  const half = wall.partition.thickness / 2;
  const corners = [
    placeInPartition(wall, from, -half),
    placeInPartition(wall, to, -half),
    placeInPartition(wall, to, half),
    placeInPartition(wall, from, half),
  ];
  return corners.map((p, i) => lineEdge(p, corners[(i + 1) % 4] as Vec2));
};

/** Partitions as a plan's cut goes through them, trimmed by their dome, with their doors and swings. */
export function partitionPlans(house: HouseSetout, cutZ: number): Primitive[] {
  return partitionsOf(house).flatMap((wall): Primitive[] => {
    const { door, height } = wall.partition;
    const low = height !== null && height <= cutZ;
    // A low one is seen from above, and ends where the dome cuts off its top.
    const level = low ? height : cutZ;
    // Where two run into each other the higher shows; of two that are cut, or as high, the one that goes through.
    const before = runningInto(house, wall).filter(({ partition, order }) => {
      const top = partition.height ?? Number.POSITIVE_INFINITY;
      return low ? top > height || (top === height && order < wall.order) : top > cutZ && order < wall.order;
    });
    const gap = door && door.height > cutZ ? door : null;
    const stretches: (readonly [number, number])[] = gap
      ? [
          [0, gap.at - gap.width / 2],
          [gap.at + gap.width / 2, wall.length],
        ]
      : [[0, wall.length]];
    const edges = [
      ...stretches.filter(([a, b]) => b > a).flatMap(([a, b]) => rectangleOf(wall, a, b)),
      ...before.flatMap(partitionOutline),
      circleEdge(wall.dome.at, wall.dome.radiusAt(level) || 1),
      ...house.domes.filter((d) => d !== wall.dome).map((d) => circleEdge(d.at, d.outerRadiusAt(0))),
    ];
    const solid = (p: Vec2) => {
      const { t } = inPartition(wall, p);
      return (
        onPartition(house, wall, p) &&
        stretches.some(([a, b]) => t > a && t < b) &&
        roomHeight(house, wall, p) > level &&
        !before.some((other) => inPlanOf(other, p))
      );
    };
    const borders = bordersOf(edges, (p) => (solid(p) ? 'wall' : null), { tolerance: CUT_POINT, beside: CUT_BESIDE });
    const loops = regionOf(borders, () => true, CUT_POINT);
    if (loops.length === 0) return [];
    return [
      ...(low ? [] : [{ kind: 'hatch', layer: 'hatch', pattern: 'blockwork', loops: loops.map(loopOf) } as const]),
      ...loops.map(
        (loop): Primitive => ({ kind: 'path', layer: low ? 'visible' : 'cut', segments: loopOf(loop), closed: true }),
      ),
      ...(door ? swingOf(wall, door.at, door.width) : []),
    ];
  });
}

function swingOf(wall: PartitionSetout, at: number, width: number): Primitive[] {
  const half = wall.partition.thickness / 2;
  const [hinge, shut, open] = [
    placeInPartition(wall, at - width / 2, half),
    placeInPartition(wall, at + width / 2, half),
    placeInPartition(wall, at - width / 2, half + width),
  ];
  const [x, y] = sub2(shut, hinge);
  const start = atan2(y, x);
  return [
    { kind: 'path', layer: 'visible', segments: [lineEdge(hinge, open)], closed: false },
    { kind: 'path', layer: 'joint', segments: [arcEdge(hinge, width, start, start + Math.PI / 2)], closed: false },
  ];
}

/** Middle of a partition's mark from its face, paper mm: the mark's half width and some air. */
const MARK_OFF = 3.5;

/** Marks and lengths of partitions, where they find room. */
export function addPartitionMarks(house: HouseSetout, layout: Layout): void {
  for (const wall of partitionsOf(house)) {
    const half = wall.partition.thickness / 2;
    const sides = [1, -1].flatMap((side) =>
      [0.5, 0.3, 0.7, 0.2, 0.8].map((share) =>
        placeInPartition(wall, share * wall.length, side * (half + layout.mm(MARK_OFF))),
      ),
    );
    layout.placeFree(
      sides.map(([x, y]): Primitive[] => [
        {
          kind: 'text',
          layer: 'text',
          at: [x, y - layout.mm(TEXT / 2)],
          text: wall.mark,
          heightMm: TEXT,
          anchor: 'centre',
          rotationDeg: 0,
        },
      ]),
    );
    // The number stands aside where the middle isn't free, as beside an axis that crosses it.
    const rows = [{}, { share: 0.3 }, { share: 0.7 }, { share: 0.2 }, { share: 0.8 }].flatMap((aside) =>
      [5, -5, 8, -8, 11, -11].map((off): AlignedDimension[] => [
        {
          kind: 'dimension',
          type: 'aligned',
          from: placeInPartition(wall, 0, 0),
          to: placeInPartition(wall, wall.length, 0),
          line: placeInPartition(wall, 0, Math.sign(off) * half + layout.mm(off)),
          ...aside,
        },
      ]),
    );
    layout.placeFree(rows);
  }
}

/** Sizes and places of partitions, for a plan's notes. */
export function partitionWords(house: HouseSetout, units: WrittenUnits): string[] {
  const size = (mm: number) => formatLength(mm, units);
  const each = partitionsOf(house).map(({ mark, partition: p, dome, length }) => {
    const at = (end: Vec2) => placeWords(sub2(end, dome.at), units);
    const door = p.door ? texts.doorByItsMiddle(size(p.door.width), size(p.door.height), size(p.door.at)) : '';
    return texts.inThickCentreLine(
      mark,
      dome.id,
      size(p.thickness),
      p.height === null ? texts.upToDome : texts.partitionHigh(size(p.height)),
      size(length),
      at(p.from),
      at(p.to),
      door,
    );
  });
  const meet = partitionsOf(house).some((wall) => runningInto(house, wall).length > 0);
  return each.length === 0
    ? []
    : [texts.partitionsWhichCarryNothing(each.join('; ')), ...(meet ? [texts.lowerNumberGoesThrough] : [])];
}

/** Partitions where an upright plane cuts them. */
export function partitionCuts(house: HouseSetout, plane: CutPlane, reach: Vec2): PlainPrimitive[] {
  return partitionsOf(house).flatMap((wall) => {
    const { door } = wall.partition;
    const at = (x: number): Vec2 => {
      const [px, py] = onPlane(plane, [x, 0]);
      return [px, py];
    };
    const near = (a: number, b: number) => Math.abs(a - b) < 0.01;
    // A partition that is crossed square is no wider than it is thick.
    const samples = Math.ceil((reach[1] - reach[0]) / Math.min(20, wall.partition.thickness / 3));
    const solid = rangesWhere((x) => onPartition(house, wall, at(x)), reach[0], reach[1], samples, near);
    const through = goingThrough(house, wall);
    // It begins over its door, and over those that go through it.
    const lowAt = (x: number): number => {
      const { t } = inPartition(wall, at(x));
      const inDoor = door !== null && Math.abs(t - door.at) < door.width / 2;
      const under = through.filter((other) => inPlanOf(other, at(x)));
      return Math.max(inDoor ? door.height : 0, ...under.map((o) => o.partition.height ?? Number.POSITIVE_INFINITY));
    };
    const lows = [0, door?.height ?? 0, ...through.map((o) => o.partition.height ?? Number.POSITIVE_INFINITY)];
    const stretches = solid.flatMap(([a, b]) =>
      [...new Set(lows)].flatMap((low) =>
        rangesWhere((x) => lowAt(x) === low, a, b, Math.max(40, samples), near).map(([from, to]) => ({
          from,
          to,
          low,
        })),
      ),
    );
    return stretches.flatMap(({ from, to, low }): PlainPrimitive[] => {
      const n = Math.max(2, Math.ceil((to - from) / 50));
      const top = Array.from({ length: n + 1 }, (_, i): Vec2 => {
        const x = from + ((to - from) * (i === 0 ? 1e-4 : i === n ? n - 1e-4 : i)) / n;
        return [from + ((to - from) * i) / n, topOf(house, wall, at(x))];
      });
      if (top.some(([, z]) => z <= low)) return [];
      const corners: Vec2[] = [[to, low], ...[...top].reverse(), [from, low]];
      const loop = corners.map((p, i) => lineEdge(p, corners[(i + 1) % corners.length] as Vec2));
      return [
        { kind: 'hatch', layer: 'hatch', pattern: 'blockwork', loops: [loop] },
        { kind: 'path', layer: 'cut', segments: loop, closed: true },
      ];
    });
  });
}
