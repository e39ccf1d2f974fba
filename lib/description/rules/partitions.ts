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
    const message = `The partition in "${dome.id}" is ${size(length)} long, less than ${size(SHORTEST)}.`;
    problems.add('partition-short', path, message, 'Set its ends further apart, or remove it.');
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
      const message = `The end "${key}" of the partition lies ${size(over)} outside the room of "${dome.id}", whose inside radius is ${size(dome.radius)}.`;
      problems.add(
        'partition-outside',
        [...path, key],
        message,
        `Move it ${atLeast(over, draft.units)} or more towards the axis of "${dome.id}".`,
      );
    }
    for (const { value: earlier } of draft.domes.slice(0, index)) {
      const inside = earlier.radius + thickness - length2(sub2(end, earlier.at));
      if (inside <= SAME_POINT) continue;
      const message = `The end "${key}" of the partition lies ${size(inside)} inside the dome "${earlier.id}", which stands in the room of "${dome.id}".`;
      problems.add(
        'partition-outside',
        [...path, key],
        message,
        `Move it ${atLeast(inside, draft.units)} or more away from "${earlier.id}".`,
      );
    }
  }
  for (const way of waysOf(draft, dome)) {
    const gap = segmentsApart(from, to, way.left, way.right);
    if (gap >= partition.thickness / 2) continue;
    const message = `The partition stands in front of ${way.what} "${way.id}".`;
    const mend = `Move it ${atLeast(partition.thickness / 2 - gap, draft.units)} or more away, or end it beside it.`;
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
    .map(({ value: o }) => mouth(o.id, o.use === 'door' ? 'the door' : `the ${o.use}`, o.bearingDeg * DEG, o.width));
  const passages = draft.passages.flatMap(({ value: p }) => {
    const other = p.between.find((id) => id !== dome.id);
    const end = draft.domes.find((d) => d.value.id === other)?.value;
    if (!p.between.includes(dome.id) || !end) return [];
    return [mouth(p.id, 'the passage', bearingOf(sub2(end.at, dome.at)), p.width)];
  });
  return [...openings, ...passages];
}

function checkDoor(draft: Draft, path: Path, { from, to, door, height }: Partition, problems: ProblemList): void {
  if (!door) return;
  const size = (mm: number) => formatLength(mm, draft.units);
  const length = length2(sub2(to, from));
  const [start, end] = [door.at - door.width / 2, door.at + door.width / 2];
  if (start < -SAME_POINT || end > length + SAME_POINT) {
    const message = `The door runs from ${size(start)} to ${size(end)} along a partition that is ${size(length)} long.`;
    const mend =
      door.width <= length
        ? `Give \`at\` from ${atLeast(door.width / 2, draft.units)} to ${atMost(length - door.width / 2, draft.units)}.`
        : 'A narrower door, or a longer partition.';
    problems.add('partition-door', [...path, 'door'], message, mend);
  }
  if (height !== null && door.height > height) {
    const message = `The door is ${size(door.height)} high in a partition of ${size(height)}.`;
    problems.add('partition-door', [...path, 'door', 'height'], message, 'A lower door, or a higher partition.');
  }
}
