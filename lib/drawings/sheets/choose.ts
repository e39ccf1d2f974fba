import { buildingScale, standardScales } from '../../documents/scales.js';
import { ISO_SHEETS, type SheetSize, US_SHEETS } from '../../documents/sheet-size.js';
import { type Drafts, ELEVATIONS, type Group, PLAN } from './drafts.js';

/** Sheets of one size, and which views each of them holds. */
export interface SetPlan {
  readonly size: SheetSize;
  /** The scale of plan and elevations. */
  readonly scale: number;
  readonly groups: readonly Group[];
}

export const sheetSizes = (units: Drafts['units']): readonly SheetSize[] =>
  units !== 'feet-inches' ? ISO_SHEETS : US_SHEETS;

/**
 * The set that takes the least paper at a scale that is good for building; of two alike the one on smaller sheets, which
 * more printers take, then the one at the larger scale. A house that is too large for that has the largest scale at which it can be drawn; the
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
  if (one.size !== other.size) return one.size.width < other.size.width;
  return one.scale < other.scale;
}

const SAME_PAPER = 0.02;

/** How the elevations are shared out: together, in pairs, or each by itself. */
const ELEVATION_SHARES: readonly (readonly (readonly number[])[])[] = [
  [ELEVATIONS],
  [ELEVATIONS.slice(0, 2), ELEVATIONS.slice(2)],
  ELEVATIONS.map((i) => [i]),
];

/**
 * Plan and elevations on the fewest sheets; sections keep company where there is room: the first ones with the plan,
 * all others with the last elevations or on sheets of their own.
 */
function fewestSheets(set: Drafts, size: SheetSize, scale: number): readonly Group[] | null {
  const fits = (members: readonly number[]) => set.page(size, { members, scale }) !== null;
  if (![PLAN, ...ELEVATIONS].every((i) => fits([i]))) return null;
  const whole = [PLAN, ...ELEVATIONS, ...set.sections];
  if (fits(whole)) return [{ members: whole, scale }];

  const elevations = ELEVATION_SHARES.find((share) => share.every(fits)) ?? [];
  let [plan, left]: [readonly number[], readonly number[]] = [[PLAN], set.sections];
  for (let next = left[0]; next !== undefined && fits([...plan, next]); next = left[0])
    [plan, left] = [[...plan, next], left.slice(1)];
  const last = elevations[elevations.length - 1] ?? [];
  const together = left.length > 0 && fits([...last, ...left]);
  const levels = together ? [...elevations.slice(0, -1), [...last, ...left]] : elevations;
  const apart = together ? [] : sectionSheets(set, size, left, scale);
  return apart && [...[plan, ...levels].map((members) => ({ members, scale })), ...apart];
}

/** Sections on sheets of their own: as large as they can be on the fewest sheets that they need at the others' scale. */
function sectionSheets(set: Drafts, size: SheetSize, sections: readonly number[], scale: number): Group[] | null {
  if (sections.length === 0) return [];
  const most = filled(set, size, sections, scale)?.length ?? sections.length;
  for (const larger of standardScales(set.units)) {
    const groups = filled(set, size, sections, larger);
    if (groups && groups.length <= most) return groups;
  }
  return null;
}

/** Views in their order on sheets that are filled one after the other; `null` when one doesn't fit a sheet. */
function filled(set: Drafts, size: SheetSize, views: readonly number[], scale: number): Group[] | null {
  const groups: Group[] = [];
  for (const view of views) {
    const open = groups[groups.length - 1];
    const more = open && { members: [...open.members, view], scale };
    if (more && set.page(size, more)) groups[groups.length - 1] = more;
    else if (set.page(size, { members: [view], scale })) groups.push({ members: [view], scale });
    else return null;
  }
  return groups;
}
