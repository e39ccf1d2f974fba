import { atan2, cos, hypot, sin } from '../../math/elementary.js';
import { spanPoint } from '../../setout/span.js';
import { flatBlock } from '../column.js';
import { type Edge, meridianSagitta } from '../dimensions.js';
import { wholeVolume } from '../measure.js';
import { blockAtHome, flatCorners, halfAngleAt, halfWidthAt, type PlacedBlock, placedVolume } from '../placed.js';
import type { FitLimits } from './limits.js';
import type { EdgeName } from './site.js';
import type { Mould } from './window.js';

/** Inner sizes of a mould: of the block as cast, before it shrinks. Lengths mm, angles radians. */
export interface MouldDimensions {
  /** Edges of one face along the course, at lower bed, mid-height and upper bed. */
  readonly intrados: FaceDimensions;
  readonly extrados: FaceDimensions;
  readonly thickness: number;
  /** Angle between lower and upper bed, both square to the faces. */
  readonly bedAngleRad: number;
  /** How far a head leans from square: across the wall, wider outside; and up the face, narrower at the top. */
  readonly headAcrossRad: number;
  readonly headUpRad: number;
  /** mm³ */
  readonly volume: number;
}

export interface FaceDimensions {
  readonly edges: Readonly<Record<EdgeName, Edge>>;
  /** From bed to bed along the middle of the face, following its curve. */
  readonly height: number;
  /** Straight from corner to corner. */
  readonly diagonal: number;
  /** Rise of the curve over its chord: along the lower and upper edge, and up the middle. */
  readonly sagittaLower: number;
  readonly sagittaUpper: number;
  readonly sagittaUp: number;
}

/** Sizes of the dry block over one less the shrinkage. */
export const mouldDimensions = (mould: Mould, limits: Pick<FitLimits, 'faces' | 'shrinkage'>): MouldDimensions =>
  formDimensions(blockAtHome(mould), limits);

/** The same of what any block is cast in, a longer one too. */
export function formDimensions(
  block: PlacedBlock,
  { faces, shrinkage }: Pick<FitLimits, 'faces' | 'shrinkage'>,
): MouldDimensions {
  const { span, bed, top, thickness, parentHead } = block;
  const grow = 1 / (1 - shrinkage);
  const [lower, upper] = [span.at(bed), span.at(top)];
  const [out, up] = span.at((bed + top) / 2).normal;
  // How far the head moves aside for each millimetre out of the wall, and up the face.
  const [c, s] = [cos(parentHead.turnRad), sin(parentHead.turnRad)];
  const volume = faces === 'flat' ? flatVolume(block) : placedVolume(block);
  return {
    intrados: faceDimensions(block, 0, grow),
    extrados: faceDimensions(block, thickness, grow),
    thickness: thickness * grow,
    bedAngleRad: upper.normalRad - lower.normalRad,
    headAcrossRad: atan2(s * out + parentHead.rise * up, c),
    headUpRad: atan2(s * up - parentHead.rise * out, c),
    volume: volume * grow * grow * grow,
  };
}

function faceDimensions(block: PlacedBlock, depth: number, grow: number): FaceDimensions {
  const { span, bed, top } = block;
  const at = (s: number) => {
    const [r, z] = spanPoint(span, s, depth);
    const angle = halfAngleAt(block, r, z);
    return { r, z, angle, across: r * sin(angle), distance: r * cos(angle) };
  };
  const ends: Record<EdgeName, ReturnType<typeof at>> = { lower: at(bed), middle: at((bed + top) / 2), upper: at(top) };
  const edge = ({ r, angle, across }: ReturnType<typeof at>): Edge => ({
    arc: 2 * r * angle * grow,
    chord: 2 * across * grow,
  });
  const { lower, upper } = ends;
  return {
    edges: { lower: edge(lower), middle: edge(ends.middle), upper: edge(upper) },
    height: (top - bed + depth * (span.at(top).normalRad - span.at(bed).normalRad)) * grow,
    diagonal: hypot(lower.across + upper.across, upper.distance - lower.distance, upper.z - lower.z) * grow,
    sagittaLower: (lower.r - lower.distance) * grow,
    sagittaUpper: (upper.r - upper.distance) * grow,
    sagittaUp: meridianSagitta(span, bed, top, depth) * grow,
  };
}

/** Of the polyhedron between the eight corners: its run is linear over the quadrilateral in the middle plane. */
const flatVolume = (block: PlacedBlock): number =>
  wholeVolume(flatBlock(flatCorners(block), 0, (distance, z) => halfWidthAt(block, distance, z)));
