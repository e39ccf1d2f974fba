import { formatLength, type WrittenUnits } from '../base/measures.js';
import { remembered } from '../base/remembered.js';
import * as texts from '../base/texts/sheet-frame.js';
import type { Vec2 } from '../math/vec.js';
import type { LinearDimension, PlainPrimitive, Primitive, View } from './drawing.js';
import { type Bounds2, viewBounds } from './drawing-bounds.js';
import { placed } from './placing.js';
import { rectangle, rectangleLoop, words } from './shapes.js';
import { wrapText } from './text-fit.js';

/** What a template is drawn with: nothing that couldn't be parted between pages. */
export type TemplatePrimitive = Exclude<PlainPrimitive, { kind: 'hatch' | 'ellipse' }> | DimensionOf;
type DimensionOf = Extract<Primitive, { kind: 'dimension' }>;

/** One figure to cut out or to prick through, mm at full size. */
export interface TemplatePiece {
  readonly name: string;
  readonly primitives: readonly TemplatePrimitive[];
}

/** Figures at full size that belong together. */
export interface Template {
  readonly id: string;
  readonly title: string;
  readonly pieces: readonly TemplatePiece[];
}

/** Between pieces of one drawing, mm. */
const GAP = 30;
/** Names of pieces in a drawing, mm. */
const NAME = 5;

/** Notes above the bar, mm. */
const NOTES = { width: 180, height: 2.5, first: 14, line: 4.5 } as const;

/** Least box round a piece; asked for by each way in which it is printed. */
export const pieceBounds = ({ primitives }: TemplatePiece, units: WrittenUnits): Bounds2 =>
  viewBounds(pieceViews(primitives)[units]);

const pieceViews = remembered((primitives: TemplatePiece['primitives']): Record<WrittenUnits, View> => {
  const at = (units: WrittenUnits): View => ({ id: '', title: '', scale: 1, units, primitives });
  return { metric: at('metric'), 'half-millimetres': at('half-millimetres'), 'feet-inches': at('feet-inches') };
});

/**
 * All pieces of a template in one drawing at 1:1, one above the other, over notes and a bar to check the size with.
 */
export function templateView(
  { id, title, pieces }: Template,
  units: WrittenUnits,
  notes: readonly string[] = [],
): View {
  const lines = [title, ...notes].flatMap((note) => wrapText(note, NOTES.width, NOTES.height)).reverse();
  const primitives: Primitive[] = [
    ...checkBar([0, 0], units),
    ...lines.map((text, i) => words('text', text, [0, NOTES.first + i * NOTES.line], NOTES.height)),
  ];
  let y = viewBounds({ id, title, scale: 1, units, primitives }).max[1] + GAP;
  for (const piece of pieces) {
    const { min, max } = pieceBounds(piece, units);
    primitives.push(words('text', piece.name, [0, y], NAME));
    y += 2 * NAME;
    const offset: Vec2 = [-min[0], y - min[1]];
    primitives.push(...piece.primitives.map((p) => placed(p, { turnDeg: 0, scale: 1, offset })));
    y += max[1] - min[1] + GAP;
  }
  return { id, title, scale: 1, units, primitives };
}

/** A length that is easy to measure on a print. */
export const barLength = (units: WrittenUnits): number => (units === 'feet-inches' ? 4 * 25.4 : 100);

const BAR = 4;

/** A bar with its own dimension: a print or a plot on which it measures otherwise is not at full size. */
function checkBar([x, y]: Vec2, units: WrittenUnits): Primitive[] {
  const length = barLength(units);
  const measure: LinearDimension = {
    kind: 'dimension',
    type: 'linear',
    from: [x, y],
    to: [x + length, y],
    angleDeg: 0,
    line: [x, y - 8],
  };
  return [...barParts([x, y], units), measure, words('text', barWords(units), [x, y + BAR + 2], 2.5)];
}

/** The bar itself, every other quarter filled. */
export function barParts([x, y]: Vec2, units: WrittenUnits): PlainPrimitive[] {
  const part = barLength(units) / 4;
  return [0, 1, 2, 3].flatMap((i): PlainPrimitive[] => {
    const corners = [x + i * part, y, x + (i + 1) * part, y + BAR] as const;
    const fill: PlainPrimitive[] =
      i % 2 === 0 ? [{ kind: 'hatch', layer: 'text', pattern: 'solid', loops: [rectangleLoop(...corners)] }] : [];
    return [...fill, rectangle('text', ...corners)];
  });
}

export const barWords = (units: WrittenUnits): string =>
  texts.fullSizeThisBar(formatLength(barLength(units), units), units);
