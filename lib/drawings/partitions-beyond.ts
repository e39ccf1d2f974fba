import { SIGHT_CHANGE, THIN_MASONRY } from '../base/tolerances.js';
import { type Edge, edgeEnd, edgeStart, lineEdge } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { hypot } from '../math/elementary.js';
import { cross2, dot2, lerp2, scale2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { levelMaterial } from '../setout/material.js';
import {
  inPartition,
  type PartitionSetout,
  partitionOutline,
  partitionsOf,
  placeInPartition,
  runningInto,
  topOf,
} from '../setout/partition.js';
import { rayHouse } from './ray-house.js';
import type { SectionPlane } from './section-plane.js';

/** Step along the edge of a partition under the dome, mm. */
const STEP = 40;
/** A partition hides what lies behind so much of it, mm. */
const THIN = 1;

/** Tells of a place beyond a section's plane whether a partition stands before it, cut by the plane or not. */
export function behindPartition(house: HouseSetout, plane: SectionPlane): (p: Vec3) => boolean {
  const walls = partitionsOf(house);
  const back = scale2(plane.look, -1);
  return (p) => walls.some((wall) => covers(house, wall, p, back, dot2(sub2([p[0], p[1]], plane.through), plane.look)));
}

function covers(house: HouseSetout, wall: PartitionSetout, [x, y, z]: Vec3, back: Vec2, reach: number): boolean {
  const { partition, along, length } = wall;
  const { t, off } = inPartition(wall, [x, y]);
  const half = partition.thickness / 2 - THIN / 2;
  let [from, to] = [THIN, reach];
  for (const [at, way, low, high] of [
    [t, dot2(back, along), 0, length],
    [off, cross2(along, back), -half, half],
  ] as const) {
    if (Math.abs(way) < 1e-9) {
      if (at <= low || at >= high) return false;
      continue;
    }
    const [a, b] = [(low - at) / way, (high - at) / way];
    [from, to] = [Math.max(from, Math.min(a, b)), Math.min(to, Math.max(a, b))];
  }
  if (to - from < THIN) return false;
  const { door } = partition;
  // Where a look runs along a partition, it may be higher, or open, at some places.
  const n = Math.min(40, Math.ceil((to - from) / STEP));
  return Array.from({ length: n }, (_, i) => from + ((to - from) * (i + 0.5)) / n).some((s) => {
    const q: Vec2 = [x + s * back[0], y + s * back[1]];
    const open = door !== null && z < door.height && Math.abs(inPartition(wall, q).t - door.at) < door.width / 2;
    return !open && z < topOf(house, wall, q) - THIN;
  });
}

/** Edges of partitions that a section sees beyond its plane: ends, tops, meetings with the dome, doors. */
export function partitionEdges(house: HouseSetout, plane: SectionPlane): Edge[] {
  const covered = behindPartition(house, plane);
  const back = scale2(plane.look, -1);
  const inWay = rayHouse(house, back);
  const seen = ([x, y, z]: Vec3): boolean => {
    const at: Vec2 = [x, y];
    const reach = dot2(sub2(at, plane.through), plane.look);
    if (reach <= THIN_MASONRY || covered([x, y, z])) return false;
    const masonry = levelMaterial(inWay(at).house, z, at, back);
    return !masonry.some(([from, to]) => to > THIN_MASONRY && from < reach);
  };
  const onPaper = ([x, y, z]: Vec3): Vec2 => [dot2(sub2([x, y], plane.through), plane.right), z];
  return partitionsOf(house)
    .flatMap((wall) => linesOf(house, wall))
    .flatMap(([a, b]) => {
      const at = (s: number): Vec3 => [...lerp2([a[0], a[1]], [b[0], b[1]], s), a[2] + s * (b[2] - a[2])];
      const samples = Math.max(1, Math.ceil(hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]) / STEP));
      const near = (s: number, t: number) => Math.abs(s - t) * samples * STEP < SIGHT_CHANGE;
      const parts = rangesWhere((s) => seen(at(s)), 0, 1, samples, near);
      return parts.map(([s, t]) => lineEdge(onPaper(at(s)), onPaper(at(t))));
    })
    .filter((e) => hypot(e.to[0] - e.from[0], e.to[1] - e.from[1]) > THIN);
}

type Line = readonly [Vec3, Vec3];

/** Edges of both faces of a partition, in short straight pieces where it follows the dome. */
function linesOf(house: HouseSetout, wall: PartitionSetout): Line[] {
  const { partition, length } = wall;
  const { door, thickness } = partition;
  const beside = (t: number, side: number): Vec2 => placeInPartition(wall, t, (side * thickness) / 2);
  // The top of an end that stands free, which a look along the partition sees.
  const overEnds = [1e-3, length - 1e-3].flatMap((t): Line[] => {
    const [a, b] = [-1, 1].map((side): Vec3 => [...beside(t, side), topOf(house, wall, beside(t, side))]) as [
      Vec3,
      Vec3,
    ];
    return a[2] > 0 && b[2] > 0 ? [[a, b]] : [];
  });
  const faces = [-1, 1].flatMap((side): Line[] => {
    const at = (t: number): Vec2 => beside(t, side);
    const top = (t: number) => topOf(house, wall, at(t));
    const point = (t: number, z: number): Vec3 => [...at(t), z];
    const corners = runningInto(house, wall).flatMap((other) =>
      partitionOutline(other).flatMap((e) => crossedAt(wall, (side * thickness) / 2, e).map((t) => ({ t, other }))),
    );
    const stands = rangesWhere(
      (t) => top(t) > 0,
      0,
      length,
      Math.max(2, Math.ceil(length / STEP)),
      (a, b) => Math.abs(a - b) < SIGHT_CHANGE,
    );
    return stands.flatMap(([from, to]): Line[] => {
      const n = Math.max(1, Math.ceil((to - from) / STEP));
      // An end that lies in the dome's wall has no height: its edge is where the partition meets the wall's face.
      const places = Array.from(
        { length: n + 1 },
        (_, i) => from + ((to - from) * Math.min(n - 1e-3, Math.max(1e-3, i))) / n,
      );
      const upper = places.map((t) => point(t, top(t)));
      const ends = [upper[0] as Vec3, upper[n] as Vec3].map((p): Line => [[p[0], p[1], 0], p]);
      const jambs = door
        ? [door.at - door.width / 2, door.at + door.width / 2].map((t): Line => [point(t, 0), point(t, door.height)])
        : [];
      const head = jambs.map(([, p]) => p);
      return [
        ...ends,
        ...corners
          .filter(({ t }) => t > from && t < to)
          .map(({ t, other }): Line => [point(t, 0), point(t, Math.min(top(t), topOf(house, other, at(t))))]),
        ...upper.slice(1).map((p, i): Line => [upper[i] as Vec3, p]),
        ...jambs,
        ...(head[0] && head[1] ? [[head[0], head[1]] as Line] : []),
      ];
    });
  });
  return [...faces, ...overEnds];
}

/** Where a line beside a partition's centre line crosses a straight edge. */
function crossedAt(wall: PartitionSetout, off: number, e: Edge): number[] {
  const [a, b] = [inPartition(wall, edgeStart(e)), inPartition(wall, edgeEnd(e))];
  if (a.off > off === b.off > off) return [];
  return [a.t + ((b.t - a.t) * (off - a.off)) / (b.off - a.off)];
}
