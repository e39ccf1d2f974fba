import { cos, sin } from '../../math/elementary.js';
import { monotoneRoot } from '../../math/roots.js';
import type { Vec2, Vec3 } from '../../math/vec.js';
import { spanPoint } from '../../setout/span.js';
import { halfAngleAt, type PlacedBlock } from '../placed.js';
import type { FitLimits } from './limits.js';

/**
 * The block as a mould casts it, before it shrinks, in the mould's own frame: origin on the intrados in the block's
 * middle, `across` to the right seen from outside, `up` along the meridian, `out` along the outward normal; mm.
 * Points are told by shares: `s` of the way from lower to upper bed, `depth` from intrados to extrados, `side` from
 * the left head (−1) to the right one (1).
 */
export interface CastShape {
  /** The block dry, as its parent course has it. */
  readonly block: PlacedBlock;
  readonly faces: FitLimits['faces'];
  /** Sizes as cast over dry ones. */
  readonly grow: number;
  readonly thickness: number;
  /** The right head: across = base + perOut · out + perUp · up. */
  readonly head: { readonly base: number; readonly perOut: number; readonly perUp: number };
  /** (across, up, out). Shares outside 0 to 1 go on along the beds' normals and the faces' normals. */
  at(s: number, depth: number, side: number): Vec3;
}

export function castShape(block: PlacedBlock, limits: Pick<FitLimits, 'faces' | 'shrinkage'>): CastShape {
  const middle = middleOf(block);
  const [c, n] = middle.normal;
  const grow = 1 / (1 - limits.shrinkage);
  const frame = (across: number, distance: number, z: number): Vec3 => [
    across * grow,
    ((z - middle.z) * c - (distance - middle.r) * n) * grow,
    ((distance - middle.r) * c + (z - middle.z) * n) * grow,
  ];
  const { turnRad, off, rise } = block.parentHead;
  const [hc, hs] = [cos(turnRad), sin(turnRad)];
  return {
    block,
    faces: limits.faces,
    grow,
    thickness: block.thickness * grow,
    head: {
      base: ((off + rise * middle.z + hs * middle.r) / hc) * grow,
      perOut: (rise * n + hs * c) / hc,
      perUp: (rise * c - hs * n) / hc,
    },
    at: limits.faces === 'flat' ? flatAt(block, frame) : curvedAt(block, frame),
  };
}

const middleOf = ({ span, bed, top }: PlacedBlock) => span.at((bed + top) / 2);

/** Thickness of a mould's lining, mm: a sheet that bends over its ribs; common practice, no source. */
export const LINING = 6;

type Frame = (across: number, distance: number, z: number) => Vec3;

function curvedAt(block: PlacedBlock, frame: Frame): CastShape['at'] {
  const { span, bed, top, thickness } = block;
  return (s, depth, side) => {
    const inside = Math.min(1, Math.max(0, s));
    const p = span.at(bed + inside * (top - bed));
    const past = (s - inside) * (top - bed);
    const r = p.r + depth * thickness * p.normal[0] - past * p.normal[1];
    const z = p.z + depth * thickness * p.normal[1] + past * p.normal[0];
    const angle = halfAngleAt(block, r, z) * side;
    return frame(r * sin(angle), r * cos(angle), z);
  };
}

/** Between the eight corners: a quadrilateral in the middle plane, and the heads' planes. */
function flatAt(block: PlacedBlock, frame: Frame): CastShape['at'] {
  const { span, bed, top, thickness, parentHead } = block;
  const corner = (s: number, depth: number): Vec2 => {
    const [r, z] = spanPoint(span, s, depth);
    return [r * cos(halfAngleAt(block, r, z)), z];
  };
  const [a, b] = [corner(bed, 0), corner(bed, thickness)];
  const [d, e] = [corner(top, 0), corner(top, thickness)];
  const { turnRad, off, rise } = parentHead;
  return (s, depth, side) => {
    const mix = (i: 0 | 1) => (1 - s) * ((1 - depth) * a[i] + depth * b[i]) + s * ((1 - depth) * d[i] + depth * e[i]);
    const [distance, z] = [mix(0), mix(1)];
    return frame((side * (off + rise * z + distance * sin(turnRad))) / cos(turnRad), distance, z);
  };
}

/** How far out a face (or a surface parallel to it, `depth` mm outside the intrados) lies over a place of the frame. */
export function surfaceOut({ block, grow }: CastShape, depth: number, across: number, up: number): number {
  const { span, bed, top } = block;
  const middle = middleOf(block);
  const [c, n] = middle.normal;
  const x = across / grow;
  const seen = (s: number): readonly [up: number, out: number] => {
    const p = span.at(s);
    const r = p.r + (depth / grow) * p.normal[0];
    const z = p.z + (depth / grow) * p.normal[1] - middle.z;
    // Near a crown a ring may be too small to reach so far across: its end stands for it.
    const distance = Math.sqrt(Math.max(0, r * r - x * x)) - middle.r;
    return [z * c - distance * n, distance * c + z * n];
  };
  const reach = (top - bed) / 2;
  const [low, high] = [Math.max(0, bed - reach), Math.min(span.length, top + reach)];
  return seen(monotoneRoot((s) => seen(s)[0] - up / grow, low, high))[1] * grow;
}

/** Where a head's plane meets that surface at a height. */
export function headAcross(shape: CastShape, depth: number, up: number): number {
  const { base, perOut, perUp } = shape.head;
  let across = base + perUp * up + perOut * depth;
  // The surface bends little over the few millimetres between two steps: each gains three digits or more.
  for (let i = 0; i < 6; i++) across = base + perUp * up + perOut * surfaceOut(shape, depth, across, up);
  return across;
}
