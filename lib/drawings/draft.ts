import type { WrittenUnits } from '../base/measures.js';
import type { View } from '../documents/drawing.js';
import type { Box } from '../math/curves.js';
import { type Drawable, fitted, type ScaleOptions } from './fit.js';
import { addFoot, type FootSpec } from './foot.js';
import type { HandedOver } from './handed.js';
import type { Layout } from './layout.js';
import { addNorthPoint } from './north-point.js';

/** A view that can be laid out at any scale; what doesn't depend on the scale is computed once. */
export interface Draft {
  readonly id: string;
  /** Box of the figure without dimensions and notes, model mm. */
  readonly figure: Box;
  readonly units: WrittenUnits;
  readonly draw: (scale: number, handed?: HandedOver) => DraftedView;
}

/** A view at one scale without a foot, and what has to be said under it or beside it. */
export interface DraftedView {
  readonly layout: Layout;
  readonly foot: FootSpec;
}

/** The view alone, for a sheet that says elsewhere what its foot would say. */
export const bareView = (draft: Draft, { layout, foot }: DraftedView): View => layout.view(draft.id, foot.title);

/** The view as a document of its own, with its foot, to be drawn at any scale. */
export const footed = (draft: Draft, project: string): Drawable => ({
  units: draft.units,
  figure: draft.figure,
  build(scale, place) {
    const { layout, foot } = draft.draw(scale);
    if (foot.northDeg !== undefined) addNorthPoint(layout, foot.northDeg, draft.figure.max);
    addFoot(layout, foot, project, place);
    return layout.view(draft.id, foot.title);
  },
});

/** The same at the scale that is asked for, else at the largest standard scale at which it fits A3. */
export const footedView = (draft: Draft, project: string, options: ScaleOptions = {}): View =>
  fitted(footed(draft, project), options);
