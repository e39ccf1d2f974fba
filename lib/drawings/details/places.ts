import type { PlainPrimitive } from '../../documents/drawing.js';
import { lineEdge } from '../../math/curves.js';
import { alongBearing, DEG, length2, perp2, sub2, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import { archesOf, type HouseSetout, passagesOf } from '../../setout/house.js';
import { spanPoint } from '../../setout/span.js';
import { inArchFrame } from '../arch-places.js';
import { inEarlier } from '../parts.js';
import type { CutPlane } from '../slice-upright.js';

/** An upright plane through a dome's axis that meets bare wall to its right; the axis stands at x = 0. */
export function bareSide(house: HouseSetout, dome: DomeSetout): CutPlane {
  const ways = [...archesOf(house, dome), ...passagesOf(house, dome)];
  const r = dome.springingRadius;
  const free = (deg: number): number => {
    const along = alongBearing(deg * DEG);
    const at: Vec2 = [dome.at[0] + r * along[0], dome.at[1] + r * along[1]];
    if (inEarlier(house, dome, [at[0], at[1], 0])) return -1;
    const gaps = ways.map((a) => {
      const [u, v] = inArchFrame(a, at);
      return v > 0 ? Math.abs(u) - a.section.width / 2 - a.ring : r;
    });
    const others = house.domes
      .filter((d) => d !== dome)
      .map((d) => length2(sub2(at, d.at)) - d.springingRadius - 2 * d.thickness - 600);
    return Math.min(r, ...gaps, ...others);
  };
  const best = Array.from({ length: 72 }, (_, i) => i * 5).reduce((a, b) => (free(b) > free(a) + 1 ? b : a));
  return planeAlong(dome.at, alongBearing(best * DEG));
}

/** A plane through a place, what lies along `right` to the right. */
export const planeAlong = (through: Vec2, right: Vec2): CutPlane & { readonly look: Vec2 } => ({
  through,
  right,
  look: perp2(right),
});

/** A line through places, mm in the section's plane. */
export const polyline = (
  layer: 'visible' | 'cut' | 'ground' | 'hidden' | 'overhead' | 'axis',
  points: readonly Vec2[],
  closed = false,
): PlainPrimitive => ({
  kind: 'path',
  layer,
  segments: [...points.slice(1), ...(closed ? points.slice(0, 1) : [])].map((to, i) => lineEdge(points[i] as Vec2, to)),
  closed,
});

/** Points of a surface `depth` outside the intrados, up the meridian between two levels; x from the dome's axis. */
export function meridianPoints(dome: DomeSetout, depth: number, fromZ: number, toZ: number, side: 1 | -1 = 1): Vec2[] {
  const points: Vec2[] = [];
  const push = ([r, z]: Vec2) => {
    if (z >= fromZ && z <= toZ && r >= 0) points.push([side * r, z]);
  };
  const r0 = dome.springingRadius + depth;
  const turn = spanPoint(dome.shell, 0, depth)[1];
  if (fromZ < dome.springingZ) {
    push([r0, fromZ]);
    push([r0, Math.min(toZ, Math.min(dome.springingZ, turn))]);
  }
  const n = 240;
  for (let i = 0; i <= n; i++) push(spanPoint(dome.shell, (dome.shell.length * i) / n, depth));
  return points.filter((p, i) => i === 0 || length2(sub2(p, points[i - 1] as Vec2)) > 1);
}

/** Render on both faces of a dome's wall between two levels. */
export function renderLines(
  house: HouseSetout,
  dome: DomeSetout,
  fromZ: number,
  toZ: number,
  x0 = 0,
  side: 1 | -1 = 1,
): PlainPrimitive[] {
  const { renderInside, renderOutside } = house.house.wall;
  const at = (points: readonly Vec2[]) => points.map(([x, z]): Vec2 => [x0 + x, z]);
  const lines = [
    ...(renderInside > 0 ? [meridianPoints(dome, -renderInside, Math.max(0, fromZ), toZ, side)] : []),
    ...(renderOutside > 0 ? [meridianPoints(dome, dome.thickness + renderOutside, fromZ, toZ, side)] : []),
  ];
  return lines.filter((points) => points.length > 1).map((points) => polyline('visible', at(points)));
}

/** A note's dot stands this far within what it tells of, mm. */
export const NOTE_MARGIN = 25;

/** A place in the middle of the wall above a barrel, as high up as a detail that begins at `left` still shows it. */
export function wallAbove(dome: DomeSetout, topZ: number, left: number): Vec2 {
  const middle = (up: number): Vec2 => {
    const z = Math.min(topZ + up, dome.crownZ);
    return [dome.radiusAt(z, dome.thickness / 2), z];
  };
  const up = [200, 160, 120, 80, 40].find((h) => middle(h)[0] > left + NOTE_MARGIN);
  return middle(up ?? 20);
}
