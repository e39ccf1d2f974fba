import { CAUTION } from '../base/cautions.js';
import { formatLength } from '../base/measures.js';
import type { HatchPattern, Primitive, TextPrimitive } from '../documents/drawing.js';
import { textWidth } from '../documents/text-size.js';
import type { Vec2 } from '../math/vec.js';
import { type FootPlace, scaleWords } from './fit.js';
import type { Layout } from './layout.js';
import { rectangle } from './paths.js';

/** Heights of texts, paper mm (ISO 3098 series). */
export const TEXT = 2.5;
export const TITLE = 5;

export interface FootSpec {
  readonly title: string;
  readonly notes: readonly string[];
  /** Hatches of the view, explained in a row of samples. */
  readonly patterns: readonly HatchPattern[];
}

const MEANING: Readonly<Record<HatchPattern, string>> = {
  blockwork: 'cast blocks',
  cast: 'cast pieces: rings, jambs, skewback, curb, plug',
  concrete: 'concrete footing and slab',
  earth: 'ground',
  solid: '',
};

/** Under the figure or beside it: title, scale, scale bar, what the hatches mean, notes, the caution. */
export function addFoot(layout: Layout, spec: FootSpec, place: FootPlace): void {
  const { min, max } = layout.bounds();
  const { scale, units } = layout;
  const mm = (paper: number) => layout.mm(paper);
  const below = place === 'below';
  const left = below ? min[0] : max[0] + mm(GAP);
  const width = below ? Math.max(max[0] - min[0], mm(LEAST_WIDTH)) : mm(COLUMN);
  let y = (below ? min[1] - mm(GAP) : max[1]) - mm(TITLE);
  layout.add(text(spec.title, [left, y], TITLE));

  const measures = units === 'metric' ? 'lengths in mm, levels in m' : 'lengths and levels in feet and inches';
  y -= mm(4 - LINE_GAP);
  for (const line of wrapped(
    `Scale ${scaleWords(scale, units)}; ${measures}; levels above finished floor`,
    width / scale,
  )) {
    y -= mm(TEXT + LINE_GAP);
    layout.add(text(line, [left, y], TEXT));
  }

  y -= mm(8.5);
  const barEnd = addScaleBar(layout, [left, y]);
  // In a column the samples begin a row of their own.
  const from: Vec2 = below || spec.patterns.length === 0 ? [barEnd + mm(10), y] : [left, y - mm(7)];
  y = addSamples(layout, spec.patterns, from, left + width);

  y -= mm(1.5);
  for (const note of [...spec.notes, CAUTION.authority]) {
    for (const line of wrapped(note, width / scale)) {
      y -= mm(TEXT + LINE_GAP);
      layout.add(text(line, [left, y], TEXT));
    }
  }
}

/** Free between figure and notes, and the least width of notes, paper mm. */
const GAP = 8;
const LINE_GAP = 1.7;
const LEAST_WIDTH = 130;
/** Width of notes that stand beside their figure, paper mm. */
const COLUMN = 88;

const text = (content: string, at: Vec2, heightMm: number): TextPrimitive => ({
  kind: 'text',
  layer: 'text',
  at,
  text: content,
  heightMm,
  anchor: 'left',
  rotationDeg: 0,
});

/** Four parts, every other one filled, 40 to 100 mm long on paper; returns where it ends. */
function addScaleBar(layout: Layout, [x, y]: Vec2): number {
  const { scale, units } = layout;
  const foot = 304.8;
  const steps =
    units === 'metric' ? [250, 500, 1000, 2500, 5000, 10000] : [1, 2, 4, 5, 10, 20, 40].map((n) => n * foot);
  const step = steps.find((s) => (4 * s) / scale >= 40) ?? (steps[steps.length - 1] as number);
  const height = layout.mm(1.5);
  for (let i = 0; i < 4; i++) {
    const loop = rectangle(x + i * step, y, x + (i + 1) * step, y + height);
    if (i % 2 === 0) layout.add({ kind: 'hatch', layer: 'text', pattern: 'solid', loops: [loop] });
    layout.add({ kind: 'path', layer: 'text', segments: loop, closed: true });
  }
  for (const i of [0, 2, 4]) {
    layout.add({
      ...text(i === 0 ? '0' : barText(i * step, units), [x + i * step, y + layout.mm(2.5)], TEXT),
      anchor: i === 0 ? 'left' : 'centre',
    });
  }
  return x + 4 * step;
}

const barText = (mm: number, units: Layout['units']): string =>
  units === 'metric' ? `${mm / 1000} m` : formatLength(mm, units);

/** Samples of hatches with their meaning, in rows up to `right`; returns the lowest row's level. */
function addSamples(layout: Layout, patterns: readonly HatchPattern[], from: Vec2, right: number): number {
  let [x, y] = from;
  for (const pattern of patterns) {
    const meaning = MEANING[pattern];
    const width = layout.mm(9 + 2 + textWidth(meaning, TEXT) + 6);
    if (x > from[0] && x + width > right) {
      x = from[0];
      y -= layout.mm(6);
    }
    const loop = rectangle(x, y, x + layout.mm(9), y + layout.mm(4));
    const sample: Primitive[] = [
      { kind: 'hatch', layer: 'hatch', pattern, loops: [loop] },
      { kind: 'path', layer: 'visible', segments: loop, closed: true },
      text(meaning, [x + layout.mm(11), y + layout.mm(0.8)], TEXT),
    ];
    layout.add(...sample);
    x += width;
  }
  return y;
}

/** Lines of at most `width` paper mm, broken at spaces. */
export function wrapped(content: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of content.split(' ')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && textWidth(`${last} ${word}`, TEXT) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
