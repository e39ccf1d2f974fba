import { figureText } from '../base/reader-units.js';
import * as texts from '../base/texts/drawing-plans.js';
import { SAME_POINT, STROKES_MEET } from '../base/tolerances.js';
import { formatLength, type LengthUnit } from '../base/units.js';
import type { PlainPrimitive, Primitive, View } from '../documents/drawing.js';
import { type Box, type Edge, lineEdge } from '../math/curves.js';
import { cross2, dot2, length2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import type { DomeStatics, Statics } from '../statics/results.js';
import { uprightAxis } from './axes.js';
import { clipTo } from './clip.js';
import { type Draft, type DraftedView, footedView } from './draft.js';
import { mainLevels } from './elevation.js';
import { figureBox } from './fit.js';
import { Layout } from './layout.js';
import { placeLevels } from './levels.js';
import { inEarlier, PATTERN_OF, type Part } from './parts.js';
import { cutFigure } from './section-figure.js';
import { type SectionPlane, sectionPlane } from './section-plane.js';
import { onPlane } from './slice-upright.js';
import { baseWords, projectWords, wallWords, writtenUnits } from './words.js';

/**
 * One section a dome with its line of thrust, through wall that no opening cuts where there is such; the dome is cut
 * whole, with the ground beside it. For a sheet of the structural summary.
 */
export const thrustDrafts = (house: HouseSetout, statics: Statics): Draft[] =>
  house.domes.flatMap((dome) => {
    const found = statics.domes.find((d) => d.id === dome.id);
    return found ? [thrustDraft(house, wholePlane(house, dome), found)] : [];
  });

/** The same as views, each a drawing of its own. */
export const thrustViews = (house: HouseSetout, statics: Statics): View[] =>
  thrustDrafts(house, statics).map((draft) => footedView(draft, projectWords(house.house)));

type Side = -1 | 1;
const SIDES: readonly Side[] = [-1, 1];

/** The line of thrust from crown to base in a section, on one side of the axis at `x`; model mm. */
function thrustEdges({ thrust }: DomeStatics, x: number, side: Side): Edge[] {
  // Near the axis lunes shrink to nothing, and their line may run beyond it.
  const points: Vec2[] = [];
  for (const { r, z } of thrust.line) {
    const last = points[points.length - 1];
    const at: Vec2 = [x + side * r, z];
    // Sections stand close where loads change their law: one point does for both.
    if (r >= 0 && !(last && length2(sub2(at, last)) < STROKES_MEET)) points.push(at);
  }
  return points.slice(1).map((p, i) => lineEdge(points[i] as Vec2, p));
}

/** Line of thrust and tie as primitives on the layer `thrust`, on the sides of the dome that the plane cuts whole. */
function thrustPrimitives(house: HouseSetout, plane: SectionPlane, found: DomeStatics, dot: number): Primitive[] {
  const dome = plane.domes.find((d) => d.id === found.id);
  if (!dome) return [];
  const x = axisAlong(plane, dome);
  const { tie } = found;
  return SIDES.filter((side) => cutBy(house, plane, dome, side).length === 0).flatMap((side): Primitive[] => {
    const segments = thrustEdges(found, x, side);
    const line: Primitive[] = segments.length > 0 ? [{ kind: 'path', layer: 'thrust', segments, closed: false }] : [];
    if (!tie) return line;
    const r = tie.place === 'footing' ? dome.springingRadius : dome.radiusAt(tie.z);
    return [
      ...line,
      { kind: 'circle', layer: 'thrust', centre: [x + side * (r + dome.thickness / 2), tie.z], radius: dot },
    ];
  });
}

/** What takes of a dome's wall on one side of a plane through its axis. */
function cutBy(house: HouseSetout, plane: SectionPlane, dome: DomeSetout, side: Side): string[] {
  const out: Vec2 = [side * plane.right[0], side * plane.right[1]];
  const meets = (along: Vec2, half: number) => {
    const reach = dome.springingRadius;
    return dot2(along, out) > 0 && Math.abs(cross2(along, out)) * reach < half;
  };
  return [
    ...archesOf(house, dome)
      .filter((a) => meets(a.along, a.section.width / 2 + a.ring))
      .map((a) => a.id),
    ...passagesOf(house, dome)
      .filter((p) => {
        const turn = p.domes[0] === dome ? 1 : -1;
        return meets([turn * p.along[0], turn * p.along[1]], p.section.width / 2 + p.ring);
      })
      .map((p) => p.id),
    ...(inEarlier(house, dome, onPlane(plane, [axisAlong(plane, dome) + side * dome.springingRadius, 0]))
      ? earlierThan(house, dome).map((d) => d.id)
      : []),
  ];
}

const axisAlong = (plane: SectionPlane, dome: DomeSetout): number =>
  dot2([dome.at[0] - plane.through[0], dome.at[1] - plane.through[1]], plane.right);

/** How much is shown beside a dome's footing, mm. */
const BESIDE = 500;

/** Steps in which a plane through whole wall is looked for, degrees. */
const TURN = 5;

/** The plane through a dome's axis that cuts the least, the first from the house's own section on. */
function wholePlane(house: HouseSetout, dome: DomeSetout): SectionPlane {
  const first = sectionPlane(house, { domeId: dome.id });
  let best = first;
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 180 && least > 0; turn += TURN) {
    const plane = sectionPlane(house, { domeId: dome.id, bearingDeg: first.bearingDeg + turn });
    const cuts = SIDES.filter((side) => cutBy(house, plane, dome, side).length > 0).length;
    if (cuts < least) [best, least] = [plane, cuts];
  }
  return best;
}

function thrustDraft(house: HouseSetout, plane: SectionPlane, found: DomeStatics): Draft {
  const units = writtenUnits(house.house);
  // What lies beyond the cut says nothing of thrust.
  const { dome } = plane;
  const x = axisAlong(plane, dome);
  const { ground } = house.house.site;
  const reach = (house.footings.find((f) => f.domeId === dome.id)?.outerRadius ?? dome.outerRadiusAt(0)) + BESIDE;
  const deepest = Math.min(0, ...[...house.footings, ...house.slabs].map((base) => base.bottomZ));
  const { primitives, cut } = cutFigure(house, plane, { min: [x - reach, deepest], max: [x + reach, dome.topZ] });
  const low = figureBox(cut.loops()).min[1];
  const figure: Box = { min: [x - reach, low], max: [x + reach, dome.topZ] };
  // A line along the very frame would be lost.
  const shown = clipTo(primitives as PlainPrimitive[], { min: figure.min, max: [figure.max[0], figure.max[1] + 1] });
  const draw = (scale: number): DraftedView => {
    const layout = new Layout(scale, units);
    layout.add(...shown, ...thrustPrimitives(house, plane, found, layout.mm(0.7)));
    layout.add(...uprightAxis(x, low - layout.mm(3), dome.topZ + layout.mm(4)));
    const { cutZ } = found;
    placeLevels(
      layout,
      [
        ...mainLevels(house, [dome]),
        ...(cutZ > SAME_POINT ? [{ z: cutZ, label: texts.ringsClosedAbove }] : []),
        ...(found.tie ? [{ z: found.tie.z, label: texts.ringTie }] : []),
      ],
      figure.min[0],
      // At its very top a dome has no radius left.
      (z) => (z > ground ? x - (z < dome.topZ ? dome.outerRadiusAt(z) : 0) : figure.min[0]),
    );
    const used = (Object.keys(PATTERN_OF) as Part[]).filter((p) => cut.loops(p).length > 0).map((p) => PATTERN_OF[p]);
    return {
      layout,
      foot: {
        title: texts.lineOfThrustDome(dome.id),
        notes: [lineWords(found, house.house.units), tieWords(found, house.house.units)],
        general: [wallWords(house.house, units), baseWords(house.house, units)],
        patterns: [...new Set(used)],
      },
    };
  };
  return {
    id: `thrust-${dome.id}`,
    units,
    figure,
    draw,
  };
}

function lineWords({ thrust }: DomeStatics, units: LengthUnit): string {
  const { line, loads, factor, least } = thrust;
  if (line.length === 0) return texts.noThrustFits(loads);
  const foot = least === null ? texts.noThrustFitsIntoWall : texts.leastThrustAtFoot(figureText(least, 'kN', units));
  return texts.thrustCaption(loads, factor.toFixed(2), foot);
}

const tieWords = ({ tie }: DomeStatics, units: LengthUnit): string =>
  tie ? texts.ringTieCircleBars(tie.tie.bars, formatLength(tie.tie.diameter, units), tie.strength) : texts.noRingTie;
