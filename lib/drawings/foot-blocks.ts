import { formatLength, type WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { FOOT_MM } from '../base/units.js';
import type { Block } from '../documents/block.js';
import type { HatchPattern, PaperPrimitive } from '../documents/drawing.js';
import { rectangle, rectangleLoop, words } from '../documents/shapes.js';
import { textWidth } from '../documents/text-size.js';

/** Heights of texts, paper mm (ISO 3098 series). */
export const TEXT = 2.5;
export const TITLE = 5;

const MEANING: Readonly<Record<HatchPattern, string>> = {
  blockwork: texts.castBlocks,
  cast: texts.castPiecesRingsJambs,
  concrete: texts.concreteFootingAndSlab,
  earth: texts.ground,
  solid: '',
};

const BAR = 1.5;

/** A bar of four parts, every other one filled, 40 to 100 mm long on paper. */
export function scaleBar(scale: number, units: WrittenUnits): Block {
  const steps =
    units !== 'feet-inches'
      ? [50, 100, 250, 500, 1000, 2500, 5000, 10000]
      : [0.25, 0.5, 1, 2, 4, 5, 10, 20, 40].map((n) => n * FOOT_MM);
  const step = (steps.find((s) => (4 * s) / scale >= 40) ?? (steps[steps.length - 1] as number)) / scale;
  const bottom = -2 * TEXT;
  const parts = [0, 1, 2, 3].flatMap((i): PaperPrimitive[] => {
    const corners = [i * step, bottom, (i + 1) * step, bottom + BAR] as const;
    const filled: PaperPrimitive[] =
      i % 2 === 0 ? [{ kind: 'hatch', layer: 'text', pattern: 'solid', loops: [rectangleLoop(...corners)] }] : [];
    return [...filled, rectangle('text', ...corners)];
  });
  const labels = [0, 2, 4].map((i) => {
    const text = i === 0 ? '0' : barText(i * step * scale, units);
    return words('text', text, [i * step, bottom + TEXT], TEXT, i === 0 ? 'left' : 'centre');
  });
  const beyond = textWidth(barText(4 * step * scale, units), TEXT) / 2;
  return { width: 4 * step + beyond, height: 2 * TEXT, primitives: [...parts, ...labels] };
}

const barText = (mm: number, units: WrittenUnits): string =>
  units !== 'feet-inches' ? `${mm / 1000} m` : formatLength(mm, units);

const SAMPLE = { width: 9, height: 4, gap: 2, between: 6 } as const;

/** Samples of hatches with their meaning, in rows at most `width` wide. */
export function hatchSamples(patterns: readonly HatchPattern[], width: number): Block {
  let [x, y, widest] = [0, 0, 0];
  const primitives = patterns.flatMap((pattern): PaperPrimitive[] => {
    const meaning = MEANING[pattern];
    const end = SAMPLE.width + SAMPLE.gap + textWidth(meaning, TEXT);
    if (x > 0 && x + end > width) [x, y] = [0, y - SAMPLE.height - SAMPLE.gap];
    const corners = [x, y - SAMPLE.height, x + SAMPLE.width, y] as const;
    const own: PaperPrimitive[] = [
      { kind: 'hatch', layer: 'hatch', pattern, loops: [rectangleLoop(...corners)] },
      rectangle('visible', ...corners),
      words('text', meaning, [x + SAMPLE.width + SAMPLE.gap, y - SAMPLE.height + 0.8], TEXT),
    ];
    widest = Math.max(widest, x + end);
    x += end + SAMPLE.between;
    return own;
  });
  return { width: widest, height: patterns.length > 0 ? SAMPLE.height - y : 0, primitives };
}
