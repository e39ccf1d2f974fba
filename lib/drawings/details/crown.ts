import { formatNominal } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import type { PlainPrimitive } from '../../documents/drawing.js';
import type { Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { spanPoint } from '../../setout/span.js';
import { clipTo } from '../clip.js';
import { placeChain, places, rowsFrom } from '../dims.js';
import type { Draft } from '../draft.js';
import { placeLevels } from '../levels.js';
import { crownOf } from '../section-domes.js';
import { type DetailNote, detailDraft } from './detail.js';
import { bareSide, meridianPoints, polyline, renderLines } from './places.js';

/** Kerb flange of a skylight and height of flashing up the curb, mm: common practice, no source. */
const FLANGE = 60;
const UPTURN = 100;

/** One detail for the first dome with a curb, and one for the first with a crown plug. */
export function crowns(house: HouseSetout): Draft[] {
  const curbed = house.domes.find((d) => d.curb);
  const plugged = house.domes.find((d) => d.plug);
  return [...(curbed ? [curbDetail(house, curbed)] : []), ...(plugged ? [plugDetail(house, plugged)] : [])];
}

function curbDetail(house: HouseSetout, dome: DomeSetout): Draft {
  const curb = dome.curb as NonNullable<DomeSetout['curb']>;
  const side = curb.bedOuter[0];
  const box = {
    min: [curb.clearRadius - 150, curb.bedOuter[1] - dome.thickness - 280] as Vec2,
    max: [side + 450, dome.topZ + 160] as Vec2,
  };
  const skin = meridianPoints(
    dome,
    dome.thickness + house.house.wall.renderOutside,
    curb.bedOuter[1] - 160,
    curb.bedOuter[1] + 200,
  )
    .filter(([x]) => x > side + 8)
    .reverse();
  const joint = curb.bedOuter[1];
  const extra = (): PlainPrimitive[] => [
    // Render ends where the curb's clear opening begins.
    ...clipTo(renderLines(house, dome, box.min[1], joint), { min: [curb.clearRadius, box.min[1]], max: box.max }),
    polyline('ground', [[side + 8, Math.min(dome.topZ, joint + UPTURN)], [side + 8, joint + 6], ...skin.slice(0, 14)]),
    polyline('visible', [
      [curb.clearRadius, dome.topZ],
      [curb.clearRadius, dome.topZ + 40],
      [side + 25, dome.topZ + 40],
      [side + 25, dome.topZ - 20],
    ]),
    polyline('visible', [
      [curb.clearRadius - 140, dome.topZ + 70],
      [curb.clearRadius, dome.topZ + 64],
      [side + 25, dome.topZ + 46],
    ]),
  ];
  return detailDraft(house, {
    id: `detail-curb-${dome.id}`,
    title: texts.curbOf(dome.id),
    plane: bareSide(house, dome),
    box,
    extra,
    notes: (_, __, units): DetailNote[] => [
      {
        at: [curb.clearRadius - 60, dome.topZ + 66],
        text: texts.skylightByItsMaker,
      },
      {
        at: [side + 25, dome.topZ + 10],
        text: texts.frameScrewedToPlugs(formatNominal(FLANGE, units)),
      },
      {
        at: [(curb.clearRadius + side) / 2, dome.topZ - 60],
        text: texts.curbCastInOne,
      },
      {
        at: [side + 8, joint + UPTURN * 0.6],
        text: texts.flashingUpCurbChased(formatNominal(UPTURN, units)),
      },
      {
        at: [side + 120, dome.heightAt(side + 120, dome.thickness / 2)],
        text: texts.lastCourseItsUpper,
      },
    ],
    sizes: (layout) => {
      const above = rowsFrom(layout, box.max[1], 1);
      const level = (xs: readonly number[], prefix = '') =>
        placeChain(layout, { angleDeg: 0, places: places(xs), from: () => dome.topZ, prefix }, above);
      level([curb.clearRadius, side], texts.curbSize);
      const columns = rowsFrom(layout, box.min[0], -1, 24);
      placeChain(layout, { angleDeg: 90, places: places([joint, dome.topZ]), from: () => curb.clearRadius }, columns);
      placeLevels(
        layout,
        [
          { z: dome.topZ, label: texts.topOfCurb },
          { z: crownOf(dome), label: texts.edgeOfOculus },
        ],
        box.min[0],
        () => curb.clearRadius,
      );
    },
    words: [texts.centreLineOfDome],
  });
}

function plugDetail(house: HouseSetout, dome: DomeSetout): Draft {
  const plug = dome.plug as NonNullable<DomeSetout['plug']>;
  const [inR, inZ] = spanPoint(dome.shell, plug.bedS, 0);
  const [outR, outZ] = spanPoint(dome.shell, plug.bedS, dome.thickness);
  const box = { min: [-80, inZ - 200] as Vec2, max: [outR + 420, dome.topZ + 120] as Vec2 };
  return detailDraft(house, {
    id: `detail-plug-${dome.id}`,
    title: texts.crownPlug(dome.id),
    plane: bareSide(house, dome),
    box,
    extra: () => [
      ...([1, -1] as const).flatMap((side) =>
        clipTo(renderLines(house, dome, box.min[1], dome.topZ + 100, 0, side), box),
      ),
      polyline('axis', [
        [0, inZ - 80],
        [0, box.max[1]],
      ]),
    ],
    notes: (): DetailNote[] => [
      {
        at: [outR * 0.3, (dome.topZ + dome.crownZ) / 2],
        text: texts.crownPlugCast,
      },
      {
        at: [(inR + outR) / 2, (inZ + outZ) / 2],
        text: texts.bedOfMortarSquare,
      },
      { at: [outR + 150, dome.heightAt(outR + 150, dome.thickness / 2)], text: texts.lastCourseOfBlocks },
      {
        at: [outR * 0.7, dome.heightAt(outR * 0.7, dome.thickness + house.house.wall.renderOutside)],
        text: texts.renderWithMeshCarried,
      },
    ],
    sizes: (layout) => {
      const above = rowsFrom(layout, box.max[1], 1);
      // The centre line itself goes through the plug.
      const under = (z: number) => (x: number) => (x === 0 ? box.max[1] : z);
      placeChain(
        layout,
        { angleDeg: 0, places: places([0, inR]), from: under(inZ), prefix: texts.intradosSize },
        above,
      );
      placeChain(
        layout,
        { angleDeg: 0, places: places([0, outR]), from: under(outZ), prefix: texts.extradosSize },
        above,
      );
      placeLevels(
        layout,
        [
          { z: dome.topZ, label: texts.topOfMasonry },
          { z: dome.crownZ, label: texts.crownIntrados },
        ],
        box.min[0],
        () => 0,
      );
    },
    words: [texts.sizesAreRadii],
  });
}
