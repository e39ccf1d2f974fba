import type { Primitive } from '../documents/drawing.js';
import { words } from '../documents/shapes.js';
import { type Box, lineEdge } from '../math/curves.js';
import type { Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { axisPrimitives } from './axes.js';
import { places } from './dims.js';
import { underRoof } from './ground.js';
import type { Layout } from './layout.js';

/** Bubble of a grid line, its letters, from the bubble to the house at least, paper mm. */
const BUBBLE = 4.5;
const LETTERS = 2.5;
const CLEAR = 3;
/** Least length of a line, and that of one that is cut short, paper mm. */
const STUB = 2;
/** The first place of a bubble beyond the whole plan, the steps outward, paper mm, and how many. */
const FIRST = 8;
const PLACE_STEP = 3;
const PLACES = 30;

/** One line of the setting-out grid through axes of domes: `E1` runs north at an easting, `N1` runs east at a northing. */
export interface GridLine {
  readonly name: string;
  readonly axis: 0 | 1;
  readonly at: number;
}

/** Lines through every dome's axis, eastings from the west and northings from the south. */
const gridLines = (house: HouseSetout): GridLine[] =>
  ([0, 1] as const).flatMap((axis) =>
    places(house.domes.map((d) => d.at[axis])).map((at, i) => ({
      name: `${axis === 0 ? 'E' : 'N'}${i + 1}`,
      axis,
      at,
    })),
  );

/** Names of the two lines that cross on a dome's axis. */
export const gridNames = (house: HouseSetout, at: Vec2): string =>
  ([0, 1] as const)
    .map((axis) => gridLines(house).filter((g) => g.axis === axis))
    .map(
      (lines, axis) =>
        lines.reduce((a, b) => (Math.abs(b.at - (at[axis] as number)) < Math.abs(a.at - (at[axis] as number)) ? b : a))
          .name,
    )
    .join(' / ');

/** Where a grid line's bubble is tried, and all that is drawn of the line then. */
interface Bubble {
  readonly bubble: Vec2;
  readonly parts: readonly Primitive[];
}

/** Bubbles of the grid beyond a plan, each with its line up to the house. */
export function addGrid(house: HouseSetout, reach: readonly [Vec2, Vec2], layout: Layout): void {
  for (const line of gridLines(house)) {
    const across = reach[line.axis === 0 ? 1 : 0];
    const put = (along: number): Vec2 => (line.axis === 0 ? [line.at, along] : [along, line.at]);
    // Eastings stand above the plan, northings to its right: dimensions come to the other sides first.
    const group = (side: number, centre: number, start: number): Bubble => {
      const near = centre - side * layout.mm(BUBBLE);
      const [x, y] = put(centre);
      const parts: Primitive[] = [
        { kind: 'circle', layer: 'axis', centre: [x, y], radius: layout.mm(BUBBLE) },
        words('text', line.name, [x, y - layout.mm(LETTERS / 2)], LETTERS, 'centre'),
        ...axisPrimitives([lineEdge(put(start), put(near))]),
      ];
      return { bubble: [x, y], parts };
    };
    const sides = [1, -1].map((side) => {
      const edge = side > 0 ? across[1] : across[0];
      return { side, edge, start: houseEdge(house, put, edge, side) + side * layout.mm(CLEAR) };
    });
    const steps = Array.from({ length: PLACES }, (_, i) => layout.mm(PLACE_STEP * i));
    function* tries(): Generator<Bubble> {
      for (const { side, edge, start } of sides)
        for (const step of steps) yield group(side, edge + side * (layout.mm(FIRST) + step), start);
      // Else as near as there is room to where the line leaves the house.
      for (const step of steps)
        for (const { side, start } of sides) yield group(side, start + side * (layout.mm(STUB + BUBBLE) + step), start);
      // Where words stand in the way, the line is cut short before them.
      for (const step of steps) {
        for (const { side, start } of sides) {
          const centre = start + side * (layout.mm(STUB + BUBBLE) + step);
          yield group(side, centre, centre - side * layout.mm(BUBBLE + STUB));
        }
      }
    }
    function* partsOf(isGood: (bubble: Vec2) => boolean): Generator<readonly Primitive[]> {
      for (const { bubble, parts } of tries()) if (isGood(bubble)) yield parts;
    }
    const isClear = (bubble: Vec2) => layout.isClear(squareAbout(bubble, layout.mm(BUBBLE)));
    if (!layout.placeFree(partsOf(isClear))) layout.place(partsOf(() => true));
  }
}

const squareAbout = ([x, y]: Vec2, half: number): Box => ({ min: [x - half, y - half], max: [x + half, y + half] });

/** Where a grid line leaves the house on its way out. */
function houseEdge(house: HouseSetout, put: (along: number) => Vec2, edge: number, side: number): number {
  const step = EDGE_STEP * side;
  let at = edge;
  for (let i = 0; i < MOST_STEPS; i++) {
    const [x, y] = put(at);
    if (underRoof(house, x, y)) return at;
    at -= step;
  }
  return edge;
}

/** A grid line begins this near to the house, mm; it is looked for so far in. */
const EDGE_STEP = 100;
const MOST_STEPS = 4000;
