import type { BlockRules } from '../../description/house.js';

/** What a dry block of any mould must keep in its place; mm. */
export interface FitLimits {
  /** Bed joint as drawn. */
  readonly joint: number;
  /** Thinnest joint with the block's tolerance added, thickest with it taken off. */
  readonly thin: number;
  readonly thick: number;
  /** Part of its length by which a block laid fresh is longer, and its joint thinner. */
  readonly shrinkage: number;
  readonly faceStep: number;
  readonly faces: BlockRules['faces'];
}

/**
 * A block off by the tolerance, half of it at either end, makes its joint thicker or thinner by as much; one laid
 * before it has shrunk makes it thinner. Both stand off the range, so that no joint leaves it.
 */
export function fitLimits(blocks: BlockRules): FitLimits {
  const { joint, jointRange, tolerance, shrinkage, faceStep, faces } = blocks;
  return { joint, thin: jointRange[0] + tolerance, thick: jointRange[1] - tolerance, shrinkage, faceStep, faces };
}

/** Thinnest joint that a dry block of this length or height may have. */
export const thinnestDry = ({ thin, shrinkage }: FitLimits, length: number): number => thin + shrinkage * length;
