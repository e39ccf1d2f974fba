import { SAME_POINT } from '../base/tolerances.js';
import type { Primitive } from '../documents/drawing.js';
import type { Box, Edge } from '../math/curves.js';
import { dot2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { cutPrimitives } from './cut.js';
import { aboveGroundOrFloor } from './ground.js';
import { levelFigure } from './level-figure.js';
import { behindPartition, partitionEdges } from './partitions-beyond.js';
import { strokesOf } from './paths.js';
import { quickHouse } from './quick-house.js';
import type { SectionPlane } from './section-plane.js';
import { levelSight } from './sight.js';
import { StrokeBook } from './stroke-book.js';
import { bedsAcross, type UprightCut, uprightCut } from './upright-cut.js';

export interface SectionFigure {
  readonly primitives: readonly Primitive[];
  readonly cut: UprightCut;
}

/**
 * The cut alone: masonry with its bed joints, footing, slab, ground; x = 0 is the axis of the plane's dome. Of a detail
 * that which lies in its box, and a little round it.
 */
export function cutFigure(house: HouseSetout, plane: SectionPlane, detail?: Box): SectionFigure {
  const cut = uprightCut(house, plane, detail);
  return {
    primitives: [
      ...cutPrimitives(cut),
      ...strokesOf('joint', bedsAcross(house, plane, cut)),
      ...strokesOf('ground', surfaces(cut, house.house.site.ground)),
    ],
    cut,
  };
}

/** The cut through the house and what is seen beyond it. */
export function sectionFigure(house: HouseSetout, plane: SectionPlane): SectionFigure {
  const { primitives, cut } = cutFigure(house, plane);
  const quick = quickHouse(house);
  const shown = aboveGroundOrFloor(house);
  const covered = behindPartition(house, plane);
  const sight = levelSight(quick, plane.look, {
    origin: plane.through,
    beyond: dot2(plane.through, plane.look),
    shows: (p) => shown(p) && !covered(p),
  });
  const ground = surfaces(cut, house.house.site.ground);
  const solid = cut.borders.filter((b) => [b.left, b.right].some((part) => part !== null && part !== 'earth'));
  const taken = [...solid.map((b) => b.edge), ...ground];
  // Both faces of a partition may have one picture.
  const partitions = new StrokeBook();
  partitions.write('visible', partitionEdges(house, plane));
  return {
    primitives: [...primitives, ...partitions.primitives(), ...levelFigure(quick, sight, 'inside', taken)],
    cut,
  };
}

/** Where hatched ground ends in the open at ground level. */
const surfaces = (cut: UprightCut, level: number): Edge[] =>
  cut.borders
    .filter((b) => (b.left === 'earth' && b.right === null) || (b.left === null && b.right === 'earth'))
    .map((b) => b.edge)
    .filter(
      (e) => e.kind === 'line' && Math.abs(e.from[1] - level) < SAME_POINT && Math.abs(e.to[1] - level) < SAME_POINT,
    );
