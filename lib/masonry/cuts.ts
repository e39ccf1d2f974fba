import { turnSigned } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { LaidBlock, LaidHouse } from './block.js';
import { columnRuns } from './column.js';
import type { Cutter } from './cutter.js';
import { cuttersOf } from './lay.js';
import { blockSurface } from './placed-column.js';

/** The edges along the course on which a cut is marked: of intrados and extrados, at lower and upper bed. */
export const CUT_EDGES = ['innerLower', 'innerUpper', 'outerLower', 'outerUpper'] as const;
export type CutEdge = (typeof CUT_EDGES)[number];

/**
 * How a piece is cut out of its block. `start` and `end`: that head stays, and each edge is cut at its length from
 * there; `between`: both heads fall, and the lengths are those left; `notch`: both heads stay.
 */
export interface BlockCut {
  readonly block: LaidBlock;
  readonly keeps: 'start' | 'end' | 'between' | 'notch';
  /** Arc left of each edge, mm; 0 where the edge falls wholly. */
  readonly left: Readonly<Record<CutEdge, number>>;
  /** Arc of each edge before the cut, mm. */
  readonly whole: Readonly<Record<CutEdge, number>>;
  /** Angle in plan between the cut and the head that stays, radians; `null` for cuts that are no upright planes. */
  readonly angleRad: number | null;
}

const PLACES: Readonly<Record<CutEdge, readonly [number, number]>> = {
  innerLower: [0, 0],
  innerUpper: [1, 0],
  outerLower: [0, 1],
  outerUpper: [1, 1],
};

/** How every cut block of the house is marked out, in the order laid. */
export function blockCuts(setout: HouseSetout, laid: LaidHouse): BlockCut[] {
  const domes = new Map(setout.domes.map((dome) => [dome.id, { dome, cutters: cuttersOf(setout, dome) }]));
  return laid.blocks
    .filter((block) => block.cutBy.length > 0)
    .map((block) => {
      const { dome, cutters } = domes.get(block.domeId) as { dome: DomeSetout; cutters: Cutter[] };
      return cutOf(
        setout,
        dome,
        block,
        cutters.filter((c) => block.cutBy.includes(c.id)),
      );
    });
}

function cutOf(setout: HouseSetout, dome: DomeSetout, block: LaidBlock, cutters: readonly Cutter[]): BlockCut {
  const body = blockSurface(setout, dome, block);
  const edges = CUT_EDGES.map((edge) => {
    const column = body(...PLACES[edge]);
    const runs = columnRuns(column, cutters);
    const reach = (column.high - column.low) / 1e6;
    const first = runs[0];
    const last = runs.at(-1);
    return {
      edge,
      whole: (column.high - column.low) * column.unit,
      fromStart: first && first[0] - column.low < reach ? (first[1] - first[0]) * column.unit : 0,
      fromEnd: last && column.high - last[1] < reach ? (last[1] - last[0]) * column.unit : 0,
      longest: Math.max(0, ...runs.map(([a, b]) => (b - a) * column.unit)),
    };
  });
  const keeps = keptHead(block, edges);
  const pick = { start: 'fromStart', end: 'fromEnd', between: 'longest', notch: 'longest' } as const;
  const record = (of: (e: (typeof edges)[number]) => number) =>
    Object.fromEntries(edges.map((e) => [e.edge, of(e)])) as Record<CutEdge, number>;
  return {
    block,
    keeps,
    left: record((e) => e[pick[keeps]]),
    whole: record((e) => e.whole),
    angleRad: planAngle(setout, block, cutters, keeps),
  };
}

/** A block parted in two keeps a head in each of its pieces, the first clockwise its start. */
function keptHead(
  block: LaidBlock,
  edges: readonly { readonly fromStart: number; readonly fromEnd: number }[],
): BlockCut['keeps'] {
  const start = edges.some((e) => e.fromStart > 0);
  const end = edges.some((e) => e.fromEnd > 0);
  if (start && end && block.seed) return block.mark.endsWith('a') ? 'start' : 'end';
  if (start && end) return 'notch';
  return start ? 'start' : end ? 'end' : 'between';
}

function planAngle(
  setout: HouseSetout,
  block: LaidBlock,
  cutters: readonly Cutter[],
  keeps: BlockCut['keeps'],
): number | null {
  const [cutter, ...others] = cutters;
  const isDome = setout.domes.some((d) => d.id === cutter?.id);
  if (!cutter || isDome || others.length > 0 || (keeps !== 'start' && keeps !== 'end')) return null;
  const head = keeps === 'start' ? block.startRad : block.endRad;
  return Math.abs(turnSigned(head - cutter.bearingRad));
}
