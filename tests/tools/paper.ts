import type { PaperPrimitive } from '../../lib/documents/drawing.js';
import { type Bounds2, boundsOf, viewBounds } from '../../lib/documents/drawing-bounds.js';

/** Box round paper primitives, mm. */
export const paperBounds = (primitives: readonly PaperPrimitive[]): Bounds2 =>
  primitives.length === 0 ? boundsOf([]) : viewBounds({ id: '', title: '', scale: 1, units: 'metric', primitives });
