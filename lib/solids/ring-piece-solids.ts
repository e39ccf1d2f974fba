import { SAME_ANGLE_RAD, SAME_FACING, SAME_POINT } from '../base/tolerances.js';
import type { RingPiece } from '../masonry/ring-pieces.js';
import { atan2, cos, sin } from '../math/elementary.js';
import { turnPositive, type Vec2, type Vec3 } from '../math/vec.js';
import { type HouseSetout, passagesOf } from '../setout/house.js';
import { archCutter, OVERRUN } from './arch-bodies.js';
import { crownPiece, skewbackRing } from './dome-outlines.js';
import { edgeFinder, type FaceNamer } from './faces.js';
import type { Solid, SolidScope } from './kernel.js';
import type { Outline } from './outline.js';
import { passageCutter } from './passage-bodies.js';
import { arcSteps } from './sections.js';
import type { Site } from './site.js';

/** One piece of a skewback ring or curb, or a crown plug, less what cuts it grown by the joint. */
export function ringPieceSolid(scope: SolidScope, setout: HouseSetout, piece: RingPiece, site: Site): Solid {
  const { facets, dome } = site;
  const outline = piece.kind === 'skewback' ? skewbackRing(facets) : crownPiece(facets);
  if (!outline) throw new Error(`${piece.mark} has no section`);
  if (piece.kind === 'plug') return scope.revolve(piece.mark, outline, facets.segments, dome.at);
  const whole = sectorOf(scope, piece, outline, dome.at, facets.sagitta);
  if (!piece.cut) return whole;
  const options = { grow: setout.house.blocks.joint, sagitta: facets.sagitta };
  const heights = outline.points.map((p) => p[1]);
  const taken = [
    ...site.arches.map((arch) => archCutter(scope, arch, { ...options, name: `cut:${arch.id}` })),
    ...passagesOf(setout, dome).map((p) => passageCutter(scope, p, { ...options, name: `cut:${p.id}` })),
    ...site.giveWay({
      radius: Math.max(...outline.points.map((p) => p[0])),
      heights: [Math.min(...heights) - OVERRUN, Math.max(...heights) + OVERRUN],
      grow: options.grow,
      name: ({ id }) => `cut:${id}`,
    }),
  ];
  return scope.subtract(piece.mark, whole, taken);
}

/** An outline turned about the axis from one bearing to another, clockwise. */
function sectorOf(
  scope: SolidScope,
  { mark, startRad, endRad }: RingPiece,
  outline: Outline,
  at: Vec2,
  sagitta: number,
): Solid {
  const widest = Math.max(...outline.points.map((p) => p[0]));
  const count = arcSteps(widest, endRad - startRad, sagitta);
  const step = (endRad - startRad) / count;
  const place = (r: number, z: number, k: number): Vec3 => {
    const bearing = startRad + k * step;
    return [at[0] + r * sin(bearing), at[1] + r * cos(bearing), z];
  };
  const find = edgeFinder(outline);
  const faces: FaceNamer = (x, y, z, nx, ny, nz) => {
    const [dx, dy] = [x - at[0], y - at[1]];
    const onPlane = (rad: number) =>
      Math.abs(nx * cos(rad) - ny * sin(rad)) > 1 - SAME_FACING && Math.abs(dx * cos(rad) - dy * sin(rad)) < SAME_POINT;
    if (onPlane(startRad) || onPlane(endRad)) return 'joint';
    const turn = turnPositive(atan2(dx, dy) - startRad + SAME_ANGLE_RAD);
    const middle = startRad + (Math.min(count - 1, Math.floor(turn / step)) + 0.5) * step;
    const [s, c] = [sin(middle), cos(middle)];
    return find((dx * s + dy * c) / cos(step / 2), z, nx * s + ny * c, nz);
  };
  return scope.bend(mark, outline, count, place, faces);
}
