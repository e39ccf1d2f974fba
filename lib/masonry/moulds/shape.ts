import { cos, sin } from '../../math/elementary.js';
import { monotoneRoot } from '../../math/roots.js';
import type { Vec2, Vec3 } from '../../math/vec.js';
import type { FitLimits } from './limits.js';
import { seatOf } from './place.js';
import { type Mould, perpendAt } from './window.js';

/**
 * The block as a mould casts it, before it shrinks, in the mould's own frame: origin on the intrados in the block's
 * middle, `across` to the right seen from outside, `up` along the meridian, `out` along the outward normal; mm.
 * Points are told by shares: `s` of the way from lower to upper bed, `depth` from intrados to extrados, `side` from
 * the left head (−1) to the right one (1).
 */
export interface CastShape {
  readonly mould: Mould;
  readonly faces: FitLimits['faces'];
  /** Sizes as cast over dry ones. */
  readonly grow: number;
  readonly thickness: number;
  /** The right head: across = base + perOut · out + perUp · up. */
  readonly head: { readonly base: number; readonly perOut: number; readonly perUp: number };
  /** (across, up, out). Shares outside 0 to 1 go on along the beds' normals and the faces' normals. */
  at(s: number, depth: number, side: number): Vec3;
}

export function castShape(mould: Mould, limits: Pick<FitLimits, 'faces' | 'shrinkage'>): CastShape {
  const { parent, slope, lean } = mould;
  const { middle } = parent.at;
  const [c, n] = middle.normal;
  const grow = 1 / (1 - limits.shrinkage);
  const frame = (across: number, distance: number, z: number): Vec3 => [
    across * grow,
    ((z - middle.z) * c - (distance - middle.r) * n) * grow,
    ((distance - middle.r) * c + (z - middle.z) * n) * grow,
  ];
  return {
    mould,
    faces: limits.faces,
    grow,
    thickness: parent.thickness * grow,
    head: { base: slope * middle.r * grow, perOut: slope * c, perUp: lean - slope * n },
    at: limits.faces === 'flat' ? flatAt(mould, frame) : curvedAt(mould, frame),
  };
}

/** Thickness of a mould's lining, mm: a sheet that bends over its ribs; common practice, no source. */
export const LINING = 6;

type Frame = (across: number, distance: number, z: number) => Vec3;

function curvedAt(mould: Mould, frame: Frame): CastShape['at'] {
  const { span, course, thickness, at } = mould.parent;
  const { middle } = at;
  const { bed, to } = course;
  return (s, depth, side) => {
    const inside = Math.min(1, Math.max(0, s));
    const p = span.at(bed + inside * (to - bed));
    const past = (s - inside) * (to - bed);
    const r = p.r + depth * thickness * p.normal[0] - past * p.normal[1];
    const z = p.z + depth * thickness * p.normal[1] + past * p.normal[0];
    const up = (z - middle.z) * middle.normal[0] - (r - middle.r) * middle.normal[1];
    const angle = perpendAt(mould, { r, up }).angleRad * side;
    return frame(r * sin(angle), r * cos(angle), z);
  };
}

/** Between the eight corners: a quadrilateral in the middle plane, and the heads' planes. */
function flatAt(mould: Mould, frame: Frame): CastShape['at'] {
  const { parent, slope, lean } = mould;
  const { middle } = parent.at;
  const corner = (edge: 'lower' | 'upper', depth: number): Vec2 => {
    const { normal, z } = parent.at[edge];
    return [perpendAt(mould, seatOf(parent, edge, depth)).distance, z + depth * normal[1]];
  };
  const [a, b] = [corner('lower', 0), corner('lower', parent.thickness)];
  const [d, e] = [corner('upper', 0), corner('upper', parent.thickness)];
  return (s, depth, side) => {
    const mix = (i: 0 | 1) => (1 - s) * ((1 - depth) * a[i] + depth * b[i]) + s * ((1 - depth) * d[i] + depth * e[i]);
    const [distance, z] = [mix(0), mix(1)];
    const up = (z - middle.z) * middle.normal[0] - (distance - middle.r) * middle.normal[1];
    return frame(side * (slope * distance + lean * up), distance, z);
  };
}

/** How far out a face (or a surface parallel to it, `depth` mm outside the intrados) lies over a place of the frame. */
export function surfaceOut({ mould, grow }: CastShape, depth: number, across: number, up: number): number {
  const { span, course, at } = mould.parent;
  const { middle } = at;
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
  const reach = (course.to - course.bed) / 2;
  const [low, high] = [Math.max(0, course.bed - reach), Math.min(span.length, course.to + reach)];
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
