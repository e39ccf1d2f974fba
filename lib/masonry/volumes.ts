import { cos, sin, square } from '../math/elementary.js';
import { integrate, integrateSoftEnds } from '../math/quadrature.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { bearingColumn, type ColumnBody, type Cutter, comesNear, fullTurn, revolvedBox } from './column.js';
import { cutVolume, wholeVolume } from './measure.js';

/** Volumes of everything of the masonry that isn't a block, each by its own quadrature; mm³. */

/** Bed joint under one course: its ring less what the arches take. */
export function bedJointVolume(dome: DomeSetout, index: number, cutters: readonly Cutter[]): number {
  const course = courseOf(dome, index);
  const ring = revolvedBox(dome[course.part], [course.from, course.bed], [0, dome.thickness], fullTurn(cutters));
  return cutVolume(ring, cutters);
}

/** A course over its bed joint, blocks and perpends as one curved ring less what the arches take. */
export function blockRingVolume(dome: DomeSetout, index: number, cutters: readonly Cutter[]): number {
  const course = courseOf(dome, index);
  const ring = revolvedBox(dome[course.part], [course.bed, course.to], [0, dome.thickness], fullTurn(cutters));
  return cutVolume(ring, cutters);
}

/** Perpends of one course, each a wedge between planes through the axis. */
export function perpendVolume(dome: DomeSetout, index: number, joint: number, cutters: readonly Cutter[]): number {
  const course = courseOf(dome, index);
  const margin = joint / 2 / course.midRadius;
  const module = (2 * Math.PI) / course.count;
  const span = dome[course.part];
  const narrowest = span.at(course.to).r;
  const wedgeAt = (at: number) =>
    revolvedBox(span, [course.bed, course.to], [0, dome.thickness], [at - margin, at + margin]);
  const whole = wholeVolume(wedgeAt(0));
  let sum = 0;
  for (let k = 0; k < course.count; k++) {
    const at = course.startRad + k * module;
    const near = cutters.filter((c) => comesNear(c, narrowest, [at - margin, at + margin]));
    sum += near.length === 0 ? whole : cutVolume(wedgeAt(at), near);
  }
  return sum;
}

function courseOf(dome: DomeSetout, index: number) {
  const course = dome.courses[index - 1];
  if (!course) throw new RangeError(`dome ${dome.id} has no course ${index}`);
  return course;
}

/** Skewback ring less what the arches take; 0 where the meridian springs upright. */
export function skewbackVolume(dome: DomeSetout, cutters: readonly Cutter[]): number {
  if (!dome.skewback) return 0;
  const { bed } = dome.skewback;
  const inner = dome.springingRadius;
  const outer = inner + dome.thickness;
  const slope = (bed[1] - dome.springingZ) / (bed[0] - inner);
  const turn = fullTurn(cutters);
  const under = upTo([inner, bed[0]], dome.springingZ, (r) => dome.springingZ + (r - inner) * slope, turn);
  const beyond = upTo([bed[0], outer], dome.springingZ, (r) => dome.heightAt(r, dome.thickness), turn);
  return cutVolume(under, cutters) + cutVolume(beyond, cutters);
}

/** Ring over radii [from, to] between a level bottom and the height `top(r)`; i goes up, j outward. */
function upTo(
  [from, to]: readonly [number, number],
  bottom: number,
  top: (r: number) => number,
  turn: readonly [number, number],
): ColumnBody {
  return (i, j) => {
    const r = from + (to - from) * j;
    const height = top(r) - bottom;
    return bearingColumn(r, bottom + height * i, r * height * (to - from), turn);
  };
}

/** Crown plug: the extrados' cap above its bed less the intrados' cap, with the cone of the bed between. */
export function plugVolume(dome: DomeSetout): number {
  if (!dome.plug) return 0;
  const { bedS } = dome.plug;
  const p = dome.shell.at(bedS);
  const t = dome.thickness;
  const outer = [p.r + t * cos(p.normalRad), p.z + t * sin(p.normalRad)] as const;
  const over = (from: number, to: number, height: (r: number) => number) =>
    integrateSoftEnds((r) => 2 * Math.PI * r * height(r), from, to, 24);
  const slope = outer[0] > p.r ? (outer[1] - p.z) / (outer[0] - p.r) : 0;
  return (
    over(0, outer[0], (r) => dome.heightAt(r, t)) -
    over(0, p.r, (r) => dome.heightAt(r)) -
    over(p.r, outer[0], (r) => p.z + (r - p.r) * slope)
  );
}

/** Curb: from the intrados and its bed up to its level top, outside the bore. */
export function curbVolume(dome: DomeSetout): number {
  const { curb } = dome;
  if (!curb) return 0;
  const p = dome.shell.at(curb.bedS);
  const [outerR, outerZ] = curb.bedOuter;
  const slope = outerR > p.r ? (outerZ - p.z) / (outerR - p.r) : 0;
  const over = (from: number, to: number, under: (r: number) => number) =>
    integrate((r) => 2 * Math.PI * r * (curb.topZ - under(r)), from, to, 24);
  return over(curb.clearRadius, p.r, (r) => dome.heightAt(r)) + over(p.r, outerR, (r) => p.z + (r - p.r) * slope);
}

/** Height levels at which a dome's or an arch's outlines change their law. */
function levels(arch: ArchSetout, grows: readonly number[], from: number, to: number): number[] {
  const { dome, section } = arch;
  const all = [from, to, section.sill, section.springingZ, dome.springingZ];
  if (dome.skewback) all.push(dome.skewback.shoulderZ);
  for (const grow of grows) all.push(section.shoulderZ(grow), section.topZ(grow));
  return [...new Set(all.filter((z) => z >= from && z <= to))].sort((a, b) => a - b);
}

type HalfWidth = (z: number) => number;
/** How far out, along the bearing, a surface lies at (u, z). */
type Reach = (u: number, z: number) => number;

/** ∫∫ of (outer − inner) over |u| between two half widths, z over [from, to]. */
function prismVolume(
  arch: ArchSetout,
  grows: readonly number[],
  z: readonly [number, number],
  halves: readonly [HalfWidth, HalfWidth],
  reach: readonly [Reach, Reach],
): number {
  const breaks = levels(arch, grows, z[0], z[1]);
  let sum = 0;
  for (let k = 0; k + 1 < breaks.length; k++) {
    sum += integrateSoftEnds(
      (height) => {
        const [low, high] = [halves[0](height), halves[1](height)];
        if (high <= low) return 0;
        return 2 * integrate((u) => Math.max(0, reach[1](u, height) - reach[0](u, height)), low, high, 16);
      },
      breaks[k] as number,
      breaks[k + 1] as number,
      24,
    );
  }
  return sum;
}

const onSurface =
  (dome: DomeSetout, offset: number): Reach =>
  (u, z) => {
    const rest = square(dome.radiusAt(z, offset)) - u * u;
    return rest > 0 ? Math.sqrt(rest) : 0;
  };
const atFace =
  (v: number): Reach =>
  () =>
    v;

export interface ArchVolumes {
  /** Ring or barrel over the head's springing. */
  readonly head: number;
  readonly jambs: number;
  /** Wall under the sill between the jambs of a barrel. */
  readonly spandrel: number;
  /** Back of a niche. */
  readonly back: number;
  /** Mortar between the arch and the courses. */
  readonly joint: number;
}

/** The pieces of one arch, from the intrados to the extrados or to the flat face. */
export function archVolumes(arch: ArchSetout, joint: number): ArchVolumes {
  const { dome, section, ring, baseZ } = arch;
  const inner = onSurface(dome, 0);
  const extrados = onSurface(dome, dome.thickness);
  const outer = arch.faceV === null ? extrados : atFace(arch.faceV);
  const clear: HalfWidth = (z) => section.halfWidthAt(z);
  const jambInside: HalfWidth = () => section.width / 2;
  const outside: HalfWidth = (z) => arch.outerHalfAt(z);
  const grown: HalfWidth = (z) => arch.outerHalfAt(z, joint);
  const zero: HalfWidth = () => 0;
  const grows = [0, ring, ring + joint];
  const part = (from: number, to: number, halves: readonly [HalfWidth, HalfWidth], reach: readonly [Reach, Reach]) =>
    to > from ? prismVolume(arch, grows, [from, to], halves, reach) : 0;
  return {
    head: part(section.springingZ, arch.topZ, [clear, outside], [inner, outer]),
    jambs: part(baseZ, section.springingZ, [jambInside, outside], [inner, outer]),
    spandrel: part(baseZ, section.sill, [zero, jambInside], [inner, outer]),
    back: nicheBack(arch, part, [zero, clear], outer),
    joint: part(baseZ, section.topZ(ring + joint), [outside, grown], [inner, extrados]),
  };
}

function nicheBack(
  arch: ArchSetout,
  part: (from: number, to: number, halves: readonly [HalfWidth, HalfWidth], reach: readonly [Reach, Reach]) => number,
  halves: readonly [HalfWidth, HalfWidth],
  outer: Reach,
): number {
  if (arch.clear.kind === 'through') return 0;
  const back = arch.clear.kind === 'plane' ? atFace(arch.clear.v) : onSurface(arch.dome, arch.clear.depth);
  return part(arch.section.sill, arch.section.crownZ, halves, [back, outer]);
}

/** Masonry of an arch outside the extrados, and what its clear space takes from the shell; for the envelope. */
export function archEnvelope(arch: ArchSetout): { readonly barrel: number; readonly voidInShell: number } {
  const { dome, section, ring } = arch;
  const inner = onSurface(dome, 0);
  const extrados = onSurface(dome, dome.thickness);
  const clear: HalfWidth = (z) => section.halfWidthAt(z);
  const zero: HalfWidth = () => 0;
  const grows = [0, ring];
  const inClear = (reach: readonly [Reach, Reach]) =>
    prismVolume(arch, grows, [section.sill, section.crownZ], [zero, clear], reach);
  const limited =
    (limit: Reach): Reach =>
    (u, z) =>
      Math.min(limit(u, z), extrados(u, z));
  const limit =
    arch.clear.kind === 'through'
      ? extrados
      : limited(arch.clear.kind === 'plane' ? atFace(arch.clear.v) : onSurface(dome, arch.clear.depth));
  const voidInShell = inClear([inner, limit]);
  if (arch.faceV === null) return { barrel: 0, voidInShell };
  const face = atFace(arch.faceV);
  const outside: HalfWidth = (z) => arch.outerHalfAt(z);
  const gross = prismVolume(arch, grows, [arch.baseZ, arch.topZ], [zero, outside], [extrados, face]);
  const clearLimit = arch.clear.kind === 'plane' ? atFace(Math.min(arch.clear.v, arch.faceV)) : face;
  return { barrel: gross - inClear([extrados, clearLimit]), voidInShell };
}

/** A dome's shell, stem wall, skewback and curb as one figure of revolution, less the room and the bore. */
export function shellOfRevolution(dome: DomeSetout): number {
  const disc = (radius: (z: number) => number, breaks: readonly number[]) => {
    let sum = 0;
    for (let k = 0; k + 1 < breaks.length; k++) {
      sum += integrateSoftEnds((z) => Math.PI * square(radius(z)), breaks[k] as number, breaks[k + 1] as number, 32);
    }
    return sum;
  };
  const shoulder = dome.skewback ? [dome.skewback.shoulderZ] : [];
  const { curb } = dome;
  const outer = [0, dome.springingZ, ...shoulder, ...(curb ? [curb.bedOuter[1]] : []), dome.topZ];
  const gross = disc((z) => dome.outerRadiusAt(z), outer);
  if (!curb) return gross - disc((z) => dome.radiusAt(z), [0, dome.springingZ, dome.crownZ]);
  const boreZ = dome.heightAt(curb.clearRadius);
  const room = disc((z) => dome.radiusAt(z), [0, dome.springingZ, boreZ]);
  return gross - room - Math.PI * square(curb.clearRadius) * (dome.topZ - boreZ);
}
