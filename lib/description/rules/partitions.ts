import * as texts from '../../base/texts/problems-openings.js';
import { SAME_POINT } from '../../base/tolerances.js';
import { formatLength } from '../../base/units.js';
import { subtractIntervals } from '../../math/intervals.js';
import { segmentsApart } from '../../math/segments.js';
import { alongBearing, bearingOf, cross2, DEG, dot2, length2, scale2, sub2, type Vec2 } from '../../math/vec.js';
import type { Draft } from '../draft.js';
import type { Dome, Partition } from '../house.js';
import type { Path, ProblemList } from '../problem-list.js';
import { cornersOf, type Strip, stripsInto } from './runs.js';
import { atLeast, atMost } from './words.js';

/** Shortest partition that is one, mm. */
const SHORTEST = 300;

/** Partitions stand within their room, clear of openings and passages, with their doors in them. */
export function checkPartitions(draft: Draft, problems: ProblemList): void {
  for (const { path, value } of draft.partitions) {
    const dome = draft.domes.find((d) => d.value.id === value.in)?.value;
    if (dome) checkPlace(draft, dome, path, value, problems);
    checkDoor(draft, path, value, problems);
  }
  checkDoorways(draft, problems);
}

function checkPlace(draft: Draft, dome: Dome, path: Path, partition: Partition, problems: ProblemList): void {
  const { from, to } = partition;
  const size = (mm: number) => formatLength(mm, draft.units);
  const length = length2(sub2(to, from));
  if (length < SHORTEST) {
    const message = texts.partitionTooShort(dome.id, size(length), size(SHORTEST));
    problems.add('partition-short', path, message, texts.setItsEndsFurther);
    return;
  }
  const index = draft.domes.findIndex((d) => d.value === dome);
  const thickness = draft.wall?.thickness ?? 0;
  for (const [key, end] of [
    ['from', from],
    ['to', to],
  ] as const) {
    const over = length2(sub2(end, dome.at)) - dome.radius;
    if (over > SAME_POINT) {
      const message = texts.partitionEndOutsideRoom(key, size(over), dome.id, size(dome.radius));
      problems.add(
        'partition-outside',
        [...path, key],
        message,
        texts.moveItTowardsAxis(atLeast(over, draft.units), dome.id),
      );
    }
    for (const { value: earlier } of draft.domes.slice(0, index)) {
      const inside = earlier.radius + thickness - length2(sub2(end, earlier.at));
      if (inside <= SAME_POINT) continue;
      const message = texts.partitionEndInsideDome(key, size(inside), earlier.id, dome.id);
      problems.add(
        'partition-outside',
        [...path, key],
        message,
        texts.moveItAwayFrom(atLeast(inside, draft.units), earlier.id),
      );
    }
  }
  for (const way of waysOf(draft, dome)) {
    const gap = segmentsApart(from, to, way.left, way.right);
    if (gap >= partition.thickness / 2) continue;
    const message = texts.partitionStandsInFront(way.what, way.id);
    const mend = texts.moveItAwayOrEndIt(atLeast(partition.thickness / 2 - gap, draft.units));
    problems.add('partition-before-opening', path, message, mend);
  }
}

/** Mouths of openings and passages on a dome's inside circle. */
function waysOf(draft: Draft, dome: Dome) {
  const mouth = (id: string, what: string, bearingRad: number, width: number) => {
    const along = alongBearing(bearingRad);
    const half = Math.min(width / 2, dome.radius * 0.9);
    const out = Math.sqrt(dome.radius * dome.radius - half * half);
    const at = (u: number): Vec2 => [
      dome.at[0] + out * along[0] + u * along[1],
      dome.at[1] + out * along[1] - u * along[0],
    ];
    return { id, what, left: at(-half), right: at(half) };
  };
  const openings = draft.openings
    .filter(({ value }) => value.in === dome.id)
    .map(({ value: o }) =>
      mouth(o.id, o.use === 'door' ? texts.theDoor : texts.theOpening(o.use), o.bearingDeg * DEG, o.width),
    );
  const passages = draft.passages.flatMap(({ value: p }) => {
    const other = p.between.find((id) => id !== dome.id);
    const end = draft.domes.find((d) => d.value.id === other)?.value;
    if (!p.between.includes(dome.id) || !end) return [];
    return [mouth(p.id, texts.thePassage, bearingOf(sub2(end.at, dome.at)), p.width)];
  });
  return [...openings, ...passages];
}

function checkDoor(draft: Draft, path: Path, { from, to, door, height }: Partition, problems: ProblemList): void {
  if (!door) return;
  const size = (mm: number) => formatLength(mm, draft.units);
  const length = length2(sub2(to, from));
  const [start, end] = [door.at - door.width / 2, door.at + door.width / 2];
  if (start < -SAME_POINT || end > length + SAME_POINT) {
    const message = texts.doorRunsPastPartition(size(start), size(end), size(length));
    const mend =
      door.width <= length
        ? texts.giveDoorPlace(atLeast(door.width / 2, draft.units), atMost(length - door.width / 2, draft.units))
        : texts.narrowerDoorOrLonger;
    problems.add('partition-door', [...path, 'door'], message, mend);
  }
  if (height !== null && door.height > height) {
    const message = texts.doorIsHigh(size(door.height), size(height));
    problems.add('partition-door', [...path, 'door', 'height'], message, texts.lowerDoorOrHigher);
  }
}

/** What the partition at a place in the description is called. */
export const partitionMark = (order: number): string => `P${order + 1}`;

/** A partition's plan, its door left out of account; of one that has a length. */
export const partitionStrip = ({ from, to, thickness }: Partition): Strip => {
  const between = sub2(to, from);
  const length = length2(between);
  return { at: from, along: scale2(between, 1 / length), from: 0, to: length, half: thickness / 2 };
};

/** Partitions may run into each other, but none through a doorway. */
function checkDoorways(draft: Draft, problems: ProblemList): void {
  const all = draft.partitions
    .map(({ path, value }, i) => ({ path, value, mark: partitionMark(i) }))
    .filter(({ value: { from, to } }) => length2(sub2(to, from)) >= SHORTEST);
  for (const { path, value, mark } of all) {
    const { door } = value;
    if (!door) continue;
    const own = partitionStrip(value);
    const half = door.width / 2;
    const way: Strip = { ...own, from: door.at - half, to: door.at + half };
    const others = all
      .filter((other) => other.value !== value && other.value.in === value.in)
      .map((other) => ({ mark: other.mark, strip: partitionStrip(other.value) }))
      .filter(({ strip }) => stripsInto(own, strip) > SAME_POINT);
    const inWay = others.filter(({ strip }) => stripsInto(way, strip) > SAME_POINT).map((other) => other.mark);
    if (inWay.length === 0) continue;
    const taken = others.map(({ strip }) => {
      const [low, high] = stretchWithin(own, strip);
      return [low - half, high + half] as const;
    });
    const free = subtractIntervals([[half, own.to - half]], taken);
    const below = free.findLast(([, to]) => to <= door.at)?.[1];
    const above = free.find(([from]) => from >= door.at)?.[0];
    const named = inWay.join(', ');
    const mend =
      below === undefined && above === undefined
        ? texts.narrowerDoorOrEnd(named)
        : texts.moveDoorTo(
            below === undefined ? null : atMost(below, draft.units),
            above === undefined ? null : atLeast(above, draft.units),
            named,
          );
    problems.add('partition-in-doorway', [...path, 'door'], texts.partitionStandsInDoorway(mark, named), mend);
  }
}

/** From where to where along one strip another lies between its two long sides. */
function stretchWithin({ at, along, half }: Strip, other: Strip): readonly [number, number] {
  const corners = cornersOf(other).map((p): Vec2 => {
    const away = sub2(p, at);
    return [dot2(along, away), cross2(along, away)];
  });
  const places = corners.flatMap((p, i): number[] => {
    const q = corners[(i + 1) % 4] as Vec2;
    const sides = [-half, half].map((off) => (off - p[1]) / (q[1] - p[1])).filter((s) => s > 0 && s < 1);
    return [...(Math.abs(p[1]) <= half ? [p[0]] : []), ...sides.map((s) => p[0] + s * (q[0] - p[0]))];
  });
  return [Math.min(...places), Math.max(...places)];
}
