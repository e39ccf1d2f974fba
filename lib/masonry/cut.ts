import { NO_CUT } from '../base/tolerances.js';
import { bearingOf, turnPositive, type Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { Block, LaidBlock, Reach, Sliver } from './block.js';
import { type ColumnBody, flatBlock, headedBoxes } from './column.js';
import type { Cutter } from './cutter.js';
import { cutVolume, measureColumns, takesFrom, wholeVolume } from './measure.js';
import { piecesOf } from './pieces.js';
import { flatCorners, halfWidthAt, headAngle, placedBlock, placedVolume } from './placed.js';
import { NO_REACH, type ReachLines, reachLeft } from './reach.js';

/** A remnant whose longest run, at mid-thickness where it reaches that, is shorter than this (mm) is left to mortar, */
export const SLIVER_RUN = 40;
/** and so is one that is less than this share of its block. */
export const SLIVER_SHARE = 1 / 20;

/** A block uncut: the body that cuts are measured on, and what it has beside that. */
export interface WholeBlock {
  readonly laid: LaidBlock;
  readonly body: ColumnBody;
  readonly bodyVolume: number;
  readonly reach: ReachLines;
}

/**
 * A course's blocks as bodies to measure, faces as the description wants them. With curved faces they end at the
 * course's own beds and faces: `reachLines` tells how far their mould's lie beside them.
 */
export function blockBodies(
  house: HouseSetout,
  dome: DomeSetout,
  { part, bed, top }: Pick<Block, 'part' | 'bed' | 'top'>,
): (block: Block) => ColumnBody {
  const between = headedBoxes(dome[part], [bed, top], [0, dome.thickness]);
  return (block) => {
    const placed = placedBlock(house, dome, block);
    const middle = (block.startRad + block.endRad) / 2;
    if (house.house.blocks.faces === 'flat')
      return flatBlock(flatCorners(placed), middle, (distance, z) => halfWidthAt(placed, distance, z));
    return between((r, z) => {
      const half = headAngle(placed.head, r, z);
      return [middle - half, middle + half];
    });
  };
}

/** Volume of the block as it leaves its mould and has dried, before any cut, mm³. */
export const uncutVolume = (house: HouseSetout, dome: DomeSetout, block: Block): number =>
  house.house.blocks.faces === 'flat'
    ? wholeVolume(blockBodies(house, dome, block)(block))
    : placedVolume(placedBlock(house, dome, block));

/** What the cutters that come near a block leave of it, and how far that reaches over its course's beds and faces. */
export function cutBlock(
  dome: DomeSetout,
  { laid: whole, body, bodyVolume, reach }: WholeBlock,
  near: readonly Cutter[],
): { kept: LaidBlock[]; slivers: Sliver[]; reach: Reach } {
  const left = cutVolume(body, near, bodyVolume);
  const uncut = bodyVolume * (1 - NO_CUT);
  const middle = (whole.startRad + whole.endRad) / 2;
  const all = reachLeft(reach, middle, []);
  if (left >= uncut) return { kept: [whole], slivers: [], reach: all };
  if (left <= bodyVolume * NO_CUT) return { kept: [], slivers: [], reach: NO_REACH };

  const touching = near.length === 1 ? near : near.filter((c) => takesFrom(body, c, bodyVolume * NO_CUT));
  const cutBy = touching.map((c) => c.id);
  const found = piecesOf(body, near);
  const over = reachLeft(reach, middle, near);
  // What the uncut block has that neither body nor reach account for is rounding; it is shared out.
  const rest0 = whole.volume - bodyVolume - all.beds - all.faces;
  const share = 1 + (left > 0 ? (over.beds + over.faces) / left : 0) + rest0 / bodyVolume;
  const volume = left * share;
  const pieces = found.map(({ longestRun, seed, measure }) => ({
    longestRun,
    seed,
    volume: found.length === 1 ? volume : measureColumns(body, near, measure) * share,
  }));
  const keeps = (p: (typeof pieces)[number]) => p.longestRun >= SLIVER_RUN && p.volume >= whole.volume * SLIVER_SHARE;
  // Letters run clockwise like numbers.
  const turnOf = ([x, y]: Vec3) => turnPositive(bearingOf([x, y]) - whole.startRad);
  const kept = pieces.filter(keeps).sort((a, b) => turnOf(a.seed) - turnOf(b.seed));
  // What the samples miss of a block all but gone is a remnant too.
  const rest = volume - kept.reduce((sum, p) => sum + p.volume, 0);
  return {
    kept: kept.map((p, k) => ({
      ...whole,
      mark: kept.length > 1 ? whole.mark + String.fromCharCode(97 + k) : whole.mark,
      cutBy,
      longestRun: p.longestRun,
      volume: p.volume,
      seed: found.length === 1 ? null : [p.seed[0] + dome.at[0], p.seed[1] + dome.at[1], p.seed[2]],
    })),
    slivers: rest > whole.volume * NO_CUT ? [{ mark: whole.mark, domeId: dome.id, volume: rest }] : [],
    reach: left > 0 ? over : NO_REACH,
  };
}
