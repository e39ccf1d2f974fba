import type { Primitive } from '../documents/drawing.js';
import { lineEdge } from '../math/curves.js';
import { uniteIntervals } from '../math/intervals.js';
import { dot2, type Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { baseReaches, masonryReach } from './extent.js';
import { aboveGround } from './ground.js';
import { levelFigure } from './level-figure.js';
import { quickHouse } from './quick-house.js';
import { levelSight, rightOf } from './sight.js';
import { GROUND_BEYOND } from './upright-cut.js';

/** The house seen from outside along a level look, ground line and hidden footing with it. */
export function elevationFigure(house: HouseSetout, look: Vec2): Primitive[] {
  const quick = quickHouse(house);
  const sight = levelSight(quick, look, { shows: aboveGround(house) });
  const right = rightOf(look);
  const [left, end] = masonryReach(house, right);
  const { ground } = house.house.site;
  const line = lineEdge([left - GROUND_BEYOND, ground], [end + GROUND_BEYOND, ground]);
  return [
    ...levelFigure(quick, sight, 'outside', [line]),
    { kind: 'path', layer: 'ground', segments: [line], closed: false },
    ...hiddenBase(house, right, ground),
  ];
}

/** Between two domes' axes, where a passage's own base joins theirs. */
function spanBetween(domes: PassageSetout['domes'], right: Vec2): Vec2 {
  const [a, b] = [dot2(domes[0].at, right), dot2(domes[1].at, right)];
  return [Math.min(a, b), Math.max(a, b)];
}

/** Footing and slab below ground: the outer outline of each that stands apart, dashed. */
function hiddenBase(house: HouseSetout, right: Vec2, ground: number): Primitive[] {
  const bottom = Math.min(...house.footings.map((f) => f.bottomZ), ...house.slabs.map((s) => s.bottomZ));
  const top = Math.min(0, ground);
  if (!(bottom < top)) return [];
  const reaches = [
    ...house.domes.flatMap((d) => baseReaches(house, d, right)),
    ...house.passages.map((p) => spanBetween(p.domes, right)),
  ];
  return uniteIntervals(reaches).map(([a, b]) => {
    const corners: Vec2[] = [
      [a, top],
      [a, bottom],
      [b, bottom],
      [b, top],
    ];
    const segments = corners.slice(1).map((p, i) => lineEdge(corners[i] as Vec2, p));
    return { kind: 'path', layer: 'hidden', segments, closed: false };
  });
}
