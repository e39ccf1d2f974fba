import { NO_CUT } from '../base/tolerances.js';
import { bearingOf, turnPositive, type Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { Block, LaidBlock, Sliver } from './block.js';
import { type ColumnBody, flatBlock, revolvedBox } from './column.js';
import type { Cutter } from './cutter.js';
import { cutVolume, measureColumns } from './measure.js';
import { piecesOf } from './pieces.js';

/** A remnant whose longest run at mid-thickness is shorter than this (mm) is left to mortar, */
export const SLIVER_RUN = 40;
/** and so is one that is less than this share of its block. */
export const SLIVER_SHARE = 1 / 20;

/** The block as a body to measure, faces as the description wants them. */
export function blockBody(house: HouseSetout, dome: DomeSetout, block: Block): ColumnBody {
  const span = dome[block.part];
  const s = [block.bed, block.top] as const;
  const bearing = [block.startRad, block.endRad] as const;
  return house.house.blocks.faces === 'flat'
    ? flatBlock(span, s, dome.thickness, bearing)
    : revolvedBox(span, s, [0, dome.thickness], bearing);
}

/** What the cutters that come near a block leave of it. `whole` is the block uncut. */
export function cutBlock(
  house: HouseSetout,
  dome: DomeSetout,
  whole: LaidBlock,
  near: readonly Cutter[],
): { kept: LaidBlock[]; slivers: Sliver[] } {
  const body = blockBody(house, dome, whole);
  const volume = cutVolume(body, near);
  const uncut = whole.volume * (1 - NO_CUT);
  if (volume >= uncut) return { kept: [whole], slivers: [] };
  if (volume <= whole.volume * NO_CUT) return { kept: [], slivers: [] };

  const touching = near.length === 1 ? near : near.filter((c) => cutVolume(body, [c]) < uncut);
  const cutBy = touching.map((c) => c.id);
  const found = piecesOf(body, near);
  const pieces = found.map(({ longestRun, seed, measure }) => ({
    longestRun,
    seed,
    volume: found.length === 1 ? volume : measureColumns(body, near, measure),
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
  };
}
