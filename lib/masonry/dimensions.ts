import { cos, hypot, sin } from '../math/elementary.js';
import type { DomeSetout } from '../setout/dome.js';
import { type MeridianSpan, spanPoint } from '../setout/span.js';
import type { Block } from './block.js';
import { wedgeOf } from './wedge.js';

/** An edge along a course: its arc and the straight chord between its ends, mm. */
export interface Edge {
  readonly arc: number;
  readonly chord: number;
}

/** Sizes of the block as it is cast, before any cut. Lengths mm, angles radians. */
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

/** Sizes of a block in its place, before any cut: edges as arc and chord, heights, angles, sagittas. Lengths mm, angles radians. */
export function blockDimensions(dome: DomeSetout, block: Block): BlockDimensions {
  const span = dome[block.part];
  const t = dome.thickness;
  const { startRad: start, endRad: end } = block;
  const angle = end - start;
  const edge = (s: number, depth: number): Edge => {
    const [r] = spanPoint(span, s, depth);
    return { arc: r * angle, chord: 2 * r * sin(angle / 2) };
  };
  const along = (depth: number) => spanPoint(span, block.bed, depth)[0] * (1 - cos(angle / 2));
  const lower = span.at(block.bed).normalRad;
  const upper = span.at(block.top).normalRad;
  return {
    middleRad: (start + end) / 2,
    intradosLower: edge(block.bed, 0),
    intradosUpper: edge(block.top, 0),
    extradosLower: edge(block.bed, t),
    extradosUpper: edge(block.top, t),
    intradosHeight: block.top - block.bed,
    extradosHeight: block.top - block.bed + t * (upper - lower),
    thickness: t,
    headAngleRad: angle,
    lowerBedRad: lower,
    upperBedRad: upper,
    sagitta: {
      intradosAlong: along(0),
      extradosAlong: along(t),
      intradosUp: meridianSagitta(span, block.bed, block.top, 0),
      extradosUp: meridianSagitta(span, block.bed, block.top, t),
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
