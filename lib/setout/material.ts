import { type Intervals, intersectIntervals, subtractIntervals, uniteIntervals } from '../math/intervals.js';
import { cross2, dot2, sub2, type Vec2, type Vec3 } from '../math/vec.js';
import type { ArchSetout } from './arch.js';
import type { DomeSetout } from './dome.js';
import { archesOf, earlierThan, type HouseSetout } from './house.js';
import type { PassageSetout } from './passage.js';

/**
 * Where a straight line runs through masonry, footing and slab: exact on the analytic house, no mesh.
 * Level lines serve plans, elevations and sections; upright lines serve roof plans and headroom.
 * Each kind of line only has to say where it runs through the house's elementary bodies.
 */
interface Line {
  /** Whether it runs above the floor, and under it. */
  readonly above: boolean;
  readonly under: boolean;
  /** Full body of a dome, from the floor to its top, room included. */
  body(dome: DomeSetout): Intervals;
  /** Room of a dome, with the bore of its oculus. */
  room(dome: DomeSetout): Intervals;
  /** Inside the surface `offset` outside a dome's intrados. */
  within(dome: DomeSetout, offset: number): Intervals;
  /** Between two planes across a section, v from `from` to `to`, inside its outer or clear outline. */
  prism(place: Place, outline: 'outer' | 'clear', from: number, to: number): Intervals;
  /** Upright disc under the floor down to `bottomZ`. */
  disc(centre: Vec2, radius: number, bottomZ: number): Intervals;
  /** Upright box under the floor, |u| ≤ half, v from `from` to `to`. */
  box(place: Place, half: number, from: number, to: number, bottomZ: number): Intervals;
}

/** Plan frame and section that an arch and a passage share. */
interface Place {
  readonly origin: Vec2;
  readonly along: Vec2;
  readonly across: Vec2;
  readonly source: ArchSetout | PassageSetout;
  readonly baseZ: number;
}

/** Stretches [from, to] of `origin + t · direction` (a unit plan vector) at height `z` that lie in material. */
export const levelMaterial = (house: HouseSetout, z: number, origin: Vec2, direction: Vec2): Intervals =>
  material(house, levelLine(z, origin, direction));

/** Stretches in z of the upright line over the plan point that lie in material. */
export const uprightMaterial = (house: HouseSetout, at: Vec2): Intervals => material(house, uprightLine(at));

/** Whether a point lies in masonry, footing or slab. */
export function inMaterial(house: HouseSetout, point: Vec3): boolean {
  return uprightMaterial(house, [point[0], point[1]]).some(([low, high]) => point[2] > low && point[2] < high);
}

function material(house: HouseSetout, line: Line): Intervals {
  if (!line.above) return uniteIntervals(base(house, line));
  const walls = house.domes.flatMap((dome) => wall(house, dome, line));
  const passages = house.passages.flatMap((p) => passageMasonry(house, p, line));
  const clear = house.passages.flatMap((p) => line.prism(placeOf(p), 'clear', 0, p.distance));
  const masonry = subtractIntervals([...walls, ...passages], clear);
  return line.under ? uniteIntervals([...masonry, ...base(house, line)]) : masonry;
}

/** A dome with its barrels, less its room, its openings and the earlier domes that it abuts. */
function wall(house: HouseSetout, dome: DomeSetout, line: Line): Intervals {
  const arches = archesOf(house, dome);
  const barrels = arches.flatMap((a) => (a.faceV === null ? [] : line.prism(placeOf(a), 'outer', 0, a.faceV)));
  const solid = [...line.body(dome), ...barrels];
  if (solid.length === 0) return solid;
  const hollow = [...line.room(dome), ...earlierThan(house, dome).flatMap((earlier) => line.body(earlier))];
  for (const arch of arches) {
    const place = placeOf(arch);
    if (arch.clear.kind === 'plane') hollow.push(...line.prism(place, 'clear', 0, arch.clear.v));
    else {
      const clear = line.prism(place, 'clear', 0, arch.faceV ?? dome.springingRadius + dome.thickness);
      if (arch.clear.kind === 'through') hollow.push(...clear);
      else hollow.push(...intersectIntervals(clear, line.within(dome, arch.clear.depth)));
    }
  }
  return subtractIntervals(solid, hollow);
}

function passageMasonry(house: HouseSetout, passage: PassageSetout, line: Line): Intervals {
  const rooms = passage.domes.flatMap((dome) =>
    subtractIntervals(
      line.room(dome),
      earlierThan(house, dome).flatMap((earlier) => line.body(earlier)),
    ),
  );
  return subtractIntervals(line.prism(placeOf(passage), 'outer', 0, passage.distance), rooms);
}

/** Footing under all walls, jambs and passages; slab in what they enclose, or under all where there is no footing. */
function base(house: HouseSetout, line: Line): Intervals {
  const [footing] = house.footings;
  const [slab] = house.slabs;
  const projection = footing?.projection ?? 0;
  const boxes = (bottomZ: number) => [
    ...house.arches.flatMap((a) =>
      a.faceV === null ? [] : line.box(placeOf(a), baseHalf(a, projection), 0, a.faceV + projection, bottomZ),
    ),
    ...house.passages.flatMap((p) => line.box(placeOf(p), baseHalf(p, projection), 0, p.distance, bottomZ)),
  ];
  if (!footing) {
    if (!slab) return [];
    return [...boxes(slab.bottomZ), ...house.domes.flatMap((d) => line.disc(d.at, outerOf(d), slab.bottomZ))];
  }
  const discs = (bottomZ: number, radius: 'innerRadius' | 'outerRadius', domes = house.domes) =>
    domes.flatMap((d) => line.disc(d.at, house.footings.find((f) => f.domeId === d.id)?.[radius] ?? 0, bottomZ));
  const enclosed = (bottomZ: number) =>
    house.domes.flatMap((dome) =>
      subtractIntervals(discs(bottomZ, 'innerRadius', [dome]), discs(bottomZ, 'outerRadius', earlierThan(house, dome))),
    );
  const under = subtractIntervals(
    [...discs(footing.bottomZ, 'outerRadius'), ...boxes(footing.bottomZ)],
    enclosed(footing.bottomZ),
  );
  return slab ? [...under, ...enclosed(slab.bottomZ)] : under;
}

const outerOf = (dome: DomeSetout): number => dome.springingRadius + dome.thickness;

/** Half width of footing or slab under a barrel or passage. */
export const baseHalf = ({ section, ring }: ArchSetout | PassageSetout, projection: number): number =>
  section.width / 2 + ring + projection;

const placeOf = (source: ArchSetout | PassageSetout): Place => {
  const { along, across } = source;
  return 'dome' in source
    ? { origin: source.dome.at, along, across, source, baseZ: source.baseZ }
    : { origin: source.domes[0].at, along, across, source, baseZ: 0 };
};

function levelLine(z: number, origin: Vec2, direction: Vec2): Line {
  const circle = (centre: Vec2, radius: number): Intervals => {
    if (!(radius > 0)) return [];
    const to = sub2(centre, origin);
    const middle = dot2(to, direction);
    const half = Math.sqrt(radius * radius - cross2(direction, to) ** 2);
    return half > 0 ? [[middle - half, middle + half]] : [];
  };
  const rectangle = (place: Place, half: number, from: number, to: number): Intervals => {
    if (!(half > 0)) return [];
    const start = sub2(origin, place.origin);
    return intersectIntervals(
      between(dot2(start, place.across), dot2(direction, place.across), -half, half),
      between(dot2(start, place.along), dot2(direction, place.along), from, to),
    );
  };
  return {
    above: z >= 0,
    under: z < 0,
    body: (dome) => circle(dome.at, dome.outerRadiusAt(z)),
    room(dome) {
      const bored = dome.curb !== null && z > dome.springingZ;
      return [...circle(dome.at, dome.radiusAt(z)), ...(bored ? circle(dome.at, dome.curb?.clearRadius ?? 0) : [])];
    },
    within: (dome, offset) => circle(dome.at, dome.radiusAt(z, offset)),
    prism(place, outline, from, to) {
      const { source } = place;
      return rectangle(place, outline === 'outer' ? source.outerHalfAt(z) : source.clearHalfAt(z), from, to);
    },
    disc: (centre, radius, bottomZ) => (z > bottomZ ? circle(centre, radius) : []),
    box: (place, half, from, to, bottomZ) => (z > bottomZ ? rectangle(place, half, from, to) : []),
  };
}

/** Values low ≤ c0 + t·c1 ≤ high as an interval of t. */
function between(c0: number, c1: number, low: number, high: number): Intervals {
  if (c1 === 0) return c0 > low && c0 < high ? [[Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]] : [];
  const a = (low - c0) / c1;
  const b = (high - c0) / c1;
  return [[Math.min(a, b), Math.max(a, b)]];
}

function uprightLine(at: Vec2): Line {
  const distance = (centre: Vec2) => Math.hypot(at[0] - centre[0], at[1] - centre[1]);
  const inFrame = (place: Place): Vec2 => {
    const from = sub2(at, place.origin);
    return [dot2(from, place.across), dot2(from, place.along)];
  };
  return {
    above: true,
    under: true,
    body(dome) {
      const r = distance(dome.at);
      if (r >= outerOf(dome)) return [];
      const curbed = dome.curb !== null && r <= dome.curb.bedOuter[0];
      return [[0, curbed ? dome.topZ : dome.heightAt(r, dome.thickness)]];
    },
    room(dome) {
      const r = distance(dome.at);
      if (dome.curb && r < dome.curb.clearRadius) return [[0, dome.topZ]];
      return r < dome.springingRadius ? [[0, dome.heightAt(r)]] : [];
    },
    within(dome, offset) {
      const r = distance(dome.at);
      return r < dome.springingRadius + offset ? [[0, dome.heightAt(r, offset)]] : [];
    },
    prism(place, outline, from, to) {
      const [u, v] = inFrame(place);
      if (v <= from || v >= to) return [];
      const { section, ring } = place.source;
      const top = section.topAt(u, outline === 'outer' ? ring : 0);
      return top > 0 ? [[outline === 'outer' ? place.baseZ : section.sill, top]] : [];
    },
    disc: (centre, radius, bottomZ) => (distance(centre) < radius ? [[bottomZ, 0]] : []),
    box(place, half, from, to, bottomZ) {
      const [u, v] = inFrame(place);
      return v > from && v < to && Math.abs(u) < half ? [[bottomZ, 0]] : [];
    },
  };
}
