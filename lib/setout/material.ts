import { hypot, square } from '../math/elementary.js';
import { type Intervals, intersectIntervals, subtractIntervals, uniteIntervals } from '../math/intervals.js';
import { cross2, dot2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import type { ArchSetout } from './arch.js';
import type { DomeSetout } from './dome.js';
import { archesOf, type FootingSetout, type HouseSetout } from './house.js';

/**
 * Where a straight line runs through masonry, footing and slab: exact on the analytic house, no mesh.
 * Level lines serve plans, elevations and sections; upright lines serve roof plans and headroom.
 */

const EVERYWHERE: Intervals = [[Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]];

/** Stretches [from, to] of `origin + t · direction` (a unit plan vector) at height `z` that lie in material. */
export function levelMaterial(house: HouseSetout, z: number, origin: Vec2, direction: Vec2): Intervals {
  const line: LevelLine = { origin, direction };
  const all: Intervals[] = [];
  for (const dome of house.domes) {
    const arches = archesOf(house, dome);
    if (z >= 0) all.push(subtractIntervals(levelSolids(dome, arches, z, line), levelVoids(dome, arches, z, line)));
    else all.push(levelBase(house, dome, arches, z, line));
  }
  return uniteIntervals(all.flat());
}

/** Stretches in z of the upright line over the plan point that lie in material. */
export function uprightMaterial(house: HouseSetout, at: Vec2): Intervals {
  const all: Intervals[] = [];
  for (const dome of house.domes) {
    const arches = archesOf(house, dome);
    all.push(subtractIntervals(uprightSolids(dome, arches, at), uprightVoids(dome, arches, at)));
    all.push(uprightBase(house, dome, arches, at));
  }
  return uniteIntervals(all.flat());
}

/** Whether a point lies in masonry, footing or slab. */
export function inMaterial(house: HouseSetout, point: Vec3): boolean {
  return uprightMaterial(house, [point[0], point[1]]).some(([low, high]) => point[2] > low && point[2] < high);
}

interface LevelLine {
  readonly origin: Vec2;
  readonly direction: Vec2;
}

function disc({ origin, direction }: LevelLine, centre: Vec2, radius: number): Intervals {
  if (!(radius > 0)) return [];
  const to = sub2(centre, origin);
  const middle = dot2(to, direction);
  const half = Math.sqrt(radius * radius - square(cross2(direction, to)));
  return half > 0 ? [[middle - half, middle + half]] : [];
}

/** Values low ≤ c0 + t·c1 ≤ high as an interval of t. */
function between(c0: number, c1: number, low: number, high: number): Intervals {
  if (c1 === 0) return c0 > low && c0 < high ? EVERYWHERE : [];
  const a = (low - c0) / c1;
  const b = (high - c0) / c1;
  return [[Math.min(a, b), Math.max(a, b)]];
}

function band(line: LevelLine, arch: ArchSetout, half: number, toV: number): Intervals {
  if (!(half > 0)) return [];
  const from = sub2(line.origin, arch.dome.at);
  return intersectIntervals(
    between(dot2(from, arch.across), dot2(line.direction, arch.across), -half, half),
    between(dot2(from, arch.along), dot2(line.direction, arch.along), 0, toV),
  );
}

function levelSolids(dome: DomeSetout, arches: readonly ArchSetout[], z: number, line: LevelLine): Intervals {
  const barrels = arches.flatMap((a) => (a.faceV === null ? [] : band(line, a, a.outerHalfAt(z), a.faceV)));
  return uniteIntervals([...disc(line, dome.at, dome.outerRadiusAt(z)), ...barrels]);
}

function levelVoids(dome: DomeSetout, arches: readonly ArchSetout[], z: number, line: LevelLine): Intervals {
  const voids = [...disc(line, dome.at, dome.radiusAt(z))];
  if (dome.curb && z > dome.springingZ) voids.push(...disc(line, dome.at, dome.curb.clearRadius));
  for (const arch of arches) {
    const reach = arch.clear.kind === 'plane' ? arch.clear.v : Number.POSITIVE_INFINITY;
    const clear = band(line, arch, arch.clearHalfAt(z), reach);
    if (arch.clear.kind !== 'parallel') voids.push(...clear);
    else voids.push(...intersectIntervals(clear, disc(line, dome.at, dome.radiusAt(z, arch.clear.depth))));
  }
  return uniteIntervals(voids);
}

function levelBase(
  house: HouseSetout,
  dome: DomeSetout,
  arches: readonly ArchSetout[],
  z: number,
  line: LevelLine,
): Intervals {
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const slab = house.slabs.find((s) => s.domeId === dome.id);
  const parts: Intervals[] = [];
  if (footing && z > footing.bottomZ) {
    const outline = [...disc(line, dome.at, footing.outerRadius), ...barrelBases(arches, footing, line)];
    parts.push(subtractIntervals(outline, disc(line, dome.at, footing.innerRadius)));
  }
  if (slab && z > slab.bottomZ) {
    parts.push(disc(line, dome.at, slab.radius));
    if (!footing) parts.push(barrelBases(arches, null, line));
  }
  return uniteIntervals(parts.flat());
}

function barrelBases(arches: readonly ArchSetout[], footing: FootingSetout | null, line: LevelLine): Intervals {
  const projection = footing?.projection ?? 0;
  return arches.flatMap((a) => (a.faceV === null ? [] : band(line, a, baseHalf(a, projection), a.faceV + projection)));
}

/** Half width of footing or slab under a barrel. */
export const baseHalf = (arch: ArchSetout, projection: number): number =>
  arch.section.width / 2 + arch.ring + projection;

function uprightSolids(dome: DomeSetout, arches: readonly ArchSetout[], at: Vec2): Intervals {
  const from = sub2(at, dome.at);
  const r = hypot(from[0], from[1]);
  const parts: [number, number][] = [];
  if (r < dome.springingRadius + dome.thickness) {
    const curbed = dome.curb !== null && r <= dome.curb.bedOuter[0];
    parts.push([0, curbed ? dome.topZ : dome.heightAt(r, dome.thickness)]);
  }
  for (const arch of arches) {
    if (arch.faceV === null) continue;
    const [u, v] = inFrame(arch, from);
    if (v > 0 && v < arch.faceV) parts.push([0, arch.section.topAt(u, arch.ring)]);
  }
  return uniteIntervals(parts);
}

function uprightVoids(dome: DomeSetout, arches: readonly ArchSetout[], at: Vec2): Intervals {
  const from = sub2(at, dome.at);
  const r = hypot(from[0], from[1]);
  const parts: [number, number][] = [];
  if (r < dome.springingRadius) parts.push([0, dome.heightAt(r)]);
  if (dome.curb && r < dome.curb.clearRadius) parts.push([0, dome.topZ]);
  for (const arch of arches) {
    const [u, v] = inFrame(arch, from);
    if (v <= 0) continue;
    const top = arch.section.topAt(u);
    if (arch.clear.kind === 'through') parts.push([arch.section.sill, top]);
    else if (arch.clear.kind === 'plane') {
      if (v < arch.clear.v) parts.push([arch.section.sill, top]);
    } else if (r < dome.springingRadius + arch.clear.depth) {
      parts.push([arch.section.sill, Math.min(top, dome.heightAt(r, arch.clear.depth))]);
    }
  }
  return uniteIntervals(parts);
}

function uprightBase(house: HouseSetout, dome: DomeSetout, arches: readonly ArchSetout[], at: Vec2): Intervals {
  const from = sub2(at, dome.at);
  const r = hypot(from[0], from[1]);
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const slab = house.slabs.find((s) => s.domeId === dome.id);
  const projection = footing?.projection ?? 0;
  const underBarrel = arches.some((arch) => {
    if (arch.faceV === null) return false;
    const [u, v] = inFrame(arch, from);
    return v > 0 && v < arch.faceV + projection && Math.abs(u) < baseHalf(arch, projection);
  });
  const parts: [number, number][] = [];
  if (footing && r > footing.innerRadius && (r < footing.outerRadius || underBarrel)) parts.push([footing.bottomZ, 0]);
  if (slab && (r < slab.radius || (!footing && underBarrel))) parts.push([slab.bottomZ, 0]);
  return uniteIntervals(parts);
}

const inFrame = (arch: ArchSetout, from: Vec2): Vec2 => [dot2(from, arch.across), dot2(from, arch.along)];
