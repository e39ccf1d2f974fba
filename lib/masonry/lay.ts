import { turnSigned } from '../math/vec.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import type { Block } from './block.js';
import { type ColumnBody, columnRuns, type Cutter, flatBlock, revolvedBox } from './column.js';
import { cutVolume, wholeVolume } from './measure.js';

/** A remnant whose longest run at mid-thickness is shorter than this is left to mortar. */
export const SLIVER_RUN = 40;
/** A cut that takes less than this share of a block's volume is no cut. */
const NO_CUT = 1e-6;
const RUN_SAMPLES = 12;

/** A remnant left to mortar, listed so that nothing is lost. */
export interface Sliver {
  readonly mark: string;
  readonly domeId: string;
  /** mm³ */
  readonly volume: number;
}

export interface LaidBlock extends Block {
  /** Volume left after cutting, mm³, by quadrature. */
  readonly volume: number;
}

export interface LaidHouse {
  readonly blocks: readonly LaidBlock[];
  readonly slivers: readonly Sliver[];
}

/** Lays every course with its equal blocks and cuts them at the arches. */
export function layBlocks(house: HouseSetout): LaidHouse {
  const blocks: LaidBlock[] = [];
  const slivers: Sliver[] = [];
  for (const dome of house.domes) {
    const cutters = cuttersOf(house, dome);
    for (const course of dome.courses) layCourse(house, dome, course, cutters, blocks, slivers);
  }
  return { blocks, slivers };
}

function layCourse(
  house: HouseSetout,
  dome: DomeSetout,
  course: Course,
  cutters: readonly Cutter[],
  blocks: LaidBlock[],
  slivers: Sliver[],
): void {
  const module = (2 * Math.PI) / course.count;
  const margin = house.house.blocks.joint / 2 / course.midRadius;
  const span = dome[course.part];
  const low = span.at(course.bed).z;
  const high = spanPoint(span, course.to, dome.thickness)[1];
  const near = cutters.filter((c) => c.arch.baseZ < high && c.arch.section.topZ(c.arch.ring + c.grow) > low);
  for (let k = 0; k < course.count; k++) {
    const castAs = [course.startRad + k * module + margin, course.startRad + (k + 1) * module - margin] as const;
    const block: Block = {
      mark: `${dome.id}-${course.index}-${k + 1}`,
      domeId: dome.id,
      course: course.index,
      number: k + 1,
      part: course.part,
      bed: course.bed,
      top: course.to,
      startRad: castAs[0],
      endRad: castAs[1],
      castAs,
      cutBy: [],
    };
    const body = blockBody(house, dome, block);
    const whole = wholeVolume(body);
    const touching = near.filter((cutter) => reaches(dome, block, cutter) && cuts(body, whole, cutter));
    if (touching.length === 0) {
      blocks.push({ ...block, volume: whole });
      continue;
    }
    const pieces = divide(block, touching, low, high);
    const left = pieces.map((piece) => measurePiece(house, dome, piece, touching));
    const kept = left.filter((piece) => piece.run >= SLIVER_RUN);
    for (const piece of left) {
      const letter = kept.length > 1 ? String.fromCharCode(97 + kept.indexOf(piece)) : '';
      if (piece.run >= SLIVER_RUN) blocks.push({ ...piece.block, mark: block.mark + letter, volume: piece.volume });
      else if (piece.volume > whole * NO_CUT) slivers.push({ mark: block.mark, domeId: dome.id, volume: piece.volume });
    }
  }
}

/** The block as a body to measure, faces as the description wants them. */
export function blockBody(house: HouseSetout, dome: DomeSetout, block: Block): ColumnBody {
  const span = dome[block.part];
  const s = [block.bed, block.top] as const;
  const bearing = [block.startRad, block.endRad] as const;
  return house.house.blocks.faces === 'flat'
    ? flatBlock(span, s, dome.thickness, block.castAs, bearing)
    : revolvedBox(span, s, [0, dome.thickness], bearing);
}

/** An arch that goes through the block's whole height parts it at the arch's bearing. */
function divide(block: Block, cutters: readonly Cutter[], low: number, high: number): Block[] {
  let pieces = [block];
  for (const { arch, grow } of cutters) {
    const through = arch.baseZ <= low && arch.section.topZ(arch.ring + grow) >= high;
    if (!through) continue;
    const turn = 2 * Math.PI * Math.round((block.startRad - arch.bearingRad) / (2 * Math.PI));
    const bearing = [arch.bearingRad + turn, arch.bearingRad + turn + 2 * Math.PI].find((b) => b > block.startRad);
    if (bearing === undefined) continue;
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

interface Piece {
  readonly block: Block;
  readonly volume: number;
  /** Longest uninterrupted run at mid-thickness, mm. */
  readonly run: number;
}

function measurePiece(house: HouseSetout, dome: DomeSetout, block: Block, cutters: readonly Cutter[]): Piece {
  const body = blockBody(house, dome, block);
  const volume = cutVolume(body, cutters);
  const whole = wholeVolume(body);
  const touching = cutters.filter((c) => cuts(body, whole, c));
  return { block: { ...block, cutBy: touching.map((c) => c.arch.id) }, volume, run: longestRun(dome, block, cutters) };
}

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

/** Quick test on bearings alone whether a cutter can come near a block at all. */
function reaches(dome: DomeSetout, block: Block, { arch, grow }: Cutter): boolean {
  const half = arch.section.width / 2 + arch.ring + grow;
  const narrowest = dome[block.part].at(block.top).r;
  const spread = Math.asin(Math.min(1, half / narrowest));
  const middle = (block.startRad + block.endRad) / 2;
  return Math.abs(turnSigned(middle - arch.bearingRad)) < spread + (block.endRad - block.startRad) / 2;
}

const cuts = (body: ColumnBody, whole: number, cutter: Cutter): boolean =>
  cutVolume(body, [cutter]) < whole * (1 - NO_CUT);

/** Arches that meet a dome's masonry, as cutters of its courses. */
export const cuttersOf = (house: HouseSetout, dome: DomeSetout): Cutter[] =>
  archesOf(house, dome).map((arch) => ({ arch, grow: house.house.blocks.joint }));
