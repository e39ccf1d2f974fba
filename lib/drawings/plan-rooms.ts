import { formatLength } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { ONE_SIZE } from '../base/tolerances.js';
import type { AlignedDimension, Primitive, TextPrimitive } from '../documents/drawing.js';
import { textWidth } from '../documents/text-size.js';
import { atan2, hypot } from '../math/elementary.js';
import { segmentsApart } from '../math/segments.js';
import {
  add2,
  alongBearing,
  bearingOf,
  DEG,
  length2,
  lerp2,
  perp2,
  scale2,
  sub2,
  turnPositive,
  type Vec2,
} from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout, passagesOf } from '../setout/house.js';
import { type PartitionSetout, partitionsOf } from '../setout/partition.js';
import type { PassageSetout } from '../setout/passage.js';
import { fromArchFrame, inArchFrame } from './arch-places.js';
import { TEXT } from './foot-blocks.js';
import { underRoof } from './ground.js';
import type { HandedOver } from './handed.js';
import type { Layout } from './layout.js';
import { type LeaderSpec, leadersOut } from './leaders.js';
import { inEarlier } from './parts.js';
import { neighbours } from './section-plane.js';
import { areaWords, bearingWords, placeWords, writtenUnits } from './words.js';

/** Longest leader from a room or passage to its note, paper mm. */
const LONGEST = 74;

/** The way out of the house from a place in it: away from the middle of all domes, east where there is none. */
function wayOut(house: HouseSetout, at: Vec2): number {
  const sum = house.domes.reduce<Vec2>((s, d) => add2(s, d.at), [0, 0]);
  const away = sub2(at, scale2(sum, 1 / house.domes.length));
  return length2(away) < ONE_SIZE ? 0 : atan2(away[1], away[0]);
}

/** Tells of something in the house at the end of a leader outside it: where it can, one that goes through no opening. */
function noteOutside(house: HouseSetout, at: Vec2, text: string, layout: Layout): boolean {
  const spec: LeaderSpec = {
    at,
    text,
    first: wayOut(house, at),
    longest: LONGEST,
    inside: ([x, y]) => underRoof(house, x, y),
    across: true,
  };
  const leaders = [...leadersOut(spec, layout)];
  const walled = leaders.filter(([{ bend }]) => !throughOpening(house, at, bend));
  return layout.placeFree(walled) || layout.placeFree(leaders);
}

/** Whether a line in plan goes out of the house where an opening is. */
const throughOpening = (house: HouseSetout, from: Vec2, to: Vec2): boolean =>
  house.arches.some((arch) => {
    const { dome, section } = arch;
    const face = arch.faceV ?? dome.springingRadius + dome.thickness;
    const inOpening = (p: Vec2) => {
      const [u, v] = inArchFrame(arch, p);
      return Math.abs(u) < section.width / 2 && v > dome.springingRadius - dome.thickness && v < face;
    };
    const steps = Math.ceil(length2(sub2(to, from)) / STEP);
    return Array.from({ length: steps + 1 }, (_, i) => lerp2(from, to, i / steps)).some(inOpening);
  });

/** How closely a leader is followed, mm. */
const STEP = 50;

/** Inside radius of a dome at the floor, where its text lies free; words tell it in a house of several domes. */
export function addRadius(house: HouseSetout, dome: DomeSetout, layout: Layout): void {
  const closed = [...archesOf(house, dome), ...passagesOf(house, dome)];
  const onWall = (deg: number): Vec2 => {
    const [x, y] = alongBearing(deg * DEG);
    return [dome.at[0] + dome.springingRadius * x, dome.at[1] + dome.springingRadius * y];
  };
  const free = Array.from({ length: 24 }, (_, i) => (52.5 + i * 15) % 360).filter((deg) => {
    const on = onWall(deg);
    if (inEarlier(house, dome, [on[0], on[1], 0])) return false;
    return !closed.some((a) => {
      const [u, v] = inArchFrame(a, on);
      return v > 0 && ('dome' in a || v < a.distance) && Math.abs(u) < a.section.width / 2 + a.ring;
    });
  });
  // The line of headroom runs round the axis as well: where it goes through the middle, the figure stands elsewhere.
  const groups = [0.5, 0.4, 0.65, 0.3, 0.75].flatMap((share) =>
    free.map((deg): Primitive[] => [
      { kind: 'dimension', type: 'radius', centre: dome.at, on: onWall(deg), ...(share === 0.5 ? {} : { share }) },
    ]),
  );
  if (house.domes.length > 1) layout.placeFree(groups);
  else layout.place(groups);
}

/** Where a room's name may stand beside its axis, paper mm: near it, and where lines leave little room, all about. */
const TRIES = [7, -10, 4, -7, 13, -16, 19, -22, 25, -28].flatMap((dy) =>
  [0, 12, -12, 6, -6, 22, -22].map((dx) => [dx, dy] as const),
);
const CLOSE_TRIES = Array.from({ length: 31 }, (_, i) => i + 2).flatMap((dy) =>
  [0, 4, -4, 8, -8, 12, -12, 16, -16, 20, -20, 24, -24].flatMap((dx) => [[dx, dy] as const, [dx, -dy] as const]),
);

/** Names of rooms, near their place or their dome's axis, off the centre lines; in small rooms at the end of a leader. */
export function addRoomNames(house: HouseSetout, layout: Layout, floors: HandedOver['floors'] = {}): void {
  const many = house.domes.length > 1;
  for (const dome of house.domes) {
    const rooms = roomsIn(house, dome);
    const walls = partitionsOf(house).filter((wall) => wall.dome === dome);
    let atAxis = 0;
    roomNames(house, dome, floors).forEach((name, i) => {
      const place = rooms[i]?.at ?? null;
      const middle = place ?? dome.at;
      const lower = place ? 0 : 6 * atAxis++;
      const groups = (
        [
          [3.5, [...TRIES, ...besideAxis(name, 3.5)]],
          [TEXT, [...TRIES, ...besideAxis(name, TEXT), ...CLOSE_TRIES]],
        ] as const
      ).flatMap(([heightMm, tries]) =>
        tries.map(
          ([dx, dy]): TextPrimitive => ({
            kind: 'text',
            layer: 'text',
            at: [middle[0] + layout.mm(dx), middle[1] + layout.mm(dy - lower)],
            text: name,
            heightMm,
            anchor: 'centre',
            rotationDeg: 0,
          }),
        ),
      );
      const inside = groups
        .filter((t) => withinRoom(house, dome, t, layout) && (!place || sees(place, t, walls, layout)))
        .map((t) => [t]);
      if (layout.placeFree(inside)) return;
      if ((many || place) && noteOutside(house, middle, name, layout)) return;
      // Words tell it in a house of several domes.
      if (!many) layout.place(inside.length > 0 ? inside : groups.map((t) => [t]));
    });
  }
}

/** Names of the rooms in a dome, with their net floors where these are known; its own where none is described. */
export function roomNames(house: HouseSetout, dome: DomeSetout, floors: HandedOver['floors'] = {}): string[] {
  const rooms = roomsIn(house, dome);
  if (rooms.length === 0) return [dome.id];
  return rooms.map(({ id, name }) => {
    const floor = floors[id];
    return floor === undefined ? name : `${name} ${areaWords(floor, writtenUnits(house.house))}`;
  });
}

const roomsIn = (house: HouseSetout, dome: DomeSetout) => house.house.rooms.filter((r) => r.in === dome.id);

/** Places for a name wholly to one side of the upright centre line, paper mm. */
const besideAxis = (name: string, heightMm: number): (readonly [number, number])[] =>
  [7, -10, 3, -6].flatMap((dy) => [1, -1].map((side) => [side * (textWidth(name, heightMm) / 2 + 1.5), dy] as const));

/** Whether a text lies in a dome's room at the floor. */
const withinRoom = (house: HouseSetout, dome: DomeSetout, text: TextPrimitive, layout: Layout): boolean =>
  layout
    .cornersOf(text)
    .every(
      ([x, y]) => hypot(x - dome.at[0], y - dome.at[1]) < dome.springingRadius && !inEarlier(house, dome, [x, y, 0]),
    );

/** Whether no partition stands between a place and a text. */
const sees = (place: Vec2, text: TextPrimitive, walls: readonly PartitionSetout[], layout: Layout): boolean =>
  layout
    .cornersOf(text)
    .every((corner) =>
      walls.every(({ partition: { from, to, thickness } }) => segmentsApart(place, corner, from, to) > thickness / 2),
    );

/** Clear width of a passage within it, where there is room; else with its name at the end of a leader. */
export function addPassageWidth(house: HouseSetout, passage: PassageSetout, layout: Layout): void {
  const half = passage.section.width / 2;
  const [start, end] = passage.stretchAt(half, 0);
  const within = [0.5, 0.3, 0.7, 0.15, 0.85].map((share): AlignedDimension[] => {
    const v = start + share * (end - start);
    return [
      {
        kind: 'dimension',
        type: 'aligned',
        from: fromArchFrame(passage, -half, v),
        to: fromArchFrame(passage, half, v),
        line: fromArchFrame(passage, 0, v),
      },
    ];
  });
  const fits = textWidth(formatLength(passage.section.width, layout.units), layout.mm(TEXT)) + layout.mm(3) < 2 * half;
  if (fits && layout.placeFree(within)) return;
  const middle = fromArchFrame(passage, 0, (start + end) / 2);
  const words = texts.clearOfPassage(passage.id, formatLength(passage.section.width, layout.units));
  noteOutside(house, middle, words, layout);
}

/**
 * Distances between the axes of neighbours where no chain along the view tells them. Gives back in words those that
 * find no free place.
 */
export function addAxisDistances(house: HouseSetout, layout: Layout): string[] {
  const told: string[] = [];
  for (const [from, to] of neighbours(house)) {
    const between = sub2(to.at, from.at);
    if (Math.min(Math.abs(between[0]), Math.abs(between[1])) < ONE_SIZE) continue;
    const across = perp2(scale2(between, 1 / length2(between)));
    const middle = scale2(add2(from.at, to.at), 0.5);
    const rows = [4, 7, 10, 14, 18, 23, 28].flatMap((off) => [off, -off]);
    const free = layout.placeFree(
      rows.map((off): AlignedDimension[] => [
        {
          kind: 'dimension',
          type: 'aligned',
          from: from.at,
          to: to.at,
          line: add2(middle, scale2(across, layout.mm(off))),
          prefix: texts.axesSize,
        },
      ]),
    );
    if (!free) told.push(texts.fromAxisTo(from.id, to.id, formatLength(length2(between), layout.units)));
  }
  return told;
}

/** What a plan of several domes tells in words: each dome's place, radius and rooms, each passage's size. */
export function clusterWords(house: HouseSetout, layout: Layout): string[] {
  const [first] = house.domes;
  if (!first || house.domes.length === 1) return [];
  const size = (mm: number) => formatLength(mm, layout.units);
  const domes = house.domes.map((dome) => {
    const place = placeWords(sub2(dome.at, first.at), layout.units);
    const names = roomNames(house, dome).filter((name) => name !== dome.id);
    const rooms = names.length > 0 ? ` (${names.join(', ')})` : '';
    return texts.domePlace(dome.id, rooms, place, size(dome.springingRadius));
  });
  const passages = house.passages.map((p) =>
    texts.wideHigh(
      p.id,
      size(p.section.width),
      size(p.section.crownZ),
      p.section.head.shape,
      bearingWords(turnPositive(bearingOf(p.along)) / DEG),
      p.domes[0].id,
    ),
  );
  return [
    texts.domesTheirAxes(first.id, domes.join('; ')),
    ...(passages.length > 0 ? [texts.passagesClear(passages.join('; '))] : []),
  ];
}
