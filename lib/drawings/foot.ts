import type { WrittenUnits } from '../base/measures.js';
import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/drawing-plans.js';
import { placeBlock } from '../documents/block.js';
import type { HatchPattern } from '../documents/drawing.js';
import { scaleWords } from '../documents/scales.js';
import { words } from '../documents/shapes.js';
import { wrapText } from '../documents/text-fit.js';
import type { FootPlace } from './fit.js';
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
export const measureSentence = (units: WrittenUnits): string => texts.levelsAboveFinishedFloorSentence(units);

/** Under the figure or beside it: title, scale, scale bar, what the hatches mean, whose drawing it is, notes, the caution. */
export function addFoot(layout: Layout, spec: FootSpec, project: string, place: FootPlace): void {
  const { min, max } = layout.bounds();
  const { scale, units } = layout;
  const mm = (paper: number) => layout.mm(paper);
  const below = place === 'below';
  const left = below ? min[0] : max[0] + mm(GAP);
  const width = place === 'below' ? Math.max((max[0] - min[0]) / scale, LEAST_WIDTH) : COLUMN[place];
  let y = (below ? min[1] - mm(GAP) : max[1]) - mm(TITLE);
  const addLines = (content: string) => {
    for (const line of wrapText(content, width, TEXT)) {
      y -= mm(TEXT + LINE_GAP);
      layout.add(words('text', line, [left, y], TEXT));
    }
  };
  layout.add(words('text', spec.title, [left, y], TITLE));
  y -= mm(4 - LINE_GAP);
  const written = scaleWords(scale, units);
  addLines(
    texts.scale(written === `1:${scale}` ? written : `1:${scale} (${written})`, texts.levelsAboveFinishedFloor(units)),
  );

  y -= mm(3.5);
  const bar = scaleBar(scale, units);
  layout.add(...placeBlock(bar, [left, y], scale));
  if (below) {
    const samples = hatchSamples(spec.patterns, width - bar.width - BETWEEN);
    layout.add(...placeBlock(samples, [left + mm(bar.width + BETWEEN), y - mm(1)], scale));
    y -= mm(Math.max(bar.height, samples.height + 1) + 1.5);
  } else {
    // In a column the samples begin a row of their own.
    const samples = hatchSamples(spec.patterns, width);
    layout.add(...placeBlock(samples, [left, y - mm(bar.height + 2)], scale));
    y -= mm(bar.height + samples.height + 3.5);
  }
  for (const note of [project, ...spec.notes, ...spec.general, CAUTION.authority]) addLines(note);
}

/** Free between figure and notes, between lines, between bar and samples; and the least width of notes, paper mm. */
const GAP = 8;
const LINE_GAP = 1.7;
const BETWEEN = 6;
const LEAST_WIDTH = 130;
/** Width of notes that stand beside their figure, paper mm. */
const COLUMN = { beside: 88, 'beside, wide': 140 } as const;
