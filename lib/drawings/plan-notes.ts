import type { AlignedDimension, Anchor, Primitive } from '../documents/drawing.js';
import { type Edge, lineEdge } from '../math/curves.js';
import { alongBearing, DEG, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { fromArchFrame } from './arch-places.js';
import { TEXT } from './foot.js';
import type { Layout } from './layout.js';
import type { SectionPlane } from './section-plane.js';
import { bearingWords, openingName } from './words.js';

/** Distance from the axis at which an opening is marked from: outward of face and footing, inward of the wall for a niche. */
function markFrom(
  house: HouseSetout,
  arch: ArchSetout,
): { readonly v: number; readonly out: 1 | -1; readonly edge: number } {
  const { dome, faceV, clear } = arch;
  const half = arch.section.width / 2;
  const onCircle = (r: number) => Math.sqrt(r * r - half * half);
  if (clear.kind !== 'through')
    return { v: onCircle(dome.springingRadius), out: -1, edge: onCircle(dome.springingRadius) };
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const face = faceV ?? onCircle(dome.springingRadius + dome.thickness);
  const beyond = faceV === null ? (footing?.outerRadius ?? 0) : faceV + (footing?.projection ?? 0);
  return { v: Math.max(face, beyond), out: 1, edge: face };
}

/** How far beyond the wall an opening's clear width and its name stand, paper mm. */
const WIDTH_AT = 6;
const NAME_AT = 12;

/** Centre line of an opening, across the wall and out to its name. */
export function openingAxis(house: HouseSetout, arch: ArchSetout, layout: Layout): Edge {
  const { v, out } = markFrom(house, arch);
  const wall =
    out > 0 ? arch.dome.springingRadius - layout.mm(5) : arch.dome.springingRadius + arch.dome.thickness + layout.mm(3);
  return lineEdge(fromArchFrame(arch, 0, wall), fromArchFrame(arch, 0, v + out * layout.mm(NAME_AT - 1.5)));
}

/** Clear width, name and bearing of an opening, on its axis. */
export function addOpeningNotes(house: HouseSetout, arch: ArchSetout, layout: Layout): void {
  const { v, out, edge } = markFrom(house, arch);
  const half = arch.section.width / 2;
  const rows = [0, 3, 6, 9, 12, 16, 20, 25, 30];
  const widths = rows.flatMap((more) =>
    (['to', 'from'] as const).map((spill): AlignedDimension[] => [
      {
        kind: 'dimension',
        type: 'aligned',
        from: fromArchFrame(arch, -half, edge),
        to: fromArchFrame(arch, half, edge),
        line: fromArchFrame(arch, 0, v + out * layout.mm(WIDTH_AT + more)),
        prefix: 'clear ',
        spill,
      },
    ]),
  );
  layout.place(widths);
  const lines = [openingName(arch), bearingWords(arch.opening.bearingDeg)];
  const direction: Vec2 = [arch.along[0] * out, arch.along[1] * out];
  layout.place(
    rows.flatMap((more) =>
      namesBeside(fromArchFrame(arch, 0, v + out * layout.mm(NAME_AT + more)), direction, lines, layout),
    ),
  );
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
  const closed = archesOf(house, dome);
  const free = Array.from({ length: 24 }, (_, i) => (52.5 + i * 15) % 360).filter((deg) => {
    const along = alongBearing(deg * DEG);
    return !closed.some((a) => {
      const u = along[0] * a.across[0] + along[1] * a.across[1];
      const v = along[0] * a.along[0] + along[1] * a.along[1];
      return v > 0 && Math.abs(u) * dome.springingRadius < a.section.width / 2 + a.ring;
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
      const tries = [7, -10, 13, -16, 19, -22, 25, -28].flatMap((dy) =>
        [0, 12, -12, 22, -22].map((dx) => [dx, dy] as const),
      );
      layout.place(
        tries.map(([dx, dy]): Primitive[] => [
          {
            kind: 'text',
            layer: 'text',
            at: [dome.at[0] + layout.mm(dx), dome.at[1] + layout.mm(dy - i * 6)],
            text: name,
            heightMm: 3.5,
            anchor: 'centre',
            rotationDeg: 0,
          },
        ]),
      );
    });
  }
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
        const letter = at(7, 8);
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
