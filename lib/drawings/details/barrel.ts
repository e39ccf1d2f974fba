import { formatLength, formatNominal } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import { ONE_SIZE } from '../../base/tolerances.js';
import type { PlainPrimitive } from '../../documents/drawing.js';
import { hypot } from '../../math/elementary.js';
import type { Vec2 } from '../../math/vec.js';
import type { ArchSetout } from '../../setout/arch.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { fromArchFrame } from '../arch-places.js';
import { placeChain, places, rowsFrom } from '../dims.js';
import type { Draft } from '../draft.js';
import { placeLevels } from '../levels.js';
import { type DetailNote, detailDraft } from './detail.js';
import { meridianPoints, NOTE_MARGIN, planeAlong, polyline, renderLines, wallAbove } from './places.js';

/** Flashing up and along from a valley, and the fillet of mortar that it is dressed over, mm: common practice, no source. */
const FLASH = 150;
const FILLET = 60;

/** The head of an opening along its axis, and its springing across it: the first barrel, else the first opening. */
export function barrels(house: HouseSetout): Draft[] {
  const arch =
    house.arches.find((a) => a.faceV !== null && a.clear.kind === 'through' && a.section.arc) ??
    house.arches.find((a) => a.faceV !== null && a.clear.kind === 'through') ??
    house.arches.find((a) => a.clear.kind === 'through');
  return arch ? [headDetail(house, arch), springingDetail(house, arch)] : [];
}

function headDetail(house: HouseSetout, arch: ArchSetout): Draft {
  const { dome, section, topZ, faceV, opening, ring } = arch;
  const wallOut = dome.outerRadiusAt(Math.min(topZ, dome.topZ));
  const inside = dome.radiusAt(section.crownZ);
  const end = faceV ?? dome.outerRadiusAt(section.crownZ);
  const box = {
    min: [inside - 250, section.crownZ - 260] as Vec2,
    max: [Math.max(end, wallOut) + 220, topZ + 420] as Vec2,
  };
  const round = section.head.shape !== 'flat';
  const skin = meridianPoints(dome, dome.thickness, topZ, topZ + FLASH);
  const frameV = end - 60;
  const extra = (): PlainPrimitive[] => [
    ...renderLines(house, dome, topZ + 20, box.max[1]),
    ...(faceV !== null && skin.length > 1
      ? [
          polyline('visible', [
            [wallOut + FILLET, topZ],
            [dome.outerRadiusAt(Math.min(topZ + FILLET, dome.topZ)), topZ + FILLET],
          ]),
          polyline('ground', [
            [Math.min(faceV - 40, wallOut + FLASH + FILLET), topZ + 4],
            [wallOut + FILLET, topZ + 4],
            ...skin.filter(([, z]) => z > topZ + FILLET).map(([x, z]): Vec2 => [x + 6, z]),
          ]),
        ]
      : []),
    polyline('visible', [
      [frameV - 45, section.crownZ],
      [frameV - 45, section.crownZ - opening.frame],
      [frameV, section.crownZ - opening.frame],
      [frameV, section.crownZ],
    ]),
    ...(faceV !== null
      ? [
          polyline('visible', [
            [faceV + house.house.wall.renderOutside, section.crownZ - 0.1],
            [faceV + house.house.wall.renderOutside, topZ + 10],
            [faceV - 60, topZ + 10],
          ]),
        ]
      : []),
  ];
  return detailDraft(house, {
    id: `detail-head-${arch.id}`,
    title: texts.headOf(arch.id),
    plane: planeAlong(dome.at, arch.along),
    box,
    extra,
    notes: (_, __, units): DetailNote[] => [
      {
        at: wallAbove(dome, topZ, box.min[0]),
        text: texts.coursesCutToRing,
      },
      ...(faceV !== null
        ? [
            {
              at: [dome.outerRadiusAt(Math.min(topZ + FLASH * 0.8, dome.topZ)) + 6, topZ + FLASH * 0.8] as Vec2,
              text: texts.flashingUpDomeChased(formatNominal(FLASH, units)),
            },
            {
              at: [wallOut + FILLET * 0.45, topZ + FILLET * 0.5] as Vec2,
              text: round ? texts.filletOfMortarFalls : texts.mortarToFall1,
            },
            {
              at: [(wallOut + faceV) / 2 + 60, topZ - ring / 2] as Vec2,
              text: round
                ? texts.barrelRing(formatLength(ring, units))
                : texts.reinforcedLintelEngineers(formatLength(ring, units)),
            },
            {
              at: [faceV + house.house.wall.renderOutside, section.crownZ + 30] as Vec2,
              text: texts.renderWithDrip,
            },
          ]
        : [
            {
              at: [(inside + end) / 2, topZ - ring / 2] as Vec2,
              text: texts.ringFlushWithWall(formatLength(ring, units)),
            },
          ]),
      {
        at: [frameV - 20, section.crownZ - opening.frame / 2],
        text: texts.frameFixedToPlugs(formatLength(opening.frame, units)),
      },
    ],
    sizes: (layout) => {
      const under = rowsFrom(layout, box.min[1], -1);
      const xs = faceV !== null ? [inside, faceV] : [inside, end];
      placeChain(layout, { angleDeg: 0, places: places(xs), from: () => section.crownZ }, under);
      // Marks come first: they stand at their levels, and the ring's size goes beside them.
      placeLevels(
        layout,
        [
          { z: section.crownZ, label: texts.headLevel },
          { z: topZ, label: texts.topOfRing },
        ],
        box.min[0],
        () => inside,
      );
      const columns = rowsFrom(layout, box.min[0], -1, 24);
      placeChain(
        layout,
        // Over a pointed head the ring measures more upright than across.
        {
          angleDeg: 90,
          places: places([section.crownZ, topZ]),
          from: () => inside,
          prefix: Math.abs(topZ - section.crownZ - ring) < ONE_SIZE ? texts.ringSize : texts.uprightSize,
        },
        columns,
      );
    },
    words: [texts.centeringStaysUnderRing],
  });
}

function springingDetail(house: HouseSetout, arch: ArchSetout): Draft {
  const { dome, section, ring, topZ } = arch;
  const half = section.width / 2;
  const middle = dome.radiusAt(Math.min(section.springingZ, dome.crownZ), dome.thickness / 2);
  const box = {
    min: [Math.max(0, half - 420), section.springingZ - 350] as Vec2,
    max: [half + ring + 480, Math.min(topZ, section.springingZ + 520) + 60] as Vec2,
  };
  return detailDraft(house, {
    id: `detail-springing-${arch.id}`,
    title: texts.springingOf(arch.id),
    plane: planeAlong(fromArchFrame(arch, 0, middle), arch.across),
    box,
    extra: () => [],
    notes: (_, __, units): DetailNote[] => [
      {
        at: [half + ring / 2, section.springingZ - 200],
        text: jambWords(house)(formatLength(ring, units)),
      },
      {
        at: [half + ring / 2, section.springingZ + 60],
        text: section.head.shape === 'flat' ? texts.bearingOfLintelEngineers : texts.springingRingAndJamb,
      },
      { at: wallBeside(dome, middle, half + ring, section.springingZ), text: texts.coursesOfBlocksCut },
      {
        at: [half + ring + house.house.blocks.joint / 2, section.springingZ - 280],
        text: texts.jointFilledTies(formatLength(house.house.blocks.joint, units)),
      },
    ],
    sizes: (layout) => {
      const under = rowsFrom(layout, box.min[1], -1);
      placeChain(layout, { angleDeg: 0, places: places([half, half + ring]), from: () => box.min[1] }, under);
      placeLevels(layout, [{ z: section.springingZ, label: texts.springingOfHead }], box.min[0], () => half);
    },
    words: [texts.cutSquareToOpenings],
  });
}

/** How far down a jamb goes: to what the walls of the house stand on. */
function jambWords({ footings, slabs }: HouseSetout): (ring: string) => string {
  if (footings.length > 0) return texts.jambCastOrLaid;
  return slabs.length > 0 ? texts.jambDownToSlab : texts.jambDownToFoot;
}

/** A place in the wall beside a jamb, in a plane square to the opening's axis `v` from the dome's: it thins upward there. */
function wallBeside(dome: DomeSetout, v: number, jamb: number, springingZ: number): Vec2 {
  const tries = [60, 120, 180, 240, 300].flatMap((down) =>
    [120, 80, 40].map((out): Vec2 => [jamb + out, springingZ - down]),
  );
  const inWall = ([u, z]: Vec2) => {
    const r = hypot(u, v);
    return r > dome.radiusAt(z) && r < dome.outerRadiusAt(z) - NOTE_MARGIN;
  };
  return tries.find(inWall) ?? [jamb + 40, springingZ - 300];
}
