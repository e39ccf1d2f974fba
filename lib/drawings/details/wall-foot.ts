import { formatLength, formatNominal } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import type { PlainPrimitive } from '../../documents/drawing.js';
import { rectangle } from '../../documents/shapes.js';
import type { Vec2 } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { placeChain, places, rowsFrom } from '../dims.js';
import type { Draft } from '../draft.js';
import { placeLevels } from '../levels.js';
import { detailDraft } from './detail.js';
import { bareSide, polyline, renderLines } from './places.js';

/** Sizes of what common practice adds at a wall's foot, mm. */
const PIPE = 100;
const FILL = 100;
const DAMP = 6;
const LAP = 150;
const FALLING = 2000;
const SPLASH = 150;
const INSIDE = 650;
const OUTSIDE = 750;

/** The foot of a bare wall: footing, slab, damp-proof course, render, drain. */
export function wallFoot(house: HouseSetout): Draft | null {
  const [dome] = house.domes;
  if (!dome) return null;
  const { wall, site } = house.house;
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const slab = house.slabs.find((s) => s.domeId === dome.id);
  const [inner, outer] = [dome.springingRadius, dome.springingRadius + dome.thickness];
  const bottom = Math.min(footing?.bottomZ ?? 0, slab ? slab.bottomZ - FILL : 0, site.ground - 200);
  const top = Math.min(
    Math.max(450, house.house.blocks.courseHeight * 1.6),
    dome.springingZ > 0 ? Math.max(450, dome.springingZ) : 450,
  );
  const edge = footing?.outerRadius ?? slab?.radius ?? outer;
  const sole = footing?.bottomZ ?? slab?.bottomZ ?? site.ground - 300;
  const pipeZ = Math.min(sole + PIPE / 2, site.ground - 250);
  const trench = pipeZ - PIPE;
  // Load spreads under a sole at 45 degrees: a deeper trench keeps off it by as much, or takes its soil's support away.
  const near = edge + Math.max(20, sole - trench);
  const pipe: Vec2 = [near + 40 + PIPE, pipeZ];
  const far = pipe[0] + PIPE + 60;
  const box = {
    min: [inner - INSIDE, Math.min(bottom - 120, trench - 20)] as Vec2,
    max: [Math.max(Math.max(outer, edge) + OUTSIDE, far + 100), top] as Vec2,
  };
  const skin = outer + wall.renderOutside;
  // What the ground meets: the footing's face where that stands out of it, else the wall.
  const face = site.ground < 0 ? Math.max(skin, edge) : skin;
  const floorEnd = footing ? footing.innerRadius : (slab?.radius ?? inner);

  const extra = (): PlainPrimitive[] => [
    ...renderLines(house, dome, Math.max(site.ground + SPLASH, 0), top),
    // Damp-proof course on the footing, turned down over the sheet under the slab.
    { ...rectangle('visible', Math.min(inner, floorEnd) - 20, 0, skin, DAMP) },
    {
      kind: 'hatch',
      layer: 'hatch',
      pattern: 'solid',
      loops: [rectangle('visible', Math.min(inner, floorEnd) - 20, 0, skin, DAMP).segments],
    },
    ...(slab
      ? [
          polyline('cut', [
            [box.min[0], slab.bottomZ - 2],
            [floorEnd, slab.bottomZ - 2],
            [floorEnd, 0],
          ]),
          polyline('visible', [
            [box.min[0], slab.bottomZ - FILL],
            [floorEnd, slab.bottomZ - FILL],
          ]),
        ]
      : []),
    { kind: 'circle', layer: 'visible', centre: pipe, radius: PIPE / 2 },
    { kind: 'circle', layer: 'visible', centre: pipe, radius: PIPE / 2 - 5 },
    polyline('hidden', [
      [near, site.ground],
      [near, trench],
      [far, trench],
      [far, site.ground],
    ]),
    polyline('visible', [
      [face, site.ground],
      [box.max[0], site.ground - (box.max[0] - face) / 20],
    ]),
  ];
  return detailDraft(house, {
    id: 'detail-wall-foot',
    title: texts.wallFoot,
    plane: bareSide(house, dome),
    box,
    extra,
    notes: (_, __, units) => {
      const size = (mm: number) => formatLength(mm, units);
      return [
        { at: [inner + dome.thickness / 2, top * 0.7], text: texts.wallOfCastBlocks(size(dome.thickness)) },
        ...(wall.renderOutside > 0
          ? [
              {
                at: [outer + wall.renderOutside / 2, top * 0.55] as Vec2,
                text: texts.outsideRenderStopped(size(wall.renderOutside), formatNominal(SPLASH, units)),
              },
            ]
          : []),
        ...(wall.renderInside > 0
          ? [
              {
                at: [inner - wall.renderInside / 2, top * 0.4] as Vec2,
                text: texts.insideRender(size(wall.renderInside)),
              },
            ]
          : []),
        {
          at: [inner + dome.thickness * 0.4, DAMP / 2],
          text: texts.dampProofCourseOver(formatNominal(LAP, units)),
        },
        { at: [skin + 250, site.ground - 12], text: texts.groundFalls120(formatNominal(FALLING, units)) },
        ...(slab
          ? [
              {
                at: [floorEnd - 200, slab.bottomZ / 2] as Vec2,
                text: (footing ? texts.concreteSlabStrip : texts.concreteSlabCarries)(size(-slab.bottomZ)),
              },
              {
                at: [floorEnd - 260, slab.bottomZ - 2] as Vec2,
                text: texts.sheetAgainstDampLapped,
              },
              {
                at: [floorEnd - 320, slab.bottomZ - FILL / 2] as Vec2,
                text: texts.freeDrainingFillCompacted(formatNominal(FILL, units)),
              },
            ]
          : []),
        ...(footing
          ? [
              {
                at: [(footing.innerRadius + footing.outerRadius) / 2, footing.bottomZ / 2] as Vec2,
                text: texts.concreteFootingBars,
              },
            ]
          : []),
        {
          at: [pipe[0], pipe[1] + PIPE / 4],
          text: texts.landDrainFall1(formatNominal(PIPE, units)),
        },
        { at: [pipe[0] + PIPE + 30, (pipe[1] + site.ground) / 2], text: texts.gravelInFilterSheet },
      ];
    },
    sizes: (layout) => {
      const under = rowsFrom(layout, box.min[1], -1);
      const level = (xs: readonly number[]) =>
        placeChain(layout, { angleDeg: 0, places: places(xs), from: () => box.min[1] }, under);
      level(footing ? [footing.innerRadius, inner, outer, footing.outerRadius] : [inner, outer]);
      if (footing) level([footing.innerRadius, footing.outerRadius]);
      placeLevels(
        layout,
        [
          { z: 0, label: texts.finishedFloor },
          { z: site.ground, label: texts.ground },
          ...(slab ? [{ z: slab.bottomZ, label: texts.undersideOfSlab }] : []),
          ...(footing ? [{ z: footing.bottomZ, label: texts.soleOfFooting }] : []),
        ],
        box.min[0],
        () => box.min[0],
      );
    },
    words: [texts.dampProofCourseCarries, ...(sole > trench ? [texts.trenchKeepsOff] : [])],
  });
}
