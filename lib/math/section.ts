import { arcEdge, type Edge, edgeAt, lineEdge } from './curves.js';
import { acos, asin, square } from './elementary.js';

export type HeadShape = 'semicircular' | 'segmental' | 'pointed' | 'flat';

export interface SectionSpec {
  readonly width: number;
  /** Sill to the crown of the head's intrados. */
  readonly height: number;
  readonly sill: number;
  readonly head: { readonly shape: HeadShape; readonly rise: number };
}

/** The arcs of a head: one on the centre line, or a pair whose centres lie `past` beyond it. */
export interface HeadArc {
  readonly past: number;
  readonly centreZ: number;
  readonly radius: number;
}

/**
 * The upright section of an opening, barrel or passage: u to the right, z above the floor, symmetrical.
 * "Grown" sections are parallel outward: jambs move out, arcs keep their centres; a segmental arc's
 * prolongation meets the jamb's outer line, which closes the skewback.
 */
export interface Section extends SectionSpec {
  readonly springingZ: number;
  readonly crownZ: number;
  /** `null` for a flat head. */
  readonly arc: HeadArc | null;
  /** Top of the section grown by `grow`. */
  topZ(grow?: number): number;
  /** Half width at height `z` of the section grown by `grow`; 0 below `from` (the sill) and above the top. */
  halfWidthAt(z: number, grow?: number, from?: number): number;
  /** Height of the grown section's top over `u`; NaN beside it. */
  topAt(u: number, grow?: number): number;
  /** Height at which the grown arc leaves the jamb's line; the springing when not grown, under it inside a frame. */
  shoulderZ(grow?: number): number;
}

export function sectionOf(spec: SectionSpec): Section {
  const half = spec.width / 2;
  const { rise, shape } = spec.head;
  const crownZ = spec.sill + spec.height;
  const springingZ = crownZ - rise;
  const arc = headArc(shape, half, rise, springingZ, crownZ);

  const arcHalf = (z: number, grow: number): number => {
    if (!arc) return half + grow;
    const reach = square(arc.radius + grow) - square(z - arc.centreZ);
    return Math.max(0, Math.sqrt(Math.max(0, reach)) - arc.past);
  };
  const topZ = (grow = 0): number =>
    arc ? arc.centreZ + Math.sqrt(square(arc.radius + grow) - square(arc.past)) : crownZ + grow;
  const shoulderZ = (grow = 0): number =>
    arc ? arc.centreZ + Math.sqrt(Math.max(0, square(arc.radius + grow) - square(half + grow + arc.past))) : topZ(grow);

  return {
    ...spec,
    springingZ,
    crownZ,
    arc,
    topZ,
    shoulderZ,
    topAt(u, grow = 0) {
      if (Math.abs(u) > half + grow) return Number.NaN;
      return arc ? arc.centreZ + Math.sqrt(square(arc.radius + grow) - square(Math.abs(u) + arc.past)) : crownZ + grow;
    },
    halfWidthAt(z, grow = 0, from = spec.sill) {
      if (z < from || z > topZ(grow)) return 0;
      // Inside a frame a segmental arc meets the jambs' lines under the springing.
      if (z <= (grow < 0 && arc ? arc.centreZ : springingZ)) return half + grow;
      return Math.min(half + grow, arcHalf(z, grow));
    },
  };
}

function headArc(shape: HeadShape, half: number, rise: number, springingZ: number, crownZ: number): HeadArc | null {
  if (shape === 'flat') return null;
  // Semicircular is the common limit of both constructions.
  if (rise <= half) {
    const radius = (half * half + rise * rise) / (2 * rise);
    return { past: 0, centreZ: crownZ - radius, radius };
  }
  const radius = (rise * rise + half * half) / (2 * half);
  return { past: radius - half, centreZ: springingZ, radius };
}

/**
 * Outline of the section grown by `grow`, counter-clockwise from the lower right corner at height `from`;
 * arcs run counter-clockwise from `start` to `end` (radians).
 */
export function sectionOutline(section: Section, grow = 0, from = section.sill): Edge[] {
  const half = section.width / 2 + grow;
  const shoulder = Math.max(from, section.shoulderZ(grow));
  const pieces: Edge[] = [];
  if (shoulder > from) pieces.push(lineEdge([half, from], [half, shoulder]));
  const { arc } = section;
  if (!arc) pieces.push(lineEdge([half, shoulder], [-half, shoulder]));
  else {
    const radius = arc.radius + grow;
    const low = asin(Math.min(1, Math.max(-1, (shoulder - arc.centreZ) / radius)));
    if (arc.past === 0) pieces.push(arcEdge([0, arc.centreZ], radius, low, Math.PI - low));
    else {
      const high = acos(arc.past / radius);
      pieces.push(arcEdge([-arc.past, arc.centreZ], radius, low, high));
      pieces.push(arcEdge([arc.past, arc.centreZ], radius, Math.PI - high, Math.PI - low));
    }
  }
  if (shoulder > from) pieces.push(lineEdge([-half, shoulder], [-half, from]));
  // From over the shoulder the outline begins on the arc, nearer to the middle.
  const onArc = arc !== null && from > section.shoulderZ(grow);
  const [right, left] = onArc ? [edgeAt(pieces[0] as Edge, 0)[0], edgeAt(pieces.at(-1) as Edge, 1)[0]] : [half, -half];
  pieces.push(lineEdge([left, from], [right, from]));
  return pieces;
}
