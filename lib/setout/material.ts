import { remembered } from '../base/remembered.js';
import { hypot } from '../math/elementary.js';
import { type Intervals, intersectIntervals, subtractIntervals, uniteIntervals } from '../math/intervals.js';
import type { Vec2, Vec3 } from '../math/vec.js';
import type { ArchSetout } from './arch.js';
import type { DomeSetout } from './dome.js';
import { earlierThan, type HouseSetout, type Surroundings, surroundings } from './house.js';
import { LevelLine, type Line, outerOf, type Span, UprightLine } from './material-lines.js';
import type { PassageSetout } from './passage.js';

/**
 * Where a straight line runs through masonry, footing and slab: exact on the analytic house, no mesh.
 * Level lines serve plans, elevations and sections; upright lines serve roof plans and headroom.
 */

const EVERYWHERE: Span = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

/**
 * Stretches [from, to] of `origin + t · direction` (a unit plan vector) at height `z` that lie in material. What lies
 * wholly beside the stretch `asked` may be left out.
 */
export const levelMaterial = (house: HouseSetout, z: number, origin: Vec2, direction: Vec2, asked = EVERYWHERE) =>
  material(house, new LevelLine(z, origin, direction, asked));

/** Stretches in z of the upright line over the plan point that lie in material; the same of what is `asked`. */
export const uprightMaterial = (house: HouseSetout, at: Vec2, asked = EVERYWHERE): Intervals =>
  material(house, new UprightLine(at, asked));

/** Whether a point lies in masonry, footing or slab. */
export function inMaterial(house: HouseSetout, [x, y, z]: Vec3): boolean {
  // Nothing that reaches the floor from above lies under it, nor the other way round.
  for (const [low, high] of material(house, new UprightLine([x, y], [z, z]))) if (z > low && z < high) return true;
  return false;
}

function material(house: HouseSetout, line: Line): Intervals {
  const parts: Span[] = [];
  if (line.above) {
    const around = surroundings(house);
    const reaches = wallReaches(house);
    for (let k = 0; k < house.domes.length; k++) {
      const dome = house.domes[k] as DomeSetout;
      if (line.mayPass(dome.at, reaches[k] as number)) wall(dome, around[k] as Surroundings, line, parts);
    }
    if (house.passages.length > 0) passages(house, line, parts);
  }
  if (line.under) base(house, line, parts);
  return uniteIntervals(parts);
}

/** How far each dome's wall and barrels reach from its axis, and a hair more. */
const wallReaches = remembered((house: HouseSetout): readonly number[] => {
  const around = surroundings(house);
  return house.domes.map((dome, k) => {
    const barrels = (around[k] as Surroundings).arches.map(({ section, ring, faceV }) =>
      hypot(faceV ?? 0, section.width / 2 + ring),
    );
    return Math.max(outerOf(dome), ...barrels) * (1 + 1e-9);
  });
});

/** Whether any of the stretches reaches into what is asked. */
function concerns(parts: readonly Span[], [from, to]: Span): boolean {
  for (const part of parts) if (part[1] >= from && part[0] <= to) return true;
  return false;
}

/** A dome with its barrels, less its room, its openings and the earlier domes that it abuts. */
function wall(dome: DomeSetout, { arches, earlier }: Surroundings, line: Line, into: Span[]): void {
  const solid: Span[] = [];
  line.body(dome, solid);
  for (const arch of arches) if (arch.faceV !== null) line.prism(arch, 'outer', 0, arch.faceV, solid);
  if (!concerns(solid, line.asked)) return;
  const hollow: Span[] = [];
  line.room(dome, hollow);
  for (const other of earlier) line.body(other, hollow);
  for (const arch of arches) opening(dome, arch, line, hollow);
  for (const part of subtractIntervals(solid, hollow)) into.push(part);
}

/** An opening's clear space, out to its face or to the dome's widest circle. */
function opening(dome: DomeSetout, arch: ArchSetout, line: Line, into: Span[]): void {
  if (arch.clear.kind === 'plane') line.prism(arch, 'clear', 0, arch.clear.v, into);
  else {
    const out = arch.faceV ?? outerOf(dome);
    if (arch.clear.kind === 'through') line.prism(arch, 'clear', 0, out, into);
    else {
      const clear: Span[] = [];
      line.prism(arch, 'clear', 0, out, clear);
      if (clear.length === 0) return;
      const limit: Span[] = [];
      line.within(dome, arch.clear.depth, limit);
      for (const part of intersectIntervals(clear, limit)) into.push(part);
    }
  }
}

/** Adds the vaults between domes to the walls, then takes their clear spaces from all. */
function passages(house: HouseSetout, line: Line, into: Span[]): void {
  const clear: Span[] = [];
  for (const passage of house.passages) {
    const solid: Span[] = [];
    line.prism(passage, 'outer', 0, passage.distance, solid);
    if (!concerns(solid, line.asked)) continue;
    line.prism(passage, 'clear', 0, passage.distance, clear);
    const rooms: Span[] = [];
    for (const dome of passage.domes) addRoomLeft(house, dome, line, rooms);
    for (const part of subtractIntervals(solid, rooms)) into.push(part);
  }
  if (clear.length === 0) return;
  const rest = subtractIntervals(into, clear);
  // Where nothing is taken the list itself comes back.
  if (rest === into) return;
  into.length = 0;
  for (const part of rest) into.push(part);
}

/** A room less the earlier domes that stand in it. */
function addRoomLeft(house: HouseSetout, dome: DomeSetout, line: Line, into: Span[]): void {
  const room: Span[] = [];
  line.room(dome, room);
  if (room.length === 0) return;
  const earlier: Span[] = [];
  for (const other of earlierThan(house, dome)) line.body(other, earlier);
  for (const part of subtractIntervals(room, earlier)) into.push(part);
}

/** What stands under a dome: circles of its footing, 0 where it has none, and outer ones of the domes that it abuts. */
interface DomeBase {
  readonly at: Vec2;
  readonly inner: number;
  readonly outer: number;
  readonly earlier: readonly { readonly at: Vec2; readonly outer: number }[];
}

const domeBases = remembered((house: HouseSetout): readonly DomeBase[] => {
  const footings = new Map(house.footings.map((f) => [f.domeId, f]));
  const outer = (dome: DomeSetout) => footings.get(dome.id)?.outerRadius ?? 0;
  return house.domes.map((dome, k) => ({
    at: dome.at,
    inner: footings.get(dome.id)?.innerRadius ?? 0,
    outer: outer(dome),
    earlier: (surroundings(house)[k] as Surroundings).earlier.map((d) => ({ at: d.at, outer: outer(d) })),
  }));
});

/** Footing under all walls, jambs and passages; slab in what they enclose, or under all where there is no footing. */
function base(house: HouseSetout, line: Line, into: Span[]): void {
  const [footing] = house.footings;
  const [slab] = house.slabs;
  if (!footing) {
    if (!slab) return;
    baseBoxes(house, line, 0, slab.bottomZ, into);
    for (const dome of house.domes) line.disc(dome.at, outerOf(dome), slab.bottomZ, into);
    return;
  }
  const under: Span[] = [];
  for (const { at, outer } of domeBases(house)) line.disc(at, outer, footing.bottomZ, under);
  baseBoxes(house, line, footing.projection, footing.bottomZ, under);
  if (under.length > 0) {
    const inside: Span[] = [];
    enclosed(house, line, footing.bottomZ, inside);
    for (const part of subtractIntervals(under, inside)) into.push(part);
  }
  if (slab) enclosed(house, line, slab.bottomZ, into);
}

/** Footing or slab under barrels and passages. */
function baseBoxes(house: HouseSetout, line: Line, projection: number, bottomZ: number, into: Span[]): void {
  for (const a of house.arches) {
    if (a.faceV !== null) line.box(a, baseHalf(a, projection), a.faceV + projection, bottomZ, into);
  }
  for (const p of house.passages) line.box(p, baseHalf(p, projection), p.distance, bottomZ, into);
}

/** What the footings enclose. */
function enclosed(house: HouseSetout, line: Line, bottomZ: number, into: Span[]): void {
  for (const { at, inner, earlier } of domeBases(house)) {
    const inside: Span[] = [];
    line.disc(at, inner, bottomZ, inside);
    if (inside.length === 0) continue;
    const taken: Span[] = [];
    for (const other of earlier) line.disc(other.at, other.outer, bottomZ, taken);
    for (const part of subtractIntervals(inside, taken)) into.push(part);
  }
}

/** Half width of footing or slab under a barrel or passage. */
export const baseHalf = ({ section, ring }: ArchSetout | PassageSetout, projection: number): number =>
  section.width / 2 + ring + projection;
