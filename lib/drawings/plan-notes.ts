import { formatLength } from '../base/measures.js';
import { ONE_SIZE } from '../base/tolerances.js';
import type { AlignedDimension, Anchor, Primitive, TextPrimitive } from '../documents/drawing.js';
import { textWidth } from '../documents/text-size.js';
import { type Edge, lineEdge } from '../math/curves.js';
import { hypot, square } from '../math/elementary.js';
import { add2, alongBearing, DEG, length2, perp2, scale2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { fromArchFrame, inArchFrame } from './arch-places.js';
import { TEXT } from './foot.js';
import type { Layout } from './layout.js';
import { inEarlier } from './parts.js';
import type { SectionPlane } from './section-plane.js';
import { bearingWords, openingName } from './words.js';

const onCircle = (arch: ArchSetout, r: number): number => Math.sqrt(r * r - square(arch.section.width / 2));

/** Outermost place on an opening's axis: face or wall, and the footing before it. */
function outermost(house: HouseSetout, arch: ArchSetout): number {
  const { dome, faceV } = arch;
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const wall = dome.springingRadius + dome.thickness;
  if (faceV !== null) return faceV + (footing?.projection ?? 0);
  return Math.max(wall, footing?.outerRadius ?? 0);
}

/** How far beyond the wall an opening's clear width and its name stand, paper mm. */
const WIDTH_AT = 6;
const NAME_AT = 12;

/** Centre line of an opening, across the wall and out to its name. */
export function openingAxis(house: HouseSetout, arch: ArchSetout, layout: Layout): Edge {
  const from = arch.dome.springingRadius - layout.mm(5);
  return lineEdge(
    fromArchFrame(arch, 0, from),
    fromArchFrame(arch, 0, outermost(house, arch) + layout.mm(NAME_AT - 1.5)),
  );
}

/**
 * Clear width, name and bearing of an opening. Widths stand where the opening is open: a niche's in the room. A name
 * that finds no free place is told by a number, and goes to `keys`.
 */
export function addOpeningNotes(house: HouseSetout, arch: ArchSetout, layout: Layout, keys: string[]): void {
  const { dome, faceV, clear } = arch;
  const half = arch.section.width / 2;
  const outer = outermost(house, arch);
  const inside = clear.kind !== 'through';
  const edge = inside
    ? onCircle(arch, dome.springingRadius)
    : (faceV ?? onCircle(arch, dome.springingRadius + dome.thickness));
  const line = (more: number) => (inside ? edge - layout.mm(WIDTH_AT + more) : outer + layout.mm(WIDTH_AT + more));
  const rows = [0, 3, 6, 9, 12, 16, 20, 25, 30];
  layout.place(
    rows.flatMap((more) =>
      (['to', 'from'] as const).map((spill): AlignedDimension[] => [
        {
          kind: 'dimension',
          type: 'aligned',
          from: fromArchFrame(arch, -half, edge),
          to: fromArchFrame(arch, half, edge),
          line: fromArchFrame(arch, 0, line(more)),
          prefix: 'clear ',
          spill,
        },
      ]),
    ),
  );
  const lines = [openingName(arch), bearingWords(arch.opening.bearingDeg)];
  const beside = (words: readonly string[], from: number) =>
    rows.flatMap((more) =>
      namesBeside(fromArchFrame(arch, 0, outer + layout.mm(from + more)), arch.along, words, layout),
    );
  if (layout.placeFree(beside(lines, NAME_AT))) return;
  keys.push(lines.join(', '));
  const key = [`(${keys.length})`];
  layout.place([...beside(key, NAME_AT), ...beside(key, 2)]);
}

/** Two lines of text at the end of an axis that runs in `direction`: beyond its end, else beside it. */
function namesBeside(end: Vec2, direction: Vec2, lines: readonly string[], layout: Layout): Primitive[][] {
  const step = layout.mm(TEXT + 1.5);
  const height = (lines.length - 1) * step + layout.mm(TEXT);
  const stack = (x: number, top: number, anchor: Anchor): Primitive[] =>
    lines.map((text, i) => ({
      kind: 'text',
      layer: 'text',
      at: [x, top - layout.mm(TEXT) - i * step],
      text,
      heightMm: TEXT,
      anchor,
      rotationDeg: 0,
    }));
  const [dx, dy] = direction;
  const gap = layout.mm(1.5);
  const upright = Math.abs(dy) > 0.9;
  const beyond: Primitive[] = upright
    ? stack(end[0], dy > 0 ? end[1] + gap + height : end[1] - gap, 'centre')
    : stack(end[0] + Math.sign(dx) * gap, end[1] + height / 2 + (dy * height) / 2, dx > 0 ? 'left' : 'right');
  const beside = (['left', 'right'] as const).map((anchor) =>
    stack(end[0] + (anchor === 'left' ? gap : -gap), end[1] + height / 2, anchor),
  );
  return [beyond, ...beside];
}

/** Inside radius of a dome at the floor, where its text lies free. */
export function addRadius(house: HouseSetout, dome: DomeSetout, layout: Layout): void {
  const closed = [...archesOf(house, dome), ...passagesOf(house, dome)];
  const free = Array.from({ length: 24 }, (_, i) => (52.5 + i * 15) % 360).filter((deg) => {
    const along = alongBearing(deg * DEG);
    const on: Vec2 = [dome.at[0] + dome.springingRadius * along[0], dome.at[1] + dome.springingRadius * along[1]];
    if (inEarlier(house, dome, [on[0], on[1], 0])) return false;
    return !closed.some((a) => {
      const [u, v] = inArchFrame(a, on);
      return v > 0 && ('dome' in a || v < a.distance) && Math.abs(u) < a.section.width / 2 + a.ring;
    });
  });
  layout.place(
    free.map((deg): Primitive[] => {
      const along = alongBearing(deg * DEG);
      const on: Vec2 = [dome.at[0] + dome.springingRadius * along[0], dome.at[1] + dome.springingRadius * along[1]];
      return [{ kind: 'dimension', type: 'radius', centre: dome.at, on }];
    }),
  );
}

/** Name of a room, near its dome's axis but off the centre lines. */
export function addRoomNames(house: HouseSetout, layout: Layout): void {
  for (const dome of house.domes) {
    const rooms = house.house.rooms.filter((r) => r.in === dome.id);
    const names = rooms.length > 0 ? rooms.map((r) => r.name) : [dome.id];
    names.forEach((name, i) => {
      const tries = [7, -10, 4, -7, 13, -16, 19, -22, 25, -28].flatMap((dy) =>
        [0, 12, -12, 6, -6, 22, -22].map((dx) => [dx, dy] as const),
      );
      const groups = [3.5, TEXT].flatMap((heightMm) =>
        [...tries, ...besideAxis(name, heightMm)].map(
          ([dx, dy]): TextPrimitive => ({
            kind: 'text',
            layer: 'text',
            at: [dome.at[0] + layout.mm(dx), dome.at[1] + layout.mm(dy - i * 6)],
            text: name,
            heightMm,
            anchor: 'centre',
            rotationDeg: 0,
          }),
        ),
      );
      const inside = groups.filter((t) => withinRoom(house, dome, t, layout));
      layout.place((inside.length > 0 ? inside : groups).map((t) => [t]));
    });
  }
}

/** Places for a name wholly to one side of the upright centre line, paper mm. */
const besideAxis = (name: string, heightMm: number): (readonly [number, number])[] =>
  [7, -10, 3, -6].flatMap((dy) => [1, -1].map((side) => [side * (textWidth(name, heightMm) / 2 + 1.5), dy] as const));

/** Whether a centred text lies in a dome's room at the floor. */
function withinRoom(house: HouseSetout, dome: DomeSetout, text: TextPrimitive, layout: Layout): boolean {
  const half = layout.mm(textWidth(text.text, text.heightMm)) / 2;
  return [-half, half].every((dx) =>
    [0, layout.mm(text.heightMm)].every((dy) => {
      const [x, y] = [text.at[0] + dx, text.at[1] + dy];
      const r = hypot(x - dome.at[0], y - dome.at[1]);
      return r < dome.springingRadius && !inEarlier(house, dome, [x, y, 0]);
    }),
  );
}

/** Clear width of a passage: within it, else just before its ends. No word goes before it, for passages are short and narrow. */
export function addPassageWidth(passage: PassageSetout, layout: Layout): void {
  const half = passage.section.width / 2;
  const [start, end] = passage.stretchAt(half, 0);
  const within = [0.5, 0.3, 0.7, 0.15, 0.85].map((share) => {
    const v = start + share * (end - start);
    return { edge: v, line: v };
  });
  const before = [2, 4, 6, 8, 10].flatMap((more) => [
    { edge: start, line: start - layout.mm(more) },
    { edge: end, line: end + layout.mm(more) },
  ]);
  layout.place(
    [...within, ...before].flatMap(({ edge, line }) =>
      (['to', 'from'] as const).map((spill): AlignedDimension[] => [
        {
          kind: 'dimension',
          type: 'aligned',
          from: fromArchFrame(passage, -half, edge),
          to: fromArchFrame(passage, half, edge),
          line: fromArchFrame(passage, 0, line),
          spill,
        },
      ]),
    ),
  );
}

/**
 * Distances between the axes of neighbours, joined by a passage or abutting, where no chain along the view tells them.
 * Gives back in words those that find no free place.
 */
export function addAxisDistances(house: HouseSetout, layout: Layout): string[] {
  const told: string[] = [];
  const pairs = new Map<string, readonly [DomeSetout, DomeSetout]>();
  const key = (a: DomeSetout, b: DomeSetout) => [a.id, b.id].sort().join(' ');
  for (const { domes } of house.passages) pairs.set(key(...domes), domes);
  for (const later of house.domes) for (const d of earlierThan(house, later)) pairs.set(key(d, later), [d, later]);
  for (const [from, to] of pairs.values()) {
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
          prefix: 'axes ',
        },
      ]),
    );
    if (!free) told.push(`${from.id} to ${to.id} ${formatLength(length2(between), layout.units)}`);
  }
  return told;
}

/** Marks at both ends of a section's plane: a wide stroke, an arrow the way the section looks, a letter. */
export function addSectionMarks(plane: SectionPlane, reach: Vec2, layout: Layout): void {
  const { through, right, look } = plane;
  for (const [end, sign] of [
    [reach[1], 1],
    [reach[0], -1],
  ] as const) {
    layout.place(
      Array.from({ length: 16 }, (_, i): Primitive[] => {
        const at = (along: number, aside: number): Vec2 => {
          const x = end + sign * layout.mm(4 + 3 * i + along);
          return [
            through[0] + x * right[0] + layout.mm(aside) * look[0],
            through[1] + x * right[1] + layout.mm(aside) * look[1],
          ];
        };
        const tip = [at(7, 5.5), at(6.2, 3), at(7.8, 3)] as const;
        const letter = at(7, 9);
        return [
          { kind: 'path', layer: 'cut', segments: [lineEdge(at(0, 0), at(7, 0))], closed: false },
          { kind: 'path', layer: 'visible', segments: [lineEdge(at(7, 0), at(7, 3))], closed: false },
          {
            kind: 'hatch',
            layer: 'text',
            pattern: 'solid',
            loops: [[lineEdge(tip[0], tip[1]), lineEdge(tip[1], tip[2]), lineEdge(tip[2], tip[0])]],
          },
          {
            kind: 'text',
            layer: 'text',
            at: [letter[0], letter[1] - layout.mm(1.75)],
            text: 'A',
            heightMm: 3.5,
            anchor: 'centre',
            rotationDeg: 0,
          },
        ];
      }),
    );
  }
}
