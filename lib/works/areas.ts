import { remembered } from '../base/remembered.js';
import { SAME_POINT } from '../base/tolerances.js';
import { nicheBack } from '../masonry/arch-volumes.js';
import { bearingColumn, type ColumnBody, fullTurn } from '../masonry/column.js';
import type { Cutter } from '../masonry/cutter.js';
import { sectionCutter, shellCutter } from '../masonry/cutter.js';
import { cutArea } from '../masonry/measure.js';
import {
  type Depth,
  domeBreaks,
  type KinkLine,
  onSurface,
  outlineArea,
  passageKinks,
  prismVolume,
  sectionBreaks,
} from '../masonry/prism.js';
import { cos, sin, square } from '../math/elementary.js';
import { monotoneRoot } from '../math/roots.js';
import { type Section, sectionOutline } from '../math/section.js';
import { sub2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { abuts, archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import { type PassageSetout, seenFrom } from '../setout/passage.js';
import type { MeridianSpan } from '../setout/span.js';

/** Surfaces of a house that are rendered, meshed, waterproofed, or lose warmth; mm², by quadrature. */
export interface HouseAreas {
  /** Intradoses less what openings, passages and earlier domes take, and what shows of these in the room. */
  readonly intrados: number;
  /** Jambs and soffits in openings and passages, backs of niches. */
  readonly reveals: number;
  /** Extradoses less what arches, passages and earlier domes take, and curbs outside and on top. */
  readonly extrados: number;
  /** Outsides of barrels and passages, flat faces. */
  readonly barrels: number;
  /** Clear areas of openings that go through, by id. */
  readonly openings: Readonly<Record<string, number>>;
}

export const areasOf = remembered((house: HouseSetout): HouseAreas => {
  const sum = { intrados: 0, reveals: 0, extrados: 0, barrels: 0 };
  for (const dome of house.domes) {
    sum.intrados += intradosArea(house, dome) + extradosInRoom(house, dome);
    sum.extrados += extradosArea(house, dome);
  }
  for (const arch of house.arches) {
    const { reveals, outside } = archAreas(arch);
    sum.reveals += reveals;
    sum.barrels += outside;
  }
  for (const passage of house.passages) {
    const { reveals, outside } = passageAreas(passage);
    sum.reveals += reveals;
    sum.barrels += outside;
  }
  const through = house.arches.filter((a) => a.clear.kind === 'through');
  return {
    ...sum,
    openings: Object.fromEntries(through.map((a) => [a.id, sectionArea(a.section, 0, a.section.sill)])),
  };
});

/** A surface of revolution at `depth` outside a span, s from `from` to `to`, as a body of unit thickness. */
function revolved(
  span: MeridianSpan,
  [from, to]: readonly [number, number],
  depth: number,
  turn: readonly [number, number],
): ColumnBody {
  return (i) => {
    const p = span.at(from + (to - from) * i);
    const r = p.r + depth * cos(p.normalRad);
    return bearingColumn(r, p.z + depth * sin(p.normalRad), r * (1 + p.curvature * depth) * (to - from), turn);
  };
}

/** Strips that a surface is measured in: round each there is a bearing at which nothing is cut, where a turn can start. */
const STRIPS = 12;

function revolvedArea(
  span: MeridianSpan,
  [from, to]: readonly [number, number],
  depth: number,
  cutters: readonly Cutter[],
): number {
  let sum = 0;
  for (let k = 0; k < STRIPS; k++) {
    const s = [from + ((to - from) * k) / STRIPS, from + ((to - from) * (k + 1)) / STRIPS] as const;
    if (s[1] <= s[0]) continue;
    const top = span.at(s[1]);
    const narrowest = Math.max(1, top.r + depth * cos(top.normalRad));
    const low = span.at(s[0]);
    const near = cutters.filter(
      (c) => c.highZ > low.z + depth * sin(low.normalRad) - 1 && c.lowZ < top.z + depth * sin(top.normalRad) + 1,
    );
    for (const bearings of fullTurn(near, narrowest)) sum += cutArea(revolved(span, s, depth, bearings), near);
  }
  return sum;
}

/** Intrados of a dome, stem wall included, less the clear spaces and the earlier domes that meet it. */
export function intradosArea(house: HouseSetout, dome: DomeSetout): number {
  const clear = [
    ...archesOf(house, dome).map((a) =>
      sectionCutter({ id: a.id, bearingRad: a.bearingRad, section: a.section, ring: 0, baseZ: a.section.sill }, 0),
    ),
    ...passagesOf(house, dome).map((p) => sectionCutter({ ...seenFrom(p, dome), ring: 0 }, 0)),
    ...abutted(house, dome),
  ];
  const { curb, shell, stem } = dome;
  const end = curb ? monotoneRoot((s) => shell.at(s).r - curb.clearRadius, 0, shell.length) : shell.length;
  return revolvedArea(stem, [0, stem.length], 0, clear) + revolvedArea(shell, [0, end], 0, clear);
}

const abutted = (house: HouseSetout, dome: DomeSetout): Cutter[] =>
  earlierThan(house, dome).map((earlier) => shellCutter(earlier, sub2(earlier.at, dome.at), 0));

/** Later domes that abut a dome. */
const laterThan = (house: HouseSetout, dome: DomeSetout): DomeSetout[] =>
  house.domes.filter((later) => abuts(house, later, dome));

/** What shows of a dome's extrados outside: with its curb, less what stands against it or inside other domes. */
export function extradosArea(house: HouseSetout, dome: DomeSetout): number {
  const later = laterThan(house, dome).map((other) => shellCutter(other, sub2(other.at, dome.at), 0));
  return extradosLeft(dome, [...besideExtrados(house, dome), ...later]) + curbArea(dome);
}

/** What shows of earlier domes' extradoses in a later dome's room. */
export function extradosInRoom(house: HouseSetout, later: DomeSetout): number {
  return earlierThan(house, later).reduce((sum, dome) => {
    const taken = besideExtrados(house, dome, later);
    const room = shellCutter(
      { ...later, outerRadiusAt: (z) => later.radiusAt(z), curb: null, topZ: later.crownZ },
      sub2(later.at, dome.at),
      0,
    );
    return sum + extradosLeft(dome, taken) - extradosLeft(dome, [...taken, room]);
  }, 0);
}

/**
 * What takes of a dome's extrados: barrels, clear spaces of flush openings, passages, earlier domes. In the room of a
 * later dome the vault of their passage ends flush with it: there the clear space alone takes of it.
 */
function besideExtrados(house: HouseSetout, dome: DomeSetout, seenIn: DomeSetout | null = null): Cutter[] {
  return [
    // A niche without a barrel leaves the extrados whole.
    ...archesOf(house, dome)
      .filter((a) => a.faceV !== null || a.clear.kind === 'through')
      .map((a) => {
        const out = a.faceV === null ? { ring: 0, baseZ: a.section.sill } : { ring: a.ring, baseZ: a.baseZ };
        return sectionCutter({ id: a.id, bearingRad: a.bearingRad, section: a.section, ...out }, 0);
      }),
    ...passagesOf(house, dome).map((p) => {
      const ends = p.domes.some(({ id }) => id === seenIn?.id);
      return sectionCutter({ ...seenFrom(p, dome), ...(ends ? { ring: 0 } : {}) }, 0);
    }),
    ...abutted(house, dome),
  ];
}

function extradosLeft(dome: DomeSetout, taken: readonly Cutter[]): number {
  const { stem, shell, thickness, curb, skewback, springingRadius, springingZ } = dome;
  const outer = (s: number) => shell.at(s).r + thickness * cos(shell.at(s).normalRad);
  const outerZ = (s: number) => shell.at(s).z + thickness * sin(shell.at(s).normalRad);
  // The extrados is prolonged down to the shoulder, and up to the axis or the curb.
  const { arc } = dome.profile;
  const reach = arc ? (arc.radius * Math.PI) / 2 : springingRadius + 4 * thickness;
  const low = skewback ? monotoneRoot((s) => outerZ(s) - skewback.shoulderZ, -reach, 0) : 0;
  const crown =
    outer(shell.length) > SAME_POINT ? monotoneRoot(outer, shell.length, shell.length + reach) : shell.length;
  const high = curb ? curb.bedS : crown;
  const wall: MeridianSpan = { ...stem, length: skewback?.shoulderZ ?? springingZ };
  return revolvedArea(wall, [0, wall.length], thickness, taken) + revolvedArea(shell, [low, high], thickness, taken);
}

function curbArea({ curb }: DomeSetout): number {
  if (!curb) return 0;
  const [r, z] = curb.bedOuter;
  return 2 * Math.PI * r * (curb.topZ - z) + Math.PI * (square(r) - square(curb.clearRadius));
}

/** Area of a section grown by `grow`, from the height `from` up. */
function sectionArea(section: Section, grow: number, from: number): number {
  const half = (z: number) => section.halfWidthAt(z, grow, from);
  return prismVolume([from, section.topZ(grow)], [() => 0, half], () => 1, sectionBreaks(section, [0, grow]));
}

/** Sides and top of a section's outline times a length along the bearing; the bottom edge is left out. */
function mantle(
  section: Section,
  [grow, from]: readonly [number, number],
  depth: Depth,
  domes: readonly DomeSetout[],
  kinks: readonly KinkLine[] = [],
): number {
  return outlineArea(sectionOutline(section, grow, from).slice(0, -1), depth, domes.flatMap(domeBreaks), kinks);
}

function archAreas(arch: ArchSetout): { reveals: number; outside: number } {
  const { dome, section, ring, faceV, baseZ, clear } = arch;
  const inner = onSurface(dome, 0);
  const extrados = onSurface(dome, dome.thickness);
  const outer: Depth = faceV === null ? extrados : () => faceV;
  const deep: Depth = clear.kind === 'through' ? outer : nicheBack(arch);
  const clearArea = sectionArea(section, 0, section.sill);
  const reveals = mantle(section, [0, section.sill], (u, z) => deep(u, z) - inner(u, z), [dome]);
  // The back of a niche is taken as its section: the curve of one that follows the wall is left out.
  const back = clear.kind === 'through' ? 0 : clearArea;
  if (faceV === null) return { reveals: reveals + back, outside: 0 };
  const face = sectionArea(section, ring, baseZ) - (clear.kind === 'through' ? clearArea : 0);
  const sides = mantle(section, [ring, baseZ], (u, z) => faceV - extrados(u, z), [dome]);
  return { reveals: reveals + back, outside: sides + face };
}

function passageAreas(passage: PassageSetout): { reveals: number; outside: number } {
  const { section, ring, domes, distance } = passage;
  const kinks = passageKinks(passage);
  const through: Depth = (u, z) => {
    const [start, end] = passage.stretchAt(u, z);
    return end - start;
  };
  const reveals = mantle(section, [0, 0], through, domes, kinks);
  const [first, second] = domes.map((dome) => onSurface(dome, dome.thickness)) as [Depth, Depth];
  const between: Depth = (u, z) => distance - first(u, z) - second(u, z);
  return { reveals, outside: mantle(section, [ring, 0], between, domes, kinks) };
}
