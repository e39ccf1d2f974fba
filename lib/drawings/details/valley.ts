import { formatLength, formatNominal } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import type { PlainPrimitive } from '../../documents/drawing.js';
import { type Box, edgeAt } from '../../math/curves.js';
import { dot2, length2, lerp2, scale2, sub2, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import { earlierThan, type HouseSetout } from '../../setout/house.js';
import type { PassageSetout } from '../../setout/passage.js';
import type { Draft } from '../draft.js';
import { placeLevels } from '../levels.js';
import { strokesOf } from '../paths.js';
import type { UprightCut } from '../upright-cut.js';
import { outsideValleys } from '../valleys.js';
import { type DetailNote, detailDraft } from './detail.js';
import { planeAlong, polyline, wallAbove } from './places.js';

/** How far flashing runs up both sides of a valley, and how wide a movement joint is, mm: common practice, no source. */
const FLASH = 200;
const JOINT = 10;
/** Steps in which a curved surface is followed, mm of height. */
const STEP = 5;

/** The first abutment's valley, and the first passage that lies open between its domes. */
export function valleyDetails(house: HouseSetout): Draft[] {
  const pair = house.domes.flatMap((later) => earlierThan(house, later).map((earlier) => [earlier, later] as const))[0];
  const open = house.passages.find((p) => !pairAbuts(house, p));
  return [...(pair ? [abutment(house, ...pair)] : []), ...(open ? [passageRoof(house, open)] : [])];
}

const pairAbuts = (house: HouseSetout, { domes: [a, b] }: PassageSetout): boolean =>
  earlierThan(house, a).some((d) => d.id === b.id) || earlierThan(house, b).some((d) => d.id === a.id);

/** Where two parts of the cut meet: what a movement joint parts. */
const jointLines = (cut: UprightCut): PlainPrimitive[] =>
  strokesOf(
    'ground',
    cut.borders
      .filter(({ left, right }) => [left, right].includes('passage') && [left, right].includes('blocks'))
      .map((b) => b.edge),
  ) as PlainPrimitive[];

/** Where the line between passage and blocks lies in a detail. */
function jointAt(cut: UprightCut, { min, max }: Box): Vec2 | null {
  const lines = cut.borders.filter(
    ({ left, right }) => [left, right].includes('passage') && [left, right].includes('blocks'),
  );
  const points = lines.map((b) => edgeAt(b.edge, 0.5));
  return points.find(([x, z]) => x > min[0] && x < max[0] && z > min[1] && z < max[1]) ?? null;
}

/** Distance from the axis of the middle of a dome's wall at a level. */
const inWall = (dome: DomeSetout, z: number): number =>
  dome.radiusAt(Math.min(z, dome.crownZ), dome.thickness / 2) || 0;

/** The outer surface of a dome in its own upright plane, from a level up along it for a length. */
function skinAbove(dome: DomeSetout, x0: number, side: 1 | -1, from: number, along: number): Vec2[] {
  const at = (z: number): Vec2 => [x0 + side * (dome.outerRadiusAt(Math.min(z, dome.topZ)) || 0), z];
  const points = [at(from)];
  let left = along;
  for (let z = from + STEP; left > 0 && z < dome.topZ; z += STEP) {
    const [last, next] = [points[points.length - 1] as Vec2, at(z)];
    const length = length2(sub2(next, last));
    points.push(length < left ? next : lerp2(last, next, left / length));
    left -= length;
  }
  return points;
}

function abutment(house: HouseSetout, earlier: DomeSetout, later: DomeSetout): Draft {
  const between = sub2(later.at, earlier.at);
  const distance = length2(between);
  const along = scale2(between, 1 / distance);
  const valleys = outsideValleys({ ...house, domes: [earlier, later] });
  const top = valleys[0]?.top ?? ([...earlier.at, 0] as const);
  const valleyX = dot2(sub2([top[0], top[1]], earlier.at), along);
  const passage = house.passages.find((p) => p.domes.every((d) => d.id === earlier.id || d.id === later.id));
  // Over a passage the domes part on its ring, where that stands higher than the valley beside it.
  const onRing = passage !== undefined && passage.topZ > top[2];
  const meet = onRing ? passage.topZ : top[2];
  const x = onRing ? (earlier.outerRadiusAt(meet) + distance - later.outerRadiusAt(meet)) / 2 : valleyX;
  const low = passage ? passage.section.crownZ - 120 : top[2] - 550;
  const box = { min: [x - 560, low] as Vec2, max: [x + 560, meet + 300] as Vec2 };
  return detailDraft(house, {
    id: `detail-valley-${earlier.id}-${later.id}`,
    title: texts.abutmentOf(later.id, earlier.id),
    plane: planeAlong(earlier.at, along),
    box,
    extra: (cut) => [
      ...jointLines(cut),
      polyline('visible', [...skinAbove(earlier, 0, 1, meet + 60, 0), ...skinAbove(later, distance, -1, meet + 60, 0)]),
      polyline('ground', [
        ...skinAbove(earlier, 0, 1, meet + 64, FLASH).reverse(),
        ...skinAbove(later, distance, -1, meet + 64, FLASH),
      ]),
    ],
    notes: (cut, __, units): DetailNote[] => [
      { at: [inWall(earlier, meet + 150), meet + 150], text: texts.itsShellStaysWhole(earlier.id) },
      {
        at: [x, meet + 66],
        text: texts.flashingUpBothShells(formatNominal(FLASH, units)),
      },
      {
        at: [x, meet + 30],
        text: texts.fallsFromHereBoth(onRing),
      },
      { at: [distance - inWall(later, meet + 110), meet + 110], text: texts.cutAgainst(later.id) },
      {
        at: jointAt(cut, box) ?? [x, meet - 60],
        text: texts.movementJointCompressibleStrip(formatLength(JOINT, units)),
      },
      ...(passage
        ? [
            {
              at: [x - 80, passage.section.crownZ + passage.ring / 2] as Vec2,
              text: texts.passageRing(passage.id, formatLength(passage.ring, units)),
            },
          ]
        : []),
    ],
    sizes: (layout) =>
      placeLevels(
        layout,
        [
          { z: meet, label: onRing ? texts.topOfRing : texts.valleyHighest },
          ...(passage ? [{ z: passage.section.crownZ, label: texts.headOfPassage }] : []),
        ],
        box.min[0],
        () => box.min[0],
      ),
    words: [texts.engineerSaysWhetherDomes],
  });
}

function passageRoof(house: HouseSetout, passage: PassageSetout): Draft {
  const { topZ, section, ring, domes } = passage;
  const [dome] = domes;
  const start = dome.outerRadiusAt(Math.min(topZ, dome.topZ));
  const inside = dome.radiusAt(section.crownZ);
  const box = {
    min: [inside - 200, section.crownZ - 200] as Vec2,
    max: [start + 520, topZ + 420] as Vec2,
  };
  return detailDraft(house, {
    id: `detail-passage-${passage.id}`,
    title: texts.passageAt(passage.id, dome.id),
    plane: planeAlong(dome.at, passage.along),
    box,
    extra: (cut) => [
      ...jointLines(cut),
      polyline('visible', [[start + 60, topZ], ...skinAbove(dome, 0, 1, topZ + 60, topZ + 60).slice(0, 1)]),
      polyline('ground', [
        [Math.min(box.max[0], start + 60 + FLASH), topZ + 4],
        [start + 60, topZ + 4],
        ...skinAbove(dome, 6, 1, topZ + 64, topZ + 64 + FLASH),
      ]),
    ],
    notes: (_, __, units): DetailNote[] => [
      {
        at: [(dome.outerRadiusAt(Math.min(topZ + 150, dome.topZ)) || 0) + 6, topZ + 150],
        text: texts.flashingUpDome(formatNominal(FLASH, units)),
      },
      { at: [start + 30, topZ + 25], text: texts.filletFallsToBothSides },
      { at: [start + 300, topZ - ring / 2], text: texts.vaultOfPassageRing(formatLength(ring, units)) },
      { at: wallAbove(dome, topZ, box.min[0]), text: texts.coursesOfCut(dome.id) },
      {
        at: [(inside + start) / 2, topZ - 4],
        text: texts.movementJointRoundRing(formatLength(JOINT, units)),
      },
    ],
    sizes: (layout) =>
      placeLevels(
        layout,
        [
          { z: topZ, label: texts.topOfRing },
          { z: section.crownZ, label: texts.headOfPassage },
        ],
        box.min[0],
        () => inside,
      ),
    words: [texts.engineerSaysWhereMovement],
  });
}
