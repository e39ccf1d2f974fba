import type { LaidBlock } from '../../masonry/block.js';
import { type ColumnBody, columnRuns } from '../../masonry/column.js';
import type { BlockCut } from '../../masonry/cuts.js';
import type { Cutter } from '../../masonry/cutter.js';
import { halfAngleAt, placedBlock } from '../../masonry/placed.js';
import { blockSurface } from '../../masonry/placed-column.js';
import { cos, hypot } from '../../math/elementary.js';
import { type Intervals, subtractIntervals } from '../../math/intervals.js';
import { lerp2, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { unrolled } from './developed.js';

/** The sides of a dry block on which a cut is marked: beds unrolled, faces by their true lengths along the rings. */
export const CUT_SIDES = ['lower bed', 'upper bed', 'intrados', 'extrados'] as const;
export type CutSide = (typeof CUT_SIDES)[number];

/** A cut on one side of its block, mm: clockwise to the right, outward or upward above. */
export interface CutFigure {
  readonly side: CutSide;
  /** Corners and middles of the side's outline: lower left, lower middle, lower right, upper right, middle, left. */
  readonly outline: readonly Vec2[];
  readonly lines: readonly CutLine[];
}

export interface CutLine {
  readonly points: readonly Vec2[];
  /** On which side of the line the block stays. */
  readonly stays: 'left' | 'right' | 'above' | 'below';
}

/** A line is found at so many places from one edge of the side to the other. */
const PLACES = 16;

export interface CutPlace {
  readonly house: HouseSetout;
  readonly dome: DomeSetout;
  readonly cut: BlockCut;
  readonly cutters: readonly Cutter[];
}

export function cutFigure(place: CutPlace, side: CutSide): CutFigure {
  const { house, dome, cut, cutters } = place;
  const { block } = cut;
  const body = blockSurface(house, dome, block);
  const ways = wayOf(side);
  const lay = layer(house, dome, block, body, side);
  const keptAtNew = (t: number): Kept => {
    const column = body(...ways(t));
    const reach = (column.high - column.low) / 1e6;
    const runs = columnRuns(column, cutters).filter(([a, b]) => b - a > reach);
    const [low, high] = [column.low + reach, column.high - reach];
    return { runs: keptRuns(cut, runs, low, high), low, high, unit: column.unit };
  };
  // Lines to either side and level ones are looked for at the same places.
  const known = new Map<number, Kept>();
  const keptAt = (t: number): Kept => {
    const kept = known.get(t) ?? keptAtNew(t);
    known.set(t, kept);
    return kept;
  };
  const endAt = (t: number, stays: 'left' | 'right'): number | null => {
    const { runs, low, high } = keptAt(t);
    const run = stays === 'left' ? runs.find((r) => r[1] < high) : runs.findLast((r) => r[0] > low);
    return run ? (stays === 'left' ? run[1] : run[0]) : null;
  };
  const lines: CutLine[] = [
    ...(['left', 'right'] as const).flatMap((stays) =>
      chainsOf((t) => endAt(t, stays)).map(
        (chain): CutLine => ({ points: chain.map(([t, run]) => lay(t, run)), stays }),
      ),
    ),
    ...levelCuts(keptAt, tiltOf(place, side)).map(({ t, from, to, stays }): CutLine => {
      const places = Array.from({ length: 2 * LEVEL_ARCS + 1 }, (_, k) => from + ((to - from) * k) / (2 * LEVEL_ARCS));
      return { points: places.map((run) => lay(t, run)), stays };
    }),
  ];
  const [low, high] = [body(...ways(0)), body(...ways(1))];
  const middle = (c: typeof low) => (c.low + c.high) / 2;
  return {
    side,
    outline: [
      lay(0, low.low),
      lay(0, middle(low)),
      lay(0, low.high),
      lay(1, high.high),
      lay(1, middle(high)),
      lay(1, high.low),
    ],
    lines,
  };
}

type Place = readonly [t: number, run: number];

/** Stretches of the side over which a cut has an end, their own ends found by halving. */
function chainsOf(endAt: (t: number) => number | null): Place[][] {
  const chains: Place[][] = [];
  let open: Place[] | null = null;
  let before: Place | null = null;
  for (let k = 0; k <= PLACES; k++) {
    const t = k / PLACES;
    const run = endAt(t);
    if (run !== null && !open) {
      open = k === 0 ? [] : [edgeOf(endAt, t, (k - 1) / PLACES)];
      chains.push(open);
    }
    if (run !== null) open?.push([t, run]);
    else if (open && before) {
      open.push(edgeOf(endAt, before[0], t));
      open = null;
    }
    before = run === null ? null : [t, run];
  }
  // An end that lies at a place itself is found there twice.
  const parted = chains.map((chain) => chain.filter(([t], i) => i === 0 || t !== chain[i - 1]?.[0]));
  return parted.filter((chain) => chain.length > 1);
}

/** The last place with an end on the way from one that has it to one that hasn't. */
function edgeOf(endAt: (t: number) => number | null, has: number, not: number): Place {
  let [from, to] = [has, not];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (from + to) / 2;
    if (endAt(middle) === null) to = middle;
    else from = middle;
  }
  return [from, endAt(from) as number];
}

/** Leaves a hundredth of a millimetre of a wall's thickness. */
const HALVINGS = 11;

/** Shares of the body (up, outward) over a share of the side. */
function wayOf(side: CutSide): (t: number) => [number, number] {
  switch (side) {
    case 'lower bed':
      return (t) => [0, t];
    case 'upper bed':
      return (t) => [1, t];
    case 'intrados':
      return (t) => [t, 0];
    case 'extrados':
      return (t) => [t, 1];
  }
}

/** Where a place of the side lies when it is flat: by share of the side and by the run of its column. */
function layer(house: HouseSetout, dome: DomeSetout, block: LaidBlock, body: ColumnBody, side: CutSide) {
  const middle = (block.startRad + block.endRad) / 2;
  const { span, bed, top, thickness } = placedBlock(house, dome, block);
  const ways = wayOf(side);
  if (house.house.blocks.faces === 'flat') {
    const place = (t: number): Vec2 => {
      const c = body(...ways(t));
      const [x, y] = c.place(0);
      return [hypot(x, y), c.z];
    };
    const [low, high] = [place(0), place(1)];
    const far = hypot(high[0] - low[0], high[1] - low[1]);
    return (t: number, run: number): Vec2 => [run, far * t];
  }
  if (side === 'lower bed' || side === 'upper bed') {
    const station = span.at(side === 'lower bed' ? bed : top);
    return (t: number, run: number): Vec2 => unrolled(station, t * thickness, run - middle);
  }
  const depth = side === 'intrados' ? 0 : thickness;
  const [a, b] = [span.at(bed), span.at(top)];
  const height = top - bed + depth * (b.normalRad - a.normalRad);
  return (t: number, run: number): Vec2 => {
    const p = span.at(bed + t * (top - bed));
    return [(p.r + depth * p.normal[0]) * (run - middle), height * t];
  };
}

/** What is kept of one row of a side. */
interface Kept {
  readonly runs: Intervals;
  /** Ends of the whole row, less rounding. */
  readonly low: number;
  readonly high: number;
  /** Millimetres of one unit of the run. */
  readonly unit: number;
}

/** The runs of a row that are the piece's own. */
function keptRuns({ keeps }: BlockCut, runs: Intervals, low: number, high: number): Intervals {
  switch (keeps) {
    case 'start':
      return runs.filter((r) => r[0] < low);
    case 'end':
      return runs.filter((r) => r[1] > high);
    case 'notch':
      return runs;
    case 'between':
      return runs.length === 0 ? [] : [runs.reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a))];
  }
}

/** Arcs that stand for a level cut. */
const LEVEL_ARCS = 4;
/** What of a row comes or goes at once is a level cut from this length on, mm. */
const JUMP = 15;

/** Rings of a block that lies in another course than its mould's aren't quite level: share of a face that they rise by. */
function tiltOf({ house, dome, cut: { block } }: CutPlace, side: CutSide): number {
  const placed = placedBlock(house, dome, block);
  if (placed.atHome || house.house.blocks.faces === 'flat' || side.endsWith('bed')) return 0;
  const { span, bed, top, motion } = placed;
  const { r, z } = span.at((bed + top) / 2);
  return (Math.abs(motion.sin) * r * (1 - cos(halfAngleAt(placed, r, z)))) / (top - bed);
}

/** Where a cut runs along the course, such as under a flat head: what is kept changes from one row to the next. */
function levelCuts(
  keptAt: (t: number) => Kept,
  tilt: number,
): { t: number; from: number; to: number; stays: 'above' | 'below' }[] {
  const found: { t: number; from: number; to: number; stays: 'above' | 'below' }[] = [];
  for (let k = 0; k < PLACES; k++) {
    let [from, to] = [k / PLACES, (k + 1) / PLACES];
    let [below, above] = [keptAt(from), keptAt(to)];
    const length = ({ runs, unit }: Kept) => runs.reduce((sum, [a, b]) => sum + (b - a) * unit, 0);
    if (changes(below, above).every(({ run, unit }) => (run[1] - run[0]) * unit < JUMP)) continue;
    for (let i = 0; i < HALVINGS; i++) {
      const middle = keptAt((from + to) / 2);
      if (Math.abs(length(middle) - length(below)) < Math.abs(length(middle) - length(above)))
        [from, below] = [(from + to) / 2, middle];
      else [to, above] = [(from + to) / 2, middle];
    }
    const t = (from + to) / 2;
    if (tilt > 0) [below, above] = [keptAt(Math.max(0, t - tilt)), keptAt(Math.min(1, t + tilt))];
    for (const { run, unit, stays } of changes(below, above))
      if ((run[1] - run[0]) * unit >= JUMP) found.push({ t, from: run[0], to: run[1], stays });
  }
  return found;
}

const changes = (below: Kept, above: Kept) => [
  ...subtractIntervals(below.runs, above.runs).map((run) => ({ run, unit: below.unit, stays: 'below' as const })),
  ...subtractIntervals(above.runs, below.runs).map((run) => ({ run, unit: above.unit, stays: 'above' as const })),
];

/** The middle of a chain, where its name stands. */
export function chainMiddle(points: readonly Vec2[]): Vec2 {
  const k = (points.length - 1) / 2;
  return lerp2(points[Math.floor(k)] as Vec2, points[Math.ceil(k)] as Vec2, 0.5);
}
