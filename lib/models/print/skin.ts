import type { Vec2, Vec3 } from '../../math/vec.js';

/** A level line round an axis: bearings (radians, rising by one turn at most) and a corner at each. */
export interface Ring {
  readonly bearings: readonly number[];
  readonly corners: readonly Vec3[];
}

/** Closed triangles: rings from the lowest up, each joined to the next, the first and the last closed to the axis. */
export interface Skin {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

/** The closed skin of rings about an axis; the ends are closed by a point on it at the given heights. */
export function skinOf(rings: readonly Ring[], at: Vec2, [bottom, top]: readonly [number, number]): Skin {
  const count = rings.reduce((n, ring) => n + ring.corners.length, 2);
  const positions = new Float64Array(3 * count);
  const triangles: number[] = [];
  let next = 0;
  const add = (corner: Vec3): number => {
    positions.set(corner, 3 * next);
    return next++;
  };
  const foot = add([at[0], at[1], bottom]);
  const apex = add([at[0], at[1], top]);
  const first = rings.map((ring) => ring.corners.map(add)[0] as number);
  const size = (k: number) => (rings[k] as Ring).corners.length;
  const vertex = (k: number, i: number) => (first[k] as number) + (i % size(k));

  for (let i = 0; i < size(0); i++) triangles.push(foot, vertex(0, i), vertex(0, i + 1));
  for (let k = 0; k + 1 < rings.length; k++) {
    zip(rings[k] as Ring, rings[k + 1] as Ring, (a, b, onLower) => {
      // Bearings run clockwise: seen from outside, to the left.
      if (onLower) triangles.push(vertex(k, a + 1), vertex(k, a), vertex(k + 1, b));
      else triangles.push(vertex(k, a), vertex(k + 1, b), vertex(k + 1, b + 1));
    });
  }
  const last = rings.length - 1;
  for (let i = 0; i < size(last); i++) triangles.push(apex, vertex(last, i + 1), vertex(last, i));
  return { positions, triangles: Uint32Array.from(triangles) };
}

/** Steps round two rings together, always on the one that is behind; both begin at the bearings nearest to each other. */
function zip(lower: Ring, upper: Ring, step: (a: number, b: number, onLower: boolean) => void): void {
  const [m, n] = [lower.bearings.length, upper.bearings.length];
  const turn = 2 * Math.PI;
  const bearing = (ring: Ring, i: number) =>
    (ring.bearings[i % ring.bearings.length] as number) + turn * Math.floor(i / ring.bearings.length);
  const start = bearing(lower, 0);
  // The upper corner nearest to the first lower one, and how many turns it is away.
  let offset = 0;
  let shift = 0;
  let best = Infinity;
  for (let j = 0; j < n; j++) {
    const away = start - (upper.bearings[j] as number);
    const turns = Math.round(away / turn);
    const gap = Math.abs(away - turns * turn);
    if (gap < best) [best, offset, shift] = [gap, j, turns * turn];
  }
  const above = (b: number) => bearing(upper, b) + shift;
  let a = 0;
  let b = offset;
  while (a < m || b < offset + n) {
    const onLower = b >= offset + n || (a < m && bearing(lower, a + 1) <= above(b + 1));
    step(a, b, onLower);
    if (onLower) a++;
    else b++;
  }
}
