import { hypot } from '../math/elementary.js';
import { type Intervals, intersectIntervals, subtractIntervals, uniteIntervals } from '../math/intervals.js';
import { dot2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import type { ArchSetout } from './arch.js';
import type { DomeSetout } from './dome.js';
import { earlierThan, type HouseSetout, type Surroundings, surroundings } from './house.js';
import type { PassageSetout } from './passage.js';

type Span = readonly [number, number];

/**
 * Where a straight line runs through masonry, footing and slab: exact on the analytic house, no mesh.
 * Level lines serve plans, elevations and sections; upright lines serve roof plans and headroom.
 * Each kind of line only has to say where it runs through the house's elementary bodies; it adds that to a list,
 * since hidden lines ask this some hundred thousand times.
 */
interface Line {
  /** Whether it runs above the floor, and under it. */
  readonly above: boolean;
  readonly under: boolean;
  /** Full body of a dome, from the floor to its top, room included. */
  body(dome: DomeSetout, into: Span[]): void;
  /** Room of a dome, with the bore of its oculus. */
  room(dome: DomeSetout, into: Span[]): void;
  /** Inside the surface `offset` outside a dome's intrados. */
  within(dome: DomeSetout, offset: number, into: Span[]): void;
  /** Between two planes across a section, v from `from` to `to`, inside its outer or clear outline. */
  prism(source: ArchSetout | PassageSetout, outline: 'outer' | 'clear', from: number, to: number, into: Span[]): void;
  /** Upright disc under the floor down to `bottomZ`. */
  disc(centre: Vec2, radius: number, bottomZ: number, into: Span[]): void;
  /** Upright box under the floor, |u| ≤ half, v from 0 to `to`. */
  box(source: ArchSetout | PassageSetout, half: number, to: number, bottomZ: number, into: Span[]): void;
}

/** Stretches [from, to] of `origin + t · direction` (a unit plan vector) at height `z` that lie in material. */
export const levelMaterial = (house: HouseSetout, z: number, origin: Vec2, direction: Vec2): Intervals =>
  material(house, levelLine(z, origin, direction));

/** Stretches in z of the upright line over the plan point that lie in material. */
export const uprightMaterial = (house: HouseSetout, at: Vec2): Intervals =>
  material(house, uprightLine(at, { above: true, under: true }));

/** Whether a point lies in masonry, footing or slab. */
export function inMaterial(house: HouseSetout, [x, y, z]: Vec3): boolean {
  // Nothing that reaches the floor from above lies under it, nor the other way round.
  const line = uprightLine([x, y], { above: z >= 0, under: z <= 0 });
  return material(house, line).some(([low, high]) => z > low && z < high);
}

function material(house: HouseSetout, line: Line): Intervals {
  const parts: Span[] = [];
  if (line.above) {
    const around = surroundings(house);
    for (const [k, dome] of house.domes.entries()) wall(dome, around[k] as Surroundings, line, parts);
    if (house.passages.length > 0) passages(house, line, parts);
  }
  if (line.under) base(house, line, parts);
  return uniteIntervals(parts);
}

/** A dome with its barrels, less its room, its openings and the earlier domes that it abuts. */
function wall(dome: DomeSetout, { arches, earlier }: Surroundings, line: Line, into: Span[]): void {
  const solid: Span[] = [];
  line.body(dome, solid);
  for (const arch of arches) if (arch.faceV !== null) line.prism(arch, 'outer', 0, arch.faceV, solid);
  if (solid.length === 0) return;
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
    if (solid.length === 0) continue;
    line.prism(passage, 'clear', 0, passage.distance, clear);
    const rooms = passage.domes.flatMap((dome) => roomLeft(house, dome, line));
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
function roomLeft(house: HouseSetout, dome: DomeSetout, line: Line): Intervals {
  const room: Span[] = [];
  line.room(dome, room);
  if (room.length === 0) return room;
  const earlier: Span[] = [];
  for (const other of earlierThan(house, dome)) line.body(other, earlier);
  return subtractIntervals(room, earlier);
}

/** Footing under all walls, jambs and passages; slab in what they enclose, or under all where there is no footing. */
function base(house: HouseSetout, line: Line, into: Span[]): void {
  const [footing] = house.footings;
  const [slab] = house.slabs;
  const projection = footing?.projection ?? 0;
  const boxes = (bottomZ: number, list: Span[]) => {
    for (const a of house.arches) {
      if (a.faceV !== null) line.box(a, baseHalf(a, projection), a.faceV + projection, bottomZ, list);
    }
    for (const p of house.passages) line.box(p, baseHalf(p, projection), p.distance, bottomZ, list);
  };
  if (!footing) {
    if (!slab) return;
    boxes(slab.bottomZ, into);
    for (const dome of house.domes) line.disc(dome.at, outerOf(dome), slab.bottomZ, into);
    return;
  }
  const footings = new Map(house.footings.map((f) => [f.domeId, f]));
  const enclosed = (bottomZ: number): Span[] => {
    const all: Span[] = [];
    for (const dome of house.domes) {
      const inside: Span[] = [];
      const earlier: Span[] = [];
      line.disc(dome.at, footings.get(dome.id)?.innerRadius ?? 0, bottomZ, inside);
      for (const other of earlierThan(house, dome)) {
        line.disc(other.at, footings.get(other.id)?.outerRadius ?? 0, bottomZ, earlier);
      }
      for (const part of subtractIntervals(inside, earlier)) all.push(part);
    }
    return all;
  };
  const under: Span[] = [];
  for (const dome of house.domes) {
    line.disc(dome.at, footings.get(dome.id)?.outerRadius ?? 0, footing.bottomZ, under);
  }
  boxes(footing.bottomZ, under);
  for (const part of subtractIntervals(under, enclosed(footing.bottomZ))) into.push(part);
  if (slab) for (const part of enclosed(slab.bottomZ)) into.push(part);
}

const outerOf = (dome: DomeSetout): number => dome.springingRadius + dome.thickness;

/** Half width of footing or slab under a barrel or passage. */
export const baseHalf = ({ section, ring }: ArchSetout | PassageSetout, projection: number): number =>
  section.width / 2 + ring + projection;

const originOf = (source: ArchSetout | PassageSetout): Vec2 => ('dome' in source ? source.dome.at : source.domes[0].at);

function levelLine(z: number, origin: Vec2, direction: Vec2): Line {
  const [ox, oy] = origin;
  const [dx, dy] = direction;
  const circle = (centre: Vec2, radius: number, into: Span[]): void => {
    if (!(radius > 0)) return;
    const tx = centre[0] - ox;
    const ty = centre[1] - oy;
    const aside = dx * ty - dy * tx;
    const rest = radius * radius - aside * aside;
    if (!(rest > 0)) return;
    const middle = tx * dx + ty * dy;
    const half = Math.sqrt(rest);
    into.push([middle - half, middle + half]);
  };
  const rectangle = (
    source: ArchSetout | PassageSetout,
    half: number,
    from: number,
    to: number,
    into: Span[],
  ): void => {
    if (!(half > 0)) return;
    const { across, along } = source;
    const at = originOf(source);
    const sx = ox - at[0];
    const sy = oy - at[1];
    let low = Number.NEGATIVE_INFINITY;
    let high = Number.POSITIVE_INFINITY;
    /** Narrows to where bottom ≤ c0 + t·c1 ≤ top. */
    const narrow = (c0: number, c1: number, bottom: number, top: number): void => {
      if (c1 === 0) {
        if (!(c0 > bottom && c0 < top)) high = low;
        return;
      }
      const a = (bottom - c0) / c1;
      const b = (top - c0) / c1;
      low = Math.max(low, Math.min(a, b));
      high = Math.min(high, Math.max(a, b));
    };
    narrow(sx * across[0] + sy * across[1], dx * across[0] + dy * across[1], -half, half);
    narrow(sx * along[0] + sy * along[1], dx * along[0] + dy * along[1], from, to);
    if (high > low) into.push([low, high]);
  };
  return {
    above: z >= 0,
    under: z < 0,
    body: (dome, into) => circle(dome.at, dome.outerRadiusAt(z), into),
    room(dome, into) {
      circle(dome.at, dome.radiusAt(z), into);
      if (dome.curb && z > dome.springingZ) circle(dome.at, dome.curb.clearRadius, into);
    },
    within: (dome, offset, into) => circle(dome.at, dome.radiusAt(z, offset), into),
    prism: (source, outline, from, to, into) =>
      rectangle(source, outline === 'outer' ? source.outerHalfAt(z) : source.clearHalfAt(z), from, to, into),
    disc(centre, radius, bottomZ, into) {
      if (z > bottomZ) circle(centre, radius, into);
    },
    box(source, half, to, bottomZ, into) {
      if (z > bottomZ) rectangle(source, half, 0, to, into);
    },
  };
}

function uprightLine(at: Vec2, { above, under }: Pick<Line, 'above' | 'under'>): Line {
  const distance = (centre: Vec2) => hypot(at[0] - centre[0], at[1] - centre[1]);
  const inFrame = (source: ArchSetout | PassageSetout): Vec2 => {
    const from = sub2(at, originOf(source));
    return [dot2(from, source.across), dot2(from, source.along)];
  };
  return {
    above,
    under,
    body(dome, into) {
      const r = distance(dome.at);
      if (r >= outerOf(dome)) return;
      const curbed = dome.curb !== null && r <= dome.curb.bedOuter[0];
      into.push([0, curbed ? dome.topZ : dome.heightAt(r, dome.thickness)]);
    },
    room(dome, into) {
      const r = distance(dome.at);
      if (dome.curb && r < dome.curb.clearRadius) into.push([0, dome.topZ]);
      else if (r < dome.springingRadius) into.push([0, dome.heightAt(r)]);
    },
    within(dome, offset, into) {
      const r = distance(dome.at);
      if (r < dome.springingRadius + offset) into.push([0, dome.heightAt(r, offset)]);
    },
    prism(source, outline, from, to, into) {
      const [u, v] = inFrame(source);
      if (v <= from || v >= to) return;
      const { section, ring } = source;
      const top = section.topAt(u, outline === 'outer' ? ring : 0);
      const bottom = outline === 'clear' ? section.sill : 'dome' in source ? source.baseZ : 0;
      if (top > bottom) into.push([bottom, top]);
    },
    disc(centre, radius, bottomZ, into) {
      if (distance(centre) < radius) into.push([bottomZ, 0]);
    },
    box(source, half, to, bottomZ, into) {
      const [u, v] = inFrame(source);
      if (v > 0 && v < to && Math.abs(u) < half) into.push([bottomZ, 0]);
    },
  };
}
