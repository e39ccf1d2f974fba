import type { House } from '../../lib/description/house.js';
import { cross2, dot2, sub2, type Vec2 } from '../../lib/math/vec.js';
import type { HouseSetout } from '../../lib/setout/house.js';

/**
 * Handles of a whole house as told by its description alone: the first Betti number of what it isn't. Nodes are
 * outside and rooms, edges are openings, oculi and passages; each courtyard that a ring of domes closes adds one.
 * Without slab each room is open below too; without footing as well, a door or passage that reaches the base of the
 * walls is a notch and counts 0.
 */
export function expectedHandles(house: House, courtyards: number): number {
  const { domes, openings, passages, slab, footing } = house;
  const room = (id: string) => domes.findIndex((d) => d.id === id) + 1;
  const notched = !slab && !footing;
  const edges: (readonly [number, number])[] = [
    ...openings.filter((o) => o.use !== 'niche' && !(notched && o.sill === 0)).map((o) => [0, room(o.in)] as const),
    ...domes.filter((d) => d.oculus).map((d) => [0, room(d.id)] as const),
    ...(slab ? [] : domes.map((d) => [0, room(d.id)] as const)),
    ...(notched ? [] : passages.map((p) => [room(p.between[0]), room(p.between[1])] as const)),
  ];
  const leader = Array.from({ length: domes.length + 1 }, (_, i) => i);
  const find = (k: number): number => (leader[k] === k ? k : find(leader[k] as number));
  for (const [a, b] of edges) leader[find(a)] = find(b);
  const components = new Set(leader.map((_, k) => find(k))).size;
  return edges.length - leader.length + components + courtyards;
}

/** Side of the squares (mm) that the ground is looked at in. */
const SQUARE = 20;
/** Free ground about the house. */
const ROUND = 200;

/** A piece of covered ground: whether a point lies in it, and how far it reaches from a point. */
interface Cover {
  readonly at: Vec2;
  readonly reach: number;
  holds(p: Vec2): boolean;
}

function coversOf(setout: HouseSetout, grow: number): Cover[] {
  const margin = (setout.footings[0]?.projection ?? 0) + grow;
  const discs = setout.domes.map(({ at, springingRadius, thickness }): Cover => {
    const reach = springingRadius + thickness + margin;
    return { at, reach, holds: (p) => Math.hypot(p[0] - at[0], p[1] - at[1]) < reach };
  });
  const strip = (at: Vec2, along: Vec2, half: number, to: number): Cover => ({
    at,
    reach: Math.hypot(half, to),
    holds(p) {
      const away = sub2(p, at);
      const v = dot2(away, along);
      return v > 0 && v < to && Math.abs(cross2(along, away)) < half;
    },
  });
  return [
    ...discs,
    ...setout.arches.flatMap((a) =>
      a.faceV === null ? [] : [strip(a.dome.at, a.along, a.outerHalfAt(0) + margin, a.faceV + margin)],
    ),
    ...setout.passages.map((p) => strip(p.domes[0].at, p.along, p.outerHalfAt(0) + margin, p.distance)),
  ];
}

/**
 * Pieces of ground that the house with its footing encloses, by flood fill of a raster from outside; `null` where
 * that hangs on less than a square.
 */
export function courtyardsOf(setout: HouseSetout): number | null {
  const [less, more] = [-SQUARE, SQUARE].map((grow) => enclosedBy(coversOf(setout, grow), SQUARE));
  return less === more ? (less as number) : null;
}

function enclosedBy(covers: readonly Cover[], square: number): number {
  const least = (k: 0 | 1) => Math.min(...covers.map(({ at, reach }) => at[k] - reach)) - ROUND;
  const most = (k: 0 | 1) => Math.max(...covers.map(({ at, reach }) => at[k] + reach)) + ROUND;
  const origin = [least(0), least(1)] as const;
  const columns = Math.ceil((most(0) - origin[0]) / square);
  const rows = Math.ceil((most(1) - origin[1]) / square);
  const filled = new Uint8Array(columns * rows);
  for (const { at, reach, holds } of covers) {
    const squares = (k: 0 | 1) => [at[k] - reach, at[k] + reach].map((x) => Math.floor((x - origin[k]) / square));
    const [west, east] = squares(0) as [number, number];
    const [south, north] = squares(1) as [number, number];
    for (let row = south; row <= north; row++)
      for (let column = west; column <= east; column++)
        if (holds([origin[0] + (column + 0.5) * square, origin[1] + (row + 0.5) * square]))
          filled[row * columns + column] = 1;
  }
  let pieces = 0;
  for (let start = 0; start < filled.length; start++) {
    if (filled[start]) continue;
    pieces++;
    flood(filled, columns, start);
  }
  return pieces - 1;
}

/** Fills all free squares that hang together with one; diagonally too, so that a cusp breaks off no corner. */
function flood(filled: Uint8Array, columns: number, start: number): void {
  const queue = [start];
  filled[start] = 1;
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    const column = at % columns;
    for (let across = -1; across <= 1; across++) {
      if (column + across < 0 || column + across >= columns) continue;
      for (let up = -1; up <= 1; up++) {
        const next = at + up * columns + across;
        if (filled[next] !== 0) continue;
        filled[next] = 1;
        queue.push(next);
      }
    }
  }
}
