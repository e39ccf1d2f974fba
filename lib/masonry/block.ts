import { remembered } from '../base/remembered.js';
import type { Vec3 } from '../math/vec.js';

/**
 * One block, or what a cut leaves of it, in its place. In the dome's own coordinates its place is the box
 * `bed ≤ s ≤ top` (arc length along the intrados of its span), `0 ≤ depth ≤ thickness` (along the outward
 * normal), `startRad ≤ bearing ≤ endRad` (clockwise, joints already taken off in the middle of the heads; `endRad` may
 * pass 2π). The block itself is its mould's, laid there (`placedBlock`), less the grown outer sections of arches and
 * passages, and the grown extradoses of earlier domes, that cut it.
 */
export interface Block {
  /** dome-course-number, e.g. `hall-3-12`; a block that a cut divides in two adds a letter. */
  readonly mark: string;
  readonly domeId: string;
  /** Course counted from the floor, 1 the lowest. */
  readonly course: number;
  /** Clockwise from the first block past bearing 0, 1 the first. */
  readonly number: number;
  readonly part: 'stem' | 'shell';
  readonly bed: number;
  readonly top: number;
  readonly startRad: number;
  readonly endRad: number;
  /** Ids of the openings, passages and earlier domes that cut it; empty for a whole block. */
  readonly cutBy: readonly string[];
  /** A point inside this piece, where a cut leaves the block in more than one; `null` when it is in one. */
  readonly seed: Vec3 | null;
}

/** A block with what is left of it after cutting. */
export interface LaidBlock extends Block {
  /** Volume left after cutting, mm³, by quadrature. */
  readonly volume: number;
  /** Longest uninterrupted run at mid-thickness, mm. */
  readonly longestRun: number;
}

/** A remnant left to mortar, listed so that nothing is lost. */
export interface Sliver {
  readonly mark: string;
  readonly domeId: string;
  /** mm³ */
  readonly volume: number;
}

/**
 * What a block of another course's mould has outside its course's beds and faces, less what it stays back behind them;
 * mm³.
 */
export interface Reach {
  readonly beds: number;
  readonly faces: number;
}

/** Every block of a house, and the remnants that are left to mortar. */
export interface LaidHouse {
  readonly blocks: readonly LaidBlock[];
  readonly slivers: readonly Sliver[];
  /** What blocks and remnants have outside their courses' beds and faces, less what they stay back, mm³. */
  readonly reach: Reach;
}

/** The blocks of one course, in their order. */
export const blocksIn = (laid: LaidHouse, domeId: string, course: number): readonly LaidBlock[] =>
  byCourse(laid).get(`${domeId} ${course}`) ?? [];

const byCourse = remembered(({ blocks }: LaidHouse) => {
  const found = new Map<string, LaidBlock[]>();
  for (const block of blocks) {
    const key = `${block.domeId} ${block.course}`;
    const own = found.get(key);
    if (own) own.push(block);
    else found.set(key, [block]);
  }
  return found;
});
