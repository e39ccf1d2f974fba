import type { Mesh } from '../../lib/documents/mesh.js';
import type { Vec2 } from '../../lib/math/vec.js';
import type { HouseSetout } from '../../lib/setout/house.js';
import { insideOf } from './clusters.js';

/** Groups of rooms that passages join, by the description. */
export function joinedRooms({ domes, passages }: HouseSetout): string[] {
  const group = new Map(domes.map((d) => [d.id, new Set([d.id])]));
  for (const { domes: ends } of passages) {
    const both = new Set(ends.flatMap((end) => [...(group.get(end.id) as Set<string>)]));
    for (const id of both) group.set(id, both);
  }
  return [...new Set(group.values())].map((ids) => [...ids].sort().join(' ')).sort();
}

/** Groups of rooms that air joins, by flood fill of a stack of rasters within rooms and passages, doors shut. */
export function connectedRooms({ domes, passages }: HouseSetout, whole: Mesh): string[] {
  const SIDE = 150;
  const LEVELS = [150, 700, 1250];
  const inside = insideOf(whole);
  const within = (x: number, y: number) =>
    domes.some((d) => Math.hypot(x - d.at[0], y - d.at[1]) < d.springingRadius - SIDE) ||
    passages.some(({ domes: [first], along, across, distance, section }) => {
      const [dx, dy] = [x - first.at[0], y - first.at[1]];
      const v = dx * along[0] + dy * along[1];
      return v > 0 && v < distance && Math.abs(dx * across[0] + dy * across[1]) < section.width / 2;
    });
  const reached = new Map<string, boolean>();
  const free = (i: number, j: number, k: number): boolean => {
    const key = `${i} ${j} ${k}`;
    const known = reached.get(key);
    if (known !== undefined) return known;
    const [x, y] = [i * SIDE + 1.7, j * SIDE + 2.3];
    const is = within(x, y) && !inside(x, y, LEVELS[k] as number);
    reached.set(key, is);
    return is;
  };
  const cellOf = ([x, y]: Vec2) => [Math.round(x / SIDE), Math.round(y / SIDE), 0] as const;
  const groups: string[] = [];
  const taken = new Set<string>();
  for (const dome of domes) {
    if (taken.has(dome.id)) continue;
    const seen = new Set<string>();
    const queue = [cellOf(dome.at)] as (readonly [number, number, number])[];
    for (let cell = queue.pop(); cell; cell = queue.pop()) {
      const [i, j, k] = cell;
      if (seen.has(`${cell}`) || LEVELS[k] === undefined || !free(i, j, k)) continue;
      seen.add(`${cell}`);
      queue.push([i + 1, j, k], [i - 1, j, k], [i, j + 1, k], [i, j - 1, k], [i, j, k + 1], [i, j, k - 1]);
    }
    const ids = domes.filter((d) => seen.has(`${cellOf(d.at)}`)).map((d) => d.id);
    for (const id of ids) taken.add(id);
    groups.push(ids.sort().join(' '));
  }
  return groups.sort();
}
