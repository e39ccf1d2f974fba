import type { WrittenUnits } from '../base/measures.js';
import type { View } from '../documents/drawing.js';
import type { Box } from '../math/curves.js';
import { atFittingScale } from './fit.js';
import { addFoot, type FootSpec } from './foot.js';
import type { Layout } from './layout.js';
import { addNorthPoint } from './north-point.js';

/** A view that can be laid out at any scale; what doesn't depend on the scale is computed once. */
export interface Draft {
  readonly id: string;
  /** Box of the figure without dimensions and notes, model mm. */
  readonly figure: Box;
  readonly units: WrittenUnits;
  readonly draw: (scale: number) => DraftedView;
}

/** A view at one scale without a foot, and what has to be said under it or beside it. */
export interface DraftedView {
  readonly layout: Layout;
  readonly foot: FootSpec;
}

/** The view alone, for a sheet that says elsewhere what its foot would say. */
export const bareView = (draft: Draft, { layout, foot }: DraftedView): View => layout.view(draft.id, foot.title);

/** The view as a document of its own, with its foot; at the largest standard scale that fits A3 when none is asked for. */
export function footedView(draft: Draft, project: string, scale?: number): View {
  const build = (at: number): View => {
    const { layout, foot } = draft.draw(at);
    if (foot.northDeg !== undefined) addNorthPoint(layout, draft.figure.max, foot.northDeg);
    addFoot(layout, foot, project);
    return layout.view(draft.id, foot.title);
  };
  return atFittingScale(build, draft.figure, draft.units, scale);
}
