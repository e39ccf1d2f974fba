import type { Bond } from '../description/house.js';
import type { HouseSetout } from '../setout/house.js';
import { type MasonryPlan, planMasonry } from './plan.js';

/** What one bond costs with one range of joints. */
export interface TradeOff {
  readonly bond: Bond;
  /** Moulds that one course may mix. */
  readonly mouldsInCourse: number;
  readonly jointRange: readonly [number, number];
  /** Whether the description asks for just this. */
  readonly asked: boolean;
  readonly moulds: number;
  readonly atLeast: number;
  readonly proven: boolean;
  /** Blocks to cast, by the longest runs of pieces at mid-thickness. */
  readonly blocks: number;
  readonly cut: number;
  /** What is cut off, as a share of all blocks cast. */
  readonly waste: number;
  /** Blocks that take in a short neighbour. */
  readonly merged: number;
  readonly shortest: number | null;
  readonly leastLap: number | null;
  readonly shortLaps: number;
  readonly lines: number;
  /** Courses that no mould fits. */
  readonly unmet: number;
}

/** Thickest joints that are compared, as parts of what the range lets a joint be thicker than drawn. */
const SPREADS = [0.5, 1, 2] as const;
/** The search with two moulds in a course ends sooner here, for it only tells what they would save; no row tells of candidates. */
const EFFORT = { mixNodes: 100, counted: false };
/** A joint thicker than this is no joint, mm; as the description allows. */
const THICKEST = 50;

/**
 * Both bonds with thickest joints nearer to and farther from the joint drawn, and the bond and range described with two
 * moulds in a course; what each costs.
 */
export function tradeOffs(plan: MasonryPlan): TradeOff[] {
  const { house } = plan.setout;
  const { joint, jointRange } = house.blocks;
  const row = (bond: Bond, spread: number, mouldsInCourse: number): TradeOff => {
    const range = [jointRange[0], Math.min(THICKEST, joint + spread * (jointRange[1] - joint))] as const;
    const asked = spread === 1 && bond === plan.bond && mouldsInCourse === house.blocks.mouldsInCourse;
    const other: HouseSetout = {
      ...plan.setout,
      house: { ...house, blocks: { ...house.blocks, jointRange: range, mouldsInCourse } },
    };
    return { ...summarise(asked ? plan : planMasonry(other, bond, EFFORT)), jointRange: range, asked };
  };
  return (['banded', 'free'] as const).flatMap((bond) => [
    ...SPREADS.map((spread) => row(bond, spread, 1)),
    ...(bond === plan.bond ? [row(bond, 1, 2)] : []),
  ]);
}

/** What a plan costs. */
function summarise({ setout, bond, courses, moulds }: MasonryPlan): Omit<TradeOff, 'jointRange' | 'asked'> {
  const sum = (pick: (c: MasonryPlan['courses'][number]) => number) => courses.reduce((all, c) => all + pick(c), 0);
  const least = (values: readonly (number | null)[]) => {
    const given = values.filter((v) => v !== null);
    return given.length === 0 ? null : Math.min(...given);
  };
  const blocks = sum((c) => c.pieces.blocks);
  return {
    bond,
    mouldsInCourse: setout.house.blocks.mouldsInCourse,
    moulds: moulds.moulds.length,
    atLeast: moulds.atLeast,
    proven: moulds.proven,
    blocks,
    cut: sum((c) => c.pieces.cut),
    waste: sum((c) => c.pieces.waste) / blocks,
    merged: sum((c) => c.pieces.leftOut.length),
    shortest: least(courses.map((c) => c.pieces.shortest)),
    leastLap: least(courses.map((c) => c.lap)),
    shortLaps: sum((c) => c.shortLaps),
    lines: sum((c) => c.lines),
    unmet: moulds.courses.filter((c) => c.laid === null).length,
  };
}
