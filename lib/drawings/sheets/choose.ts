import { buildingScale, standardScales } from '../../documents/scales.js';
import { ISO_SHEETS, type SheetSize, US_SHEETS } from '../../documents/sheet-size.js';
import type { Drafts, Group } from './drafts.js';
import { ELEVATIONS, PARTITIONS, PLAN, SECTION } from './partitions.js';

/** Sheets of one size, and which views each of them holds. */
export interface SetPlan {
  readonly size: SheetSize;
  /** The scale of plan and elevations. */
  readonly scale: number;
  readonly groups: readonly Group[];
}

export const sheetSizes = (units: Drafts['units']): readonly SheetSize[] =>
  units === 'metric' ? ISO_SHEETS : US_SHEETS;

/**
 * The set that takes the least paper at a scale that is good for building; of two alike the one that office printers
 * take, then the one on fewer sheets, then at the larger scale. A house that is too large for that has the largest scale at which it can be drawn; the
 * largest sheet is the last resort. `null` when nothing fits.
 */
export function choosePlan(set: Drafts): SetPlan | null {
  const sizes = sheetSizes(set.units);
  const [usual, largest] = [sizes.slice(0, -1), sizes.slice(-1)];
  const scales = standardScales(set.units);
  const good = scales.filter((s) => s <= buildingScale(set.units)).reverse();
  const small = scales.filter((s) => s > buildingScale(set.units));
  const tries: readonly (readonly [scales: readonly number[], sizes: readonly SheetSize[]])[] = [
    [good, usual],
    ...small.map((s) => [[s], usual] as const),
    ...[...good.slice(0, 1), ...small].map((s) => [[s], largest] as const),
  ];
  for (const [scales, sizes] of tries) {
    const best = leastPaper(set, scales, sizes);
    if (best) return best;
  }
  return null;
}

/** Scales from small to large, so that one which would take more paper in any case is not tried. */
function leastPaper(set: Drafts, scales: readonly number[], sizes: readonly SheetSize[]): SetPlan | null {
  let best: SetPlan | null = null;
  for (const scale of scales) {
    for (const size of sizes) {
      if (best && set.figureArea([PLAN, ...ELEVATIONS], scale) > paperOf(best)) continue;
      const groups = fewestSheets(set, size, scale);
      if (!groups) continue;
      const plan = { size, scale, groups };
      if (!best || better(plan, best)) best = plan;
    }
  }
  return best;
}

const paperOf = ({ size, groups }: SetPlan): number => groups.length * size.width * size.height;

function better(one: SetPlan, other: SetPlan): boolean {
  const ratio = paperOf(one) / paperOf(other);
  // Each ISO size is half the next, but for the rounding to millimetres.
  if (Math.abs(ratio - 1) > SAME_PAPER) return ratio < 1;
  if (one.size.office !== other.size.office) return one.size.office;
  if (one.groups.length !== other.groups.length) return one.groups.length < other.groups.length;
  return one.scale < other.scale;
}

const SAME_PAPER = 0.02;

/** The first way to share out the views in which each group has room on its sheet. */
function fewestSheets(set: Drafts, size: SheetSize, scale: number): readonly Group[] | null {
  if (![PLAN, ...ELEVATIONS].every((i) => set.page(size, { members: [i], scale }))) return null;
  for (const partition of PARTITIONS) {
    const groups: Group[] = [];
    for (const members of partition) {
      const alone = members.length === 1 && members[0] === SECTION;
      const group = alone ? sectionAlone(set, size) : { members, scale };
      if (!group || !set.page(size, group)) break;
      groups.push(group);
    }
    if (groups.length === partition.length) return groups;
  }
  return null;
}

/** A section with a sheet to itself is as large as it can be. */
function sectionAlone(set: Drafts, size: SheetSize): Group | null {
  const members = [SECTION];
  const scale = standardScales(set.units).find((s) => set.page(size, { members, scale: s }));
  return scale === undefined ? null : { members, scale };
}
