import { integrate, integrateSoftEnds } from '../math/quadrature.js';
import { blockPlaces, type Course, turnTo } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import { meetingsOf } from './bands.js';
import { bearingColumn, type ColumnBody, columnLeft, fullTurn, headedBoxes, reaching, revolvedBox } from './column.js';
import type { Cutter } from './cutter.js';
import { cutVolume, measureColumns, wholeVolume } from './measure.js';
import { formIn, perpendHalf } from './placed.js';

/** Volumes of everything of the masonry that isn't a block, each by its own quadrature; mm³. */

/** Bed joint under one course: its ring less what the arches take. */
export function bedJointVolume(dome: DomeSetout, index: number, cutters: readonly Cutter[]): number {
  const course = courseOf(dome, index);
  return ringVolume(dome, course, [course.from, course.bed], cutters);
}

/** A course over its bed joint, blocks and perpends as one curved ring less what the arches take. */
export function blockRingVolume(dome: DomeSetout, index: number, cutters: readonly Cutter[]): number {
  const course = courseOf(dome, index);
  return ringVolume(dome, course, [course.bed, course.to], cutters);
}

/** A course's wall between two arc lengths, less what the arches take. */
function ringVolume(dome: DomeSetout, course: Course, s: readonly [number, number], cutters: readonly Cutter[]) {
  const near = reaching(cutters, dome[course.part], s, dome.thickness);
  return sumOver(ringBodies(dome, course, s, near), (body) => cutVolume(body, near));
}

/** A course's ring between two arc lengths as bodies to measure. */
function ringBodies(dome: DomeSetout, { part, to }: Course, s: readonly [number, number], near: readonly Cutter[]) {
  const span = dome[part];
  return fullTurn(near, span.at(to).r).map((bearings) => revolvedBox(span, s, [0, dome.thickness], bearings));
}

const sumOver = (bodies: readonly ColumnBody[], volume: (body: ColumnBody) => number): number =>
  bodies.reduce((sum, body) => sum + volume(body), 0);

/** Perpends of one course between its beds and faces, each between the heads that face each other. */
export function perpendVolume(house: HouseSetout, dome: DomeSetout, index: number, cutters: readonly Cutter[]): number {
  const course = courseOf(dome, index);
  const span = dome[course.part];
  const met = meetingsOf(cutters, span, [course.bed, course.to], dome.thickness);
  const between = headedBoxes(span, [course.bed, course.to], [0, dome.thickness]);
  const sides = [false, true].map((second) => {
    const half = perpendHalf(house, dome, course, second && !!course.mix);
    return { half, widest: widestMargin(dome, course, half) };
  });
  const sideOf = (number: number) => sides[formIn(course, number).second ? 1 : 0] as (typeof sides)[number];
  const numbers = blockPlaces(course).map((k) => k + 1);
  const wholes = new Map<string, number>();
  let sum = 0;
  for (const [i, number] of numbers.entries()) {
    const [before, after] = [sideOf(numbers[i - 1] ?? (numbers[numbers.length - 1] as number)), sideOf(number)];
    const at = course.startRad + turnTo(course, number - 1);
    const perpendAt = (bearing: number) => between((r, z) => [bearing - before.half(r, z), bearing + after.half(r, z)]);
    const { near, gone } = met([at - before.widest, at + after.widest]);
    if (gone) continue;
    const key = [before, after].map((side) => sides.indexOf(side)).join();
    const whole = wholes.get(key) ?? wholeVolume(perpendAt(0));
    wholes.set(key, whole);
    sum += near.length === 0 ? whole : cutVolume(perpendAt(at), near, whole);
  }
  return sum;
}

/** Heads are planes: between their corners a perpend is nowhere wider than at one. */
function widestMargin(dome: DomeSetout, course: Course, half: (r: number, z: number) => number): number {
  const corners = [course.bed, course.to].flatMap((s) =>
    [0, dome.thickness].map((depth) => half(...spanPoint(dome[course.part], s, depth))),
  );
  return Math.max(...corners);
}

function courseOf(dome: DomeSetout, index: number) {
  const course = dome.courses[index - 1];
  if (!course) throw new RangeError(`dome ${dome.id} has no course ${index}`);
  return course;
}

/** The skewback ring over some bearings as bodies to measure; none where the meridian springs upright. */
export function skewbackBodies(dome: DomeSetout, bearings: readonly [number, number]): ColumnBody[] {
  if (!dome.skewback) return [];
  const { bed } = dome.skewback;
  const inner = dome.springingRadius;
  const outer = inner + dome.thickness;
  const slope = (bed[1] - dome.springingZ) / (bed[0] - inner);
  return [
    upTo([inner, bed[0]], dome.springingZ, (r) => dome.springingZ + (r - inner) * slope, bearings),
    upTo([bed[0], outer], dome.springingZ, (r) => dome.heightAt(r, dome.thickness), bearings),
  ];
}

/**
 * Mortar where a dome's courses meet arches, passages and earlier domes: what the cutters grown by the joint
 * take more than the bare ones.
 */
export function cutJointVolume(dome: DomeSetout, bare: readonly Cutter[], grown: readonly Cutter[]): number {
  if (grown.length === 0) return 0;
  // A grown cutter takes all that its bare one does.
  const joint = (body: ColumnBody, one: readonly Cutter[], other: readonly Cutter[]) =>
    measureColumns(body, [...one, ...other], (column) => columnLeft(column, one) - columnLeft(column, other));
  let sum = 0;
  for (const course of dome.courses) {
    const s = [course.from, course.to] as const;
    const other = reaching(grown, dome[course.part], s, dome.thickness);
    if (other.length === 0) continue;
    const one = reaching(bare, dome[course.part], s, dome.thickness);
    sum += sumOver(ringBodies(dome, course, s, other), (ring) => joint(ring, one, other));
  }
  const skewback = fullTurn(grown, dome.springingRadius).flatMap((bearings) => skewbackBodies(dome, bearings));
  return sum + sumOver(skewback, (body) => joint(body, bare, grown));
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
  const outer = [p.r + t * p.normal[0], p.z + t * p.normal[1]] as const;
  const over = (from: number, to: number, height: (r: number) => number) =>
    integrateSoftEnds((r) => 2 * Math.PI * r * height(r), from, to, 24);
  const slope = outer[0] > p.r ? (outer[1] - p.z) / (outer[0] - p.r) : 0;
  return (
    over(0, outer[0], (r) => dome.heightAt(r, t)) -
    over(0, p.r, (r) => dome.heightAt(r)) -
    over(p.r, outer[0], (r) => p.z + (r - p.r) * slope)
  );
}

/** Curb, for each radian of its ring: from the intrados and its bed up to its level top, outside the bore. */
export function curbPerRadian(dome: DomeSetout): number {
  const { curb } = dome;
  if (!curb) return 0;
  const p = dome.shell.at(curb.bedS);
  const [outerR, outerZ] = curb.bedOuter;
  const slope = outerR > p.r ? (outerZ - p.z) / (outerR - p.r) : 0;
  const over = (from: number, to: number, under: (r: number) => number) =>
    integrate((r) => r * (curb.topZ - under(r)), from, to, 24);
  return over(curb.clearRadius, p.r, (r) => dome.heightAt(r)) + over(p.r, outerR, (r) => p.z + (r - p.r) * slope);
}
