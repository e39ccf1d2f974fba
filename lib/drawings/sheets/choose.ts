import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import { buildingScale, scaleWords, standardScales } from '../../documents/scales.js';
import { ISO_SHEETS, type SheetSize, US_SHEETS } from '../../documents/sheet-size.js';
import type { Draft } from '../draft.js';
import type { PageMaker } from './page-maker.js';

/** What a set's plans, elevations and sections are drawn on and how large. */
export interface Chosen {
  readonly size: SheetSize;
  readonly scale: number;
  /** Whether some of them are larger than the sheet and go on at match lines. */
  readonly split: boolean;
  /** Why this size and scale, for the summary. */
  readonly because: string;
}

export interface Asked {
  /** `null`: chosen by the program. */
  readonly size: SheetSize | null;
  readonly scale: number | null;
}

const sheetSizes = (units: WrittenUnits): readonly SheetSize[] => (units !== 'feet-inches' ? ISO_SHEETS : US_SHEETS);

/**
 * The smallest sheet on which each view has room at a scale that is good for building, and the largest standard scale at
 * which all of them have it there. A house that is too large for that goes to smaller scales; the largest sheet is the
 * last resort. What fits nothing, or not what is asked for, is split at match lines.
 */
export function chooseSize(maker: PageMaker, drafts: readonly Draft[], units: WrittenUnits, asked: Asked): Chosen {
  const all = sheetSizes(units);
  const [usual, largest] = [all.slice(0, -1), all.slice(-1)];
  const scales = standardScales(units);
  const good = scales.filter((s) => s <= buildingScale(units));
  const small = scales.filter((s) => s > buildingScale(units));
  const fits = (size: SheetSize, scale: number) => drafts.every((d) => maker.fits(size, d, scale));
  const tries: (readonly [sizes: readonly SheetSize[], scales: readonly number[]])[] = asked.size
    ? [[[asked.size], asked.scale === null ? scales : [asked.scale]]]
    : asked.scale !== null
      ? [
          [usual, [asked.scale]],
          [largest, [asked.scale]],
        ]
      : [
          [usual, good],
          ...small.map((s) => [usual, [s]] as const),
          ...[...good.slice(-1), ...small].map((s) => [largest, [s]] as const),
        ];
  for (const [sizes, wanted] of tries) {
    for (const size of sizes) {
      const scale = wanted.find((s) => fits(size, s));
      if (scale !== undefined) return { size, scale, split: false, because: reason(asked, size, scale, units) };
    }
  }
  const size = asked.size ?? (usual[usual.length - 1] as SheetSize);
  const scale = asked.scale ?? (small[small.length - 1] as number);
  const because = texts.houseIsLarger(size.name, scaleWords(scale, units));
  return { size, scale, split: true, because };
}

function reason({ size, scale }: Asked, chosen: SheetSize, at: number, units: WrittenUnits): string {
  if (size && scale !== null) return texts.asAsked;
  if (size) return texts.largestStandardScale;
  if (scale !== null) return texts.smallestSheetThatHolds;
  return at <= buildingScale(units)
    ? texts.smallestSheetThatHoldsEvery(scaleWords(buildingScale(units), units))
    : texts.noUsualSheetHolds(chosen.name);
}
