import { SAME_POINT, SAME_SHARE } from '../../base/tolerances.js';
import { hypot } from '../../math/elementary.js';
import { alongBearing, dot2, perp2, scale2, sub2, type Vec2 } from '../../math/vec.js';
import { perpendBearings } from '../../setout/courses.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { areaOf, bestTurn, clipped } from './footprint.js';
import type { PrintSizes } from './sizes.js';

/** An upright plane by its line in plan: p · normal = offset. */
export interface CutLine {
  readonly normal: Vec2;
  readonly offset: number;
}

/** How a part is cut to fit the bed: its outline in plan, and the cut that parts it where it doesn't fit as it is. */
export interface CutTree {
  readonly hull: readonly Vec2[];
  readonly cut: { readonly line: CutLine; readonly sides: readonly [positive: CutTree, negative: CutTree] } | null;
}

/** A wall is cut at no sharper an angle than 45 degrees, with a little to spare. */
const OBLIQUE = 0.65;
/** Offsets that are tried between two domes. */
const OFFSETS = 24;
/** Planes through an axis that are tried. */
const TURNS = 24;
/** A line runs along a passage or barrel when it turns from it by a smaller sine. */
const ALONG = 0.1;
const MOST_CUTS = 4;

/** Lines that may part a house: through the axes of domes along perpends, and square to lines between axes. */
export function houseLines(setout: HouseSetout, levels: readonly (number | null)[], sizes: PrintSizes): CutLine[] {
  const { domes } = setout;
  const between = domes.flatMap((one, i) =>
    domes.slice(i + 1).flatMap((other) => {
      const away = sub2(other.at, one.at);
      const normal = scale2(away, 1 / hypot(...away));
      const [from, to] = [dot2(one.at, normal), dot2(other.at, normal)];
      return Array.from({ length: OFFSETS - 1 }, (_, k) => ({
        normal,
        offset: from + ((to - from) * (k + 1)) / OFFSETS,
      }));
    }),
  );
  const lines = [...domes.flatMap(axisLines), ...between];
  return lines.filter((line) => isSound(setout, levels, line, sizes));
}

/** Planes through a dome's axis and a perpend of the course that has most blocks. */
export function axisLines(dome: DomeSetout): CutLine[] {
  const most = dome.courses.reduce<readonly number[]>((best, course) => {
    const all = perpendBearings(course);
    return all.length > best.length ? all : best;
  }, []);
  const step = Math.max(1, Math.floor(most.length / TURNS));
  return most
    .filter((_, k) => k % step === 0)
    .map((bearing) => {
      const normal = perp2(alongBearing(bearing));
      return { normal, offset: dot2(dome.at, normal) };
    });
}

/** Whether a plane crosses no wall at a sharp angle: of domes up to where their roofs come off, barrels, passages. */
function isSound(
  { domes, arches, passages }: HouseSetout,
  levels: readonly (number | null)[],
  { normal, offset }: CutLine,
  { thin }: PrintSizes,
): boolean {
  const crosses = domes.every((dome, i) => {
    const away = Math.abs(dot2(dome.at, normal) - offset);
    const level = levels[i] ?? null;
    // A dome that keeps its roof is cut through its axis alone.
    const least = level === null ? 0 : dome.radiusAt(level);
    return away <= OBLIQUE * least + SAME_POINT || away >= dome.springingRadius + dome.thickness + thin;
  });
  if (!crosses) return false;
  const strips = [
    ...arches.map((a) => ({
      at: a.dome.at,
      ...{ along: a.along, across: a.across, clear: a.section.width / 2, half: a.section.width / 2 + a.ring },
      ...{ from: wallFrom(a.dome, a), to: a.faceV ?? a.dome.springingRadius + a.dome.thickness },
    })),
    ...passages.map((p) => ({
      at: p.domes[0].at,
      ...{ along: p.along, across: p.across, clear: p.section.width / 2, half: p.section.width / 2 + p.ring },
      ...{ from: wallFrom(p.domes[0], p), to: p.distance - wallFrom(p.domes[1], p) },
    })),
  ];
  return strips.every(({ at, along, across, clear, half, from, to }) => {
    // The plane in the strip's own plan: u n_u + v n_v = rest.
    const [nu, nv, rest] = [dot2(normal, across), dot2(normal, along), offset - dot2(at, normal)];
    const corners = [-half - thin, half + thin].flatMap((u) => [from, to + thin].map((v) => u * nu + v * nv - rest));
    if (Math.min(...corners) > 0 || Math.max(...corners) < 0) return true;
    if (Math.abs(nv) >= Math.SQRT1_2) return true;
    return Math.abs(nv) < ALONG && [from, to].every((v) => Math.abs((rest - v * nv) / nu) < clear / 2);
  });
}

/** How far from a dome's axis the wall begins along an opening, where it leans in most. */
function wallFrom(dome: DomeSetout, way: { readonly topZ: number; outerHalfAt(z: number): number }): number {
  const radius = dome.radiusAt(way.topZ);
  const half = Math.max(way.outerHalfAt(0), way.outerHalfAt(way.topZ / 2));
  return radius > half ? Math.sqrt(radius * radius - half * half) : 0;
}

/** Cuts an outline until each piece fits the bed; `null` where no line gets it there. */
export function cutToFit(
  hull: readonly Vec2[],
  lines: readonly CutLine[],
  bed: Vec2,
  left = MOST_CUTS,
): CutTree | null {
  // However it is cut, the pieces together are as large as the whole: most scales that are too large end here.
  if (areaOf(hull) > (1 << left) * bed[0] * bed[1] * (1 + SAME_SHARE)) return null;
  const { share: uncut } = bestTurn(hull, bed);
  if (uncut <= 1) return { hull, cut: null };
  if (left === 0) return null;
  const options = lines
    .map((line) => {
      const sides = [
        clipped(hull, line.normal, line.offset),
        clipped(hull, opposite(line).normal, -line.offset),
      ] as const;
      if (sides.some((side) => side.length < 3)) return { line, sides, share: Infinity };
      return { line, sides, share: Math.max(...sides.map((side) => bestTurn(side, bed).share)) };
    })
    .filter(({ share }) => Number.isFinite(share))
    .sort((a, b) => a.share - b.share);
  const [best] = options;
  if (!best || best.share >= uncut) return null;
  const trees = best.sides.map((side) => cutToFit(side, lines, bed, left - 1));
  const [positive, negative] = trees;
  return positive && negative ? { hull, cut: { line: best.line, sides: [positive, negative] } } : null;
}

const opposite = ({ normal, offset }: CutLine): CutLine => ({ normal: scale2(normal, -1), offset: -offset });

/** All lines of a tree. */
export function linesOf(tree: CutTree): CutLine[] {
  return tree.cut ? [tree.cut.line, ...tree.cut.sides.flatMap(linesOf)] : [];
}
