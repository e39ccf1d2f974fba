import type { Placement } from '../../../lib/masonry/moulds/place.js';
import { EDGES } from '../../../lib/masonry/moulds/site.js';
import type { Mould } from '../../../lib/masonry/moulds/window.js';

type Point = readonly [x: number, y: number, z: number];

/** Rotation about the x axis, which points across the block. */
const tilt = ([x, y, z]: Point, angle: number): Point => [
  x,
  y * Math.cos(angle) - z * Math.sin(angle),
  y * Math.sin(angle) + z * Math.cos(angle),
];
/** Rotation about the dome's upright axis, clockwise seen from above. */
const turn = ([x, y, z]: Point, angle: number): Point => [
  x * Math.cos(angle) + y * Math.sin(angle),
  y * Math.cos(angle) - x * Math.sin(angle),
  z,
];
const moved = (a: Point, b: Point, sign: number): Point => [a[0] + sign * b[0], a[1] + sign * b[1], a[2] + sign * b[2]];

/** Corners and middles of the right head's edges of a dry block, in its own course: found on the circle by halving. */
export function headPoints({ parent, slope, lean }: Mould): Point[] {
  const { middle } = parent.at;
  const middlePoint: Point = [0, middle.r, middle.z];
  return EDGES.flatMap((edge) =>
    [0, parent.thickness].map((depth): Point => {
      const { r, z, normalRad } = parent.at[edge];
      const radius = r + depth * Math.cos(normalRad);
      const height = z + depth * Math.sin(normalRad);
      const point = (angle: number): Point => [radius * Math.sin(angle), radius * Math.cos(angle), height];
      const outside = (angle: number) => {
        const [x, y, up] = moved(point(angle), middlePoint, -1);
        const way = -y * Math.sin(middle.normalRad) + up * Math.cos(middle.normalRad);
        return x - slope * (y + middle.r) - lean * way;
      };
      let [low, high] = [0, 1.5];
      for (let k = 0; k < 60; k++) {
        const half = (low + high) / 2;
        if (outside(half) > 0) high = half;
        else low = half;
      }
      return point(low);
    }),
  );
}

/** A point of the block in its own course, carried to where the block lies. */
export function carried(point: Point, { parent, site, up, out }: Placement): Point {
  const from = parent.at.middle;
  const to = site.at.middle;
  const shift: Point = [0, out, up];
  const own = tilt(moved(point, [0, from.r, from.z], -1), -from.normalRad);
  return moved(tilt(moved(own, shift, 1), to.normalRad), [0, to.r, to.z], 1);
}

/** Distances between the facing heads of two neighbours, corner by corner. */
export function solidJoints(mould: Mould, placement: Placement): number[] {
  return headPoints(mould).map((point) => {
    const right = carried(point, placement);
    const left = turn([-right[0], right[1], right[2]], (2 * Math.PI) / placement.count);
    return Math.hypot(...moved(right, left, -1));
  });
}
