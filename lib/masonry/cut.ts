import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import type { Block, LaidBlock, Sliver } from './block.js';
import { type ColumnBody, type Cutter, columnRuns, flatBlock, revolvedBox } from './column.js';
import { cutVolume } from './measure.js';

/** A remnant whose longest run at mid-thickness is shorter than this is left to mortar. */
export const SLIVER_RUN = 40;
/** A cut that takes less than this share of a block's volume is no cut. */
const NO_CUT = 1e-6;
const RUN_SAMPLES = 12;

/** The block as a body to measure, faces as the description wants them. */
export function blockBody(house: HouseSetout, dome: DomeSetout, block: Block): ColumnBody {
  const span = dome[block.part];
  const s = [block.bed, block.top] as const;
  const bearing = [block.startRad, block.endRad] as const;
  return house.house.blocks.faces === 'flat'
    ? flatBlock(span, s, dome.thickness, block.castAs, bearing)
    : revolvedBox(span, s, [0, dome.thickness], bearing);
}

/** What the cutters that come near a block leave of it. `whole` is its volume uncut, mm³. */
export function cutBlock(
  house: HouseSetout,
  dome: DomeSetout,
  block: Block,
  whole: number,
  near: readonly Cutter[],
): { kept: LaidBlock[]; slivers: Sliver[] } {
  const body = blockBody(house, dome, block);
  const volume = cutVolume(body, near);
  const touches = (piece: ColumnBody, c: Cutter) => cutVolume(piece, [c]) < whole * (1 - NO_CUT);
  const uncut = (v: number) => v >= whole * (1 - NO_CUT);
  if (uncut(volume))
    return { kept: [{ ...block, volume: whole, longestRun: longestRun(dome, block, []) }], slivers: [] };

  const pieces = divide(dome, block, near).map((piece) => {
    const alone = piece === block;
    const shape = alone ? body : blockBody(house, dome, piece);
    const cutBy = near.length === 1 ? near : near.filter((c) => touches(shape, c));
    return {
      ...piece,
      cutBy: cutBy.map((c) => c.arch.id),
      volume: alone ? volume : cutVolume(shape, near),
      longestRun: longestRun(dome, piece, near),
    };
  });
  const kept = pieces.filter((p) => p.longestRun >= SLIVER_RUN);
  const slivers = pieces.filter((p) => p.longestRun < SLIVER_RUN && p.volume > whole * NO_CUT);
  return {
    kept: kept.length < 2 ? kept : kept.map((p, k) => ({ ...p, mark: p.mark + String.fromCharCode(97 + k) })),
    slivers: slivers.map(({ mark, domeId, volume: left }) => ({ mark, domeId, volume: left })),
  };
}

/** An arch that goes through the block's whole height parts it at the arch's bearing. */
function divide(dome: DomeSetout, block: Block, cutters: readonly Cutter[]): Block[] {
  const span = dome[block.part];
  const low = span.at(block.bed).z;
  const high = spanPoint(span, block.top, dome.thickness)[1];
  let pieces = [block];
  for (const { arch, grow } of cutters) {
    if (arch.baseZ > low || arch.section.topZ(arch.ring + grow) < high) continue;
    const turns = Math.ceil((block.startRad - arch.bearingRad) / (2 * Math.PI));
    const bearing = arch.bearingRad + 2 * Math.PI * turns;
    pieces = pieces.flatMap((p) =>
      bearing > p.startRad && bearing < p.endRad
        ? [
            { ...p, endRad: bearing },
            { ...p, startRad: bearing },
          ]
        : [p],
    );
  }
  return pieces;
}

/** Longest uninterrupted run at mid-thickness, mm. */
function longestRun(dome: DomeSetout, block: Block, cutters: readonly Cutter[]): number {
  const span = dome[block.part];
  const curved = revolvedBox(span, [block.bed, block.top], [0, dome.thickness], [block.startRad, block.endRad]);
  let longest = 0;
  for (let k = 0; k <= RUN_SAMPLES; k++) {
    const i = k / RUN_SAMPLES;
    const r = spanPoint(span, block.bed + (block.top - block.bed) * i, dome.thickness / 2)[0];
    for (const [from, to] of columnRuns(curved(i, 0.5), cutters)) longest = Math.max(longest, (to - from) * r);
  }
  return longest;
}
