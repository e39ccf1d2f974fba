import { formatLength } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import type { View } from '../documents/drawing.js';
import { lineEdge } from '../math/curves.js';
import { dot2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { axisPrimitives } from './axes.js';
import { cutLevel, planLevel } from './cut-level.js';
import { legibleChains, placeChain, places, rowsFrom } from './dims.js';
import { type Draft, type DraftedView, footedView } from './draft.js';
import { baseReach, cutReach, masonryReach } from './extent.js';
import type { ScaleOptions } from './fit.js';
import { addGrid } from './grid.js';
import { NOTHING_HANDED } from './handed.js';
import { addHeadroomWords, headroomLines, headroomOf, headroomWords } from './headroom.js';
import { Layout } from './layout.js';
import { addPartitionMarks, partitionPlans, partitionWords } from './partitions.js';
import { PATTERN_OF, type Part, partAt } from './parts.js';
import { planFigure } from './plan-figure.js';
import { leafWords, leaves } from './plan-leaves.js';
import { addOpeningName, addOpeningWidth, openingAxis, ringWords } from './plan-openings.js';
import { addAxisDistances, addPassageWidth, addRadius, addRoomNames, clusterWords } from './plan-rooms.js';
import { quickHouse } from './quick-house.js';
import { rayHouse } from './ray-house.js';
import { addSectionMarks } from './section-marks.js';
import { houseSections } from './section-plane.js';
import { baseWords, projectWords, wallWords, writtenUnits } from './words.js';

export interface PlanOptions extends ScaleOptions {
  /** Level of the cut above the finished floor, mm; default: near 1200, where it goes through the most openings. */
  readonly height?: number;
}

/** A floor plan: what a level plane cuts, what is seen below it, what lies overhead or in the ground, main sizes. */
export const planView = (house: HouseSetout, options: PlanOptions = {}): View =>
  footedView(planDraft(house, options.height), projectWords(house.house), options);

export function planDraft(house: HouseSetout, height = planLevel(house)): Draft {
  const units = writtenUnits(house.house);
  const level = cutLevel(house, height);
  const { primitives, cut } = planFigure(house, level);
  const east: Vec2 = [1, 0];
  const north: Vec2 = [0, 1];
  const masonry = [masonryReach(house, east), masonryReach(house, north)] as const;
  const whole = [east, north].map((d, i) => {
    const [a, b] = masonry[i as 0 | 1];
    const base = baseReach(house, d);
    return [Math.min(a, base?.[0] ?? a), Math.max(b, base?.[1] ?? b)] as const;
  }) as [Vec2, Vec2];
  const sections = houseSections(house);
  const inStrip = rayHouse(quickHouse(house), north);
  const solid = (at: Vec2) => partAt(inStrip(at).house, [at[0], at[1], level]) !== null;

  const headroom = headroomOf(units);
  const closing = [...leaves(house), ...partitionPlans(house, level), ...headroomLines(house, headroom)];

  const draw = (scale: number, { floors } = NOTHING_HANDED): DraftedView => {
    const layout = new Layout(scale, units, solid);
    layout.add(...primitives, ...closing);
    const many = house.domes.length > 1;
    const crosses = house.domes.flatMap((d) => {
      // Whole centre lines leave no room for texts in the small rooms of a cluster.
      const arm = many ? layout.mm(3) : d.springingRadius + d.thickness + layout.mm(4);
      const [x, y] = d.at;
      return [lineEdge([x - arm, y], [x + arm, y]), lineEdge([x, y - arm], [x, y + arm])];
    });
    layout.add(...axisPrimitives([...crosses, ...house.arches.map((a) => openingAxis(house, a, layout))]));

    // In a cluster's small rooms names go before what can stand elsewhere.
    if (many) addRoomNames(house, layout, floors);
    const keys: string[] = [];
    for (const arch of house.arches) {
      const told = addOpeningWidth(house, arch, layout);
      addOpeningName(house, arch, told, layout, keys);
    }
    for (const dome of house.domes) addRadius(house, dome, layout);
    if (!many) addRoomNames(house, layout, floors);
    for (const passage of house.passages) addPassageWidth(house, passage, layout);
    const distances = addAxisDistances(house, layout);
    addPartitionMarks(house, layout);
    addHeadroomWords(house, headroom, layout);

    const axes = (d: Vec2) => house.domes.map((dome) => dot2(dome.at, d));
    const walls = house.domes.length === 1 ? house.domes.flatMap(wallPlaces) : [];
    const legible = (values: readonly number[]) => legibleChains(layout, places(values));
    const chains: readonly (readonly [0 | 90, readonly (readonly number[])[]])[] = [
      [0, [...legible([masonry[0][0], ...walls, ...axes(east), masonry[0][1]]), masonry[0]]],
      [90, [...legible([masonry[1][0], ...axes(north), masonry[1][1]]), masonry[1]]],
    ];
    const sides = { 0: freeSide(layout, 1, whole[1]), 90: freeSide(layout, 0, whole[0]) };
    for (const [angleDeg, each] of chains) {
      const { edge, away } = sides[angleDeg];
      for (const chain of each)
        placeChain(layout, { angleDeg, places: chain, from: () => edge }, rowsFrom(layout, edge, away));
    }
    for (const plane of sections) addSectionMarks(plane, cutReach(house, plane), layout);
    addGrid(house, whole, layout);

    const title = texts.floorPlan;
    const used = (Object.keys(PATTERN_OF) as Part[]).filter((p) => cut.loops(p).length > 0).map((p) => PATTERN_OF[p]);
    const foot = {
      title,
      notes: [
        texts.cutAboveFinishedFloor(formatLength(height, layout.units)),
        ...(keys.length > 0 ? [texts.openingsKey(keys.map((k, i) => `(${i + 1}) ${k}`).join('; '))] : []),
        headroomWords(house, headroom, units),
        ...partitionWords(house, units),
        ...leafWords(house),
        ...clusterWords(house, layout),
        ...(distances.length > 0 ? [texts.betweenAxes(distances.join('; '))] : []),
        ...ringWords(house, layout),
      ],
      general: [wallWords(house.house, units), baseWords(house.house, units)],
      patterns: [...new Set(used)],
      northDeg: house.house.site.northDeg,
    };
    return { layout, foot };
  };
  const box = { min: [whole[0][0], whole[1][0]] as Vec2, max: [whole[0][1], whole[1][1]] as Vec2 };
  return { id: 'plan', units, figure: box, draw };
}

/** Faces of a dome's wall at the floor, from west to east. */
const wallPlaces = ({ at, springingRadius, thickness }: DomeSetout): number[] =>
  [-1, 1].flatMap((s) => [at[0] + s * springingRadius, at[0] + s * (springingRadius + thickness)]);

/** The side on which the openings' notes reach out less, and where dimensions may begin there. */
function freeSide(layout: Layout, axis: 0 | 1, figure: Vec2): { edge: number; away: 1 | -1 } {
  const { min, max } = layout.bounds();
  const [low, high] = [figure[0] - min[axis], max[axis] - figure[1]];
  const clear = layout.mm(6);
  if (low <= high + clear) return { edge: low > clear ? min[axis] : figure[0] - layout.mm(1), away: -1 };
  return { edge: high > clear ? max[axis] : figure[1] + layout.mm(1), away: 1 };
}
