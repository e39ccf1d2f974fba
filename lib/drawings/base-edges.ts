import { CORNER_RAD, UNDER_FLOOR_SHARE } from '../base/tolerances.js';
import { type Edge, edgeEnd, edgeTangent } from '../math/curves.js';
import type { HouseSetout } from '../setout/house.js';
import { cutOf } from './cut.js';
import { edgeFeature, type Feature } from './feature.js';
import { partAt } from './parts.js';
import { sliceLevel } from './slice-level.js';
import { lying, spaceLine } from './space-curve.js';

/** Outlines of all footings and slabs together at a level under the floor. */
export function baseOutline(house: HouseSetout, z: number): Edge[][] {
  return cutOf(sliceLevel(house, z), ([x, y]) => partAt(house, [x, y, z])).loops();
}

/** Rims and upright corners of what stands under the floor. */
export function baseEdges(house: HouseSetout): Feature[] {
  const bottom = Math.min(...house.footings.map((f) => f.bottomZ), ...house.slabs.map((s) => s.bottomZ));
  if (!Number.isFinite(bottom)) return [];
  return baseOutline(house, bottom * UNDER_FLOOR_SHARE).flatMap((loop) =>
    loop.flatMap((edge, i) => {
      const next = loop[(i + 1) % loop.length] as Edge;
      const [a, b] = [edgeTangent(edge, 1), edgeTangent(next, 0)];
      const corner = Math.abs(a[0] * b[1] - a[1] * b[0]) > CORNER_RAD;
      const [x, y] = edgeEnd(edge);
      const rims = [0, bottom].map((z) => edgeFeature(lying(edge, z)));
      return corner ? [...rims, edgeFeature(spaceLine([x, y, bottom], [x, y, 0]))] : rims;
    }),
  );
}
