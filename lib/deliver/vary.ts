import { DescriptionError, type Problem } from '../base/problems.js';
import { shown } from '../base/quantities.js';
import * as texts from '../base/texts/variants.js';
import { readDescription } from '../description/read.js';
import { parseOverride } from '../description/text/overrides.js';
import { type HouseFigures, houseFigures } from './house-figures.js';

/** One house of a row: which values it has, as `readDescription` takes them. */
export interface Variant {
  readonly set: readonly string[];
  /** The values that differ from variant to variant, by path. */
  readonly varied: Readonly<Record<string, string>>;
}

/** What came of a variant: its figures, or what is wrong with its description. */
export type VariantResult =
  | { readonly variant: Variant; readonly figures: HouseFigures }
  | { readonly variant: Variant; readonly problems: readonly Problem[] };

/** More variants than anyone compares. */
export const MOST_VARIANTS = 400;

const NUMBER = String.raw`-?(?:\d+\.?\d*|\.\d+)`;
const RANGE = new RegExp(String.raw`^\s*(${NUMBER})\s*\.\.\s*(${NUMBER})\s*/\s*(${NUMBER})\s*(.*?)\s*$`);

/**
 * Every house that these settings name, each value with each. `PATH=VALUE` is the same in all; `PATH=A|B|C` is one
 * of some; `PATH=FROM..TO/STEP UNIT` goes from one number to another by steps, the unit after the step counting for
 * all three: `domes.hall.radius=2.5..4/0.25`, `wall.thickness=200..300/25 mm`, `domes.hall.profile=catenary|pointed`.
 * @throws DescriptionError of code `vary-range` or `set-unreadable`
 */
export function variantsOf(sets: readonly string[]): Variant[] {
  let variants: Variant[] = [{ set: [], varied: {} }];
  for (const set of sets) {
    const path = set.replace(/\s*=.*/s, '').trim();
    const values = valuesOf(set);
    if (variants.length * values.length > MOST_VARIANTS)
      throw trouble(set, 'vary-range', texts.tooManyVariants(MOST_VARIANTS), texts.takeLargerStepOrOneThing);
    variants = variants.flatMap((variant) =>
      values.map((value) => ({
        set: [...variant.set, `${path}=${value}`],
        varied: values.length > 1 ? { ...variant.varied, [path]: value } : variant.varied,
      })),
    );
  }
  return variants;
}

function valuesOf(set: string): string[] {
  const override = parseOverride(set);
  if (!override) throw trouble(set, 'set-unreadable', texts.setNamesNoValue(shown(set)), texts.writeItLikeRange);
  const values = override.value.split('|').flatMap((part) => rangeOf(part, set));
  if (values.some((value) => value.trim() === ''))
    throw trouble(set, 'vary-range', texts.valueBetweenBarsMissing, texts.writeItLikeChoices);
  return values.map((value) => value.trim());
}

function rangeOf(part: string, set: string): string[] {
  const found = RANGE.exec(part);
  if (!found) {
    if (!/^\s*-?[\d.]+\s*\.\.\s*-?\d/.test(part)) return [part];
    throw trouble(set, 'vary-range', texts.rangeHasNoStep(shown(part.trim())), texts.writeFromToStep);
  }
  const [from, to, step] = [found[1], found[2], found[3]].map(Number) as [number, number, number];
  const unit = found[4] ? ` ${found[4]}` : '';
  if (!(step > 0)) throw trouble(set, 'vary-range', texts.stepOfRangeMust, texts.writeItLikeStep);
  const count = Math.floor(Math.abs(to - from) / step + 1e-9) + 1;
  if (count > MOST_VARIANTS)
    throw trouble(set, 'vary-range', texts.tooManyVariants(MOST_VARIANTS), texts.takeLargerStep);
  // As many decimals as are written: 2.5 + 3 × 0.1 is 2.8 and nothing near it.
  const decimals = Math.max(
    ...[found[1], found[2], found[3]].map((text) => /\.(\d*)/.exec(text ?? '')?.[1]?.length ?? 0),
  );
  const way = to < from ? -step : step;
  return Array.from({ length: count }, (_, i) => `${Number((from + i * way).toFixed(decimals))}${unit}`);
}

const trouble = (set: string, code: 'vary-range' | 'set-unreadable', message: string, mend: string): DescriptionError =>
  new DescriptionError([
    {
      code,
      path: 'description',
      where: { file: texts.setOption(shown(set.replace(/=.*/s, ''))), line: 1, column: 1 },
      message,
      mend,
    },
  ]);

/** Computes one variant; what is wrong with its description is its result and not thrown. */
export function varyOne(text: string, fileName: string, variant: Variant): VariantResult {
  try {
    return { variant, figures: houseFigures(readDescription(text, fileName, { set: variant.set })) };
  } catch (error) {
    if (error instanceof DescriptionError) return { variant, problems: error.problems };
    throw error;
  }
}
