import type { Check, CheckState } from '../base/figures.js';
import type { House } from '../description/house.js';
import type { LaidBlock } from '../masonry/block.js';
import { mouldDimensions } from '../masonry/moulds/dimensions.js';
import { fitLimits } from '../masonry/moulds/limits.js';
import { figuresOf, type HouseFigures } from './house-figures.js';
import { judged } from './judged.js';
import { type Study, study } from './study.js';

/** Blocks of one dome, told apart by their marks. */
export interface BlockChanges {
  readonly dome: string;
  /** In both, of one shape in one place. */
  readonly same: number;
  /** In both, of another shape or in another place. */
  readonly changed: number;
  readonly gone: number;
  readonly added: number;
}

/** Names of moulds: in the first house as in the second where they are alike to half a millimetre. */
export interface MouldChanges {
  readonly same: readonly (readonly [before: string, after: string])[];
  readonly gone: readonly string[];
  readonly added: readonly string[];
}

/** One item of the bills; `null` where its cost is unknown. */
export interface CostChange {
  readonly item: string;
  readonly before: number | null;
  readonly after: number | null;
}

/** A check whose state differs; `null` where there is none of that id. */
export interface CheckChange {
  readonly id: string;
  readonly before: CheckState | null;
  readonly after: CheckState | null;
  /** As the second house has it, or the first where it is gone. */
  readonly statement: string;
}

/** What differs between two houses. */
export interface Comparison {
  readonly before: HouseFigures;
  readonly after: HouseFigures;
  readonly blocks: readonly BlockChanges[];
  readonly moulds: MouldChanges;
  /** Every item of either bill. */
  readonly costs: readonly CostChange[];
  readonly checks: readonly CheckChange[];
}

/** Compares two houses in blocks, moulds, cost and checks. */
export function compareHouses(before: House, after: House): Comparison {
  const [a, b] = [study(before), study(after)];
  const [was, is] = [judged(a).checks, judged(b).checks];
  return {
    before: figuresOf(a, was),
    after: figuresOf(b, is),
    blocks: blockChanges(a, b),
    moulds: mouldChanges(a, b),
    costs: costChanges(a, b),
    checks: checkChanges(was, is),
  };
}

function blockChanges(a: Study, b: Study): BlockChanges[] {
  const domes = new Set([...a.setout.domes, ...b.setout.domes].map((dome) => dome.id));
  return [...domes].map((dome) => {
    const [first, second] = [a, b].map(({ laid }) => {
      const own = laid.blocks.filter((block) => block.domeId === dome);
      return new Map(own.map((block) => [block.mark, shapeOf(block)]));
    }) as [Map<string, string>, Map<string, string>];
    const both = [...first].filter(([mark]) => second.has(mark));
    const same = both.filter(([mark, shape]) => second.get(mark) === shape).length;
    return {
      dome,
      same,
      changed: both.length - same,
      gone: first.size - both.length,
      added: second.size - both.length,
    };
  });
}

/** Place and size of a block to a hundredth of a millimetre and a ten-thousandth of a degree. */
const shapeOf = (block: LaidBlock): string =>
  [
    block.part,
    block.bed.toFixed(2),
    block.top.toFixed(2),
    block.startRad.toFixed(6),
    block.endRad.toFixed(6),
    block.volume.toPrecision(6),
    ...block.cutBy,
  ].join(' ');

function mouldChanges(a: Study, b: Study): MouldChanges {
  const left = mouldShapes(b);
  const same: [string, string][] = [];
  const gone: string[] = [];
  for (const [id, shape] of mouldShapes(a)) {
    const alike = left.findIndex(([, other]) => other === shape);
    if (alike < 0) gone.push(id);
    else same.push([id, (left.splice(alike, 1)[0] as [string, string])[0]]);
  }
  return { same, gone, added: left.map(([id]) => id) };
}

/** Inner sizes to half a millimetre, as the table of moulds has them. */
function mouldShapes({ plan, setout }: Study): [id: string, shape: string][] {
  const limits = fitLimits(setout.house.blocks);
  const half = (mm: number) => Math.round(mm * 2) / 2;
  return plan.moulds.moulds.map(({ id, mould }) => {
    const { intrados, extrados, thickness } = mouldDimensions(mould, limits);
    const sizes = [intrados, extrados].flatMap(({ edges, height, diagonal, sagittaUp }) => [
      ...Object.values(edges).map(({ chord }) => chord),
      height,
      diagonal,
      sagittaUp,
    ]);
    return [id, [...sizes, thickness].map(half).join(' ')];
  });
}

function costChanges(a: Study, b: Study): CostChange[] {
  const [first, second] = [a, b].map(({ works }) => new Map(works.bill.lines.map((l) => [l.item as string, l.cost])));
  const items = new Set([...(first?.keys() ?? []), ...(second?.keys() ?? [])]);
  // An item that one of them doesn't need costs nothing there.
  const cost = (bill: Map<string, number | null> | undefined, item: string) =>
    bill?.has(item) ? (bill.get(item) ?? null) : 0;
  return [...items].map((item) => ({ item, before: cost(first, item), after: cost(second, item) }));
}

function checkChanges(before: readonly Check[], after: readonly Check[]): CheckChange[] {
  const [first, second] = [before, after].map((checks) => new Map(checks.map((check) => [check.id, check])));
  const ids = new Set([...(first?.keys() ?? []), ...(second?.keys() ?? [])]);
  return [...ids].flatMap((id) => {
    const [was, is] = [first?.get(id), second?.get(id)];
    if (was?.state === is?.state) return [];
    return [{ id, before: was?.state ?? null, after: is?.state ?? null, statement: (is ?? was)?.statement ?? '' }];
  });
}
