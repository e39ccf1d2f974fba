import * as texts from '../../base/texts/problems-openings.js';
import { SAME_POINT } from '../../base/tolerances.js';
import { formatLength } from '../../base/units.js';
import { alongBearing, bearingOf, DEG, length2, sub2, type Vec2 } from '../../math/vec.js';
import type { Draft } from '../draft.js';
import type { Dome, Partition } from '../house.js';
import type { Path, ProblemList } from '../problem-list.js';
import { segmentsApart } from './runs.js';
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
