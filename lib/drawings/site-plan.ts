import { formatLength, formatLevel } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import type { AlignedDimension, Primitive, TextPrimitive } from '../documents/drawing.js';
import {
  boxOf,
  circleEdge,
  type Edge,
  edgeAt,
  edgeBox,
  edgeLength,
  edgePart,
  lineEdge,
  loopsArea,
  uniteBoxes,
} from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { atan2 } from '../math/elementary.js';
import { add2, length2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { axisPrimitives } from './axes.js';
import type { Draft, DraftedView } from './draft.js';
import { TEXT } from './foot-blocks.js';
import { footprint } from './footprint.js';
import { underRoof } from './ground.js';
import { Layout, shapesOf } from './layout.js';
import { placeNote } from './leaders.js';
import { loopOf, strokesOf } from './paths.js';
import { nearestOf, type PlotSide, plotArea, plotSides, setbackLines } from './plot.js';
import { areaWords, writtenUnits } from './words.js';

/** The house on its plot: boundary, setback, distances to every side, levels. `null` when no plot is given. */
export function sitePlanDraft(house: HouseSetout): Draft | null {
  const { plot, setback, ground, northDeg } = house.house.site;
  if (plot === null) return null;
  const units = writtenUnits(house.house);
  const sides = plotSides(plot);
  const outline = footprint(house);
  const back = setback === null || setback === 0 ? [] : setbackLines(plot, setback);
  const edges: Edge[] = [...sides.map(({ from, to }) => lineEdge(from, to)), ...outline.flat()];
  const figure = uniteBoxes(edges.map(edgeBox));

  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, units, ([x, y]) => underRoof(house, x, y));
    layout.add(
      { kind: 'path', layer: 'ground', segments: sides.map(({ from, to }) => lineEdge(from, to)), closed: true },
      { kind: 'hatch', layer: 'hatch', pattern: 'blockwork', loops: outline.map(loopOf) },
      ...outline.map((loop): Primitive => ({ kind: 'path', layer: 'cut', segments: loopOf(loop), closed: true })),
      ...house.domes.flatMap((d) => (d.curb ? strokesOf('visible', [circleEdge(d.at, d.curb.clearRadius)]) : [])),
      ...axisPrimitives(house.domes.flatMap(({ at: [x, y] }) => cross(x, y, layout.mm(3)))),
    );
    for (const side of sides) addSide(layout, side);
    for (const side of sides) addDistance(layout, house, side);
    const [first] = house.domes;
    if (first) for (const side of twoSides(sides)) addPlace(layout, first.at, side);
    for (const dome of house.domes) {
      const away = sub2(dome.at, scale2(add2(figure.min, figure.max), 0.5));
      const spec = {
        at: dome.at,
        text: texts.floorLevel(dome.id, formatLevel(0, units)),
        first: length2(away) < 1 ? 0 : atan2(away[1], away[0]),
        longest: 74,
        inside: ([x, y]: Vec2) => underRoof(house, x, y),
        across: true,
      };
      placeNote(spec, layout);
    }
    addCaption(layout, sides, texts.boundaryOfPlot, 3);
    layout.add(...strokesOf('hidden', besideTexts(back, layout)));
    return {
      layout,
      foot: {
        title: texts.sitePlan,
        notes: [
          ...(setback === null ? [texts.noSetbackIsGiven] : [texts.dashedSetback(formatLength(setback, units))]),
          texts.distancesAreLevel(formatLength(house.house.wall.renderOutside, units), formatLevel(ground, units)),
          texts.axisOfIsTaped(first?.id),
          texts.plotCoveredByHouse(
            areaWords(Math.abs(plotArea(plot)) / 1e6, units),
            areaWords(Math.abs(loopsArea(outline)) / 1e6, units),
            ((100 * Math.abs(loopsArea(outline))) / Math.abs(plotArea(plot))).toFixed(1),
          ),
          texts.surveyorConfirmsBoundaryLevels,
        ],
        general: [],
        patterns: [],
        northDeg,
      },
    };
  };
  return { id: 'site', units, figure, draw };
}

const cross = (x: number, y: number, arm: number): Edge[] => [
  lineEdge([x - arm, y], [x + arm, y]),
  lineEdge([x, y - arm], [x, y + arm]),
];

/** Lines with gaps where texts stand. */
function besideTexts(edges: readonly Edge[], layout: Layout): Edge[] {
  const boxes = layout.primitives
    .flatMap((p) => shapesOf(p, layout.scale, layout.units).texts)
    .map(({ corners }) => {
      const { min, max } = boxOf(corners);
      const air = layout.mm(0.8);
      return { min: [min[0] - air, min[1] - air], max: [max[0] + air, max[1] + air] } as const;
    });
  const free = ([x, y]: Vec2) => !boxes.some(({ min, max }) => x > min[0] && x < max[0] && y > min[1] && y < max[1]);
  return edges.flatMap((edge) => {
    const length = edgeLength(edge);
    const near = (a: number, b: number) => Math.abs(a - b) * length < layout.mm(0.1);
    const samples = Math.max(2, Math.ceil(length / layout.mm(1)));
    return rangesWhere((t) => free(edgeAt(edge, t)), 0, 1, samples, near).map(([a, b]) => edgePart(edge, a, b));
  });
}

/** Length of a side, outside the plot. */
function addSide(layout: Layout, { from, to, inward }: PlotSide): void {
  const middle = scale2(add2(from, to), 0.5);
  layout.place(
    [8, 13, 18, 23].map((off): AlignedDimension[] => [
      { kind: 'dimension', type: 'aligned', from, to, line: add2(middle, scale2(inward, -layout.mm(off))) },
    ]),
  );
}

/** The least distance from a side to the house, where it is. */
function addDistance(layout: Layout, house: HouseSetout, side: PlotSide): void {
  const { on, house: face, distance } = nearestOf(house, side);
  if (distance < 1) return;
  layout.place(
    (['to', 'from'] as const).map((spill): AlignedDimension[] => [
      { kind: 'dimension', type: 'aligned', from: on, to: face, line: on, spill },
    ]),
  );
}

/** Two sides that run most nearly square to one another: from them a place is taped. */
function twoSides(sides: readonly PlotSide[]): readonly PlotSide[] {
  const [first, ...rest] = sides;
  if (!first) return [];
  const aside = (s: PlotSide) => Math.abs(first.inward[0] * s.inward[1] - first.inward[1] * s.inward[0]);
  const second = rest.reduce<PlotSide | null>((a, b) => (a && aside(a) >= aside(b) ? a : b), null);
  return second ? [first, second] : [first];
}

/** How far from an axis its distance from a side is measured, paper mm: on it, else where its figure lies free. */
const ASIDE = [0, 6, 12, 18, 26, 34, 42, 52, 64].flatMap((off) => (off === 0 ? [0] : [off, -off]));

/** Distance of the first dome's axis from a side's line. */
function addPlace(layout: Layout, at: Vec2, { from, inward }: PlotSide): void {
  const distance = (at[0] - from[0]) * inward[0] + (at[1] - from[1]) * inward[1];
  const foot = add2(at, scale2(inward, -distance));
  const along: Vec2 = [-inward[1], inward[0]];
  layout.place(
    ASIDE.map((aside): AlignedDimension[] => [
      {
        kind: 'dimension',
        type: 'aligned',
        from: foot,
        to: at,
        line: add2(foot, scale2(along, layout.mm(aside))),
        prefix: texts.axisSize,
      },
    ]),
  );
}

/** Words along the longest side, inside the plot. */
function addCaption(layout: Layout, sides: readonly PlotSide[], text: string, off: number): void {
  const long = sides.reduce((a, b) => (length2(sub2(b.to, b.from)) > length2(sub2(a.to, a.from)) ? b : a));
  const along = sub2(long.to, long.from);
  const turn = (atan2(along[1], along[0]) * 180) / Math.PI;
  const readable = turn > 90 || turn <= -90 ? turn + 180 : turn;
  const up = readable === turn ? 1 : -1;
  const left: Vec2 = [-along[1] / length2(along), along[0] / length2(along)];
  const inwardUp = left[0] * long.inward[0] + left[1] * long.inward[1] > 0 ? up : -up;
  const lift = inwardUp > 0 ? off : off + TEXT;
  layout.place(
    [0.25, 0.75, 0.5, 0.15, 0.85].map((share): TextPrimitive[] => [
      {
        kind: 'text',
        layer: 'text',
        at: add2(add2(long.from, scale2(along, share)), scale2(long.inward, layout.mm(lift))),
        text,
        heightMm: TEXT,
        anchor: 'centre',
        rotationDeg: readable,
      },
    ]),
  );
}
