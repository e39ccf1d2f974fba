import { formatLength, formatLevel } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import type { PlainPrimitive } from '../../documents/drawing.js';
import type { Vec2 } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { placeChain, places, rowsFrom } from '../dims.js';
import type { Draft } from '../draft.js';
import { detailDraft } from './detail.js';
import { bareSide, renderLines } from './places.js';

/** Free on each side of a bar, and cover to the face, mm: common practice, no source. */
const BETWEEN = 30;
/** How much of the wall is shown above and below, mm. */
const AROUND = 240;

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
  const bars = Array.from({ length: tie.bars }, (_, i): Vec2 => [middle + (i - (tie.bars - 1) / 2) * pitch, z]);
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
    notes: (_, __, units) => [
      {
        at: bars[bars.length - 1] as Vec2,
        text: texts.barsClosedHoop(tie.bars, formatLength(tie.diameter, units), formatLevel(z, units)),
      },
      {
        at: [middle - pitch, z + tie.diameter],
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
      const above = rowsFrom(layout, box.max[1], 1);
      placeChain(layout, { angleDeg: 0, places: places(bars.map((b) => b[0])), from: () => z }, above);
    },
    words: [texts.tieCrossesNoOpening],
  });
  return [draft];
}
