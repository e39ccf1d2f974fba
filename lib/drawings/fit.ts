import type { WrittenUnits } from '../base/measures.js';
import type { View } from '../documents/drawing.js';
import { viewBounds } from '../documents/drawing-bounds.js';
import { standardScales } from '../documents/scales.js';
import { type Box, type Edge, edgeBox, uniteBoxes } from '../math/curves.js';

/** For a site so large that no scale of a building serves (ISO 5455, from memory). */
const SITE_SCALES = [500, 1000] as const;
/** Drawing space of a level A3 sheet, mm: 420 × 297 less 20 at the filing edge and 10 at the others (ISO 5457:1999). */
export const A3_SPACE = { width: 390, height: 277 } as const;
/** What dimensions and notes take up at least, paper mm, on both axes. */
const LEAST_NOTES = 60;

/** The view at the scale that is asked for, else at the largest standard scale at which it fits a sheet of A3. */
export function atFittingScale(build: (scale: number) => View, figure: Box, units: WrittenUnits, scale?: number): View {
  if (scale !== undefined) return build(scale);
  const [width, height] = [figure.max[0] - figure.min[0], figure.max[1] - figure.min[1]];
  const scales = [...standardScales(units), ...SITE_SCALES];
  const possible = scales.filter(
    (s) => width / s + LEAST_NOTES <= A3_SPACE.width && height / s + LEAST_NOTES <= A3_SPACE.height,
  );
  for (const s of possible) {
    const view = build(s);
    if (fitsA3(view)) return view;
  }
  return build(scales[scales.length - 1] as number);
}

export function fitsA3(view: View): boolean {
  const { min, max } = viewBounds(view);
  return (max[0] - min[0]) / view.scale <= A3_SPACE.width && (max[1] - min[1]) / view.scale <= A3_SPACE.height;
}

export const figureBox = (loops: readonly (readonly Edge[])[]): Box => uniteBoxes(loops.flat().map(edgeBox));
