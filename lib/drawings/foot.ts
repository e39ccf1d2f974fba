import { CAUTION } from '../base/cautions.js';
import type { WrittenUnits } from '../base/measures.js';
import { placeBlock } from '../documents/block.js';
import type { HatchPattern } from '../documents/drawing.js';
import { scaleWords } from '../documents/scales.js';
import { words } from '../documents/shapes.js';
import { wrapText } from '../documents/text-fit.js';
import { hatchSamples, scaleBar, TEXT, TITLE } from './foot-blocks.js';
import type { Layout } from './layout.js';

export interface FootSpec {
  readonly title: string;
  /** What must be known to read this view. */
  readonly notes: readonly string[];
  /** What holds for the whole house. */
  readonly general: readonly string[];
  /** Hatches of the view, explained in a row of samples. */
  readonly patterns: readonly HatchPattern[];
  /** Bearing of true north, where the view is a plan. */
  readonly northDeg?: number;
}

/** In what lengths and levels are written. */
export const measureWords = (units: WrittenUnits): string =>
  `${units === 'metric' ? 'lengths in mm, levels in m' : 'lengths and levels in feet and inches'}; levels above finished floor`;

/** Under the figure: title, scale, scale bar, what the hatches mean, whose drawing it is, notes, the caution. */
export function addFoot(layout: Layout, spec: FootSpec, project: string): void {
  const { min, max } = layout.bounds();
  const { scale, units } = layout;
  const left = min[0];
  const width = Math.max(max[0] - min[0], layout.mm(LEAST_WIDTH));
  const mm = (paper: number) => layout.mm(paper);
  let y = min[1] - mm(GAP + TITLE);
  layout.add(words('text', spec.title, [left, y], TITLE));

  y -= mm(TEXT + 4);
  layout.add(
    words(
      'text',
      `Scale ${scaleWords(scale, units)}${units === 'metric' ? '' : ` (1:${scale})`}; ${measureWords(units)}`,
      [left, y],
      TEXT,
    ),
  );

  y -= mm(3.5);
  const bar = scaleBar(scale, units);
  layout.add(...placeBlock(bar, [left, y], scale));
  const samples = hatchSamples(spec.patterns, width / scale - bar.width - 6);
  layout.add(...placeBlock(samples, [left + mm(bar.width + 6), y - mm(1)], scale));

  y -= mm(Math.max(bar.height, samples.height + 1) + 1.5);
  for (const note of [project, ...spec.notes, ...spec.general, CAUTION.authority]) {
    for (const line of wrapText(note, width / scale, TEXT)) {
      y -= mm(TEXT + 1.7);
      layout.add(words('text', line, [left, y], TEXT));
    }
  }
}

/** Under the figure, free, and the least width of notes, paper mm. */
const GAP = 8;
const LEAST_WIDTH = 130;
