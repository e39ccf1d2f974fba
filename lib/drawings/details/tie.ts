import { formatLength, formatLevel } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import type { PlainPrimitive } from '../../documents/drawing.js';
import { type Edge, lineEdge } from '../../math/curves.js';
import { add2, cross2, lerp2, perp2, scale2, sub2, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { spanPoint } from '../../setout/span.js';
import type { Draft } from '../draft.js';
import { bedsOf, spanOf } from '../joints.js';
import { detailDraft } from './detail.js';
import { bareSide, renderLines } from './places.js';

/** Free on each side of a bar, and cover to the face, mm: common practice, no source. */
const BETWEEN = 30;
/** How much of the wall is shown above and below, mm. */
const AROUND = 240;

/** Between bars and their dimension, paper mm. */
const ABOVE = 9;

/** A bed in the section: the way along it outward, and how far over a place in the wall it lies, mm. */
interface Bed {
  readonly along: Vec2;
  readonly over: number;
}

const LEVEL_BED: Bed = { along: [1, 0], over: 0 };

/** The bed joint nearest to a place in a dome's wall. */
function bedNear(dome: DomeSetout, at: Vec2): Bed {
  const beds = bedsOf(dome).map(({ course, s }): Bed => {
    const [inner, outer] = [0, dome.thickness].map((depth) => spanPoint(spanOf(dome, course), s, depth)) as [
      Vec2,
      Vec2,
    ];
    const along = scale2(sub2(outer, inner), 1 / dome.thickness);
    return { along, over: cross2(along, sub2(inner, at)) };
  });
  return beds.reduce((best, bed) => (Math.abs(bed.over) < Math.abs(best.over) ? bed : best), {
    along: [1, 0],
    over: Number.POSITIVE_INFINITY,
  });
}

/** What is cut out of the blocks for bars: their cover on all sides, and on to the bed that they are laid in from. */
function grooveOf(bars: readonly Vec2[], diameter: number, { along, over }: Bed): Edge[] {
  const [first, last] = [bars[0], bars[bars.length - 1]] as [Vec2, Vec2];
  const reach = diameter / 2 + BETWEEN;
  const at = (end: Vec2, out: number, up: number) => add2(add2(end, scale2(along, out)), scale2(perp2(along), up));
  const [low, high] = [Math.min(-reach, over), Math.max(reach, over)];
  const corners = [
    at(first, -reach, low),
    at(last, reach, low),
    at(last, reach, high),
    at(first, -reach, high),
  ] as const;
  return corners.map((corner, i) => lineEdge(corner, corners[(i + 1) % 4] as Vec2));
}

/** The closed hoop of steel where it lies in the first dome; `null` without one, or where no level is known for it. */
export function tieDetail(house: HouseSetout, levels: Readonly<Record<string, number>>): readonly Draft[] | null {
  const { tie } = house.house;
  const dome = house.domes.find((d) => levels[d.id] !== undefined);
  if (tie === null || tie === 'none' || !dome) return null;
  const z = levels[dome.id] as number;
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const inFooting = z < 0;
  const middle = inFooting
    ? ((footing?.innerRadius ?? dome.springingRadius) + (footing?.outerRadius ?? dome.springingRadius)) / 2
    : dome.radiusAt(z, dome.thickness / 2);
  const box = {
    min: [middle - dome.thickness * 0.9 - 60, z - AROUND] as Vec2,
    max: [middle + dome.thickness * 0.9 + 60, z + (inFooting ? -z + 120 : AROUND)] as Vec2,
  };
  const pitch = tie.diameter + BETWEEN;
  const bed = inFooting ? LEVEL_BED : bedNear(dome, [middle, z]);
  const bars = Array.from(
    { length: tie.bars },
    (_, i): Vec2 => add2([middle, z], scale2(bed.along, (i - (tie.bars - 1) / 2) * pitch)),
  );
  const groove = inFooting ? null : grooveOf(bars, tie.diameter, bed);
  const extra = (): PlainPrimitive[] => [
    ...(inFooting ? [] : renderLines(house, dome, box.min[1], box.max[1])),
    ...bars.flatMap((centre): PlainPrimitive[] => [
      { kind: 'circle', layer: 'cut', centre, radius: tie.diameter / 2 },
      {
        kind: 'hatch',
        layer: 'hatch',
        pattern: 'solid',
        loops: [
          [
            { kind: 'arc', centre, radius: tie.diameter / 2, start: 0, end: Math.PI, ccw: true },
            { kind: 'arc', centre, radius: tie.diameter / 2, start: Math.PI, end: 2 * Math.PI, ccw: true },
          ],
        ],
      },
    ]),
  ];
  const draft = detailDraft(house, {
    id: `detail-tie-${dome.id}`,
    title: texts.ringTie(dome.id),
    plane: bareSide(house, dome),
    box,
    extra,
    hollows: groove ? [groove] : [],
    notes: (_, __, units) => [
      {
        at: bars[bars.length - 1] as Vec2,
        text: texts.barsClosedHoop(tie.bars, formatLength(tie.diameter, units), formatLevel(z, units)),
      },
      {
        at: groove
          ? add2(bars[0] as Vec2, scale2(bed.along, -(tie.diameter + BETWEEN) / 2))
          : [middle - pitch, z + tie.diameter],
        text: inFooting ? texts.tiedIntoCage : texts.bedCutOut,
      },
      {
        at: bars[0] as Vec2,
        text: tie.lap === null ? texts.lapsAsEngineerGives : texts.lapsStaggeredQuarter(formatLength(tie.lap, units)),
      },
      {
        at: bars[0] as Vec2,
        text: texts.againstRustStainlessGalvanised,
      },
    ],
    sizes: (layout) => {
      if (bars.length < 2) return;
      const [first, last] = [bars[0], bars[bars.length - 1]] as [Vec2, Vec2];
      const off = scale2(perp2(bed.along), layout.mm(ABOVE) + tie.diameter);
      for (const [i, from] of bars.slice(0, -1).entries())
        layout.add({
          kind: 'dimension',
          type: 'aligned',
          from,
          to: bars[i + 1] as Vec2,
          line: add2(lerp2(first, last, 0.5), off),
          spill: 'to',
        });
    },
    words: [texts.tieCrossesNoOpening],
  });
  return [draft];
}
