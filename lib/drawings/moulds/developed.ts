import type { Segment } from '../../documents/drawing.js';
import type { CastShape } from '../../masonry/moulds/shape.js';
import type { Station } from '../../masonry/moulds/site.js';
import { halfAngleAt } from '../../masonry/placed.js';
import { cos, hypot, sin } from '../../math/elementary.js';
import { dot3, type Vec2, type Vec3 } from '../../math/vec.js';
import { arcThrough } from '../templates/curves.js';

/** A generator nearer to the axis's direction than this makes no cone: its bed unrolls as a cylinder does. */
const UPRIGHT = 1e-6;

/**
 * A place of a conical bed as it lies when the bed is unrolled: from the middle of its inner edge to the right and
 * outward, mm. `depth` is from the intrados, `angleRad` about the dome's axis. Lengths along the rings and up the
 * generators stay true; a level bed is unrolled already.
 */
export function unrolled({ r, normal }: Pick<Station, 'r' | 'normal'>, depth: number, angleRad: number): Vec2 {
  const [c] = normal;
  if (c < UPRIGHT) return [r * angleRad, depth];
  const far = r / c + depth;
  return [far * sin(angleRad * c), far * cos(angleRad * c) - r / c];
}

/** One bed of a mould, unrolled: its outline from the right head round, and what to check it with. */
export interface DevelopedBed {
  readonly outline: readonly Segment[];
  /** Radius of the inner edge when unrolled; `null` where it is straight. */
  readonly innerRadius: number | null;
  readonly outerRadius: number | null;
  /** Corners: inner left, inner right, outer right, outer left. */
  readonly corners: readonly [Vec2, Vec2, Vec2, Vec2];
  /** Middles of the inner and the outer edge. */
  readonly middles: readonly [Vec2, Vec2];
  /** A place by shares of depth and side. */
  at(depth: number, side: number): Vec2;
}

export function developedBed(shape: CastShape, edge: 'lower' | 'upper'): DevelopedBed {
  const at = shape.faces === 'flat' ? flatBed(shape, edge) : curvedBed(shape, edge);
  const corners = [at(0, -1), at(0, 1), at(1, 1), at(1, -1)] as const;
  const { r, normal } = stationOf(shape, edge);
  const bent = shape.faces === 'curved' && normal[0] >= UPRIGHT;
  const radius = (depth: number) => (bent ? (r / normal[0] + depth) * shape.grow : null);
  return {
    outline: [
      arcThrough(at(0, -1), at(0, 0), at(0, 1)),
      arcThrough(at(0, 1), at(0.5, 1), at(1, 1)),
      arcThrough(at(1, 1), at(1, 0), at(1, -1)),
      arcThrough(at(1, -1), at(0.5, -1), at(0, -1)),
    ],
    innerRadius: radius(0),
    outerRadius: radius(shape.block.thickness),
    corners,
    middles: [at(0, 0), at(1, 0)],
    at,
  };
}

const stationOf = ({ block: { span, bed, top } }: CastShape, edge: 'lower' | 'upper') =>
  span.at(edge === 'lower' ? bed : top);

function curvedBed(shape: CastShape, edge: 'lower' | 'upper'): DevelopedBed['at'] {
  const { block, grow } = shape;
  const station = stationOf(shape, edge);
  const { r, z, normal } = station;
  return (depth, side) => {
    const d = depth * block.thickness;
    const [x, y] = unrolled(station, d, side * halfAngleAt(block, r + d * normal[0], z + d * normal[1]));
    return [x * grow, y * grow];
  };
}

/** Flat already: a trapezium as deep as the bed is in the block's middle plane. */
function flatBed(shape: CastShape, edge: 'lower' | 'upper'): DevelopedBed['at'] {
  const s = edge === 'lower' ? 0 : 1;
  const [inner, outer] = [shape.at(s, 0, 0), shape.at(s, 1, 0)];
  const deep = hypot(outer[1] - inner[1], outer[2] - inner[2]);
  return (depth, side) => [shape.at(s, depth, side)[0], deep * depth];
}

/** A head as it lies on its own plane: (outward, up), mm; its outline runs up the intrados and down the extrados. */
export interface HeadFigure {
  readonly outline: readonly Segment[];
  /** Corners: lower inner, upper inner, upper outer, lower outer. */
  readonly corners: readonly [Vec2, Vec2, Vec2, Vec2];
  at(s: number, depth: number): Vec2;
}

export function headFigure(shape: CastShape): HeadFigure {
  const { perOut, perUp } = shape.head;
  const out = unit([perOut, 0, 1]);
  const lean = dot3([perUp, 1, 0], out);
  const up = unit([perUp - lean * out[0], 1, -lean * out[2]]);
  const origin = shape.at(0.5, 0, 1);
  const at = (s: number, depth: number): Vec2 => {
    const p = shape.at(s, depth, 1);
    const from: Vec3 = [p[0] - origin[0], p[1] - origin[1], p[2] - origin[2]];
    return [dot3(from, out), dot3(from, up)];
  };
  return {
    outline: [
      arcThrough(at(0, 0), at(0.5, 0), at(1, 0)),
      arcThrough(at(1, 0), at(1, 0.5), at(1, 1)),
      arcThrough(at(1, 1), at(0.5, 1), at(0, 1)),
      arcThrough(at(0, 1), at(0, 0.5), at(0, 0)),
    ],
    corners: [at(0, 0), at(1, 0), at(1, 1), at(0, 1)],
    at,
  };
}

const unit = (v: Vec3): Vec3 => {
  const length = hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
};
