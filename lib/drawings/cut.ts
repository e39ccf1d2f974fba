import { CUT_BESIDE, CUT_POINT } from '../base/tolerances.js';
import type { HatchPrimitive, LayerName, Primitive } from '../documents/drawing.js';
import type { Edge } from '../math/curves.js';
import { type Border, bordersOf, regionOf } from '../math/planar.js';
import { chainEdges } from '../math/planar-chain.js';
import type { Vec2 } from '../math/vec.js';
import { PATTERN_OF, type Part } from './parts.js';
import { loopOf, strokeOf } from './paths.js';

/** What a plane cuts, as regions bounded by exact lines and arcs. */
export interface Cut {
  readonly borders: readonly Border<Part>[];
  /** Closed loops round one part, or round everything that is of the house when no part is named. */
  loops(part?: Part): Edge[][];
}

export function cutOf(edges: readonly Edge[], labelAt: (p: Vec2) => Part | null): Cut {
  const borders = bordersOf(edges, labelAt, { tolerance: CUT_POINT, beside: CUT_BESIDE });
  return {
    borders,
    loops: (part) => regionOf(borders, (p) => (part ? p === part : p !== 'earth'), CUT_POINT),
  };
}

const PARTS = Object.keys(PATTERN_OF) as Part[];

/** Hatches of all cut parts, a wide line round the house, a narrow one between parts. */
export function cutPrimitives(cut: Cut): Primitive[] {
  const hatches = PARTS.flatMap((part): HatchPrimitive[] => {
    const loops = cut.loops(part).map(loopOf);
    return loops.length > 0 ? [{ kind: 'hatch', layer: 'hatch', pattern: PATTERN_OF[part], loops }] : [];
  });
  const solid = (part: Part | null) => part !== null && part !== 'earth';
  const outline = cut.borders.filter((b) => solid(b.left) !== solid(b.right));
  const between = cut.borders.filter((b) => solid(b.left) && solid(b.right));
  return [...hatches, ...strokes(between, 'visible'), ...strokes(outline, 'cut')];
}

function strokes(borders: readonly Border<Part>[], layer: LayerName): Primitive[] {
  const edges = borders.map((b) => b.edge);
  return chainEdges(edges, CUT_POINT).map((chain) => strokeOf(layer, chain));
}
