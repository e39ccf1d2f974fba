import type { WrittenUnits } from '../base/measures.js';
import type { View } from '../documents/drawing.js';
import { viewBounds } from '../documents/drawing-bounds.js';
import { siteScales, standardScales } from '../documents/scales.js';
import { type Box, type Edge, edgeBox, uniteBoxes } from '../math/curves.js';

/** Drawing space of a level A3 sheet, mm: 420 × 297 less 20 at the filing edge and 10 at the others (ISO 5457:1999). */
const A3_SPACE = { width: 390, height: 277 } as const;
/** What dimensions and notes take up at least, paper mm: on both axes, or on one where notes stand beside. */
const LEAST_NOTES = 60;
const LEAST_DIMENSIONS = 20;

/** Where title and notes stand: under the figure, or to its right where that allows a larger scale, long notes in a wide column. */
export type FootPlace = 'below' | 'beside' | 'beside, wide';

/** A view that can be drawn at any scale. */
export interface Drawable {
  readonly units: WrittenUnits;
  /** What it draws without dimensions and notes, model mm. */
  readonly figure: Box;
  build(scale: number, foot: FootPlace): View;
}

export interface ScaleOptions {
  /** 50 stands for 1:50; default: the largest standard scale at which the view fits A3. */
  readonly scale?: number;
}

/** The view at the scale that is asked for, else at the largest standard scale at which it fits a sheet of A3. */
export function fitted(drawable: Drawable, { scale }: ScaleOptions = {}): View {
  if (scale !== undefined) return atScale(drawable, scale);
  const [view] = fittedTogether([drawable]);
  return view as View;
}

/** Views that share the largest standard scale at which each of them fits a sheet of A3. */
export function fittedTogether(drawables: readonly Drawable[]): View[] {
  const [first] = drawables;
  if (!first) return [];
  const scales = [...standardScales(first.units), ...siteScales(first.units)];
  for (const scale of scales) {
    if (!drawables.every((d) => mayFit(d, scale))) continue;
    const views: View[] = [];
    for (const drawable of drawables) {
      const view = atScale(drawable, scale);
      if (!fitsA3(view)) break;
      views.push(view);
    }
    if (views.length === drawables.length) return views;
  }
  return drawables.map((d) => atScale(d, scales[scales.length - 1] as number));
}

/** With its notes below if that fits a sheet, else beside if that does, in the narrower column first. */
function atScale(drawable: Drawable, scale: number): View {
  const below = drawable.build(scale, 'below');
  if (fitsA3(below)) return below;
  for (const place of ['beside', 'beside, wide'] as const) {
    const beside = drawable.build(scale, place);
    if (fitsA3(beside)) return beside;
  }
  return below;
}

function mayFit({ figure }: Drawable, scale: number): boolean {
  const [width, height] = [(figure.max[0] - figure.min[0]) / scale, (figure.max[1] - figure.min[1]) / scale];
  return width + LEAST_NOTES <= A3_SPACE.width && height + LEAST_DIMENSIONS <= A3_SPACE.height;
}

function fitsA3(view: View): boolean {
  const { min, max } = viewBounds(view);
  return (max[0] - min[0]) / view.scale <= A3_SPACE.width && (max[1] - min[1]) / view.scale <= A3_SPACE.height;
}

export const figureBox = (loops: readonly (readonly Edge[])[]): Box => uniteBoxes(loops.flat().map(edgeBox));
