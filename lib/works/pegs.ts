import * as texts from '../base/texts/pegs.js';
import type { LengthUnit } from '../base/units.js';
import { acos, hypot, sin } from '../math/elementary.js';
import { add2, alongBearing, cross2, DEG, scale2, sub2, turnPositive, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout, passagesOf } from '../setout/house.js';
import { baseHalf } from '../setout/material.js';
import { seenFrom } from '../setout/passage.js';

/** Something to measure a peg against: its name and the distance to it. */
export interface PegCheck {
  readonly to: string;
  readonly distance: number;
}

/** A point of the ground plan, its tapes from the two datum pegs, and the distances that catch a slip. */
export interface Peg {
  readonly name: string;
  /** East, north. */
  readonly at: Vec2;
  readonly tapes: readonly [number, number];
  /** Where it lies, looking from peg A to peg B. */
  readonly side: 'left' | 'right' | 'on the line';
  /** Angle at which the tapes cross, degrees; the flatter they cross, the less they tell. */
  readonly crossingDeg: number;
  readonly checks: readonly PegCheck[];
}

/** How far from the house its datum pegs stand when none are given, mm. */
const PEG_CLEARANCE = 1500;
/** Step of their coordinates, mm: what a tape shows without a fraction. */
const pegStep = (units: LengthUnit): number => (units === 'ft' || units === 'in' ? 6 * 25.4 : 100);

/** The two datum pegs: as given, else both on one side of the house, clear of its footings. */
export function datumPegs(house: HouseSetout): readonly [Vec2, Vec2] {
  const given = house.house.settingOut.pegs;
  if (given) return given;
  const projection = house.footings[0]?.projection ?? 0;
  const reaches = [
    ...house.domes.map((d) => ({ at: d.at, far: d.springingRadius + d.thickness + Math.max(0, projection) })),
    ...house.arches.map((a) => ({ at: a.dome.at, far: hypot(baseHalf(a, projection), (a.faceV ?? 0) + projection) })),
  ];
  const step = pegStep(house.house.units);
  const low = (axis: 0 | 1) =>
    Math.floor((Math.min(...reaches.map((r) => r.at[axis] - r.far)) - PEG_CLEARANCE) / step) * step;
  const east = Math.ceil((Math.max(...reaches.map((r) => r.at[0] + r.far)) + PEG_CLEARANCE) / step) * step;
  return [
    [low(0), low(1)],
    [east, low(1)],
  ];
}

interface Point {
  readonly name: string;
  readonly at: Vec2;
  /** Names of points that it is measured against. */
  readonly against: readonly string[];
}

/** Every peg of the house; the datum pegs first, a dome's axis before what hangs on it. */
export function pegsOf(house: HouseSetout): Peg[] {
  const [a, b] = datumPegs(house);
  const points: Point[] = [
    { name: 'peg A', at: a, against: ['peg B'] },
    { name: 'peg B', at: b, against: ['peg A'] },
    ...house.domes.flatMap((dome, i) => [
      { name: texts.axis(dome.id), at: dome.at, against: house.domes.slice(0, i).map((d) => texts.axis(d.id)) },
      ...pointsOf(house, dome),
    ]),
  ];
  const places = new Map(points.map((p) => [p.name, p.at]));
  return points.map(({ name, at, against }) => {
    const tapes = [between(a, at), between(b, at)] as const;
    const turn = cross2(sub2(b, a), sub2(at, a)) / between(a, b);
    return {
      name,
      at,
      tapes,
      side: Math.abs(turn) < 0.5 ? texts.onLine : turn > 0 ? 'left' : 'right',
      crossingDeg: crossing(tapes, between(a, b)),
      checks: against.map((to) => ({ to, distance: between(places.get(to) as Vec2, at) })),
    };
  });
}

const between = (p: Vec2, q: Vec2): number => hypot(q[0] - p[0], q[1] - p[1]);

function crossing([p, q]: readonly [number, number], base: number): number {
  if (p === 0 || q === 0) return 0;
  const share = (p * p + q * q - base * base) / (2 * p * q);
  return acos(Math.min(1, Math.max(-1, share))) / DEG;
}

/** The mark that bearings are taped from, the corners of flat faces, the ends of passages. */
function pointsOf(house: HouseSetout, dome: DomeSetout): Point[] {
  const axis = texts.axis(dome.id);
  const place = (bearingRad: number, u: number, v: number): Vec2 => {
    const along = alongBearing(bearingRad);
    return add2(dome.at, add2(scale2(along, v), scale2([along[1], -along[0]], u)));
  };
  const faces = archesOf(house, dome).flatMap((arch): Point[] => {
    if (arch.faceV === null) return [];
    const half = arch.section.width / 2 + arch.ring;
    const corner = (side: 'left' | 'right', against: string[]): Point => ({
      name: texts.faceOuterCorner(arch.id, side),
      at: place(arch.bearingRad, side === 'left' ? -half : half, arch.faceV as number),
      against: [axis, ...against],
    });
    return [corner('left', []), corner('right', [texts.faceOuterCornerLeft(arch.id)])];
  });
  const ends = passagesOf(house, dome).map((passage): Point => {
    const [start, end] = passage.stretchAt(0, 0);
    const own = passage.domes[0].id === dome.id ? start : passage.distance - end;
    return {
      name: texts.passageMiddleAt(passage.id, dome.id),
      at: place(seenFrom(passage, dome).bearingRad, 0, own),
      against: [axis],
    };
  });
  const mark: Point = { name: texts.pegMark(dome.id), at: place(0, 0, dome.springingRadius), against: [axis] };
  return [mark, ...faces, ...ends];
}

/** A place on a dome's inside circle at the floor, by its chord from the dome's mark. */
export interface ChordMark {
  readonly domeId: string;
  readonly what: string;
  readonly bearingRad: number;
  /** Which way round from the mark the chord is measured. */
  readonly way: 'clockwise' | 'anticlockwise';
  readonly chord: number;
  /** From the point opposite the mark: catches a slip. */
  readonly checkChord: number;
}

/** Middles and jambs of every opening and passage on the inside circle of the wall. */
export function chordMarks(house: HouseSetout): ChordMark[] {
  return house.domes.flatMap((dome) => {
    const ways = [...archesOf(house, dome), ...passagesOf(house, dome).map((p) => seenFrom(p, dome))];
    return ways.flatMap(({ id, bearingRad, section }) => {
      const half = jambTurn(section.width / 2, dome.springingRadius);
      const places = [
        [texts.jambOnLeft, -half],
        ['middle', 0],
        [texts.jambOnRight, half],
      ] as const;
      return places.map(([place, turn]) => chordMark(dome, `${id}, ${place}`, turnPositive(bearingRad + turn)));
    });
  });
}

const jambTurn = (half: number, radius: number): number => Math.PI / 2 - acos(Math.min(1, half / radius));

function chordMark(dome: DomeSetout, what: string, bearingRad: number): ChordMark {
  const turn = bearingRad <= Math.PI ? bearingRad : 2 * Math.PI - bearingRad;
  const chord = (angle: number) => 2 * dome.springingRadius * sin(angle / 2);
  return {
    domeId: dome.id,
    what,
    bearingRad,
    way: bearingRad <= Math.PI ? 'clockwise' : 'anticlockwise',
    chord: chord(turn),
    checkChord: chord(Math.PI - turn),
  };
}

/** A circle to scribe round a dome's axis. */
export interface GroundCircle {
  readonly domeId: string;
  readonly what: string;
  readonly radius: number;
  /** Level of what is set by it. */
  readonly z: number;
}

/** Circles of footing, wall and slab round each axis, the innermost first. */
export function groundCircles(house: HouseSetout): GroundCircle[] {
  return house.domes.flatMap((dome) => {
    const footing = house.footings.find((f) => f.domeId === dome.id);
    const slab = house.slabs.find((s) => s.domeId === dome.id);
    const inner = dome.springingRadius;
    return [
      ...(footing ? [{ what: texts.footingInnerEdge, radius: footing.innerRadius, z: footing.bottomZ }] : []),
      { what: texts.wallInside, radius: inner, z: 0 },
      { what: texts.wallOutside, radius: inner + dome.thickness, z: 0 },
      ...(footing ? [{ what: texts.footingOuterEdge, radius: footing.outerRadius, z: footing.bottomZ }] : []),
      ...(slab && !footing ? [{ what: texts.slabEdge, radius: slab.radius, z: slab.bottomZ }] : []),
    ].map((circle) => ({ domeId: dome.id, ...circle }));
  });
}
