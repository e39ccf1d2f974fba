import { formatLength } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import type { AlignedDimension, Anchor, TagPrimitive, TextPrimitive } from '../documents/drawing.js';
import { tagRadius } from '../documents/marks.js';
import { type Box, boxOf, type Edge, lineEdge } from '../math/curves.js';
import { atan2, hypot, square } from '../math/elementary.js';
import { cross2, dot2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import { fromArchFrame } from './arch-places.js';
import { TEXT } from './foot-blocks.js';
import { underRoof } from './ground.js';
import type { Layout } from './layout.js';
import { leadersOut } from './leaders.js';
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

/** How far out along an opening's axis the next dome stands. */
function nextDome(house: HouseSetout, arch: ArchSetout): number {
  const ahead = house.domes.flatMap((dome) => {
    if (dome.id === arch.dome.id) return [];
    const to = sub2(dome.at, arch.dome.at);
    const rest = square(dome.springingRadius + dome.thickness) - square(cross2(arch.along, to));
    const v = dot2(arch.along, to);
    return rest > 0 && v > 0 ? [v - Math.sqrt(rest)] : [];
  });
  return Math.min(...ahead, Number.POSITIVE_INFINITY);
}

/** How far beyond the wall an opening's clear width and its name stand, paper mm. */
const WIDTH_AT = 6;
const NAME_AT = 12;
/** Steps further out in which a place is looked for. */
const STEPS = [0, 3, 6, 9, 12, 16, 20, 25, 30] as const;
/** The same in a house of several domes, where names stand close or at the end of a leader. */
const CLOSE = [0, 3, 6] as const;
/** How far beyond the wall a centre line runs there, paper mm. */
const SHORT_AXIS = 3;
/** How far beside its axis an opening's number is tried. */
const TAG_ASIDE = 6;
/** Longest leader from an opening to its name. */
const LONGEST = 44;
/** Room round a name that stands without a leader among others, paper mm. */
const NAME_AIR = 1.5;
/** The same where another dome stands nearer than `YARD` before the opening. */
const SHORT_LEADER = 18;
const YARD = 70;

/** Centre line of an opening, across the wall and out to its name, or short of the next dome. */
export function openingAxis(house: HouseSetout, arch: ArchSetout, layout: Layout): Edge {
  const from = arch.dome.springingRadius - layout.mm(5);
  const beyond = layout.mm(house.domes.length > 1 ? SHORT_AXIS : NAME_AT - 1.5);
  const end = Math.min(outermost(house, arch) + beyond, nextDome(house, arch) - layout.mm(1));
  return lineEdge(fromArchFrame(arch, 0, from), fromArchFrame(arch, 0, end));
}

/**
 * Clear width of an opening, where it is open: a niche's in the room. Where there is no free place for it, it isn't
 * drawn, and its name tells it; gives back whether it is.
 */
export function addOpeningWidth(house: HouseSetout, arch: ArchSetout, layout: Layout): boolean {
  const { dome, faceV, clear } = arch;
  const half = arch.section.width / 2;
  const outer = outermost(house, arch);
  const inside = clear.kind !== 'through';
  const edge = inside
    ? onCircle(arch, dome.springingRadius)
    : (faceV ?? onCircle(arch, dome.springingRadius + dome.thickness));
  const line = (more: number) => (inside ? edge - layout.mm(WIDTH_AT + more) : outer + layout.mm(WIDTH_AT + more));
  const limit = nextDome(house, arch);
  const groups = STEPS.filter((more) => line(more) < limit).flatMap((more) =>
    (['to', 'from'] as const).map((spill): AlignedDimension[] => [
      {
        kind: 'dimension',
        type: 'aligned',
        from: fromArchFrame(arch, -half, edge),
        to: fromArchFrame(arch, half, edge),
        line: fromArchFrame(arch, 0, line(more)),
        prefix: texts.clearSize,
        spill,
      },
    ]),
  );
  return layout.placeFree(groups);
}

/**
 * Name and bearing of an opening before it, else at the end of a leader. One that finds no free place is told by a
 * number, and goes to `keys`. The clear width goes with it where no dimension tells it.
 */
export function addOpeningName(
  house: HouseSetout,
  arch: ArchSetout,
  widthTold: boolean,
  layout: Layout,
  keys: string[],
): void {
  const outer = outermost(house, arch);
  const width = widthTold ? '' : texts.clearOfWidth(formatLength(arch.section.width, layout.units));
  const lines = [openingName(arch), `${bearingWords(arch.opening.bearingDeg)}${width}`];
  const inside = ([x, y]: Vec2) => underRoof(house, x, y);
  const limit = nextDome(house, arch);
  const steps: readonly number[] = house.domes.length > 1 ? CLOSE : STEPS;
  const beside = (words: readonly string[], from: number) =>
    steps
      .filter((more) => outer + layout.mm(from + more) < limit)
      .flatMap((more) => namesBeside(fromArchFrame(arch, 0, outer + layout.mm(from + more)), arch.along, words, layout))
      .filter((group) => {
        const corners = group.flatMap((text) => layout.cornersOf(text));
        return !corners.some(inside) && (house.domes.length === 1 || readsAsOwn(house, arch, boxOf(corners), layout));
      });
  // In a yard names would stand nearer to other openings than to their own.
  const enclosed = limit - outer < layout.mm(YARD);
  if (!enclosed && layout.placeFree(beside(lines, NAME_AT))) return;
  const leader = {
    at: fromArchFrame(arch, 0, outer + layout.mm(1)),
    text: lines.join(', '),
    first: atan2(arch.along[1], arch.along[0]),
    longest: enclosed ? SHORT_LEADER : LONGEST,
    inside,
    across: false,
  };
  if (layout.placeFree(leadersOut(leader, layout))) return;
  keys.push(lines.join(', '));
  const text = String(keys.length);
  const tags = steps.flatMap((more) =>
    [0, 1, -1].map((aside): TagPrimitive[] => {
      const v = outer + layout.mm(SHORT_AXIS + 1 + tagRadius(TEXT) + more);
      return [{ kind: 'tag', at: fromArchFrame(arch, aside * layout.mm(TAG_ASIDE), v), text, heightMm: TEXT }];
    }),
  );
  const inYard = tags.filter(([tag]) => tag && !inside(tag.at));
  layout.place([...inYard, ...leadersOut({ ...leader, text: `(${text})`, across: true, longest: 100 }, layout)]);
}

/** Whether a name stands apart from others, and nearer to its own opening than to another: else it reads as that one's. */
function readsAsOwn(house: HouseSetout, arch: ArchSetout, { min, max }: Box, layout: Layout): boolean {
  const air = layout.mm(NAME_AIR);
  if (layout.hasTextIn({ min: [min[0] - air, min[1] - air], max: [max[0] + air, max[1] + air] })) return false;
  const away = (other: ArchSetout): number => {
    const [x, y] = fromArchFrame(other, 0, outermost(house, other));
    return hypot(Math.max(min[0] - x, 0, x - max[0]), Math.max(min[1] - y, 0, y - max[1]));
  };
  const own = away(arch);
  return house.arches.every((other) => other === arch || away(other) > own);
}

/** Lines of text at the end of an axis that runs in `direction`: beyond its end, else beside it. */
function namesBeside(end: Vec2, direction: Vec2, lines: readonly string[], layout: Layout): TextPrimitive[][] {
  const step = layout.mm(TEXT + 1.5);
  const height = (lines.length - 1) * step + layout.mm(TEXT);
  const stack = (x: number, top: number, anchor: Anchor): TextPrimitive[] =>
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
  const beyond = upright
    ? stack(end[0], dy > 0 ? end[1] + gap + height : end[1] - gap, 'centre')
    : stack(end[0] + Math.sign(dx) * gap, end[1] + height / 2 + (dy * height) / 2, dx > 0 ? 'left' : 'right');
  const beside = (['left', 'right'] as const).map((anchor) =>
    stack(end[0] + (anchor === 'left' ? gap : -gap), end[1] + height / 2, anchor),
  );
  return [beyond, ...beside];
}

/** Widths of rings and jambs, which a plan has no room to dimension. */
export function ringWords(house: HouseSetout, layout: Layout): string[] {
  const rings = new Map<number, string[]>();
  for (const { ring, id } of [...house.arches, ...house.passages]) rings.set(ring, [...(rings.get(ring) ?? []), id]);
  const said = [...rings].map(([ring, ids]) =>
    rings.size === 1
      ? formatLength(ring, layout.units)
      : texts.ringAtNames(formatLength(ring, layout.units), ids.join(', ')),
  );
  const size = (mm: number) => formatLength(mm, layout.units);
  const curbs = house.domes.flatMap((dome) => {
    if (!dome.curb) return [];
    const { clearRadius, bedS, bedOuter } = dome.curb;
    return [texts.atIntradosOutside(size(dome.shell.at(bedS).r - clearRadius), size(bedOuter[0] - clearRadius))];
  });
  const curb = [...new Set(curbs)];
  return [
    ...(said.length > 0 ? [texts.widthOfRings(said.join('; '))] : []),
    ...(curb.length > 0 ? [texts.widthOfCurbs(curb.join('; '))] : []),
  ];
}
