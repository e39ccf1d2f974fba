import { CUT_POINT, SIGHT_CHANGE } from '../base/tolerances.js';
import { rectangleLoop } from '../documents/shapes.js';
import { type Box, type Edge, edgeBox, lineEdge, uniteBoxes } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { dot2, perp2, sub2, type Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import { clipEdge, inBox } from './clip.js';
import { type Cut, cutOf } from './cut.js';
import { baseReach, beyondPlane, masonryReach } from './extent.js';
import { underRoof } from './ground.js';
import { bedsOf, spanOf } from './joints.js';
import { inEarlier, type Part, partAt } from './parts.js';
import { quickHouse } from './quick-house.js';
import { rayHouse } from './ray-house.js';
import { type CutPlane, onPlane, sliceUpright } from './slice-upright.js';

/** How far below its surface the ground is hatched, mm. */
const EARTH_DEPTH = 200;
/** How far beyond the house ground is drawn, mm. */
export const GROUND_BEYOND = 500;

/** What is cut of a detail lies within its box and so far round it, mm: borders at the box's own edges are no part of it. */
const ROUND_DETAIL = 50;

export interface UprightCut extends Cut {
  /** Of what box round a detail this is the cut; of the whole plane when missing. */
  readonly window: Box | null;
  /** Left and right end of the ground that is drawn. */
  readonly ground: Vec2;
  readonly partAt: (p: Vec2) => Part | null;
}

/**
 * What an upright plane cuts: masonry, footing, slab, and the ground round and under them; of a detail that which lies
 * in its box.
 */
export function uprightCut(house: HouseSetout, plane: CutPlane, detail?: Box): UprightCut {
  // Of the house only what the plane passes.
  const passed = rayHouse(house, plane.right)(plane.through).house;
  const lines = sliceUpright(passed, plane);
  const box = uniteBoxes(lines.map(edgeBox));
  const middle = dot2(plane.through, plane.right);
  const seen = beyondPlane(house, plane.through, perp2(plane.right));
  const reach = [masonryReach(seen, plane.right), baseReach(seen, plane.right)].flatMap((r) => r ?? []);
  const ground: Vec2 = [Math.min(...reach) - middle - GROUND_BEYOND, Math.max(...reach) - middle + GROUND_BEYOND];
  const { ground: level } = house.house.site;
  const floor = -Math.max(0, ...house.slabs.map((s) => -s.bottomZ));
  const quick = quickHouse(passed);
  const part = (p: Vec2): Part | null => partAt(quick, onPlane(plane, p));
  const labelAt = (p: Vec2): Part | null => {
    const solid = part(p);
    if (solid || p[0] < ground[0] || p[0] > ground[1]) return solid;
    const [x, y] = onPlane(plane, p);
    const top = underRoof(house, x, y) ? floor : level;
    return p[1] < top && p[1] > top - EARTH_DEPTH ? 'earth' : null;
  };
  const strips = [level, floor].flatMap((top) => rectangleLoop(ground[0], top - EARTH_DEPTH, ground[1], top));
  const deepest = Math.min(box.min[1], level, floor) - EARTH_DEPTH;
  const sides = roofEnds(house, plane, ground).map((x) => lineEdge([x, deepest], [x, Math.max(level, floor)]));
  const window = detail ? grown(detail, ROUND_DETAIL) : null;
  const heap = [...lines, ...strips, ...sides];
  return {
    ...(window ? cutIn(heap, labelAt, window) : cutOf(heap, labelAt)),
    window,
    ground,
    partAt: part,
  };
}

const grown = ({ min, max }: Box, by: number): Box => ({
  min: [min[0] - by, min[1] - by],
  max: [max[0] + by, max[1] + by],
});

/** The cut in a window; its loops are closed along the window's frame. */
const cutIn = (heap: readonly Edge[], labelAt: (p: Vec2) => Part | null, window: Box): Cut =>
  cutOf([...heap.flatMap((e) => clipEdge(e, window)), ...rectangleLoop(...window.min, ...window.max)], (p) =>
    inBox(p, window) ? labelAt(p) : null,
  );

/** Where the plane goes in under the house and out again. */
function roofEnds(house: HouseSetout, plane: CutPlane, reach: Vec2): number[] {
  const inside = (x: number) => {
    const [px, py] = onPlane(plane, [x, 0]);
    return underRoof(house, px, py);
  };
  const near = (a: number, b: number) => Math.abs(a - b) < CUT_POINT / 100;
  return rangesWhere(inside, reach[0], reach[1], 400, near).flat();
}

/** Bed joints of the cut blocks: narrow lines across the wall. */
export function bedsAcross(house: HouseSetout, plane: CutPlane, cut: UprightCut): Edge[] {
  const near = (a: number, b: number) => Math.abs(a - b) < SIGHT_CHANGE;
  return house.domes.flatMap((dome) => {
    const from = sub2(dome.at, plane.through);
    const off = dot2(from, [-plane.right[1], plane.right[0]]);
    const x0 = dot2(from, plane.right);
    return bedsOf(dome).flatMap(({ course, s }) =>
      [1, -1].flatMap((side) => {
        const at = (depth: number): Vec2 => {
          const [r, z] = spanPoint(spanOf(dome, course), s, depth);
          return [x0 + side * Math.sqrt(Math.max(0, r * r - off * off)), z];
        };
        const inWindow =
          !cut.window || [0, 0.5, 1].some((share) => inBox(at(share * dome.thickness), cut.window as Box));
        if (!inWindow) return [];
        const holds = (d: number) => {
          const p = at(d);
          // The plane may pass a dome's side, where it doesn't reach its higher beds.
          return p[0] !== x0 && cut.partAt(p) === 'blocks' && !inEarlier(house, dome, onPlane(plane, p));
        };
        return rangesWhere(holds, 0, dome.thickness, 12, near).map(([a, b]) => lineEdge(at(a), at(b)));
      }),
    );
  });
}
