import type { Cutter } from '../masonry/cutter.js';
import { turnPositive } from '../math/vec.js';
import { atHeight } from './dome-thrust.js';
import type { Lune } from './lune.js';

/** Wall that is left between two voids of a dome at one level, and the load that it gathers. Lengths mm, forces kN. */
export interface Pier {
  /** Ids of the voids on either side, clockwise; the same twice where there is but one. */
  readonly between: readonly [string, string];
  readonly z: number;
  /** Along the middle of the wall. */
  readonly width: number;
  /** Of the wall whose load it takes: its own, and half of each void beside it. */
  readonly gathered: number;
  /** Half of each void beside it, radians of bearing. */
  readonly besideRad: readonly [number, number];
  /** On it, without load factors: dead, and snow. */
  readonly dead: number;
  readonly snow: number;
}

/** Piers at every level at which a void begins or changes its law. */
export function piersOf(lune: Lune, voids: readonly Cutter[]): Pier[] {
  const levels = new Set(voids.flatMap(({ lowZ, highZ, heights }) => [lowZ, ...heights.filter((z) => z < highZ)]));
  return [...levels]
    .filter((z) => z < lune.dome.crownZ)
    .sort((a, b) => a - b)
    .flatMap((z) => piersAt(lune, voids, z));
}

function piersAt(lune: Lune, voids: readonly Cutter[], z: number): Pier[] {
  const { dome, sections } = lune;
  const r = dome.radiusAt(z, dome.thickness / 2);
  const open = mergeVoids(
    voids
      .map(({ id, bearingRad, spreadAt }) => ({ id, at: turnPositive(bearingRad), half: spreadAt(r, z + 1) }))
      .filter(({ half }) => half > 0),
  );
  const dead = atHeight(lune, z, (i) => sections[i]?.dead.weight ?? 0);
  const snow = atHeight(lune, z, (i) => sections[i]?.snow.weight ?? 0);
  return open.map((one, i): Pier => {
    const next = open[(i + 1) % open.length] ?? one;
    const apart = turnPositive(next.at - one.at) || 2 * Math.PI;
    const width = Math.max(0, apart - one.half - next.half);
    return {
      between: [one.id, next.id],
      z,
      width: width * r,
      gathered: (width + one.half + next.half) * r,
      besideRad: [one.half, next.half],
      dead: dead * (width + one.half + next.half),
      snow: snow * (width + one.half + next.half),
    };
  });
}

interface Void {
  readonly id: string;
  readonly at: number;
  readonly half: number;
}

/** Voids in order round the dome; one that meets another is one with it: a passage and the dome that it leads into. */
function mergeVoids(voids: readonly Void[]): Void[] {
  const sorted = [...voids].sort((a, b) => a.at - b.at);
  for (let i = 0; i < sorted.length && sorted.length > 1; i++) {
    const j = (i + 1) % sorted.length;
    const [one, next] = [sorted[i] as Void, sorted[j] as Void];
    const apart = turnPositive(next.at - one.at);
    if (apart >= one.half + next.half) continue;
    const from = Math.min(-one.half, apart - next.half);
    const to = Math.max(one.half, apart + next.half);
    const wide = one.half > next.half ? one : next;
    sorted[i] = { id: wide.id, at: turnPositive(one.at + (from + to) / 2), half: (to - from) / 2 };
    sorted.splice(j, 1);
    i = -1;
  }
  return sorted;
}
