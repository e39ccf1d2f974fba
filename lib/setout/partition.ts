import { SAME_POINT } from '../base/tolerances.js';
import type { Partition } from '../description/house.js';
import { partitionMark, partitionStrip } from '../description/rules/partitions.js';
import { stripsInto } from '../description/rules/runs.js';
import { type Edge, lineEdge } from '../math/curves.js';
import { hypot } from '../math/elementary.js';
import { add2, cross2, dot2, length2, perp2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from './dome.js';
import { earlierThan, type HouseSetout } from './house.js';

/** A partition in its room: `along` from its first end to its second, `t` measured that way, `off` to its left. */
export interface PartitionSetout {
  /** Place in the description, and P1, P2 ... for it. */
  readonly order: number;
  readonly mark: string;
  readonly partition: Partition;
  readonly dome: DomeSetout;
  readonly along: Vec2;
  readonly length: number;
}

/** Partitions of a house whose description has passed its rules. */
export const partitionsOf = (house: HouseSetout): PartitionSetout[] =>
  house.house.partitions.flatMap((partition, i) => {
    const dome = house.domes.find((d) => d.id === partition.in);
    const between = sub2(partition.to, partition.from);
    const length = length2(between);
    return dome
      ? [{ order: i, mark: partitionMark(i), partition, dome, along: scale2(between, 1 / length), length }]
      : [];
  });

/** A plan point in a partition's frame. */
export function inPartition(
  { partition, along }: PartitionSetout,
  p: Vec2,
): { readonly t: number; readonly off: number } {
  const from = sub2(p, partition.from);
  return { t: dot2(from, along), off: cross2(along, from) };
}

/** The plan point of a place in a partition's frame. */
export const placeInPartition = ({ partition, along }: PartitionSetout, t: number, off: number): Vec2 =>
  add2(add2(partition.from, scale2(along, t)), scale2(perp2(along), off));

/** Whether a plan point lies in the partition's plan, door included. */
export function inPlanOf(wall: PartitionSetout, p: Vec2): boolean {
  const { t, off } = inPartition(wall, p);
  return t > 0 && t < wall.length && Math.abs(off) < wall.partition.thickness / 2;
}

/** Whether a plan point lies in the partition's plan, door included, and within its room at the floor. */
export const onPartition = (house: HouseSetout, wall: PartitionSetout, p: Vec2): boolean =>
  inPlanOf(wall, p) && roomHeight(house, wall, p) > 0;

/** Height of the room over a plan point: to the intrados, 0 outside it or within an earlier dome. */
export function roomHeight(house: HouseSetout, { dome }: PartitionSetout, [x, y]: Vec2): number {
  const r = hypot(x - dome.at[0], y - dome.at[1]);
  if (r >= dome.springingRadius) return 0;
  const taken = earlierThan(house, dome).some((d) => hypot(x - d.at[0], y - d.at[1]) < d.outerRadiusAt(0));
  if (taken) return 0;
  return dome.curb && r < dome.curb.clearRadius ? dome.topZ : dome.heightAt(r);
}

/** Top of a partition over a plan point: as described, or where the dome cuts it off. */
export function topOf(house: HouseSetout, wall: PartitionSetout, p: Vec2): number {
  return Math.min(wall.partition.height ?? Number.POSITIVE_INFINITY, roomHeight(house, wall, p));
}

/** The four sides of a partition in plan, its door left out of account. */
export function partitionOutline(wall: PartitionSetout): Edge[] {
  const half = wall.partition.thickness / 2;
  const at = (t: number, off: number) => placeInPartition(wall, t, off);
  const corners = [at(0, -half), at(wall.length, -half), at(wall.length, half), at(0, half)] as const;
  return corners.map((corner, i) => lineEdge(corner, corners[(i + 1) % 4] as Vec2));
}

/** Those that run into a partition, rather than end at its face, in the order of the description. */
export const runningInto = (house: HouseSetout, wall: PartitionSetout): PartitionSetout[] =>
  partitionsOf(house).filter(
    (other) =>
      other.mark !== wall.mark &&
      other.dome === wall.dome &&
      stripsInto(partitionStrip(wall.partition), partitionStrip(other.partition)) > SAME_POINT,
  );

/** Those of them that are described first: they go through, and the partition is built up to their faces and over them. */
export const goingThrough = (house: HouseSetout, wall: PartitionSetout): PartitionSetout[] =>
  runningInto(house, wall).filter(({ order }) => order < wall.order);
