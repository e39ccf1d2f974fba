import { SAME_POINT } from '../base/tolerances.js';
import type { Primitive } from '../documents/drawing.js';
import type { Edge } from '../math/curves.js';
import { dot2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { cutPrimitives } from './cut.js';
import { aboveGroundOrFloor } from './ground.js';
import { levelFigure } from './level-figure.js';
import { strokesOf } from './paths.js';
import { quickHouse } from './quick-house.js';
import type { SectionPlane } from './section-plane.js';
import { levelSight } from './sight.js';
import { bedsAcross, type UprightCut, uprightCut } from './upright-cut.js';

export interface SectionFigure {
  readonly primitives: readonly Primitive[];
  readonly cut: UprightCut;
}

/** The cut through the house and what is seen beyond it; x = 0 is the axis of the plane's dome. */
export function sectionFigure(house: HouseSetout, plane: SectionPlane): SectionFigure {
  const cut = uprightCut(house, plane);
  const quick = quickHouse(house);
  const sight = levelSight(quick, plane.look, {
    origin: plane.through,
    beyond: dot2(plane.through, plane.look),
    shows: aboveGroundOrFloor(house),
  });
  const ground = surfaces(cut, house.house.site.ground);
  const solid = cut.borders.filter((b) => [b.left, b.right].some((part) => part !== null && part !== 'earth'));
  const taken = [...solid.map((b) => b.edge), ...ground];
  return {
    primitives: [
      ...cutPrimitives(cut),
      ...strokesOf('joint', bedsAcross(house, plane, cut)),
      ...levelFigure(quick, sight, 'inside', taken),
      ...strokesOf('ground', ground),
    ],
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
