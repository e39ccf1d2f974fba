import { cos, hypot, sin } from '../math/elementary.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { type MeridianSpan, spanPoint } from '../setout/span.js';
import type { Block } from './block.js';
import { halfAngleAt, headsAngle, placedBlock } from './placed.js';
import { wedgeOf } from './wedge.js';

/** An edge along a course: its arc and the straight chord between its ends, mm. */
export interface Edge {
  readonly arc: number;
  readonly chord: number;
}

/** Sizes of the dry block as its mould makes it, before any cut. Lengths mm, angles radians. */
export interface BlockDimensions {
  readonly middleRad: number;
  readonly intradosLower: Edge;
  readonly intradosUpper: Edge;
  readonly extradosLower: Edge;
  readonly extradosUpper: Edge;
  /** Height along the face from bed to bed, following its curve. */
  readonly intradosHeight: number;
  readonly extradosHeight: number;
  readonly thickness: number;
  /** Angle between the two perpend faces. */
  readonly headAngleRad: number;
  /** Tilt of the lower and upper bed from level, falling inward. */
  readonly lowerBedRad: number;
  readonly upperBedRad: number;
  /** Rise of the curve over its chord, along the lower edge and up the middle of each face. */
  readonly sagitta: {
    readonly intradosAlong: number;
    readonly extradosAlong: number;
    readonly intradosUp: number;
    readonly extradosUp: number;
  };
}

/** Sizes of the dry block that its mould makes, before any cut: edges as arc and chord, heights, angles, sagittas; beds as it lies. Lengths mm, angles radians. */
export function blockDimensions(setout: HouseSetout, dome: DomeSetout, block: Block): BlockDimensions {
  const placed = placedBlock(setout, dome, block);
  const { span, bed, top, thickness: t, motion } = placed;
  const halfAt = (s: number, depth: number) => {
    const [r, z] = spanPoint(span, s, depth);
    return { r, half: halfAngleAt(placed, r, z) };
  };
  const edge = (s: number, depth: number): Edge => {
    const { r, half } = halfAt(s, depth);
    return { arc: 2 * r * half, chord: 2 * r * sin(half) };
  };
  const along = (depth: number) => {
    const { r, half } = halfAt(bed, depth);
    return r * (1 - cos(half));
  };
  const lower = span.at(bed).normalRad;
  const upper = span.at(top).normalRad;
  return {
    middleRad: (block.startRad + block.endRad) / 2,
    intradosLower: edge(bed, 0),
    intradosUpper: edge(top, 0),
    extradosLower: edge(bed, t),
    extradosUpper: edge(top, t),
    intradosHeight: top - bed,
    extradosHeight: top - bed + t * (upper - lower),
    thickness: t,
    headAngleRad: headsAngle(placed),
    lowerBedRad: lower + motion.rad,
    upperBedRad: upper + motion.rad,
    sagitta: {
      intradosAlong: along(0),
      extradosAlong: along(t),
      intradosUp: meridianSagitta(span, bed, top, 0),
      extradosUp: meridianSagitta(span, bed, top, t),
    },
  };
}

/** Greatest distance of the meridian at `depth` from its chord: where its tangent is parallel to the chord. */
export function meridianSagitta(span: MeridianSpan, from: number, to: number, depth: number): number {
  const a = spanPoint(span, from, depth);
  const b = spanPoint(span, to, depth);
  const length = hypot(b[0] - a[0], b[1] - a[1]);
  const distance = (s: number) => {
    const p = spanPoint(span, s, depth);
    return ((b[1] - a[1]) * (p[0] - a[0]) - (b[0] - a[0]) * (p[1] - a[1])) / length;
  };
  let low = from;
  let high = to;
  // The distance has one maximum on a curve that bends one way.
  for (let i = 0; i < 60; i++) {
    const third = (high - low) / 3;
    if (distance(low + third) < distance(high - third)) low += third;
    else high -= third;
  }
  return distance((low + high) / 2);
}

/** Centre of mass of a whole curved block: distance from the dome's axis and height, mm. */
export function blockCentroid(dome: DomeSetout, block: Block): { readonly distance: number; readonly z: number } {
  const span = dome[block.part];
  const half = (block.endRad - block.startRad) / 2;
  const { meanRadius, meanZ } = wedgeOf(span, [block.bed, block.top], dome.thickness);
  return { distance: meanRadius * (sin(half) / half), z: meanZ };
}
